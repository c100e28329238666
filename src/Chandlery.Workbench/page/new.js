// A new candle, question by question: each answer is kept as soon as it can be, and the label grows beside it.
import { askJson } from "./ask.js";
import { button, el, fill, list, main, picture, say, way } from "./elements.js";
import { nameOf, readFolder, supplies } from "./folder.js";
import { said } from "./told.js";
import { t } from "./words.js";
import { blankLabel } from "./begin.js";
import { Declared } from "./declared.js";
import { dropPlace } from "./drop.js";
import { drawFields, fieldsOf } from "./form.js";
import { firstSentence } from "./follows.js";
import { drawProblems } from "./problems.js";
import { edits } from "./values.js";

const only = (kind, keys) => keys.map((k) => fieldsOf(kind).find((f) => f.key === k)).filter(Boolean);
const needed = (kind, keys, must) => only(kind, keys).map((f) => must.includes(f.key) ? { ...f, needed: true } : f);

let candle = null;
let step = 0;

const steps = [
  { title: "What is it called?", draw: drawName }, // told by t()
  { title: "Who makes it?", draw: (place) => drawOther(place, "maker", needed("maker", ["name", "address", "telephone", "email", "country", "vat"], ["email"])) }, // told by t()
  { title: "What is it poured into?", draw: (place) => drawOther(place, "vessel", only("vessel", ["name", "material", "brimfulMl", "fillMl", "inner", "outer"]), "vessel") }, // told by t()
  { title: "Which wax?", draw: (place) => drawOther(place, "wax", only("wax", ["name", "supplier", "ingredients", "highestLoad", "solidDensityGramsPerMl", "liquidDensityGramsPerMl"]), "wax") }, // told by t()
  { title: "Which oils, and how much?", draw: drawOils }, // told by t()
];

export async function showNew() {
  // Whoever went away to sign a sheet goes on where he was.
  const was = JSON.parse(sessionStorage.getItem("new-candle") ?? "null");
  const first = sessionStorage.getItem("new-name");
  candle = was?.candle ?? { name: "", use: "indoor", vessel: "", netGrams: "", wax: "", load: { percent: "", of: "wax" }, oils: [], wicks: { count: "1", trimToMm: "5" }, temperatures: {}, soldIn: [] };
  step = was?.step ?? 0;
  if (first) { candle.name = first; step = Math.max(step, 1); sessionStorage.removeItem("new-name"); }
  if (supplies("maker").length && step === 1) step = 2;
  draw();
}

const keepForLater = () => sessionStorage.setItem("new-candle", JSON.stringify({ candle, step }));

function draw() {
  keepForLater();
  fill(main,
    el("div", { class: "path" }, way(t("Way"), "#/", t("Candles"), el("span", {}, candle.name || t("New candle")))),
    el("div", { class: "questions" },
      el("section", { "aria-labelledby": "question" }, el("p", { class: "soft" }, t("Question {n} of {all}", { n: step + 1, all: steps.length })), el("h1", { id: "question", tabindex: "-1" }, t(steps[step].title)), el("div", { id: "summary" }), el("div", { id: "answer" })),
      el("aside", { "aria-label": t("The label so far") }, el("div", { id: "grows", class: "paper" }), el("div", { id: "so-far" }))));
  steps[step].draw(document.getElementById("answer"));
  grow();
  document.getElementById("question").focus();
}

function go(to) {
  step = to === 1 && supplies("maker").length ? to + (to > step ? 1 : -1) : to;
  draw();
}

const buttons = (next, label = t("Next")) => el("div", { class: "row" }, el("button", { class: "main" }, label), step > 0 ? button(t("Back"), () => go(step - 1)) : null, next);

function drawName(place) {
  const form = { values: candle, changed: () => { keepForLater(); grow(); } };
  fill(place, el("form", { class: "form", novalidate: true, onsubmit: (e) => { e.preventDefault(); if (!candle.name?.trim()) { drawProblems([{ text: t("Give it a name."), field: "name" }], document.getElementById("summary")); return; } go(1); } },
    drawFields(only("candle", ["name", "use"]), form), buttons()));
}

/** A vessel, a wax or the maker: one that is there, or a new one. */
function drawOther(place, kind, fields, key = null) {
  const known = key ? supplies(kind) : [];
  const fresh = new Declared({ declares: kind, id: "", hash: null, values: {}, problems: [] }, () => fresh.values.name ?? kind);
  const check = async () => {
    const answer = await askJson("/api/form", fresh.request);
    fresh.problems = answer.problems;
    return answer.problems;
  };
  const keep = async (e) => {
    e.preventDefault();
    try {
      if (drawProblems(await check(), document.getElementById("summary"))) { document.querySelector("[aria-invalid=true]")?.focus(); return; }
      if (!await fresh.keep(t("{name} made", { name: fresh.values.name }))) return;
      await readFolder();
      document.body.dataset.unkept = "";
      if (key) candle[key] = fresh.id;
      go(step + 1);
    } catch (error) {
      say(error.message);
    }
  };
  const own = el("form", { class: "form", novalidate: true, onsubmit: keep }, kind === "wax" ? waxHint() : null, drawFields(fields, { values: fresh.values, changed: () => {} }), buttons());
  fill(place, known.length ? el("div", {}, el("p", {}, t("One that you have:")), el("div", { class: "row" }, known.map((k) => button(k.name, () => { candle[key] = k.id; go(step + 1); }))), el("p", {}, t("Or a new one:"))) : null, own);
}

/** What a wax's sheet must be looked at for: nothing is filled in that the sheet does not say. */
const waxHint = () => el("p", { class: "soft" }, t("Copy what the wax's safety data sheet says: its ingredients with CAS number and share, and their classes. Where the sheet says 'not classified', write just that; where it says nothing, leave the classes out."));

/** What must be known of the last question: the oils in shares, the load, the weight, wicks, the heat that the oil meets, the places. */
function lastQuestion() {
  const within = (key, keys, more = {}) => { const f = fieldsOf("candle").find((x) => x.key === key); return { ...f, ...more, needed: true, fields: keys.map((k) => ({ ...f.fields.find((x) => x.key === k), needed: true })) }; };
  return [within("oils", ["oil", "share"]), within("load", ["percent", "of"]), ...only("candle", ["netGrams"]), within("wicks", ["count", "trimToMm"]), within("temperatures", ["addFragranceCelsius"]), ...only("candle", ["soldIn"])];
}

function drawOils(place) {
  const form = { values: candle, changed: () => { keepForLater(); grow(); } };
  const unsigned = supplies("oil").filter((o) => o.asks === "unsigned");
  const finish = async (e) => {
    e.preventDefault();
    const desk = await grow();
    if (drawProblems(desk?.problems ?? [], document.getElementById("summary"))) { document.querySelector("[aria-invalid=true]")?.focus(); return; }
    try {
      const answer = await askJson("/api/keep", { declares: "candle", id: "", edits: edits({}, candle), hash: null, what: t("{name} made", { name: candle.name }) });
      sessionStorage.removeItem("new-candle");
      location.hash = `#/candle/${encodeURIComponent(answer.id)}`;
    } catch (error) {
      say(error.message);
    }
  };
  fill(place, el("section", { "aria-label": t("Suppliers' sheets") }, el("p", {}, supplies("oil").length ? t("Bring another oil's sheet:") : t("Bring the sheets of your oils first; you come back here after signing them.")), dropPlace(),
    unsigned.length ? el("p", { class: "question" }, t("Not signed yet:"), unsigned.map((o) => [" ", el("a", { href: `#/sheet/${encodeURIComponent(o.id)}` }, o.name)])) : null,
    el("p", {}, el("a", { href: "#/declaration/oil" }, t("Type an oil in by hand")))),
  el("form", { class: "form", novalidate: true, onsubmit: finish }, drawFields(lastQuestion(), form), buttons(null, t("Make the candle"))));
}

let asked = 0;
/** The label as far as it is known. */
async function grow() {
  const mine = ++asked;
  const place = document.getElementById("grows");
  const facts = [["vessel", candle.vessel && nameOf("vessel", candle.vessel)], ["wax", candle.wax && nameOf("wax", candle.wax)], ["oils", (candle.oils ?? []).map((o) => nameOf("oil", o.oil)).join(", ")]].filter(([, f]) => f);
  fill(document.getElementById("so-far"), el("p", { class: "soft" }, facts.map(([, f]) => f).join(" · ")));
  let desk = null;
  try {
    desk = await askJson("/api/desk", { id: "", edits: edits({}, candle) });
  } catch (error) {
    say(error.message);
  }
  if (mine !== asked || !place.isConnected) return desk;
  const stops = (desk?.assessments ?? []).flatMap((a) => a.findings.filter((f) => f.stopsSale));
  if (stops.length) document.getElementById("so-far").append(el("p", { class: "stop" }, t("Not to be sold like this yet:")), list([...new Set(stops.map((f) => firstSentence(said(f.what))))], "plain"));
  fill(place, desk?.preview.pages.length ? picture(desk.preview.pages[0], t("The label so far")) : blankLabel(candle.name));
  return desk;
}
