// What is wrong: a summary on top with links, and a message beside each field.
import { el, fill, reveal } from "./elements.js";
import { said } from "./told.js";
import { count } from "./words.js";

export const fieldId = (path) => `f-${path}`;
const messageId = (path) => `e-${path}`;

/** The place for a field's message. */
export const messagePlace = (path) => el("p", { class: "wrong", id: messageId(path), hidden: true });

/** The message's place for a field, or for the nearest group that it stands in; null when neither is drawn. */
function nearest(path) {
  for (let steps = path.split("."); steps.length; steps = steps.slice(0, -1)) {
    const place = document.getElementById(messageId(steps.join(".")));
    if (place) return place;
  }
  return null;
}

const inputOf = (place) => document.getElementById(fieldId(place.id.slice(2)));

function goTo(place) {
  const input = inputOf(place) ?? place.parentElement.querySelector("input, select, textarea, button");
  reveal(input);
}

/** Goes to a field, or to the first control of a group, by its path. */
export const goToField = (path) => goTo(nearest(path));

const nameOf = (place) => {
  const input = inputOf(place);
  return input?.getAttribute("aria-label") ?? input?.labels?.[0]?.textContent ?? place.closest("fieldset, [role=group]")?.querySelector("legend, .what")?.textContent ?? place.id.slice(2);
};

/** Draws problems, each { text, field }, and returns how many there are. */
export function drawProblems(problems, summary) {
  const beside = new Map();
  for (const problem of problems) {
    const place = problem.field ? nearest(problem.field) : null;
    if (place) beside.set(place, [...beside.get(place) ?? [], said(problem.text)]);
    problem.place = place;
  }
  for (const message of document.querySelectorAll(".wrong[id^='e-']")) {
    const texts = beside.get(message) ?? [];
    const input = inputOf(message);
    message.textContent = texts.join(" ");
    message.hidden = texts.length === 0;
    if (texts.length) { input?.setAttribute("aria-invalid", "true"); input?.setAttribute("aria-describedby", message.id); }
    else { input?.removeAttribute("aria-invalid"); if (input?.getAttribute("aria-describedby") === message.id) input.removeAttribute("aria-describedby"); }
  }
  fill(summary, problems.length ? el("section", { class: "problems", "aria-labelledby": "problems-title" },
    el("h2", { id: "problems-title" }, count(problems.length, "1 problem", "{n} problems")),
    el("ul", {}, problems.map((p) => el("li", {}, p.place
      ? [el("a", { href: `#${p.place.id}`, onclick: (e) => { e.preventDefault(); goTo(p.place); } }, nameOf(p.place)), document.createTextNode(`: ${said(p.text)}`)]
      : said(p.text))))) : null);
  return problems.length;
}
