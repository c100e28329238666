// The label of the candle on the desk, and what can be done with it.
import { askJson } from "./ask.js";
import { button, el, fill, picture } from "./elements.js";
import { shapes } from "./folder.js";
import { figure } from "./elements.js";
import { said } from "./told.js";
import { t } from "./words.js";
import { printPages } from "./print.js";
import { state, wish, touched } from "./state.js";
import { put } from "./values.js";
import { takeFile } from "./taking.js";

let trueSize = false;

export function drawLabel() {
  const editions = state.desk.assessments.map((a) => a.edition);
  const sized = el("input", { id: "true-size", type: "checkbox", checked: trueSize, onchange: (e) => { trueSize = e.target.checked; drawPreview(state.desk.preview); } });
  fill(document.getElementById("the-label"), el("h2", { class: "unseen" }, t("Label")),
    el("div", { class: "over" }, editions.length > 1 ? el("span", {}, el("label", { class: "unseen", for: "edition" }, t("Law")), el("select", { id: "edition", onchange: (e) => { state.paper.edition = e.target.value; touched(); } }, editions.map((e) => el("option", { value: e, selected: e === state.paper.edition }, e)))) : null,
      el("span", { id: "label-size", class: "soft" }), el("label", { class: "sized" }, sized, t("True size"))),
    el("div", { id: "preview" }), el("div", { id: "warnings" }),
    el("div", { class: "row under" }, button(t("Design and size"), drawDesigns, { id: "design-button", "aria-expanded": "false" }), el("span", { class: "push" }),
      button(t("All papers"), allPapers), button(t("Print"), () => printPages(state.desk.preview.pages), { class: "main", id: "print" })),
    el("div", { id: "designs", hidden: true }));
}

export function drawPreview(preview) {
  const place = document.getElementById("preview");
  if (!place) return;
  const kept = !preview.pages.length && state.sound && state.sound !== state.desk ? state.sound.preview : null;
  const pages = (kept ?? preview).pages;
  const stopped = state.desk.assessments.some((a) => a.findings.some((f) => f.stopsSale));
  place.className = trueSize ? "paper true" : "paper";
  fill(place, pages.map((p, i) => picture(p, t("Label, page {n} of {all}", { n: i + 1, all: pages.length }), trueSize)), preview.whyNot && !kept ? el("p", { class: "stop none" }, said(preview.whyNot)) : null,
    stopped && pages.length ? el("p", { class: "band" }, t("Not for sale")) : null);
  const page = pages[0];
  const shown = place.querySelector("img");
  document.getElementById("label-size").textContent = page ? `${figure(page.widthMm, 3)} × ${figure(page.heightMm, 3)} mm${trueSize || !shown?.clientWidth ? "" : `, ${t("shown {n} times as large", { n: figure(shown.clientWidth / (page.widthMm * 96 / 25.4), 2) })}`}` : "";
  fill(document.getElementById("warnings"), preview.warnings.length ? el("details", {}, el("summary", {}, t("Mind before handing it out")), el("ul", { class: "plain" }, preview.warnings.map((w) => el("li", {}, said(w))))) : null);
  document.getElementById("print").disabled = !preview.pages.length;
}

const allPapers = () => takeFile(`${state.declared.id}.zip`, "/api/paper", wish({ format: "zip" }));

/** Every design, drawn with this candle; a click takes it. */
async function drawDesigns() {
  const place = document.getElementById("designs");
  const opener = document.getElementById("design-button");
  place.hidden = !place.hidden;
  opener.setAttribute("aria-expanded", String(!place.hidden));
  if (place.hidden) return;
  fill(place, el("p", {}, t("Drawing the designs…")));
  try {
    const answer = await askJson("/api/designs", { id: state.declared.id, edits: state.declared.edits() });
    const now = state.declared.values.design?.name;
    const take = (name) => { if (name) put(state.declared.values, ["design", "name"], name); else delete state.declared.values.design; touched(); drawDesigns(); };
    fill(place, el("h3", {}, t("Designs, drawn with this candle")), el("div", { class: "gallery" },
      button([t("As the brand says")], () => take(null), { class: "design", "aria-pressed": String(!now) }),
      answer.designs.map((d) => el("button", { type: "button", class: "design", "aria-pressed": String(d.name === now), title: shapes.designs.find((s) => s.name === d.name)?.about && said(shapes.designs.find((s) => s.name === d.name).about), onclick: () => take(d.name) }, d.page ? picture(d.page, "") : null, el("span", {}, d.name)))),
    el("p", {}, el("a", { href: `#/candle/${encodeURIComponent(state.declared.id)}/details` }, t("Shape, size and words of the label"))));
    place.querySelector("button")?.focus();
  } catch (error) {
    fill(place, el("p", { class: "stop" }, error.message));
  }
}
