// Making elements. Every text from the program goes into the page as text, never as markup.
const statusLine = document.getElementById("status");
export const main = document.getElementById("main");
export const say = (text) => { statusLine.textContent = text; };

/** Makes an element: name, attributes (on… are listeners), children. */
export function el(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) element.addEventListener(key.slice(2), value);
    else if (value === true) element.setAttribute(key, "");
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(key, value);
  }
  fill(element, ...children);
  return element;
}

/** Puts children into an element in place of those it has; null stands for none, which the DOM itself would write as a word. */
export function fill(element, ...children) {
  element.replaceChildren(...children.flat().filter((c) => c !== null && c !== undefined));
}

export function drawn(name, attributes, ...children) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
}

export const figure = (value, digits = 4) => value === null || value === undefined ? "–" : Number(value.toPrecision(digits)).toString();

export const table = (caption, heads, rows) => el("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": caption },
  el("table", {}, el("thead", {}, el("tr", {}, heads.map((h) => el("th", { scope: "col" }, h)))), el("tbody", {}, rows)));

export const list = (items, name) => el("ul", { class: name }, items.map((i) => el("li", {}, i)));

/** Asks the program; what it refuses is thrown, with its status. */
export async function ask(path, body) {
  const options = body === undefined ? {} : { method: "POST", headers: { "Content-Type": "application/json", "X-Workbench": "1" }, body: JSON.stringify(body) };
  let response;
  try {
    response = await fetch(path, options);
  } catch {
    throw new Error("The program does not answer. Is it still running?");
  }
  if (!response.ok) {
    const text = await response.text();
    let what = text;
    try { what = JSON.parse(text).problems.join(" "); } catch { /* the answer was plain text */ }
    throw Object.assign(new Error(what || `The program answered with ${response.status}.`), { status: response.status });
  }
  return response;
}

export const askJson = async (path, body) => (await ask(path, body)).json();

export function showMaker(name) {
  document.getElementById("maker").textContent = `· ${name}`;
}

/** Says that there is nothing here, with the way back. */
export function showNothing(what) {
  fill(main, el("h1", {}, "Not found"), el("section", { "aria-label": "Not found" }, el("p", {}, what), el("p", {}, el("a", { href: "#/" }, "Back to the candles"))));
  say(what);
}
