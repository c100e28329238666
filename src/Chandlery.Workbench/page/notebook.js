// Blending by nose: trials beside one another, each with what the law would say to a candle of it.
import { askJson } from "./ask.js";
import { button, el, fill, figure, main, say } from "./elements.js";
import { kept, nameOf, shapes, showAgain, supplies } from "./folder.js";
import { said } from "./told.js";
import { day, placeName, t, today } from "./words.js";
import { decimal, number } from "./amounts.js";
import { copy, putAway } from "./files.js";
import { drawBar, toneOf } from "./tones.js";
import { edits } from "./values.js";

const measures = { drops: "drops", grams: "grams", millilitres: "millilitres" }; // told by t()
const memory = { get wax() { return sessionStorage.getItem("trial-wax"); }, get load() { return sessionStorage.getItem("trial-load") ?? "8"; }, get place() { return sessionStorage.getItem("trial-place"); } };

/** A first amount of an oil: a drop where it is known what a drop weighs, else a gram. */
const beginning = (oil) => supplies("oil").find((s) => s.id === oil)?.gramsPerDrop ? { oil, drops: "1" } : { oil, grams: "1" };

export async function showNotebook() {
  const trials = await Promise.all(supplies("trial").map((s) => askJson("/api/form", { declares: "trial", id: s.id })));
  trials.sort((a, b) => (a.values.on ?? "").localeCompare(b.values.on ?? ""));
  const columns = el("div", { class: "trials" });
  const sentence = el("h1", {}, t("Notebook"));
  const compared = el("div", { id: "compare" });
  let notes = new Map();

  const setting = { wax: memory.wax ?? supplies("wax")[0]?.id ?? "", load: memory.load, place: memory.place ?? "IE" };
  const set = (key, value) => { setting[key] = value; sessionStorage.setItem(`trial-${key}`, value); assess().catch((e) => say(e.message)); };

  async function assess() {
    if (!trials.length) return;
    try {
      const answer = await askJson("/api/notebook", { wax: setting.wax, loadPercent: number(setting.load) || null, places: [setting.place] });
      notes = new Map(answer.trials.map((n) => [n.id, n]));
    } catch (error) {
      notes = new Map();
      say(error.message);
    }
    const best = trials.filter((x) => x.values.stars).toSorted((a, b) => Number(b.values.stars) - Number(a.values.stars))[0];
    const free = best && notes.get(best.id)?.freeUpTo;
    sentence.textContent = !best ? t("No trial has its stars yet.") : free ? t("“{name}” smells best so far; up to {n} % of it in {wax} needs no warning.", { name: best.values.name, n: figure(free, 3), wax: nameOf("wax", setting.wax) }) : t("“{name}” smells best so far.", { name: best.values.name });
    for (const trial of trials) drawNote(trial, best);
  }

  /** What the law would say, below the trial. */
  function drawNote(trial, best) {
    const place = document.getElementById(`law-${trial.id}`);
    const note = notes.get(trial.id);
    if (!place) return;
    place.closest(".trial").classList.toggle("best", trial === best);
    const bar = place.closest(".trial").querySelector(".bar");
    drawBar(bar, (note?.blend ?? []).map((o) => [o.oil, o.percent]));
    for (const cell of place.closest(".trial").querySelectorAll("[data-percent]")) {
      const share = note?.blend.find((o) => o.oil === cell.dataset.percent);
      cell.textContent = share ? `${figure(share.percent, 2)} %` : "";
    }
    if (!note) { fill(place); return; }
    if (note.problems.length) { fill(place, el("p", { class: "question" }, note.problems.map(said).join(" "))); return; }
    const stops = note.verdicts.flatMap((v) => v.stops);
    fill(place, el("p", {}, el("strong", {}, stops.length ? t("Must not be sold at {n} %.", { n: setting.load }) : note.verdicts.some((v) => v.signalWord || v.classes.length) ? t("Warning label at {n} %.", { n: setting.load }) : t("No warning at {n} %.", { n: setting.load }))),
      el("p", { class: "soft" }, note.freeUpTo ? t("No warning up to {n} %.", { n: figure(note.freeUpTo, 3) }) : t("No load is known that needs no warning.")), stops.length ? el("p", { class: "stop" }, stops[0]) : null);
  }

  /** Keeps a trial as it is typed. */
  async function keep(trial) {
    const changed = edits(trial.base, trial.values);
    if (!changed) return;
    const sent = structuredClone(trial.values);
    try {
      const answer = await askJson("/api/keep", { declares: "trial", id: trial.id, edits: changed, hash: trial.hash, what: t("trial {name} changed", { name: trial.values.name }) });
      trial.hash = answer.hash;
      trial.base = sent;
      trial.wrong.textContent = "";
      kept(answer);
      await assess();
    } catch (error) {
      trial.wrong.textContent = error.problems?.slice(1).join(" ") || error.message;
      say(error.message);
    }
  }

  function column(trial, number_) {
    trial.base = structuredClone(trial.values);
    trial.wrong = el("p", { class: "wrong" });
    let waiting = null;
    const soon = () => { clearTimeout(waiting); waiting = setTimeout(() => { trial.keeping = (trial.keeping ?? Promise.resolve()).then(() => keep(trial)); }, 500); };
    const measureOf = (o) => Object.keys(measures).find((m) => m in o) ?? "drops";
    const rows = el("div", { class: "oils" });
    const drawRows = () => fill(rows, (trial.values.oils ?? []).map((o) => el("div", { class: "row" }, el("span", { class: toneOf(o.oil), "aria-hidden": "true" }), el("span", { class: "push" }, nameOf("oil", o.oil)),
      el("input", { inputmode: "decimal", size: 4, "aria-label": t("{oil} in trial {n}", { oil: nameOf("oil", o.oil), n: number_ }), value: o[measureOf(o)] ?? "", oninput: (e) => { o[measureOf(o)] = decimal(e.target.value); soon(); } }),
      el("select", { "aria-label": t("Measure of {name}", { name: nameOf("oil", o.oil) }), onchange: (e) => { const was = measureOf(o); const amount = o[was]; delete o[was]; o[e.target.value] = amount; soon(); } }, Object.entries(measures).map(([m, word]) => el("option", { value: m, selected: m === measureOf(o) }, t(word)))),
      el("span", { class: "soft", "data-percent": o.oil }), button("×", () => { trial.values.oils = trial.values.oils.filter((x) => x !== o); drawRows(); soon(); }, { class: "bare", "aria-label": t("Take out {name}", { name: nameOf("oil", o.oil) }) }))),
    el("select", { "aria-label": t("Add an oil"), onchange: (e) => { if (e.target.value) { (trial.values.oils ??= []).push(beginning(e.target.value)); drawRows(); soon(); } } }, el("option", { value: "" }, t("Add an oil")), supplies("oil").filter((s) => (trial.values.oils ?? []).every((o) => o.oil !== s.id)).map((s) => el("option", { value: s.id }, s.name))));
    drawRows();
    const stars = el("fieldset", { class: "stars" }, el("legend", { class: "unseen" }, t("Stars")), [1, 2, 3, 4, 5].map((n) => el("label", { class: "star" }, el("input", { type: "radio", class: "unseen", name: `stars-${trial.id}`, value: n, checked: Number(trial.values.stars) === n, onchange: () => { trial.values.stars = String(n); paint(); soon(); } }), el("span", { "aria-hidden": "true" }, "★"), el("span", { class: "unseen" }, String(n)))));
    const paint = () => stars.querySelectorAll(".star").forEach((l, i) => l.classList.toggle("on", i < Number(trial.values.stars ?? 0)));
    paint();
    return el("section", { class: "trial", "aria-label": t("Trial {n}", { n: number_ }) }, el("div", { class: "lead-row" }, el("h2", {}, String(number_)), el("span", { class: "soft" }, trial.values.on ? day(trial.values.on) : "")), el("div", { class: "bar", "aria-hidden": "true" }),
      el("input", { class: "name", "aria-label": t("Name of trial {n}", { n: number_ }), value: trial.values.name ?? "", oninput: (e) => { trial.values.name = e.target.value; soon(); } }), rows,
      el("textarea", { rows: 3, "aria-label": t("How trial {n} smells", { n: number_ }), placeholder: t("How does it smell, cold and warm?"), oninput: (e) => { trial.values.smells = e.target.value.replace(/\n/g, " "); soon(); } }, trial.values.smells ?? ""),
      stars, el("div", { id: `law-${trial.id}`, "aria-live": "polite" }), trial.wrong,
      el("div", { class: "row" }, button(t("Make it a candle"), () => makeCandle(trial), { class: "main" }), button(t("Start from this"), () => again(trial)), button(t("Put away"), () => putAway("trial", trial.id, trial.values.name).then(showAgain).catch((e) => say(e.message)), { "aria-label": t("Put {name} away", { name: trial.values.name }) })));
  }

  async function again(trial) {
    const id = await copy("trial", trial.id, trial.values.name).catch((e) => { say(e.message); return null; });
    if (id) await showAgain();
  }

  async function begin() {
    const first = supplies("oil")[0];
    if (!first) { say(t("Bring an oil's sheet first, under Supplies.")); return; }
    const values = { name: t("Trial {n}", { n: trials.length + 1 }), on: today(), oils: [beginning(first.id)] };
    try {
      kept(await askJson("/api/keep", { declares: "trial", id: "", hash: null, what: t("trial begun"), edits: edits({}, values) }));
      await showAgain();
    } catch (error) {
      say(error.message);
    }
  }

  /** The trial's blend goes into the questions of a new candle, as shares. */
  function makeCandle(trial) {
    const note = notes.get(trial.id);
    if (!note?.blend.length) { say(t("It cannot be assessed yet.")); return; }
    const cents = note.blend.map((o) => Math.round(o.percent * 100));
    cents[cents.indexOf(Math.max(...cents))] += 10000 - cents.reduce((a, b) => a + b, 0);
    const candle = { name: trial.values.name, use: "indoor", wax: setting.wax, load: { percent: setting.load, of: "wax" }, wicks: { count: "1", trimToMm: "5" }, soldIn: [setting.place], oils: note.blend.map((o, i) => ({ oil: o.oil, share: String(cents[i] / 100) })) };
    sessionStorage.setItem("new-candle", JSON.stringify({ candle, step: 0 }));
    location.hash = "#/new";
  }

  const pick = (id) => el("select", { id, onchange: compare }, trials.map((x, i) => el("option", { value: x.id, selected: id === "with" ? i === trials.length - 1 : i === 0 }, `${i + 1} · ${x.values.name}`)));
  function compare() {
    const [a, b] = ["first", "with"].map((id) => notes.get(document.getElementById(id)?.value));
    if (!a || !b) return;
    const oils = [...new Set([...a.blend, ...b.blend].map((o) => o.oil))];
    const of = (note, oil) => note.blend.find((o) => o.oil === oil)?.percent ?? 0;
    const parts = oils.map((oil) => [oil, of(b, oil) - of(a, oil)]).filter(([, d]) => Math.abs(d) >= 0.5).map(([oil, d]) => d > 0 ? t("{n} % more {name}", { n: figure(d, 2), name: nameOf("oil", oil) }) : t("{n} % less {name}", { n: figure(-d, 2), name: nameOf("oil", oil) }));
    const law = (note) => JSON.stringify((note.verdicts ?? []).map((v) => [v.classes, v.statements, v.stops.length]));
    document.getElementById("difference").textContent = `${parts.length ? t("The second has {parts}.", { parts: parts.join(", ") }) : t("Both have the same blend.")} ${law(a) === law(b) ? t("What the law asks stays the same.") : t("What the law asks differs.")}`;
  }

  fill(main, sentence, el("p", { class: "lead" }, t("Put drops on a strip, write what your nose says. What the law says to a candle of each trial stands below it.")),
    el("div", { class: "row" }, el("label", { for: "trial-wax" }, t("In")), el("select", { id: "trial-wax", onchange: (e) => set("wax", e.target.value) }, supplies("wax").map((w) => el("option", { value: w.id, selected: w.id === setting.wax }, w.name))),
      el("label", { for: "trial-load" }, t("at")), el("input", { id: "trial-load", inputmode: "decimal", size: 4, value: setting.load, oninput: (e) => set("load", decimal(e.target.value)) }), el("span", {}, t("% of the wax")),
      el("label", { for: "trial-place" }, t("sold in")), el("select", { id: "trial-place", onchange: (e) => set("place", e.target.value) }, shapes.places.map((p) => el("option", { value: p.code, selected: p.code === setting.place }, placeName(p.code, p.name)))),
      el("span", { class: "push" }), button(t("New trial"), begin, { class: "main" })),
    fill(columns, trials.map((x, i) => column(x, i + 1))) ?? columns,
    trials.length > 1 ? fill(compared, el("div", { class: "row" }, el("label", { for: "first" }, el("strong", {}, t("Compare"))), pick("first"), el("label", { for: "with" }, t("with")), pick("with"), el("p", { id: "difference", "aria-live": "polite" }))) ?? compared : null);
  await assess();
  compare();
}
