// The blend of a candle: its oils with their amounts, and the few figures that are changed most.
import { button, el, fill, figure } from "./elements.js";
import { nameOf, supplies } from "./folder.js";
import { t } from "./words.js";
import { decimal, makeWhole, measure, measuresOf, shareTotal, type } from "./amounts.js";
import { fieldId, messagePlace } from "./problems.js";
import { at, put } from "./values.js";
import { state, touched } from "./state.js";
import { drawBar, toneOf } from "./tones.js";
import { drawWicks } from "./wicks.js";

const words = { share: "%", grams: "g", millilitres: "ml", drops: "drops" }; // told by t()
const spelled = { share: "% of the blend", grams: "grams", millilitres: "millilitres", drops: "drops" }; // told by t()

const indexOf = (oil) => state.form.oils.indexOf(oil);

function oilRow(oil) {
  const name = nameOf("oil", oil.oil);
  const path = `oils.${indexOf(oil)}`;
  const take = (e) => { type(state.form, oil, e.target.value); showAmounts(e.target); touched(); };
  const convert = (e) => {
    const others = measure(state.form, oil, e.target.value);
    showAmounts();
    touched();
    if (others) note(e.target.value === "share" ? t("Shares and weighed amounts cannot stand side by side: all oils are shares now.") : t("Shares and weighed amounts cannot stand side by side: the other oils are grams now, for 100 g of the blend."));
  };
  return el("div", { class: "oil", role: "group", "aria-label": name },
    el("p", { class: "what" }, el("span", { class: toneOf(oil.oil), "aria-hidden": "true" }), name),
    el("input", { id: fieldId(path), "aria-label": t("Amount of {name}", { name }), inputmode: "decimal", autocomplete: "off", value: oil.amount, "data-oil": oil.oil, oninput: take }),
    el("select", { "aria-label": t("Measure of {name}", { name }), "data-measure": oil.oil, onchange: convert },
      [...new Set([...measuresOf(state.form), oil.measure])].map((m) => el("option", { value: m, selected: m === oil.measure, title: t(spelled[m]) }, t(words[m])))),
    button("×", () => takeOut(oil), { class: "bare", "aria-label": t("Take out {name}", { name }), "data-out": oil.oil }),
    el("p", { class: "soft grams", "data-grams": oil.oil }), messagePlace(path));
}

const note = (text) => { document.getElementById("measure-note").textContent = text; };

function takeOut(oil) {
  const place = indexOf(oil);
  state.form.oils.splice(place, 1);
  drawOils();
  const next = state.form.oils[Math.min(place, state.form.oils.length - 1)];
  (next ? document.querySelector(`[data-out="${CSS.escape(next.oil)}"]`) : document.getElementById("add-oil"))?.focus();
  touched();
}

function add(id) {
  const first = state.form.oils[0]?.measure ?? measuresOf(state.form)[0];
  const oil = { oil: id, amount: first === "share" ? (state.form.oils.length ? "10" : "100") : "", measure: first };
  state.form.oils.push(oil);
  type(state.form, oil, oil.amount);
  drawOils();
  document.querySelector(`[data-oil="${CSS.escape(id)}"]`).focus();
  touched();
}

function drawOils() {
  const free = supplies("oil").filter((o) => state.form.oils.every((f) => f.oil !== o.id));
  fill(document.getElementById("oils"),
    el("div", { class: "bar", id: "blend-bar", "aria-hidden": "true" }), state.form.oils.map(oilRow), messagePlace("oils"), el("p", { id: "measure-note", class: "soft" }), el("div", { id: "together" }),
    free.length ? el("div", {}, el("label", { class: "unseen", for: "add-oil" }, t("Add an oil")), el("select", { id: "add-oil", onchange: (e) => e.target.value && add(e.target.value) },
      el("option", { value: "" }, t("Add an oil")), free.map((o) => el("option", { value: o.id }, o.name)))) : null);
  showTotal();
}

/** Writes the amounts into their fields, but not into the one that is being typed in; below each what it comes to in one candle. */
export function showAmounts(but) {
  if (!state.form || !document.getElementById("oils")) return;
  for (const oil of state.form.oils) {
    const input = document.querySelector(`[data-oil="${CSS.escape(oil.oil)}"]`);
    if (input && input !== but) input.value = oil.amount;
    const select = document.querySelector(`[data-measure="${CSS.escape(oil.oil)}"]`);
    if (select) select.value = oil.measure;
  }
  const load = document.getElementById(fieldId("load.percent"));
  if (load && load !== but) load.value = state.form.loadPercent ?? "";
  // What was reckoned from other figures does not stay beside these.
  for (const cell of document.querySelectorAll("[data-grams]")) cell.textContent = "";
  for (const oil of state.desk.recipe ?? []) {
    const cell = document.querySelector(`[data-grams="${CSS.escape(oil.id)}"]`);
    const parts = [`${figure(oil.grams)} g`, oil.millilitres ? `${figure(oil.millilitres, 3)} ml` : null, oil.drops ? t("{n} drops", { n: Math.round(oil.drops) }) : null];
    if (cell) cell.textContent = parts.filter(Boolean).join(" · ");
  }
  drawBar(document.getElementById("blend-bar"), (state.desk.recipe ?? []).map((o) => [o.id, o.blendPercent]));
  showTotal();
}

function showTotal() {
  const total = shareTotal(state.form);
  const whole = () => {
    makeWhole(state.form);
    showAmounts();
    document.querySelector(`[data-oil="${CSS.escape(state.form.oils[0].oil)}"]`).focus();
    touched();
  };
  fill(document.getElementById("together"), total === null || total === 0 || total === 100 ? null : el("div", { class: "row" },
    el("p", {}, t("Together {n} %.", { n: figure(total, 6) })), button(t("Make the shares 100 %"), whole)));
}

/** A figure of the candle with its unit behind. */
function figureField(label, path, unit, hint) {
  const id = fieldId(path.join("."));
  return el("div", { class: "figure" }, el("label", { for: id }, label, hint ? el("span", { class: "soft" }, hint) : null),
    el("input", { id, inputmode: "decimal", autocomplete: "off", value: at(state.declared.values, path) ?? "", oninput: (e) => { put(state.declared.values, path, decimal(e.target.value)); touched(); } }),
    el("span", { class: "unit" }, unit), messagePlace(path.join(".")));
}

export function drawBlend() {
  const place = document.getElementById("blend");
  const { declared, form } = state;
  if (!form) {
    fill(place, el("h2", {}, declared.declares === "batch" ? t("Batch") : t("Blend")),
      el("p", {}, declared.declares === "batch" ? t("A batch is what was weighed. Its figures stand under Details.") : t("The file cannot be read: mend in it what the problems say.")));
    return;
  }
  const values = declared.values;
  const details = `#/candle/${encodeURIComponent(declared.id)}/details`;
  fill(place, el("h2", {}, t("Blend")), el("div", { id: "oils", role: "group", "aria-label": t("Oils") }),
    values.temperatures ? figureField(t("Oil goes in at"), ["temperatures", "addFragranceCelsius"], "°C") : null,
    values.netMillilitres === undefined ? figureField(t("Net weight"), ["netGrams"], "g") : figureField(t("Net volume"), ["netMillilitres"], "ml"),
    el("div", { class: "vessel" }, drawWicks(), el("p", {}, el("strong", {}, values.vessel ? nameOf("vessel", values.vessel) : t("stands by itself")),
      values.wicks ? [el("br"), `${values.wicks.count ?? "?"} × ${values.wicks.kind ?? t("wick")}`] : null, el("br"), values.base ? nameOf("base", values.base) : nameOf("wax", values.wax), (values.extras ?? []).map((e) => [el("br"), nameOf("extra", e.extra)]),
      values.topUp ? [el("br"), values.topUp.scented === "yes" ? t("second pour, scented") : t("second pour, no scent")] : null)),
    el("p", {}, el("a", { href: details }, t("Vessel, wax, wicks, places"))));
  drawOils();
}
