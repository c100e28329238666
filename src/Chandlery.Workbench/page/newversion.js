// What a new version of an oil or wax would change, before it is kept.
import { askJson } from "./ask.js";
import { el, fill, list, main, say, way } from "./elements.js";
import { t } from "./words.js";
import { drawChanges } from "./changes.js";
import { Declared } from "./declared.js";
import { drawFields, fieldsOf } from "./form.js";
import { drawProblems } from "./problems.js";

/** What a declaration as it is edited would change, before it is kept. */
export async function showWouldChange(kind, id) {
  const answer = await askJson("/api/form", { declares: kind, id });
  const declared = new Declared(answer, () => answer.values.name ?? id);
  const result = el("div", { "aria-live": "polite" });
  const compare = async () => {
    const now = await askJson("/api/form", declared.request);
    if (drawProblems(now.problems, document.getElementById("summary"))) return;
    try {
      drawChanges(result, await askJson("/api/changes/declaration", declared.request));
    } catch (error) {
      fill(result, list(error.problems ?? [error.message], "problems"));
    }
  };
  fill(main,
    el("div", { class: "path" }, way(t("Way"), "#/changes", t("What would change"), el("h1", {}, t("If {name} changes", { name: answer.values.name ?? id })))),
    el("p", { class: "lead" }, t("Write what the new version says. Nothing is kept here; you see which candles it would change, and which batches were sold before.")), el("div", { id: "summary" }),
    el("div", { class: "declaration" }, el("form", { class: "form", novalidate: true, onsubmit: (e) => { e.preventDefault(); compare().catch((x) => say(x.message)); } }, el("div", { class: "row" }, el("button", { class: "main" }, t("Compare"))), drawFields(fieldsOf(kind, ["draft"]), { values: declared.values, changed: () => {} })), result));
}
