// What follows from the candle: the verdict in a sentence, classes in words first, the nearest limits.
import { button, drawn, el, fill, figure, icon, list, table } from "./elements.js";
import { folder, shapes, supplies } from "./folder.js";
import { afterColon, count, listed, markOf, placeName, statementOf, t } from "./words.js";
import { state, touched } from "./state.js";
import { fieldName } from "./fields.js";
import { said } from "./told.js";

const clause = (f) => f.clause ? ` (${f.clause})` : "";
const placesOf = (a) => listed(a.soldIn.map((code) => placeName(code, shapes.places.find((p) => p.code === code)?.name)));
const isChecked = (l) => l.holds !== null && l.value !== null && Boolean(l.limit);
/** Up to a dot that a capital follows: "Skin Sens. 1B" is no end. */
export const firstSentence = (text) => text.split(/\.\s(?=\p{Lu})|\.$/u)[0];

/** The checked limits, the nearest first; how near is the share of the limit that is used. */
const nearest = (a) => a.limits.filter(isChecked).toSorted((x, y) => y.value / y.limit - x.value / x.limit);

/** What is left of a limit, or by how much it is broken. */
const room = (l) => l.holds ? t("{n} {unit} left", { n: figure(Math.abs(l.limit - l.value), 2), unit: said(l.unit) }) : t("{n} {unit} over", { n: figure(Math.abs(l.limit - l.value), 2), unit: said(l.unit) });

function sentence(a) {
  const stops = a.findings.filter((f) => f.stopsSale);
  const places = placesOf(a);
  if (stops.length) return t("Must not be sold in {places}: {why}.", { places, why: afterColon(firstSentence(said(stops[0].what))) });
  return a.signalWord || a.pictograms.length ? t("May be sold in {places}, with this warning label.", { places }) : t("May be sold in {places}, without a warning.", { places });
}

function second(a) {
  const stops = a.findings.filter((f) => f.stopsSale).length - 1;
  const tight = nearest(a)[0];
  return [stops > 0 ? count(stops, "And 1 more reason.", "And {n} more reasons.") : null,
    tight ? t("Tightest: {name}, {value} of at most {limit} {unit}.", { name: said(tight.name), value: figure(tight.value), limit: figure(tight.limit), unit: said(tight.unit) }) : t("No limit could be checked."),
    a.unassessed.length ? count(a.unassessed.length, "1 thing could not be assessed.", "{n} things could not be assessed.") : null].filter(Boolean).join(" ");
}

export function drawVerdict() {
  const { desk } = state;
  if (!desk.assessments.length) {
    fill(document.getElementById("verdict"), el("div", { class: "verdict question" }, icon("question", 40), el("div", {}, el("p", { class: "sentence", id: "sentence" }, t("Not known: whether this candle may be sold cannot be told before the problems are mended.")),
      state.sound ? el("p", {}, t("Label and results below are those from before.")) : null)));
    return;
  }
  fill(document.getElementById("verdict"), desk.assessments.map((a, i) => {
    const stopped = a.findings.some((f) => f.stopsSale);
    return el("div", { class: `verdict ${stopped ? "stop" : "tick"}` }, icon(stopped ? "stop" : "tick", 40), el("div", {}, el("p", { class: "sentence", id: i ? null : "sentence" }, sentence(a)), el("p", {}, second(a))));
  }));
}

/** Words first, codes second: the statement of the label says what a class means. */
function classOf(c, statements) {
  const w = c.working;
  const code = [`${c.class} ${c.category}`.trim(), c.statement].filter(Boolean).join(", ");
  const words = statementOf(c.statement) ?? statements.find((s) => s.code === c.statement)?.text;
  return el("details", { class: "class" }, el("summary", {}, el("strong", {}, words ? `${words.replace(/\.$/, "")}.` : code), words ? el("span", { class: "soft code" }, code) : null),
    el("p", {}, said(w.sentence)), el("p", { class: "soft" }, `${said(w.formula)}: ${w.value === null ? "" : `${figure(w.value)} ${said(w.unit)}, `}${t("limit")} ${figure(w.threshold)} ${said(w.unit)} · ${w.clause} · ${said(w.confidence)}`),
    table(t("Working of {name}", { name: c.class }), [t("Substance"), t("Class"), t("Share, %"), t("Adds"), t("Whose word")], w.lines.map((l) => el("tr", {},
      el("td", {}, l.substance), el("td", {}, l.hazard), el("td", { class: "num" }, figure(l.percent)), el("td", { class: "num" }, figure(l.adds)), el("td", {}, said(l.source))))));
}

/** A limit as a line with a wall and a dot: near and far look different. */
function limit(l) {
  if (!isChecked(l)) return el("li", { class: "limit" }, el("span", {}, said(l.name)), el("span", { class: "soft" }, t("not checked")), el("p", { class: "soft" }, said(l.explanation)));
  const most = Math.max(l.value, l.limit) * 1.04;
  return el("li", { class: l.holds ? "limit" : "limit broken" }, el("span", {}, said(l.name)), el("strong", {}, room(l)),
    drawn("svg", { viewBox: "0 0 100 6", preserveAspectRatio: "none", "aria-hidden": "true" }, drawn("line", { class: "reach", x1: 0, x2: 100, y1: 3, y2: 3 }), drawn("rect", { class: "wall", x: 100 * l.limit / most - 0.4, y: 0, width: 0.8, height: 6 }), drawn("rect", { class: "dot", x: 100 * l.value / most - 1.2, y: 0.8, width: 2.4, height: 4.4 })),
    el("span", { class: "unseen" }, t("{value} of at most {limit} {unit}.", { value: figure(l.value), limit: figure(l.limit), unit: said(l.unit) })), el("p", { class: "soft" }, said(l.explanation)));
}

const pictogram = (code) => el("img", { class: "pictogram", alt: t("Pictogram: {name}", { name: markOf(code) }), src: `/api/symbol?name=${encodeURIComponent(code)}`, width: 64, height: 64 });

function folded(summary, ...inside) {
  return el("details", {}, el("summary", {}, summary), inside);
}

/** What a click can mend. */
function remedies(stops) {
  return [questions(stops), numbers(stops)];
}

/** Figures that could be a slip: a click says that they are meant so. */
function questions(stops) {
  const { declared } = state;
  const asked = stops.filter((f) => f.what.includes(`/${declared.id}.yaml:`)).map((f) => /'confirmed: \[([^\]]+)\]'/.exec(f.what)?.[1]).filter(Boolean);
  return asked.map((field) => button(t("{field}: it is meant so", { field: fieldName(field.split(".").at(-1)) }), () => { declared.values.confirmed = [...declared.values.confirmed ?? [], field]; touched(); }));
}

/** The number that a UFI is made of, and the way to the maker's VAT number. */
function numbers(stops) {
  const { declared } = state;
  if (declared.declares !== "candle" || !stops.some((f) => f.what.includes("'formulationNumber'"))) return null;
  const give = () => { declared.values.formulationNumber = String(folder.nextFormulation); touched(); };
  const maker = supplies("maker")[0];
  return el("div", {}, declared.values.formulationNumber ? null : button(t("Give this composition number {n}", { n: folder.nextFormulation }), give),
    maker && stops.some((f) => f.what.includes("'vat'")) ? el("p", {}, el("a", { href: `#/declaration/maker/${encodeURIComponent(maker.id)}` }, t("Write your VAT number, or ask the agency for a number instead"))) : null);
}

function results(a, several) {
  const stops = a.findings.filter((f) => f.stopsSale);
  const looks = a.findings.filter((f) => !f.stopsSale);
  const [near, far] = [nearest(a).slice(0, 3), [...nearest(a).slice(3), ...a.limits.filter((l) => !isChecked(l))]];
  const statements = ["hazard", "supplemental", "precautionary"].flatMap((k) => a.statements[k]);
  return el("div", { class: "result", role: "group", "aria-label": t("Result, {edition}", { edition: a.edition }) },
    several ? el("h3", {}, placesOf(a)) : null,
    stops.length ? el("div", {}, el("h3", {}, t("What stops the sale")), list(stops.map((f) => said(f.what) + clause(f)), "problems"), remedies(stops)) : null,
    el("div", { class: "word" }, a.pictograms.map(pictogram), el("p", {}, a.signalWord ? el("strong", {}, t("“{word}”", { word: markOf(a.signalWord) })) : t("No signal word"), a.namedSubstances.length ? el("span", { class: "soft" }, count(a.namedSubstances.length, "on the label, with 1 substance named", "on the label, with {n} substances named")) : null)),
    a.classes.length ? a.classes.map((c) => classOf(c, a.statements.hazard)) : el("p", {}, t("No hazard class from what is declared.")),
    el("h3", {}, t("Nearest limits")), near.length ? el("ul", { class: "limits" }, near.map(limit)) : el("p", {}, t("No limit could be checked.")),
    far.length ? folded(count(far.length, "1 more limit", "{n} more limits"), el("ul", { class: "limits" }, far.map(limit))) : null,
    el("p", { class: "unknown" }, el("strong", {}, t("Not known:")), ` ${t("what up to {n} % of it is.", { n: figure(a.unknownPercent, 2) })}`),
    a.unassessed.length ? folded(count(a.unassessed.length, "1 thing not assessed", "{n} things not assessed"), list(a.unassessed.map(said), "plain")) : null,
    looks.length ? folded(count(looks.length, "1 thing to look at", "{n} things to look at"), list(looks.map((f) => said(f.what) + clause(f)), "plain")) : null,
    folded(t("What the label says, and why"), list([...statements.map((s) => `${s.text} — ${s.code}: ${said(s.because)}${s.clause ? ` (${s.clause})` : ""}`), ...(a.ufi ? [`UFI ${a.ufi}`] : [])], "plain")),
    folded(count(a.composition.length, "1 substance in it", "{n} substances in it"), table(t("Composition"), [t("Substance"), "CAS", t("From, %"), t("To, %")], a.composition.map((i) => el("tr", {},
      el("td", {}, i.name), el("td", {}, i.cas ?? "–"), el("td", { class: "num" }, figure(i.lowPercent)), el("td", { class: "num" }, figure(i.highPercent)))))));
}

export function drawFollows() {
  const place = document.getElementById("follows");
  const shown = (state.desk.assessments.length ? state.desk : state.sound)?.assessments ?? [];
  const open = [...place.querySelectorAll("details[open] > summary")].map((s) => s.textContent);
  fill(place, el("h2", {}, t("What follows")), shown.length ? shown.map((a) => results(a, shown.length > 1)) : el("p", {}, t("Nothing can be told yet.")));
  for (const details of place.querySelectorAll("details")) if (open.includes(details.firstElementChild.textContent)) details.open = true;
}
