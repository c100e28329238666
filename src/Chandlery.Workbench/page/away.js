// When the program does not answer: it is said as long as that lasts, and what waits goes on as soon as it answers again.
import { el, fill } from "./elements.js";
import { t } from "./words.js";

const pauseBetween = 1500;
const place = document.getElementById("away");

let waiting = null;

/** Resolves once the program answers; several that wait are told at the same moment. */
export function untilBack() {
  waiting ??= knock().finally(() => { waiting = null; });
  return waiting;
}

async function knock() {
  fill(place, el("strong", {}, t("The program does not answer. Is it still running?")), " ", t("What you typed stays here, and it goes on by itself as soon as there is an answer."));
  for (let isAway = true; isAway;) {
    await new Promise((next) => { setTimeout(next, pauseBetween); });
    isAway = await fetch("workbench.css").then(() => false, () => true);
  }
  fill(place);
}
