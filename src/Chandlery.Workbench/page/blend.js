// The form of a candle.
import { el, fill, figure } from "./elements.js";
import { state } from "./state.js";
import { loadOf, makeWhole, measure, measuresOf, shareTotal, type, typeLoad } from "./amounts.js";
import { fieldId, messagePlace } from "./problems.js";
import { drop, save, touched } from "./candle.js";

const nameOf = (id) => state.desk.oils.find((o) => o.id === id)?.name ?? id;
const words = { share: "% of blend", grams: "grams", millilitres: "millilitres", drops: "drops" };

function field(label, key, attributes = {}, take = (value) => { state.form[key] = value; }) {
  return el("div", {}, el("label", { for: fieldId(key) }, label),
    el("input", { id: fieldId(key), value: state.form[key] ?? "", autocomplete: "off", oninput: (e) => { take(e.target.value); touched(); }, ...attributes }),
    messagePlace(key));
}

function oilCard(oil) {
  const name = nameOf(oil.oil);
  const key = `oil:${oil.oil}`;
  const take = (e) => { type(state.form, oil, e.target.value); showAmounts(e.target); touched(); };
  const convert = (e) => {
    const others = measure(state.desk, state.form, oil, e.target.value);
    showAmounts();
    touched();
    if (others) note(`Shares and weighed amounts cannot stand side by side: ${e.target.value === "share" ? "all oils are shares now" : "the other oils are grams now, for 100 g of the blend"}.`);
  };
  return el("div", { class: "oil", role: "group", "aria-label": name },
    el("p", { class: "what" }, name, el("span", { class: "soft", "data-grams": oil.oil })),
    el("div", {}, el("label", { for: fieldId(key) }, "Amount"), el("input", { id: fieldId(key), "aria-label": `Amount of ${name}`, inputmode: "decimal", autocomplete: "off", value: oil.amount, oninput: take })),
    el("div", {}, el("label", { for: `m-${oil.oil}` }, "Measure"), el("select", { id: `m-${oil.oil}`, "aria-label": `Measure of ${name}`, onchange: convert },
      [...new Set([...measuresOf(state.form), oil.measure])].map((m) => el("option", { value: m, selected: m === oil.measure }, words[m])))),
    el("button", { type: "button", "aria-label": `Take out ${name}`, "data-out": oil.oil, onclick: () => takeOut(oil) }, "Take out"),
    messagePlace(key));
}

const note = (text) => { document.getElementById("measure-note").textContent = text; };

function takeOut(oil) {
  const at = state.form.oils.indexOf(oil);
  state.form.oils.splice(at, 1);
  drawOils();
  const next = state.form.oils[Math.min(at, state.form.oils.length - 1)];
  (next ? document.querySelector(`[data-out="${CSS.escape(next.oil)}"]`) : document.getElementById("add-oil"))?.focus();
  touched();
}

function add(id) {
  const first = state.form.oils[0]?.measure ?? measuresOf(state.form)[0];
  const oil = { oil: id, amount: first === "share" ? "10" : "", measure: first };
  state.form.oils.push(oil);
  type(state.form, oil, oil.amount);
  drawOils();
  document.getElementById(fieldId(`oil:${id}`)).focus();
  touched();
}

function drawOils() {
  const free = state.desk.oils.filter((o) => state.form.oils.every((f) => f.oil !== o.id));
  const adding = el("select", { id: "add-oil" }, free.map((o) => el("option", { value: o.id }, o.name)));
  fill(document.getElementById("oils"),
    state.form.oils.map(oilCard),
    messagePlace("oils"),
    el("p", { id: "measure-note", class: "soft" }),
    el("div", { id: "together" }),
    free.length ? el("div", { class: "row" }, el("div", {}, el("label", { for: "add-oil" }, "Another oil"), adding),
      el("button", { type: "button", onclick: () => add(adding.value) }, "Add")) : null);
  showTotal();
  drawHints();
}

/** Writes the amounts into their fields, but not into the one that is being typed in. */
export function showAmounts(but) {
  for (const oil of state.form.oils) {
    const input = document.getElementById(fieldId(`oil:${oil.oil}`));
    if (input && input !== but) input.value = oil.amount;
    const select = document.getElementById(`m-${oil.oil}`);
    if (select) select.value = oil.measure;
  }
  const load = document.getElementById(fieldId("loadPercent"));
  if (load && load !== but) load.value = state.form.loadPercent ?? "";
  showTotal();
}

function showTotal() {
  const total = shareTotal(state.form);
  const whole = () => {
    makeWhole(state.form);
    showAmounts();
    document.getElementById(fieldId(`oil:${state.form.oils[0].oil}`)).focus();
    touched(0);
  };
  fill(document.getElementById("together"), total === null || total === 0 || total === 100 ? null : el("div", { class: "row" },
    el("p", {}, `Together ${figure(total, 6)} %.`),
    el("button", { type: "button", onclick: whole }, "Make the shares 100 %")));
}

export function drawEditor() {
  const editor = document.getElementById("editor");
  const { desk, form } = state;
  if (!form) {
    fill(editor, el("section", { "aria-label": "Blend" }, el("h2", {}, desk.editable || desk.problems.length ? "Blend" : "Batch"),
      el("p", {}, desk.problems.length ? "The file cannot be read: mend in it what the problems say, then load this page again." : "A batch is what was weighed; it is written in its file.")));
    return;
  }
  fill(editor, el("form", { class: "panel", "aria-label": "Blend", novalidate: true, onsubmit: (e) => { e.preventDefault(); save(); } },
    el("h2", {}, "Blend"),
    el("div", { class: "fields" },
      field("Name", "name", {}, (value) => { form.name = value; document.getElementById("title").textContent = value; }),
      field("Net grams", "netGrams", { inputmode: "decimal" }), field("Wicks", "wickCount", { inputmode: "numeric" }),
      form.loadPercent !== null ? field("Load, %", "loadPercent", { inputmode: "decimal" }, (value) => typeLoad(form, value)) : null,
      form.loadPercent !== null ? el("div", {}, el("label", { for: fieldId("loadOf") }, "of the"), el("select", { id: fieldId("loadOf"), onchange: (e) => { loadOf(state.desk, form, e.target.value); showAmounts(); touched(); } },
        el("option", { value: "wax", selected: form.loadOf === "wax" }, "wax"), el("option", { value: "candle", selected: form.loadOf === "candle" }, "scented melt")), messagePlace("loadOf")) : null),
    el("p", { id: "load-hint", class: "soft" }),
    el("div", { id: "oils", role: "group", "aria-label": "Oils" }),
    el("div", { class: "row" },
      el("button", { class: "main", id: "save", disabled: !state.changed }, "Save to the file"),
      el("button", { type: "button", id: "drop", disabled: !state.changed, onclick: drop }, "Drop my changes"))));
  drawOils();
}

/** Both meanings of the load, and what each oil comes to. */
export function drawHints() {
  const hint = document.getElementById("load-hint");
  if (!hint) return;
  // What was reckoned from other figures does not stay beside these.
  for (const cell of document.querySelectorAll("[data-grams]")) cell.textContent = "";
  const l = state.desk.assessments[0]?.loadPercent;
  hint.textContent = !l ? "" : `${figure(l.meltOfWax)} % of the wax = ${figure(l.meltOfCandle)} % of the scented melt = ${figure(l.finishedCandle)} % of the finished candle.`;
  for (const oil of state.desk.recipe ?? []) {
    const cell = document.querySelector(`[data-grams="${CSS.escape(oil.id)}"]`);
    if (cell) cell.textContent = `per candle ${[`${figure(oil.grams)} g`, oil.millilitres ? `${figure(oil.millilitres, 3)} ml` : null, oil.drops ? `${Math.round(oil.drops)} drops` : null].filter(Boolean).join(" · ")}`;
  }
}
