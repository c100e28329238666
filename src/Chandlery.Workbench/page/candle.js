// One candle: its form, what follows from it, and its papers.
import { askJson, el, fill, list, main, say, showMaker, showNothing } from "./elements.js";
import { edits, state } from "./state.js";
import { formOf } from "./amounts.js";
import { drawEditor, drawHints, showAmounts } from "./blend.js";
import { drawProblems } from "./problems.js";
import { drawPlot } from "./plot.js";
import { drawResults } from "./results.js";
import { drawPapers } from "./papers.js";

const typingPause = 250;
const narrow = matchMedia("(max-width: 60rem)");

export async function showCandle(id) {
  const visit = ++state.visit;
  let desk;
  try {
    desk = await askJson("/api/desk", { id });
  } catch (error) {
    if (error.status !== 404) throw error;
    showNothing(`There is no candle or batch '${id}' in this folder.`);
    return;
  }
  if (visit !== state.visit) return;
  state.desk = desk;
  state.changed = false;
  refused = false;
  state.form = formOf(desk);
  showMaker(desk.maker);
  fill(main,
    el("h1", { id: "title", tabindex: "-1" }, state.form?.name ?? desk.assessments[0]?.name ?? id),
    el("div", { id: "conflict" }), el("div", { id: "summary" }), el("div", { id: "verdict" }),
    el("div", { class: "desk" }, el("div", { id: "work" }, el("div", { id: "editor" }), el("div", { id: "load-plot" }), el("div", { id: "results" })), el("div", { id: "papers" })));
  arrange();
  drawEditor();
  drawAll();
  await drawPapers();
  say(desk.problems.length ? "This candle has problems." : "Assessed.");
}

/** On a phone the papers stand right below the verdict; the order of reading is the order on the screen. */
function arrange() {
  const papers = document.getElementById("papers");
  if (!papers) return;
  if (narrow.matches) papers.parentElement.prepend(papers); else papers.parentElement.append(papers);
}
narrow.addEventListener("change", arrange);

export function leaveCandle() {
  state.visit++;
  state.dragging = false;
  clearTimeout(waiting);
}

function drawAll() {
  drawProblems();
  drawResults();
  drawHints();
  // A new plot under the finger would end the drag.
  if (!state.dragging) drawPlot();
}

let waiting;
let asking = false;
let again = false;
/** After a save was refused its reason stays in the status line until something is changed. */
let refused = false;

/** After every change: what follows is asked for after a pause in typing, at once while dragging. */
export function touched(pause = typingPause) {
  refused = false;
  state.changed = edits() !== null;
  for (const id of ["save", "drop"]) { const button = document.getElementById(id); if (button) button.disabled = !state.changed; }
  drawProblems();
  clearTimeout(waiting);
  if (pause === 0) follow(); else waiting = setTimeout(follow, pause);
}

/** One question at a time, so that answers come in order; what changed meanwhile is asked next. */
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
  if (!refused) say("Assessing…");
  try {
    const answer = await askJson("/api/desk", { id: state.desk.id, edits: edits() });
    // While dragging, each answer is nearer to the finger than the one before; else only the last one counts.
    if (visit !== state.visit || (again && !state.dragging)) return;
    state.desk = { ...answer, form: state.desk.form, hash: state.desk.hash };
    drawAll();
    if (again || state.dragging) return;
    drawPapers();
    const problems = drawProblems();
    if (!refused) say(problems ? `${problems} problem${problems > 1 ? "s" : ""}, told at the top and beside the field.` : state.changed ? "Assessed with your changes; not saved yet." : "Assessed.");
  } catch (error) {
    if (visit === state.visit) say(error.message);
  }
}

/** Shows the candle anew; the focus goes back to where it was, or to the title when that is gone or has nothing more to do. */
async function reopen() {
  const was = document.activeElement?.id;
  await showCandle(state.desk.id);
  const back = was ? document.getElementById(was) : null;
  (back && !back.disabled ? back : document.getElementById("title"))?.focus();
}

export async function drop() {
  await reopen();
  say("Your changes are dropped.");
}

export async function save() {
  try {
    await askJson("/api/save", { id: state.desk.id, edits: edits(), hash: state.desk.hash });
    await reopen();
    say("Saved. Comments and order of the file were kept.");
  } catch (error) {
    refused = true;
    say(error.message);
    if (error.status === 409) offerMerge(error.message);
  }
}

function offerMerge(message) {
  fill(document.getElementById("conflict"), el("section", { "aria-label": "Changed on disk" }, el("h2", {}, "Not saved"), el("p", { class: "stop" }, message),
    el("div", { class: "row" },
      el("button", { type: "button", class: "main", id: "merge", onclick: () => merge().catch((e) => say(e.message)) }, "Load it with my changes"),
      el("button", { type: "button", onclick: () => drop().catch((e) => say(e.message)) }, "Load it without my changes"))));
  document.getElementById("merge").focus();
}

const fieldNames = { name: "the name", netGrams: "the net grams", loadPercent: "the load", loadOf: "what the load is of", wickCount: "the wicks", oils: "the oils" };

/** Puts the maker's changes on what the file says now. Where both changed the same, the maker's stands and is told. */
async function merge() {
  const mine = edits();
  const before = state.desk.form;
  await showCandle(state.desk.id);
  if (!state.form || mine === null) return;
  const bare = (value) => JSON.stringify(value);
  const keys = Object.keys(fieldNames).filter((k) => mine[k] !== null);
  const both = keys.filter((k) => bare(before[k]) !== bare(state.desk.form[k]));
  state.form = formOf({ form: { ...state.form, ...Object.fromEntries(keys.map((k) => [k, mine[k]])) } });
  drawEditor();
  document.getElementById("title").textContent = state.form.name;
  if (both.length) fill(document.getElementById("conflict"), el("section", { "aria-label": "Changed by both" },
    el("p", {}, `The file and you both changed ${both.map((k) => fieldNames[k]).join(", ")}. Yours stands here; the file had:`),
    list(both.map((k) => k === "oils" ? state.desk.form.oils.map((o) => `${o.oil} ${o.amount} ${o.measure}`).join(", ") : String(state.desk.form[k])), "plain")));
  document.getElementById("title").focus();
  touched(0);
}
