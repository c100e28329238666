// What follows from the candle: the verdict in a sentence, classes, label elements and limits.
import { drawn, el, fill, figure, list, table } from "./elements.js";
import { state } from "./state.js";

/** Words first, codes second. The label's own statement says what a class means. */
function working(c, statements) {
  const w = c.working;
  const code = [`${c.class} ${c.category}`.trim(), c.statement].filter(Boolean).join(", ");
  const words = statements.find((s) => s.code === c.statement)?.text;
  return el("details", {}, el("summary", {}, words ? `${words.replace(/\.$/, "")} — ${code}` : code),
    el("p", {}, w.sentence), el("p", { class: "soft" }, `${w.formula}: ${figure(w.value)} ${w.unit}, limit ${figure(w.threshold)} ${w.unit} · ${w.clause} · ${w.confidence}`),
    table(`Working of ${c.class}`, ["Substance", "Class", "Share, %", "Adds", "Whose word"], w.lines.map((l) => el("tr", {},
      el("td", {}, l.substance), el("td", {}, l.hazard), el("td", { class: "num" }, figure(l.percent)), el("td", { class: "num" }, figure(l.adds)), el("td", {}, l.source)))));
}

const isChecked = (l) => l.holds !== null && l.value !== null && Boolean(l.limit);

function limit(l) {
  const known = isChecked(l);
  const most = known ? Math.max(l.value, l.limit) * 1.1 : 1;
  const words = known ? `${figure(l.value)} of at most ${figure(l.limit)} ${l.unit}; ${l.holds ? `margin ${figure(l.margin)}` : "broken"}` : "not checked";
  return el("li", {}, el("span", {}, l.name), el("br"), el("span", { class: known ? (l.holds ? "good" : "stop") : "soft" }, words),
    known ? el("div", { class: "bar", "aria-hidden": "true" }, drawn("svg", { viewBox: "0 0 100 10", preserveAspectRatio: "none" },
      drawn("rect", { class: l.holds ? "held" : "broken", width: 100 * l.value / most, height: 10 }), drawn("rect", { x: 100 * l.limit / most - 0.5, width: 1, height: 10, fill: "currentColor" }))) : null,
    el("span", { class: "soft" }, l.explanation));
}

const clause = (f) => f.clause ? ` (${f.clause})` : "";

/** Whether it may be sold, what stops it, what is tightest, and how much could not be assessed. */
function sentence(a) {
  const stops = a.findings.filter((f) => f.stopsSale);
  const places = a.soldIn.join(", ");
  const tightest = a.limits.filter(isChecked).toSorted((x, y) => y.value / y.limit - x.value / x.limit)[0];
  const more = stops.length - 1;
  const what = stops.length
    ? `Stop: not to be sold in ${places}. ${stops[0].what.split(/\.\s|\.$/)[0]}${more > 0 ? `; and ${more} more ${more > 1 ? "reasons" : "reason"}` : ""}.`
    : `Nothing found that stops the sale in ${places}.`;
  return el("p", {}, el("strong", { class: stops.length ? "stop" : "good" }, what),
    tightest ? ` Tightest: ${tightest.name}, ${figure(tightest.value)} of at most ${figure(tightest.limit)} ${tightest.unit}.` : " No limit could be checked.",
    a.unassessed.length ? ` ${a.unassessed.length} ${a.unassessed.length > 1 ? "things" : "thing"} could not be assessed.` : "");
}

const pictogram = (code) => el("img", { class: "pictogram", alt: code, src: `/api/symbol?name=${encodeURIComponent(code)}`, width: 72, height: 72 });

export function drawResults() {
  const results = document.getElementById("results");
  const open = [...results.querySelectorAll("details[open] > summary")].map((s) => s.textContent);
  fill(document.getElementById("verdict"), state.desk.assessments.length ? state.desk.assessments.map(sentence)
    : el("p", {}, el("strong", { class: "stop" }, "Not assessed: whether this candle may be sold is not known before the problems are mended.")));
  fill(results, ...state.desk.assessments.map((a) => {
    const stops = a.findings.filter((f) => f.stopsSale);
    const looks = a.findings.filter((f) => !f.stopsSale);
    return el("section", { "aria-label": `Result, ${a.edition}` },
      el("h2", {}, `What follows in ${a.soldIn.join(", ")}`),
      el("p", {}, el("strong", { class: stops.length ? "stop" : "good" }, stops.length ? "Stop: this candle must not be sold like this." : "Nothing found that stops the sale.")),
      stops.length ? list(stops.map((f) => f.what + clause(f)), "problems") : null,
      el("h3", {}, "Classes"), a.classes.length ? el("div", {}, a.classes.map((c) => working(c, a.statements.hazard))) : el("p", {}, "None from the declared data."),
      el("h3", {}, "On the label"),
      a.pictograms.length ? el("p", {}, a.pictograms.map(pictogram)) : null,
      list([a.signalWord ? `Signal word: ${a.signalWord}` : "No signal word",
        ...["hazard", "supplemental", "precautionary"].flatMap((k) => a.statements[k].map((s) => `${s.text} — ${s.code}`)),
        ...(a.ufi ? [`UFI ${a.ufi}`] : [])], "plain"),
      el("h3", {}, "Limits"), el("ul", { class: "plain" }, a.limits.map(limit)),
      el("details", {}, el("summary", {}, `What is in it (${a.composition.length} substances, up to ${figure(a.unknownPercent)} % unknown)`),
        table("Composition", ["Substance", "CAS", "From, %", "To, %"], a.composition.map((i) => el("tr", {},
          el("td", {}, i.name), el("td", {}, i.cas ?? "–"), el("td", { class: "num" }, figure(i.lowPercent)), el("td", { class: "num" }, figure(i.highPercent)))))),
      el("details", {}, el("summary", {}, `What could not be assessed (${a.unassessed.length}) and what to look at (${looks.length})`),
        list(a.unassessed, "plain"), list(looks.map((f) => f.what + clause(f)), "plain")));
  }));
  for (const details of results.querySelectorAll("details")) if (open.includes(details.firstElementChild.textContent)) details.open = true;
}
