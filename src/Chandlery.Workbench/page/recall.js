// What is out there: who has candles of a batch, of a lot, with an oil or a substance; and the papers of a recall.
import { askJson } from "./ask.js";
import { button, el, fill, list, main, say, table, way } from "./elements.js";
import { said } from "./told.js";
import { count, day, languageName, placeName, t } from "./words.js";
import { takeFile } from "./taking.js";

const kinds = [["batch", "Batch, by its code"], ["lot", "Lot, by the supplier's code"], ["oil", "Oil, by its name"], ["substance", "Substance, by CAS number or name"]]; // told by t()
const asked = { by: "batch", text: "" };

export async function showRecall() {
  const body = el("div");
  const find = el("input", { id: "recall-text", type: "search", autocomplete: "off", value: asked.text });
  const by = el("select", { id: "recall-by", onchange: (e) => { asked.by = e.target.value; } }, kinds.map(([kind, name]) => el("option", { value: kind, selected: kind === asked.by }, t(name))));
  fill(main, el("div", { class: "path" }, way(t("Way"), "#/register", t("Register"), el("h1", {}, t("What is out there")))),
    el("p", { class: "lead" }, t("Who has candles of a batch, of a lot that you bought, with an oil or a substance: from your batches and what you sent out.")),
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); asked.text = find.value; look(body); } },
      el("label", { for: "recall-by" }, t("Search by")), by, el("label", { class: "unseen", for: "recall-text" }, t("What to search for")), find, el("button", { class: "main" }, t("Find"))), body);
  if (asked.text) await look(body);
}

const receiver = (r) => el("tr", {}, el("td", {}, ""), el("td", {}, r.name ?? t("(forgotten)"), r.contact ? el("span", { class: "soft" }, ` ${r.contact}`) : null), el("td", {}, `${placeName(r.country)}, ${day(r.on)}`), el("td", { class: "num" }, String(r.pieces)), el("td", { class: "num" }, ""));

const batch = (b) => [el("tr", { class: "batch" }, el("td", {}, el("strong", {}, b.batch), ` ${b.candle}`), el("td", { class: b.isCertain ? "" : "question", colspan: 2 }, b.isCertain ? said(b.why) : t("cannot be ruled out: {why}", { why: said(b.why) })),
  el("td", { class: "num" }, `${b.dispatched} / ${b.made ?? "?"}`), el("td", { class: "num" }, b.left === null ? "?" : String(b.left))), ...b.receivers.map(receiver)];

async function look(body) {
  try {
    const { recall, languages } = await askJson("/api/recall", { by: asked.by, text: asked.text });
    const sent = recall.batches.reduce((n, b) => n + b.dispatched, 0);
    fill(body, el("h2", {}, recall.batches.length ? t("{sent} are out there, in {batches}.", { sent: count(sent, "1 candle", "{n} candles"), batches: count(recall.batches.length, "1 batch", "{n} batches") }) : t("No batch is concerned.")),
      recall.unknown.length ? el("section", { class: "question", "aria-label": t("Not known:") }, el("p", {}, el("strong", {}, t("Not known:"))), list(recall.unknown.map(said), "plain")) : null,
      recall.batches.length ? table(t("What is out there"), [t("Batch"), t("Why, or who has it"), t("Where and when"), t("Sent / made"), t("Left over")], recall.batches.flatMap(batch)) : null,
      recall.batches.length ? papers(languages) : null);
    say(body.querySelector("h2").textContent);
  } catch (error) {
    fill(body, el("p", { class: "stop" }, error.message));
    say(error.message);
  }
}

/** The danger in each language that is needed, and everything that goes out as one download. */
function papers(languages) {
  const place = el("div", { role: "status" });
  const fields = languages.map((l) => ({ code: l.code, area: el("textarea", { id: `danger-${l.code}`, lang: l.code, rows: 2 }), name: languageName(l.code) }));
  const make = async () => {
    fill(place);
    const english = fields.find((f) => f.code === "en").area;
    if (!english.value.trim()) { english.setAttribute("aria-invalid", "true"); say(t("Say what the danger is, in English at least.")); english.focus(); return; }
    english.removeAttribute("aria-invalid");
    const hazards = fields.filter((f) => f.area.value.trim()).map((f) => `${f.code}: ${f.area.value.trim()}`);
    await takeFile("recall.zip", "/api/recall", { by: asked.by, text: asked.text, hazards, language: document.documentElement.lang }, (error) => {
      fill(place, list(error.problems, "problems"));
      say(error.message);
    });
  };
  return el("details", { class: "recall-papers" }, el("summary", {}, t("Papers of a recall")), el("div", { class: "inside" },
    el("p", {}, t("Notices, shelf cards, letters to those who have it, texts for the web and the form for the authority, in the languages of the places. Say what can happen, and nothing that plays it down. Whether and how you must recall, a competent person or the authority tells you.")),
    fields.map((f) => el("div", { class: "field" }, el("label", { for: f.area.id }, t("The danger, in {language}", { language: f.name })), f.area)),
    el("div", { class: "row" }, button(t("All papers of the recall"), make, { class: "main" })), place));
}
