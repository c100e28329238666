// A form for a declaration of any kind, made of what its reader takes.
import { button, el, fill } from "./elements.js";
import { decimal } from "./amounts.js";
import { attachable } from "./attach.js";
import { fieldName } from "./fields.js";
import { shapes, supplies } from "./folder.js";
import { fieldId, messagePlace } from "./problems.js";
import { at, put } from "./values.js";
import { said } from "./told.js";
import { placeName, t } from "./words.js";

/**
 * Draws fields of a form.
 * @param fields what they are, as the program tells
 * @param form { values, changed, of } – the whole declaration, whom to tell of each change, and which it is where files may be put beside it
 * @param path where in the values they stand
 */
export const drawFields = (fields, form, path = []) => fields.map((f) => drawField(f, form, [...path, f.key]));

const spoken = (path) => path.join(".");

/** A field with its name, what it means, its control, and room for what is wrong. */
function drawField(field, form, path) {
  if (field.kind === "group" || field.kind === "groups" || field.kind === "map") return drawInside(field, form, path);
  const id = fieldId(spoken(path));
  const about = field.about && !field.names && field.about.replace(/\.$/, "") !== fieldName(field.key) ? el("p", { class: "about", id: `a-${spoken(path)}` }, said(field.about)) : null;
  return el("div", { class: `field ${field.kind}` },
    el("label", { for: id }, fieldName(field.key), field.needed ? null : el("span", { class: "soft" }, ` ${t("(may be left out)")}`)),
    withFiles(control(field, form, path, { id, "aria-describedby": about?.id ?? null }), field, form, path), about, messagePlace(spoken(path)));
}

/** The control, and where files are chosen when it names some. */
function withFiles(control, field, form, path) {
  if (!field.endings.length || !form.of) return control;
  return attachable(control, field.endings, form.of, (names) => {
    const several = field.kind === "texts";
    const value = several ? [...at(form.values, path) ?? [], ...names] : names[0];
    control.value = several ? value.join("\n") : value;
    take(form, path, value);
  });
}

function take(form, path, value) {
  put(form.values, path, value);
  form.changed();
}

function control(field, form, path, own) {
  const value = at(form.values, path);
  switch (field.kind) {
    case "number": return el("input", { ...own, inputmode: field.isWhole ? "numeric" : "decimal", autocomplete: "off", value: value ?? "", placeholder: field.example ?? null, oninput: (e) => take(form, path, decimal(e.target.value)) });
    case "day": return el("input", { ...own, type: "date", value: value ?? "", oninput: (e) => take(form, path, e.target.value) });
    case "flag": return choice({ choices: ["yes", "no"] }, form, path, own, { true: "yes", false: "no" }[value] ?? value);
    case "choice": return choice(field, form, path, own, value);
    case "texts": return texts(field, form, path, own, value);
    case "either": return either(field, form, path, own, value);
    default: return path.length === 1 && field.key === "kind" ? kindOfProduct(form, path, own, value) : path.at(-1) === "design" || (path.at(-1) === "name" && path.at(-2) === "design") ? design(form, path, own, value) : field.names ? named(field, form, path, own, value)
      : el("input", { ...own, autocomplete: "off", value: typeof value === "string" ? value : "", placeholder: field.example ?? null, oninput: (e) => take(form, path, e.target.value) });
  }
}

const choice = (field, form, path, own, value) => el("select", { ...own, onchange: (e) => take(form, path, e.target.value) },
  el("option", { value: "" }, t("not said")), field.choices.map((c) => el("option", { value: c, selected: c === value }, t(c))));

/** Another declaration of the folder, by what people call it. */
function named(field, form, path, own, value) {
  const known = supplies(field.names);
  const lost = value && known.every((k) => k.id !== value);
  return el("select", { ...own, onchange: (e) => take(form, path, e.target.value) }, el("option", { value: "" }, t("choose")),
    lost ? el("option", { value, selected: true }, value) : null, known.map((k) => el("option", { value: k.id, selected: k.id === value }, k.name)));
}

/** What kind of product it is; a container candle says nothing of it. */
const kindOfProduct = (form, path, own, value) => el("select", { ...own, onchange: (e) => take(form, path, e.target.value) },
  shapes.kinds.map((k) => k.id === "container-candle" && value !== k.id ? el("option", { value: "", selected: !value }, t(k.name)) : el("option", { value: k.id, selected: k.id === value }, t(k.name))));

const design = (form, path, own, value) => el("select", { ...own, onchange: (e) => take(form, path, e.target.value) }, el("option", { value: "" }, t("none")), shapes.designs.map((d) => el("option", { value: d.name, selected: d.name === value }, `${d.name} — ${d.about}`)));

/** Texts, a line each; of declarations and places, those that are ticked. */
function texts(field, form, path, own, value) {
  const has = Array.isArray(value) ? value : [];
  const offers = field.names ? supplies(field.names).map((s) => [s.id, s.name]) : field.key === "soldIn" ? shapes.places.map((p) => [p.code, placeName(p.code, p.name)]).sort((a, b) => a[1].localeCompare(b[1])) : null;
  if (!offers) return el("textarea", { ...own, rows: Math.max(2, has.length + 1), oninput: (e) => take(form, path, e.target.value.split("\n").map((l) => l.trim()).filter(Boolean)) }, has.join("\n"));
  const tick = (key, on) => {
    const now = at(form.values, path) ?? [];
    take(form, path, on ? [...now, key] : now.filter((k) => k !== key));
  };
  return el("div", { class: "ticks", role: "group", ...own }, offers.map(([key, name]) => el("label", {}, el("input", { type: "checkbox", checked: has.includes(key), onchange: (e) => tick(key, e.target.checked) }), name)));
}

/** What can be written in more than one way: a word, a list, or a group. */
function either(field, form, path, own, value) {
  const wayOf = (v) => Array.isArray(v) ? "texts" : v !== null && typeof v === "object" ? "group" : null;
  const words = field.fields.find((w) => w.kind === "choice")?.choices ?? [];
  const lists = field.fields.find((w) => w.kind === "texts");
  const group = field.fields.find((w) => w.kind === "group");
  if (group && wayOf(value) === "group") return el("div", { class: "inside", role: "group", ...own }, drawFields(group.fields, form, path));
  if (group?.fields.some((f) => f.key === "screen")) return tint(form, path, own, value);
  if (!lists) return el("input", { ...own, autocomplete: "off", list: words.length ? `${own.id}-words` : null, value: typeof value === "string" ? value : "", oninput: (e) => take(form, path, decimal(e.target.value)) });
  const has = Array.isArray(value) ? value.join("\n") : typeof value === "string" ? value : "";
  return el("textarea", { ...own, rows: Math.max(2, has.split("\n").length + 1), placeholder: words.join(", "), oninput: (e) => {
    const lines = e.target.value.split("\n").map((l) => l.trim()).filter(Boolean);
    take(form, path, lines.length === 1 && words.includes(lines[0]) ? lines[0] : lines.length ? lines : "");
  } }, has);
}

/** A colour: picked, or typed as screens write it; empty for none. */
function tint(form, path, own, value) {
  const text = el("input", { ...own, autocomplete: "off", size: 9, value: typeof value === "string" ? value : "", oninput: (e) => { if (/^#[0-9a-f]{6}$/i.test(e.target.value)) picker.value = e.target.value; take(form, path, e.target.value); } });
  const picker = el("input", { type: "color", "aria-label": t("Pick: {name}", { name: fieldName(path.at(-1)) }), value: /^#[0-9a-f]{6}$/i.test(value) ? value : "#808080", oninput: (e) => { text.value = e.target.value; take(form, path, e.target.value); } });
  return el("span", { class: "row" }, picker, text);
}

/** A group, a list of groups or a map: folded while it says nothing and may be left out. */
function drawInside(field, form, path) {
  const inside = el("div", { class: "inside" });
  const value = at(form.values, path);
  const draw = () => fill(inside, field.kind === "group" ? drawFields(field.fields, form, path) : field.kind === "groups" ? drawGroups(field, form, path, draw) : drawMap(field, form, path, draw));
  draw();
  const about = field.about ? el("p", { class: "about" }, said(field.about)) : null;
  const body = [about, messagePlace(spoken(path)), inside];
  if (field.needed) return el("fieldset", {}, el("legend", {}, fieldName(field.key)), body);
  return el("details", { class: "group", open: value !== undefined && Object.keys(value ?? {}).length > 0 && path.length < 2 },
    el("summary", {}, fieldName(field.key), value === undefined ? el("span", { class: "soft" }, ` ${t("(may be left out)")}`) : null), body);
}

function drawGroups(field, form, path, redraw) {
  const items = at(form.values, path) ?? [];
  const reshape = (change) => { const now = [...at(form.values, path) ?? []]; change(now); put(form.values, path, now.length ? now : undefined); form.changed(); redraw(); };
  const titleOf = (item, i) => item.name ?? supplies("oil").concat(supplies("wax"), supplies("extra")).find((s) => s.id === (item.oil ?? item.wax ?? item.extra))?.name ?? item.part ?? `${fieldName(field.key)} ${i + 1}`;
  return [
    ...items.map((item, i) => el("details", { class: "item", open: items.length < 3 || Object.keys(item).length === 0 }, el("summary", {}, titleOf(item, i)),
      messagePlace(spoken([...path, i])), drawFields(field.fields, form, [...path, i]),
      button(t("Take out"), () => reshape((now) => now.splice(i, 1)), { "aria-label": `${t("Take out")} ${titleOf(item, i)}` }))),
    button(items.length ? t("Add another") : t("Add one"), () => reshape((now) => now.push({}))),
  ];
}

function drawMap(field, form, path, redraw) {
  const map = at(form.values, path) ?? {};
  const name = el("input", { "aria-label": t("Name"), autocomplete: "off", size: 6 });
  return [
    ...Object.keys(map).map((key) => drawField({ ...field.fields[0], key, needed: true }, form, [...path, key])),
    el("div", { class: "row" }, name, button(t("Add"), () => { if (name.value.trim()) { put(form.values, [...path, name.value.trim()], ""); form.changed(); redraw(); } })),
  ];
}

/** The fields of a kind of declaration, without those that another part of the view edits. */
export const fieldsOf = (kind, without = []) => shapes.forms[kind].filter((f) => !without.includes(f.key));
