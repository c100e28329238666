// A batch at the bench: one weight after the other in big figures, the next step on one button.
import { askJson } from "./ask.js";
import { button, el, fill, figure, say } from "./elements.js";
import { readFolder } from "./folder.js";
import { decimal, number } from "./amounts.js";
import { state } from "./state.js";
import { said } from "./told.js";
import { byPhone } from "./phone.js";
import { t, today } from "./words.js";

let run = null;

// What was weighed outlives a page that is loaded again.
const placeOf = (id) => `bench-${id}`;
const keepRun = () => sessionStorage.setItem(placeOf(run.id), JSON.stringify({ ...run, steps: undefined }));
const forget = () => { sessionStorage.removeItem(placeOf(run.id)); run = null; };

export async function drawBench(place) {
  const id = state.declared.id;
  if (run?.id !== id) run = JSON.parse(sessionStorage.getItem(placeOf(id)) ?? "null") ?? { id, count: 6, at: -1, weighed: {}, started: null };
  await plan(place);
}

async function plan(place) {
  let bench;
  try {
    bench = await askJson("/api/bench", { id: run.id, paper: { count: run.count } });
  } catch (error) {
    fill(place, el("p", { class: "stop" }, error.message));
    return;
  }
  run.code ??= bench.code;
  run.steps = stepsOf(bench);
  if (run.at < 0) drawStart(place, bench); else drawStep(place, bench);
}

/** The steps in the order in which they happen. */
function stepsOf(bench) {
  const heat = (i) => bench.temperatures[i];
  const weigh = (w, pour) => ({ ...w, kind: "weigh", pour });
  const waxes = bench.firstPour.filter((w) => w.kind === "wax");
  const rest = bench.firstPour.filter((w) => w.kind !== "wax");
  const oils = bench.temperatures.length > 2 || rest.length ? [heat(1)] : [];
  const pour = bench.temperatures.find((h) => h.step === "Pour");
  const again = bench.temperatures.find((h) => h.step.startsWith("Top up"));
  return [...waxes.map((w) => weigh(w, "first")), { kind: "heat", ...heat(0) }, ...rest.map((w) => weigh(w, "first")), ...oils.filter((o) => o && o !== pour).map((o) => ({ kind: "heat", ...o, beside: bench.lowestFlashCelsius })),
    pour ? { kind: "heat", ...pour, each: bench.firstPourEach, pieces: bench.pieces, beside: bench.lowestFlashCelsius } : null, ...bench.topUp.map((w) => weigh(w, "second")), again ? { kind: "heat", ...again, each: bench.topUpEach, pieces: bench.pieces } : null].filter(Boolean);
}

function drawStart(place, bench) {
  const count = el("input", { id: "how-many", inputmode: "numeric", value: run.count });
  const begin = () => {
    const n = Number(count.value);
    if (!(Number.isInteger(n) && n > 0 && n < 10000)) { count.setAttribute("aria-invalid", "true"); say(t("Write a whole number of candles, 1 or more.")); count.focus(); return; }
    Object.assign(run, { count: n, at: 0, started: Date.now() });
    keepRun();
    awake();
    plan(place);
  };
  fill(place, el("div", { class: "bench start" },
    el("div", { class: "field" }, el("label", { for: "how-many" }, t("How many candles")), count),
    el("div", { class: "field" }, el("label", { for: "code" }, t("Batch code, counted up")), el("input", { id: "code", value: run.code, autocomplete: "off", oninput: (e) => { run.code = e.target.value.trim(); } })),
    el("p", {}, t("You weigh one thing after the other and write what the scales really show. At the end it is a batch with its own label.")),
    bench.lowestFlashCelsius === null ? el("p", { class: "question" }, t("No oil's flash point is known: ask the suppliers before you heat anything.")) : null,
    button(t("Begin to weigh"), begin, { class: "main big" }), byPhone()));
}

/** What the jug pours into one vessel; of a box of several, what they come to together too. */
const intoEach = (step) => step.pieces > 1
  ? t("Into each: {n} g, into the {pieces} of one box {whole} g", { n: figure(step.each, 5), pieces: step.pieces, whole: figure(step.each * step.pieces, 5) })
  : t("Into each: {n} g", { n: figure(step.each, 5) });

let lock = null;
/** The screen stays on while something is weighed, where the browser lets it. */
async function awake() {
  try { lock = await navigator.wakeLock?.request("screen"); } catch { lock = null; }
}

function drawStep(place, bench) {
  const step = run.steps[run.at];
  if (!step) { drawEnd(place); return; }
  const next = () => { run.at++; keepRun(); drawStep(place, bench); document.querySelector(".bench .big")?.focus(); };
  const key = `${step.pour}/${step.name}`;
  const real = el("input", { id: "real", inputmode: "decimal", autocomplete: "off", value: run.weighed[key] ?? decimal(String(Math.round(step.grams * 10) / 10)), oninput: (e) => { run.weighed[key] = decimal(e.target.value); keepRun(); } });
  const take = () => {
    if (!(number(real.value) >= 0)) { real.setAttribute("aria-invalid", "true"); say(t("Write what the scales show, in grams.")); real.focus(); return; }
    run.weighed[key] = decimal(real.value);
    next();
  };
  fill(place, el("div", { class: "bench" },
    el("p", { class: "soft" }, t("Step {n} of {all} · batch {code}", { n: run.at + 1, all: run.steps.length, code: run.code })),
    step.kind === "weigh" ? [el("h2", {}, step.name), el("p", { class: "huge" }, `${figure(step.grams, 5)} g`), el("div", { class: "field" }, el("label", { for: "real" }, t("The scales show, g")), real), button(t("Weighed, next"), take, { class: "main big" })]
      : [el("h2", {}, t(step.step)), el("p", { class: "huge" }, step.celsius === null ? "?" : `${figure(step.celsius)} °C`), step.celsius === null ? el("p", { class: "question" }, t("No temperature is declared for this.")) : null,
        step.beside !== undefined ? el("p", { class: step.beside !== null && step.celsius !== null && step.celsius >= step.beside ? "stop" : "" }, step.beside === null ? t("Flash point not known.") : t("Lowest flash point {n} °C", { n: figure(step.beside) })) : null,
        el("p", {}, said(step.note)), step.each ? el("p", {}, intoEach(step)) : null, timer(), button(t("Done, next"), next, { class: "main big" })],
    el("div", { class: "row" }, button(t("Back"), () => { run.at--; keepRun(); plan(place); }), button(t("Begin again"), () => { forget(); drawBench(place); }))));
}

/** Minutes since it was started, for what must wait. */
function timer() {
  const shown = el("span", { class: "clock" }, "0:00");
  let from = null;
  const tick = () => { if (!shown.isConnected) return; const s = Math.floor((Date.now() - from) / 1000); shown.textContent = `${Math.floor(s / 60)}:${String(s % 60).padStart(2, "0")}`; setTimeout(tick, 1000); };
  return el("p", { class: "row" }, button(t("Start the clock"), () => { from = Date.now(); tick(); }), shown);
}

function drawEnd(place) {
  const made = el("input", { id: "made", inputmode: "numeric", value: run.count });
  const sum = (keep) => run.steps.filter((s) => s.kind === "weigh").filter(keep).reduce((n, s) => n + number(run.weighed[`${s.pour}/${s.name}`]), 0);
  const oils = (pour) => run.steps.filter((s) => s.kind === "weigh" && s.pour === pour && s.id);
  const keep = async () => {
    const weigh = (s) => run.weighed[`${s.pour}/${s.name}`];
    const isOil = (s) => state.desk.recipe?.some((r) => r.id === s.id);
    const weighed = { waxGrams: String(sum((s) => !s.id && s.pour === "first")), oils: oils("first").filter(isOil).map((s) => ({ oil: s.id, grams: weigh(s) })) };
    const extras = oils("first").filter((s) => !isOil(s)).map((s) => ({ extra: s.id, grams: weigh(s) }));
    if (extras.length) weighed.extras = extras;
    const second = sum((s) => s.pour === "second");
    const topUp = state.declared.values.topUp;
    if (topUp) weighed.topUp = topUp.scented === "yes" || topUp.scented === "true" ? { scented: true } : { scented: false, grams: String(second) };
    const values = { candle: run.id, code: run.code, poured: today(), made: made.value.trim(), weighed };
    try {
      const answer = await askJson("/api/keep", { declares: "batch", id: "", hash: null, what: t("batch {code} poured", { code: run.code }), edits: Object.entries(values).map(([key, value]) => ({ path: [key], value })) });
      lock?.release?.();
      forget();
      await readFolder();
      location.hash = `#/candle/${encodeURIComponent(answer.id)}`;
    } catch (error) {
      say(error.message);
      fill(document.getElementById("bench-problems"), el("p", { class: "stop" }, error.message));
    }
  };
  fill(place, el("div", { class: "bench start" }, el("h2", {}, t("All weighed: batch {code}", { code: run.code })), el("div", { class: "field" }, el("label", { for: "made" }, t("How many candles came of it")), made), el("div", { id: "bench-problems" }),
    button(t("Keep the batch and see its label"), keep, { class: "main big" }), button(t("Back"), () => { run.at--; plan(place); })));
}
