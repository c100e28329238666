// The workbench: one page, no framework, and the way to each of its views.
import { el, fill, main, say } from "./elements.js";
import { folder, isEmpty, readFolder, showKept, whenStepped } from "./folder.js";
import { learn, t } from "./words.js";
import { showBegin } from "./begin.js";
import { showCandle } from "./candle.js";
import { showCandles } from "./candles.js";
import { showChanges } from "./changes.js";
import { showDeclaration } from "./declaration.js";
import { showNew } from "./new.js";
import { showWouldChange } from "./newversion.js";
import { showNotebook } from "./notebook.js";
import { showRecall } from "./recall.js";
import { showRegister } from "./register.js";
import { showSheet } from "./sheet.js";
import { showSupplies } from "./supplies.js";

const views = [["#/", "Candles"], ["#/notebook", "Notebook"], ["#/supplies", "Supplies"], ["#/register", "Register"], ["#/changes", "What would change"]]; // told by t()

/** Addresses and who shows them; a star stands for a name. */
const routes = [
  ["/", () => isEmpty() ? showBegin() : showCandles()],
  ["/new", showNew],
  ["/candle/*", (id) => showCandle(id, "candle")],
  ["/candle/*/*", showCandle],
  ["/notebook", () => showNotebook()],
  ["/supplies", showSupplies],
  ["/sheet/*", showSheet],
  ["/declaration/*", (kind) => showDeclaration(kind, "")],
  ["/declaration/*/*", showDeclaration],
  ["/register", showRegister],
  ["/recall", showRecall],
  ["/changes", () => showChanges()],
  ["/changes/*/*", showWouldChange],
];

/** Where the address points, step by step; null when it is not one. */
function place() {
  try {
    return (location.hash.slice(1) || "/").split("/").map(decodeURIComponent).slice(1).filter((s, i) => s || i === 0);
  } catch {
    return null;
  }
}

function matching(steps) {
  for (const [path, show] of routes) {
    const wanted = path.split("/").slice(1);
    if (steps && wanted.length === steps.length && wanted.every((w, i) => w === "*" ? steps[i] : w === steps[i])) return [show, steps.filter((_, i) => wanted[i] === "*")];
  }
  return null;
}

/** What must be done before another view is shown: keep what is not kept yet. */
let leave = async () => true;

export function showNothing(what) {
  fill(main, el("h1", {}, t("Not found")), el("p", {}, what), el("p", {}, el("a", { href: "#/" }, t("Back to the candles"))));
  say(what);
}

let links = null;

// Drawn once: where it is drawn anew while somebody clicks, the click goes nowhere.
function drawViews(steps) {
  const own = steps?.[0] === "candle" || steps?.[0] === "new" ? "" : steps?.[0] === "sheet" || steps?.[0] === "declaration" ? "supplies" : steps?.[0] === "recall" ? "register" : steps?.[0] ?? "";
  links ??= views.map(([href, name]) => el("a", { href }, t(name)));
  const shown = isEmpty() && !own ? [] : links;
  for (const link of links) {
    if (link.getAttribute("href") === `#/${own}`) link.setAttribute("aria-current", "page"); else link.removeAttribute("aria-current");
  }
  const place = document.getElementById("views");
  if (place.childElementCount !== shown.length) fill(place, shown);
}

async function route() {
  const steps = place();
  const found = matching(steps);
  document.body.className = "";
  showKept("");
  try {
    await readFolder();
    drawViews(steps);
    leave = async () => true;
    if (found) leave = await found[0](...found[1]) ?? leave; else showNothing(t("There is no page of this address."));
  } catch (error) {
    if (error.status === 404) showNothing(t("There is nothing of this name in the folder."));
    else {
      fill(main, el("h1", {}, t("That did not work")), el("p", { class: "stop" }, error.message), el("p", {}, el("a", { href: "#/" }, t("Back to the candles"))));
      say(error.message);
    }
  }
  document.title = `${main.querySelector("h1")?.textContent ?? "Chandlery"} · ${folder?.maker ?? "Chandlery"}`;
}

let here = location.hash;

async function follow() {
  if (location.hash === here) return;
  if (!await leave()) { history.replaceState(null, "", here || "#/"); return; }
  here = location.hash;
  const drawn = route();
  main.focus({ preventScroll: true });
  scrollTo(0, 0);
  await drawn;
}

// One view after the other: what an earlier one still waits for must not be drawn over a later one.
let showing = Promise.resolve();
const next = (work) => showing = showing.then(work, work);
addEventListener("hashchange", () => next(follow));
addEventListener("beforeunload", (e) => { if (document.body.dataset.unkept) e.preventDefault(); });
whenStepped(() => next(route));

await learn();
document.getElementById("skip").textContent = t("Skip to the work");
document.getElementById("views").setAttribute("aria-label", t("Views"));
fill(document.getElementById("foot"), el("p", {}, t("This helps and does not replace local law, its authorities, or a competent person. It knows only what your suppliers' sheets declare; read what could not be assessed.")));
await next(route);
