// The opened folder: its maker, its supplies, and what can be taken back.
import { askJson } from "./ask.js";
import { button, el, fill, icon, say } from "./elements.js";
import { teachFields } from "./plainwords.js";
import { forget } from "./told.js";
import { choose, languages, t } from "./words.js";

/** What the program last said of the folder. */
export let folder = null;

/** Forms, places and designs, which do not change while the program runs. */
export let shapes = null;

export const supplies = (kind) => folder.supplies[kind] ?? [];
export const nameOf = (kind, id) => supplies(kind).find((s) => s.id === id)?.name ?? id;

/** What a file of the folder declares, by its folder ("candles", "" for the maker's own) and its name; null where that is not known. */
const nameOfFile = (where, file) => Object.entries(folder?.supplies ?? {}).filter(([kind]) => where === "" || where.slice(0, 3) === kind.slice(0, 3)).flatMap(([, all]) => all).find((s) => s.id === file)?.name ?? null;

export const isEmpty = () => Object.keys(folder.supplies).length === 0 && folder.problems.length === 0;

export async function readFolder() {
  if (!shapes) {
    shapes = await askJson("/api/shapes");
    teachFields(shapes.forms, nameOfFile);
  }
  folder = await askJson("/api/folder");
  forget();
  document.getElementById("maker").textContent = folder.maker ?? folder.folder ?? t("Example");
  drawTools();
}

/** After something was kept: what can be taken back has changed. */
export function kept(answer) {
  folder.undo = answer.undo;
  folder.redo = answer.redo;
  drawTools();
}

let again = () => {};
/** Who shows the view anew after files were changed. */
export function whenStepped(work) { again = work; }
export const showAgain = () => again();

async function step(redo) {
  try {
    const what = redo ? folder.redo : folder.undo;
    await askJson("/api/step", { again: redo });
    await readFolder();
    await again();
    say(t(redo ? "Done again: {what}." : "Taken back: {what}.", { what }));
  } catch (error) {
    say(error.message);
  }
}

addEventListener("keydown", (e) => {
  if (!(e.ctrlKey || e.metaKey) || e.key.toLowerCase() !== "z" || e.target.matches("input, textarea, select")) return;
  e.preventDefault();
  if (e.shiftKey ? folder?.redo : folder?.undo) step(e.shiftKey);
});

const stepButton = (name, redo) => el("button", { type: "button", class: "bare", id: name, onclick: () => step(redo) }, icon(name));

// Drawn once and then only changed: a click on a button that is drawn anew between press and release is none.
let tools = null;

function drawTools() {
  if (tools?.folder !== folder.folder) {
    tools = { folder: folder.folder, undo: stepButton("undo", false), redo: stepButton("redo", true) };
    fill(document.getElementById("tools"),
      el("span", { id: "kept", class: isAmiss ? "amiss" : null }, keptText),
      tools.undo, tools.redo,
      folder.folder === null ? button(t("Leave the example"), async () => { await askJson("/api/begin", { example: false }).catch(() => {}); location.hash = "#/"; location.reload(); }, { id: "leave-example" }) : null,
      el("label", { class: "unseen", for: "page-language" }, t("Language of the page")),
      el("select", { id: "page-language", onchange: (e) => choose(e.target.value) }, [...languages].map(([code, name]) => el("option", { value: code, lang: code, selected: code === document.documentElement.lang }, name))));
  }
  tell(tools.undo, t("Undo"), folder.undo);
  tell(tools.redo, t("Redo"), folder.redo);
}

function tell(tool, label, what) {
  tool.disabled = !what;
  tool.title = what ? `${label}: ${what}` : label;
  tool.setAttribute("aria-label", tool.title);
}

let keptText = "";
let isAmiss = false;
/** Says whether all that was changed is in the files; what is amiss is shown where a phone has no room for more. */
export function showKept(text, amiss = false) {
  keptText = text;
  isAmiss = amiss;
  const place = document.getElementById("kept");
  if (!place) return;
  place.textContent = text;
  place.classList.toggle("amiss", amiss);
}
