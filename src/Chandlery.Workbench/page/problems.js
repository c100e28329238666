// What is wrong: a summary on top with links, and a message beside each field.
import { el, fill } from "./elements.js";
import { state } from "./state.js";

const names = { name: "Name", netGrams: "Net grams", loadPercent: "Load, %", loadOf: "Load of", wickCount: "Wicks" };

export const fieldId = (field) => `f-${field}`;
export const messageId = (field) => `e-${field}`;

/** The place for a field's message. */
export const messagePlace = (field) => el("p", { class: "wrong", id: messageId(field), hidden: true });

const nameOf = (field) => names[field] ?? (field === "oils" ? "Oils" : state.desk.oils.find((o) => `oil:${o.id}` === field)?.name ?? field.slice(4));

/** All that is wrong now. What the page itself knows of an amount goes before what the program says of the empty field. */
function problemsNow() {
  const own = (state.form?.oils ?? []).filter((o) => o.why).map((o) => ({ text: o.why, field: `oil:${o.oil}` }));
  if (state.form?.loadWhy) own.push({ text: state.form.loadWhy, field: "loadPercent" });
  return [...own, ...state.desk.problems.filter((p) => own.every((o) => o.field !== p.field))];
}

function goTo(field) {
  const target = document.getElementById(fieldId(field)) ?? document.querySelector("#together button, #oils input");
  target?.focus();
  target?.scrollIntoView({ block: "center" });
}

export function drawProblems() {
  const problems = problemsNow();
  for (const message of document.querySelectorAll("#editor .wrong")) {
    const field = message.id.slice(2);
    const input = document.getElementById(fieldId(field));
    const own = problems.filter((p) => p.field === field).map((p) => p.text).join(" ");
    message.textContent = own;
    message.hidden = own === "";
    if (own) { input?.setAttribute("aria-invalid", "true"); input?.setAttribute("aria-describedby", message.id); }
    else { input?.removeAttribute("aria-invalid"); input?.removeAttribute("aria-describedby"); }
  }
  const linked = (p) => p.field && document.getElementById(messageId(p.field));
  fill(document.getElementById("summary"), problems.length ? el("section", { "aria-label": "Problems" },
    el("h2", {}, problems.length > 1 ? `${problems.length} problems` : "1 problem"),
    el("ul", { class: "problems" }, problems.map((p) => el("li", {}, linked(p)
      ? [el("a", { href: `#${fieldId(p.field)}`, onclick: (e) => { e.preventDefault(); goTo(p.field); } }, nameOf(p.field)), document.createTextNode(`: ${p.text}`)]
      : p.text)))) : null);
  return problems.length;
}
