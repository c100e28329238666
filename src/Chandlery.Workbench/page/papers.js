// All papers of the candle on the desk.
import { askJson } from "./ask.js";
import { button, el, fill, list, picture, say } from "./elements.js";
import { said } from "./told.js";
import { t } from "./words.js";
import { listingChoices } from "./listing.js";
import { printPages } from "./print.js";
import { state, wish } from "./state.js";
import { stockChoices } from "./stocks.js";
import { takeFile } from "./taking.js";

const paperNow = () => state.desk.papers.find((p) => p.id === state.paper.kind) ?? state.desk.papers[0];
let shown = [];
let previews = 0;

export async function drawPapers(place) {
  const { desk, paper } = state;
  const editions = desk.assessments.map((a) => a.edition);
  if (!editions.includes(paper.edition)) paper.edition = editions[0] ?? null;
  paper.kind = paperNow().id;
  const choose = (key) => (e) => { paper[key] = e.target.value; drawOptions(); drawPreview(); };
  fill(place, el("div", { class: "papers" },
    el("div", { class: "choices" },
      el("div", { class: "kinds", role: "group", "aria-label": t("Paper") }, desk.papers.map((p) => button(said(p.title), (e) => { paper.kind = p.id; for (const b of e.target.parentElement.children) b.setAttribute("aria-pressed", String(b === e.target)); drawOptions(); drawPreview(); }, { "aria-pressed": String(p.id === paper.kind) }))),
      editions.length > 1 ? el("div", { class: "field" }, el("label", { for: "edition" }, t("Law")), el("select", { id: "edition", onchange: choose("edition") }, editions.map((e) => el("option", { value: e, selected: e === paper.edition }, e)))) : null,
      el("div", { class: "field", id: "language-choice" }, el("label", { for: "language" }, t("Language")), el("select", { id: "language", onchange: choose("language") })),
      el("div", { class: "field", id: "count-choice" }, el("label", { for: "count" }, t("How many candles")), el("input", { id: "count", inputmode: "numeric", value: paper.count, oninput: (e) => { paper.count = /^[0-9]{1,5}$/.test(e.target.value.trim()) && Number(e.target.value) > 0 ? Number(e.target.value) : null; drawPreview(); } }), el("p", { id: "count-wrong", class: "wrong", hidden: true }, t("Write a whole number of candles, 1 or more."))),
      el("h2", {}, t("Take it along")),
      el("div", { class: "row", role: "group", "aria-label": t("Downloads") }, button(t("Print"), () => printPages(shown), { class: "main", id: "print" }), ["pdf", "png", "svg"].map((f) => button(f.toUpperCase(), () => take(f)))),
      el("div", { class: "row" }, button(t("All papers in one file"), () => take("zip")), button("YAML", () => take("yaml")), button("JSON", () => take("json"))),
      stockChoices(showPages),
      listingChoices(showTexts),
      el("h2", {}, t("Register")),
      el("p", { class: "soft" }, t("Entered is what is kept in the files: which candle got which label, on whose word.")),
      el("div", { class: "field" }, el("label", { for: "by" }, t("Issued by")), el("input", { id: "by", autocomplete: "name" })), button(t("Enter the label in the register"), () => enter(false)), el("div", { id: "enter-doubts", role: "status" })),
    el("div", {}, el("div", { id: "warnings" }), el("div", { id: "preview", class: "paper sheets" }))));
  drawOptions();
  await drawPreview();
}

/** Shows only what the chosen paper asks for. */
function drawOptions() {
  const { paper } = state;
  const languages = paperNow().languages[paper.edition] ?? [];
  if (languages.every((l) => l.code !== paper.language)) paper.language = languages[0]?.code ?? null;
  fill(document.getElementById("language"), languages.map((l) => el("option", { value: l.code, selected: l.code === paper.language }, l.name)));
  document.getElementById("language-choice").hidden = languages.length < 2;
  document.getElementById("count-choice").hidden = !paperNow().takesCount;
}

async function drawPreview() {
  const preview = document.getElementById("preview");
  const mine = ++previews;
  const count = document.getElementById("count");
  const wrong = paperNow().takesCount && state.paper.count === null;
  document.getElementById("count-wrong").hidden = !wrong;
  count.toggleAttribute("aria-invalid", false);
  if (wrong) { count.setAttribute("aria-invalid", "true"); count.setAttribute("aria-describedby", "count-wrong"); shown = []; fill(preview); return; }
  count.removeAttribute("aria-describedby");
  try {
    const answer = await askJson("/api/preview", wish());
    if (mine !== previews || !preview.isConnected) return;
    showPages(answer);
  } catch (error) {
    if (mine === previews) fill(preview, el("p", { class: "stop none" }, error.message));
  }
}

/** Shows pages, why there are none, and what to mind. */
function showPages(answer) {
  previews++;
  shown = answer.pages;
  fill(document.getElementById("preview"), answer.whyNot ? el("p", { class: "stop none" }, said(answer.whyNot)) : null, shown.map((p, i) => picture(p, t("{paper}, page {n} of {all}", { paper: said(paperNow().title), n: i + 1, all: shown.length }))));
  fill(document.getElementById("warnings"), answer.warnings.length ? el("section", { "aria-label": t("Mind before handing it out") }, el("h2", {}, t("Mind before handing it out")), list(answer.warnings.map(said), "plain")) : null);
  document.getElementById("print").disabled = !shown.length;
}

/** Shows texts in the stead of pages. */
function showTexts(texts) {
  previews++;
  shown = [];
  fill(document.getElementById("warnings"));
  fill(document.getElementById("preview"), texts);
  document.getElementById("print").disabled = true;
}

async function take(format) {
  const { paper, declared } = state;
  const name = ["yaml", "json", "zip"].includes(format) ? `${declared.id}.${format}` : `${declared.id}-${(paperNow().languages[paper.edition] ?? []).length > 1 ? `${paper.language}-` : ""}${paper.kind}.${format}`;
  await takeFile(name, "/api/paper", wish({ format }));
}

async function enter(isSure) {
  const doubts = document.getElementById("enter-doubts");
  fill(doubts);
  try {
    if (!await state.declared.keep()) return;
    const answer = await askJson("/api/enter", { id: state.declared.id, edition: state.paper.edition, by: document.getElementById("by").value, isSure });
    say(t("Entered in the register as number {n}.", { n: answer.number }));
  } catch (error) {
    // What is in the register stays there: a second click, or a number that another composition has, is asked about.
    if (error.status === 409) fill(doubts, el("p", { class: "stop" }, t("Not entered yet:")), list(error.problems, "plain"), button(t("Enter it all the same"), () => enter(true)));
    say(error.message);
  }
}
