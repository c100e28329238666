// The workbench: one page, no framework, and the way to each of its parts.
import { el, fill, main, say, showNothing } from "./elements.js";
import { state } from "./state.js";
import { leaveCandle, showCandle } from "./candle.js";
import { showCatalogue } from "./catalogue.js";
import { showChanges } from "./changes.js";
import { showRegister } from "./register.js";

/** Where the address points; null when it is not one. */
function place() {
  try {
    return decodeURIComponent(location.hash.slice(1) || "/");
  } catch {
    return null;
  }
}

async function route() {
  const path = place();
  leaveCandle();
  for (const link of document.querySelectorAll("nav a")) {
    const own = link.getAttribute("href").slice(1);
    if (own === path || (own === "/" && path?.startsWith("/candle/"))) link.setAttribute("aria-current", "page"); else link.removeAttribute("aria-current");
  }
  try {
    if (path?.startsWith("/candle/")) await showCandle(path.slice(8));
    else if (path === "/register") await showRegister();
    else if (path === "/changes") await showChanges();
    else if (path === "/") await showCatalogue();
    else showNothing("There is no page of this address.");
  } catch (error) {
    fill(main, el("h1", {}, "That did not work"), el("p", { class: "stop" }, error.message), el("p", {}, el("a", { href: "#/" }, "Back to the candles")));
    say(error.message);
  }
  document.title = `${main.querySelector("h1")?.textContent ?? "Workbench"} · Chandlery`;
}

let here = location.hash;
addEventListener("hashchange", () => {
  if (state.changed && location.hash !== here && !confirm("Leave without saving your changes?")) { history.replaceState(null, "", here || "#/"); return; }
  state.changed = false;
  here = location.hash;
  route().then(() => main.focus());
});
addEventListener("beforeunload", (e) => { if (state.changed) e.preventDefault(); });
route();
