// The papers of the candle on the desk.
import { ask, askJson, el, fill, list, say } from "./elements.js";
import { edits, state } from "./state.js";

// Which papers there are comes from the program.
let paper = { kind: null, edition: null, language: null, trueSize: false, count: "6" };
const chosenPaper = () => state.desk.papers.find((p) => p.id === paper.kind) ?? state.desk.papers[0];

let offered = "";
let previews = 0;

/** Draws what there is to choose from anew only when that has changed: the candle may just have become one that can be assessed. */
export async function drawPapers() {
  const offer = JSON.stringify([state.visit, state.desk.papers]);
  if (offer === offered && document.getElementById("preview")) { await drawPreview(); return; }
  offered = offer;
  const editions = state.desk.assessments.map((a) => a.edition);
  if (!editions.includes(paper.edition)) paper.edition = editions[0] ?? null;
  const redraw = (key) => (e) => { paper[key] = e.target.value; drawPreview(); };
  const choose = (key) => (e) => { paper[key] = e.target.value; drawPaperOptions(); drawPreview(); };
  paper.kind = chosenPaper().id;
  fill(document.getElementById("papers"), el("section", { "aria-label": "Papers" }, el("h2", {}, "Papers"),
    el("div", { class: "row" },
      el("div", {}, el("label", { for: "kind" }, "Paper"), el("select", { id: "kind", onchange: choose("kind") }, state.desk.papers.map((p) => el("option", { value: p.id, selected: p.id === paper.kind }, p.title)))),
      editions.length > 1 ? el("div", {}, el("label", { for: "edition" }, "Law"), el("select", { id: "edition", onchange: choose("edition") }, editions.map((e) => el("option", { value: e, selected: e === paper.edition }, e)))) : null,
      el("div", { id: "language-choice" }, el("label", { for: "language" }, "Language"), el("select", { id: "language", onchange: redraw("language") })),
      el("div", { id: "count-choice" }, el("label", { for: "count" }, "Candles"), el("input", { id: "count", inputmode: "numeric", value: paper.count, oninput: redraw("count") }), el("p", { id: "e-count", class: "wrong", hidden: true }, "Write a whole number of candles, 1 or more.")),
      el("div", {}, el("label", { for: "true-size" }, "True size"), el("input", { id: "true-size", type: "checkbox", checked: paper.trueSize, onchange: (e) => { paper.trueSize = e.target.checked; drawPreview(); } }))),
    el("div", { id: "warnings" }),
    el("div", { id: "preview", class: "previews fit" }),
    el("div", { class: "row", role: "group", "aria-label": "Downloads" }, ["pdf", "png", "svg", "yaml", "json"].map((f) => el("button", { type: "button", onclick: () => download(f) }, f.toUpperCase()))),
    el("h3", {}, "Register"),
    el("div", { class: "row" }, el("div", {}, el("label", { for: "by" }, "Issued by"), el("input", { id: "by", autocomplete: "name" })), el("button", { type: "button", onclick: enter }, "Enter the label in the register"))));
  drawPaperOptions();
  await drawPreview();
}

/** Shows only what the chosen paper asks for. */
function drawPaperOptions() {
  const languages = chosenPaper().languages[paper.edition] ?? [];
  if (languages.every((l) => l.code !== paper.language)) paper.language = languages[0]?.code ?? null;
  fill(document.getElementById("language"), ...languages.map((l) => el("option", { value: l.code, selected: l.code === paper.language }, l.name)));
  document.getElementById("language-choice").hidden = languages.length < 2;
  document.getElementById("count-choice").hidden = !chosenPaper().takesCount;
}

const wanted = () => ({ id: state.desk.id, edits: edits(), kind: paper.kind, edition: paper.edition, language: paper.language, count: countOf() });

/** How many candles; null when no whole number stands there. */
const countOf = () => /^[0-9]{1,9}$/.test(paper.count.trim()) && Number(paper.count) > 0 ? Number(paper.count) : null;
const lacksCount = () => chosenPaper().takesCount && countOf() === null;

async function drawPreview() {
  const preview = document.getElementById("preview");
  if (!preview) return;
  const mine = ++previews;
  const wrong = lacksCount();
  const count = document.getElementById("count");
  document.getElementById("e-count").hidden = !wrong;
  if (wrong) { count.setAttribute("aria-invalid", "true"); count.setAttribute("aria-describedby", "e-count"); fill(preview); fill(document.getElementById("warnings")); return; }
  count.removeAttribute("aria-invalid");
  count.removeAttribute("aria-describedby");
  try {
    const answer = await askJson("/api/preview", wanted());
    if (mine !== previews || !preview.isConnected) return;
    preview.className = paper.trueSize ? "previews" : "previews fit";
    fill(preview, ...answer.pages.map((p, i) => {
      const image = el("img", { alt: `${chosenPaper().title}, page ${i + 1} of ${answer.pages.length}`, src: URL.createObjectURL(new Blob([p.svg], { type: "image/svg+xml" })), onload: (e) => URL.revokeObjectURL(e.target.src) });
      if (paper.trueSize) { image.width = p.widthMm * 96 / 25.4; image.height = p.heightMm * 96 / 25.4; }
      return image;
    }));
    fill(document.getElementById("warnings"), answer.warnings.length ? el("section", { "aria-label": "Mind before handing it out" }, el("h3", {}, "Mind before handing it out"), list(answer.warnings, "plain")) : null);
    if (answer.whyNot) fill(preview, el("p", { class: "stop" }, answer.whyNot));
  } catch (error) {
    if (mine === previews) fill(preview, el("p", { class: "stop" }, error.message));
  }
}

async function download(format) {
  if (lacksCount() && !["yaml", "json"].includes(format)) { document.getElementById("count").focus(); say("Write how many candles first."); return; }
  try {
    const blob = await (await ask("/api/paper", { ...wanted(), format })).blob();
    const name = ["yaml", "json"].includes(format) ? `${state.desk.id}.${format}` : `${state.desk.id}-${(chosenPaper().languages[paper.edition] ?? []).length > 1 ? `${paper.language}-` : ""}${paper.kind}.${format}`;
    const link = el("a", { href: URL.createObjectURL(blob), download: name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    say(`${name} is in your downloads.`);
  } catch (error) {
    say(error.message);
  }
}

async function enter() {
  try {
    const answer = await askJson("/api/register", { id: state.desk.id, edits: edits(), edition: paper.edition, by: document.getElementById("by").value });
    say(`Entered in the register as number ${answer.number}.`);
  } catch (error) {
    say(error.message);
  }
}
