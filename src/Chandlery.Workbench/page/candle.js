// One candle or batch: what it is made of, what follows from it, and its papers.
import { askJson } from "./ask.js";
import { el, fill, list, main, say, whisper, way } from "./elements.js";
import { t } from "./words.js";
import { amountsOf, write } from "./amounts.js";
import { drawBench } from "./bench.js";
import { drawBlend, showAmounts } from "./blend.js";
import { Declared, merged } from "./declared.js";
import { drawDetails } from "./details.js";
import { drawDuties } from "./duties.js";
import { drawFollows, drawVerdict } from "./follows.js";
import { drawLabel, drawPreview } from "./label.js";
import { drawLoadLine } from "./loadline.js";
import { drawPapers } from "./papers.js";
import { drawPast } from "./past.js";
import { drawProblems } from "./problems.js";
import { state, whenTouched, wish } from "./state.js";

const tabs = { candle: ["Candle", "batch", "candle"], details: ["Details", "batch", "candle"], papers: ["Papers", "batch", "candle"], duties: ["Duties", "batch", "candle"], pour: ["Pour a batch", "candle"], past: ["History", "batch", "candle"] }; // told by t()
let tab = "candle";

export async function showCandle(id, wanted) {
  const desk = await open(id);
  if (!desk) return undefined;
  await show(wanted in tabs ? wanted : "candle");
  return () => leave();
}

/** Asks for a candle and lays it on the desk; null when another was asked for meanwhile. */
async function open(id, values = null) {
  const visit = ++state.visit;
  // A candle that stays on the desk while its tabs change keeps its paper.
  if (state.declared?.id !== id) state.paper = { kind: null, edition: null, language: null, count: 6 };
  const desk = await askJson("/api/desk", { id, paper: state.paper });
  if (visit !== state.visit) return null;
  lay(desk, values);
  return desk;
}

function lay(desk, values) {
  state.declared = new Declared(desk, () => nameNow());
  if (values) state.declared.values = values;
  state.declared.reload = reload;
  state.desk = desk;
  state.sound = desk.assessments.length ? desk : null;
  state.form = desk.declares === "candle" && desk.values ? amountsOf(state.declared.values) : null;
}

const nameNow = () => state.declared.values.name ?? state.desk.assessments[0]?.name ?? state.declared.values.code ?? state.declared.id;

async function reload(mine, base) {
  const desk = await open(state.declared.id);
  if (!desk) return;
  if (!mine) { await show(tab); say(t("Loaded as the file is now.")); return; }
  const { values, both } = merged(desk.values, mine, base);
  lay(desk, values);
  await show(tab);
  if (both.length) fill(document.getElementById("conflict"), el("section", { class: "problems" }, el("h2", {}, t("The file and you changed the same")),
    el("p", {}, t("Yours stands here; the file had:")), list(both.map((k) => `${k}: ${JSON.stringify(desk.values[k])}`), "plain")));
  document.getElementById("title").focus();
  touched();
}

async function show(wanted) {
  tab = wanted;
  const { declared } = state;
  const href = (name) => `#/candle/${encodeURIComponent(declared.id)}${name === "candle" ? "" : `/${name}`}`;
  fill(main,
    el("div", { class: "path" },
      way(t("Way"), "#/", t("Candles"), el("h1", { id: "title", tabindex: "-1" }, nameNow())),
      el("nav", { class: "tabs", "aria-label": t("Parts of the candle") }, Object.entries(tabs).filter(([name, [, ...kinds]]) => kinds.includes(declared.declares) && (name !== "pour" || declared.values.base === undefined))
        .map(([name, [title]]) => el("a", { href: href(name), "aria-current": name === tab ? "page" : null }, t(title))))),
    el("div", { id: "conflict" }), el("div", { id: "summary" }), el("div", { id: "verdict" }), el("div", { id: "tab" }));
  document.body.className = `on-candle tab-${tab}`;
  const place = document.getElementById("tab");
  if (tab === "candle") {
    fill(place, el("div", { class: "desk" }, el("section", { id: "blend", "aria-label": t("Blend") }), el("section", { id: "the-label", "aria-label": t("Label") }), el("section", { id: "follows", "aria-label": t("What follows") })), el("section", { id: "load", "aria-label": t("Load") }));
    drawBlend();
    drawLabel();
  } else if (tab === "details") drawDetails(place);
  // The verdict stands above what is asked for next: drawn after it, it would push away what somebody is about to click.
  drawAll();
  if (tab === "papers") await drawPapers(place);
  else if (tab === "duties") await drawDuties(place);
  else if (tab === "pour") await drawBench(place);
  else if (tab === "past") await drawPast(place, declared.declares, declared.id);
}

async function leave() {
  const next = location.hash;
  const own = `#/candle/${encodeURIComponent(state.declared.id)}`;
  const may = await state.declared.leave();
  if (may && next !== own && !next.startsWith(`${own}/`)) { state.visit++; state.dragging = false; document.body.className = ""; }
  return may;
}

/** What the page itself knows of an amount goes before what the program says of the empty field. */
function problemsNow() {
  const own = (state.form?.oils ?? []).map((o, i) => ({ text: o.why, field: `oils.${i}` })).filter((p) => p.text);
  if (state.form?.loadWhy) own.push({ text: state.form.loadWhy, field: "load" });
  return [...own, ...state.desk.problems.filter((p) => own.every((o) => !p.field?.startsWith(o.field)))];
}

function drawAll() {
  const n = drawProblems(problemsNow(), document.getElementById("summary"));
  drawVerdict();
  if (tab === "candle") {
    drawFollows();
    drawLoadLine();
    showAmounts(document.activeElement);
    drawPreview(state.desk.preview);
  }
  return n;
}

let asking = false;
let again = false;

/** After every change: at once, and one question at a time, so that answers come in order. */
function touched() {
  const { declared, form } = state;
  if (form) write(form, declared.values);
  document.getElementById("title").textContent = nameNow();
  declared.changed();
  return follow();
}

async function follow() {
  if (asking) { again = true; return; }
  asking = true;
  try {
    do {
      again = false;
      await askOnce();
    } while (again);
  } finally {
    asking = false;
  }
}

async function askOnce() {
  const visit = state.visit;
  try {
    const answer = await askJson("/api/desk", wish());
    // While dragging, each answer is nearer to the finger than the one before; else only the last one counts.
    if (visit !== state.visit || (again && !state.dragging)) return;
    state.desk = answer;
    if (answer.assessments.length) state.sound = answer;
    state.declared.problems = problemsNow();
    const n = drawAll();
    if (again || state.dragging) return;
    state.declared.keepSoon();
    if (!state.declared.refused) whisper(n ? t("Not kept: {n} told at the top and beside the field.", { n }) : document.getElementById("sentence")?.textContent ?? "");
  } catch (error) {
    if (visit === state.visit) say(error.message);
  }
}

whenTouched(touched);
