// A drafted oil beside its supplier's PDF: doubts first, then sign.
import { askJson } from "./ask.js";
import { button, drawn, el, fill, list, main, picture, say, reveal, way } from "./elements.js";
import { kept, readFolder } from "./folder.js";
import { said } from "./told.js";
import { count, t, today } from "./words.js";
import { Declared } from "./declared.js";
import { drawFields, fieldsOf } from "./form.js";
import { drawProblems, fieldId } from "./problems.js";
import { at } from "./values.js";

export async function showSheet(id) {
  let answer, sheet, declared;
  async function read() {
    [answer, sheet] = await Promise.all([askJson("/api/form", { declares: "oil", id }), askJson(`/api/sheet?id=${encodeURIComponent(id)}`)]);
    declared = new Declared(answer, () => answer.values?.name ?? id);
  }
  await read();
  let page = { document: 0, number: sheet.places[0]?.page ?? 1 };
  let chosen = null;
  const isSigned = () => declared.values.draft?.reviewed && declared.values.draft.reviewed !== "no";

  /** Keeps corrections and answers together; the draft may be wrong in other places still. */
  async function send(answered, edits) {
    try {
      kept(await askJson("/api/sheet/answer", { id, hash: declared.hash, edits, answered }));
      await read();
      draw();
      say(t("Kept."));
    } catch (error) {
      say(error.message);
    }
  }


  async function sign(e) {
    e.preventDefault();
    const by = document.getElementById("signed-by").value.trim();
    if (!by) { drawProblems([...answer.problems, { text: t("Write your name."), field: "signed-by" }], document.getElementById("summary")); document.getElementById("signed-by").focus(); return; }
    if (sheet.doubts.length) { say(count(sheet.doubts.length, "1 doubt is still open.", "{n} doubts are still open.")); document.querySelector(".doubt button")?.focus(); return; }
    if (answer.problems.length) { say(t("Mend the problems at the top first.")); document.querySelector("#summary a")?.focus(); return; }
    await send([], [...declared.edits() ?? [], { path: ["draft", "reviewed"], value: { by, on: today() } }]);
    await readFolder();
    say(t("Signed. The oil can be used now."));
  }

  function drawPage() {
    const place = document.getElementById("page");
    const shown = sheet.documents[page.document]?.pages[page.number - 1];
    document.getElementById("page-title").textContent = shown ? t("Page {n} of {all} of {name}", { n: page.number, all: sheet.documents[page.document].pages.length, name: sheet.documents[page.document].name }) : t("The PDF is not kept here: compare with your own copy.");
    if (!shown) { fill(place); return; }
    const marks = sheet.places.filter((p) => p.document === page.document && p.page === page.number && p.field);
    const doubtful = new Map(sheet.doubts.filter((d) => d.field).map((d) => [d.field, sheet.doubts.indexOf(d) + 1]));
    const boxes = marks.map((m) => {
      const [left, top, right, bottom] = m.box;
      const number = doubtful.get(m.field);
      const box = drawn("g", { class: `mark${number ? " doubtful" : ""}${m.field === chosen ? " chosen" : ""}`, role: "button", tabindex: number ? "0" : "-1", "aria-label": `${m.field}${number ? `, ${t("doubt {n}", { n: number })}` : ""}` },
        drawn("rect", { x: left - 0.7, y: top - 0.7, width: right - left + 1.4, height: bottom - top + 1.4 }), number ? drawn("circle", { cx: right + 0.7, cy: top - 0.7, r: 2.6 }) : null, number ? drawn("text", { x: right + 0.7, y: top + 0.5, "text-anchor": "middle" }, String(number)) : null);
      box.addEventListener("click", () => choose(m.field, false));
      box.addEventListener("keydown", (e) => { if (e.key === "Enter") choose(m.field, false); });
      return box;
    });
    fill(place, picture(shown, t("The page as the program read it")), drawn("svg", { viewBox: `0 0 ${shown.widthMm} ${shown.heightMm}`, class: "marks" }, ...boxes));
    place.querySelector(".chosen")?.scrollIntoView({ block: "center", behavior: "instant" });
  }

  /** Shows where a value stands, and goes to its field when it was chosen on the page. */
  function choose(field, fromDraft) {
    chosen = field;
    const mark = sheet.places.find((p) => p.field === field) ?? sheet.places.find((p) => p.field?.startsWith(`${field}.`));
    if (mark) page = { document: mark.document, number: mark.page };
    drawPage();
    if (fromDraft) return;
    const target = document.getElementById(`doubt-${sheet.doubts.findIndex((d) => d.field === field)}`)?.querySelector("button") ?? document.getElementById(fieldId(field));
    reveal(target);
  }

  const valueAt = (field) => { const v = field ? at(declared.values, field.split(".").map((s) => /^\d+$/.test(s) ? Number(s) : s)) : undefined; return Array.isArray(v) ? v.join("; ") : v !== null && typeof v === "object" ? Object.values(v).join(" ") : v; };

  function doubt(d, i) {
    const value = valueAt(d.field);
    const correct = () => { document.getElementById("values").open = true; reveal(document.getElementById(fieldId(d.field ?? d.needs ?? "")) ?? document.querySelector("#values summary")); };
    return el("li", { class: "doubt", id: `doubt-${i}` }, button(String(i + 1), () => d.field && choose(d.field, true), { class: "number", "aria-label": t("Show doubt {n} on the page", { n: i + 1 }) }),
      el("div", {}, value !== undefined ? el("p", {}, el("strong", {}, value)) : null, el("p", {}, said(d.what)),
        el("div", { class: "row" }, button(value !== undefined ? t("It is right as read") : t("I have looked; it stays so"), () => send([d.what], declared.edits())), button(t("Correct it"), correct), declared.edits() ? button(t("Corrected"), () => send([d.what], declared.edits())) : null)));
  }

  function draw() {
    const all = sheet.documents.flatMap((d, i) => d.pages.map((_, n) => ({ document: i, number: n + 1 })));
    const turn = (by) => { const now = all.findIndex((p) => p.document === page.document && p.number === page.number); page = all[Math.min(all.length - 1, Math.max(0, now + by))] ?? page; drawPage(); };
    const withValues = () => { const now = all.findIndex((p) => p.document === page.document && p.number === page.number); page = [...all.slice(now + 1), ...all].find((p) => sheet.places.some((m) => m.document === p.document && m.page === p.number)) ?? page; drawPage(); };
    fill(main,
      el("div", { class: "path" }, way(t("Way"), "#/supplies", t("Supplies"), el("span", {}, declared.values.name ?? id))),
      el("div", { class: "review" },
        el("section", { "aria-label": t("The supplier's PDF") }, el("div", { class: "row" }, el("p", { id: "page-title" }), button("‹", () => turn(-1), { "aria-label": t("Page before") }), button("›", () => turn(1), { "aria-label": t("Next page") }), button(t("Next page with values"), withValues)), el("div", { id: "page", class: "paper" })),
        el("section", { "aria-labelledby": "title" },
          el("h1", { id: "title", tabindex: "-1" }, isSigned() ? t("Signed by {name}.", { name: declared.values.draft.reviewed.by }) : sheet.doubts.length ? count(sheet.doubts.length, "One doubt, then sign.", "{n} doubts, then sign.") : t("No doubt is open: compare, then sign.")),
          el("p", { class: "soft" }, t("{n} values were read. Nothing is used on a label before you have signed.", { n: sheet.places.filter((p) => p.field).length })),
          el("div", { id: "summary" }), el("ol", { class: "doubts" }, sheet.doubts.map(doubt)),
          sheet.contradictions.length ? el("details", { open: true }, el("summary", {}, t("Where the sheet contradicts itself or the law's table")), list(sheet.contradictions, "plain")) : null,
          el("form", { class: "sign", novalidate: true, onsubmit: sign }, el("label", { for: "f-signed-by" }, t("I compared these values with the sheet")), el("div", { class: "row" }, el("input", { id: "signed-by", autocomplete: "name", placeholder: t("your name") }), el("button", { class: "main" }, t("Sign")))),
          el("details", { id: "values", open: sheet.doubts.length === 0 }, el("summary", {}, t("All values")), el("form", { class: "form", novalidate: true, onsubmit: (e) => { e.preventDefault(); send([], declared.edits()); } },
            el("p", { class: "row" }, el("button", {}, t("Keep corrections"))), drawFields(fieldsOf("oil", ["draft"]), { values: declared.values, changed: () => {} }))))));
    main.querySelector("label[for='f-signed-by']").htmlFor = "signed-by";
    for (const input of main.querySelectorAll("#values input, #values textarea, #values select")) input.addEventListener("focus", () => { chosen = input.id.slice(2); choose(chosen, true); });
    drawProblems(answer.problems, document.getElementById("summary"));
    drawPage();
  }

  draw();
  return async () => {
    const lost = declared.edits();
    if (!lost || confirm(t("Leave without keeping your changes?"))) { document.body.dataset.unkept = ""; return true; }
    return false;
  };
}
