// Making elements. Every text from the program goes into the page as text, never as markup.
export const main = document.getElementById("main");
const statusLine = document.getElementById("status");
const quietLine = document.getElementById("whisper");
const shownFor = 9000;

let hiding = null;
/** Tells what happened, for eyes and for screen readers; for a while. */
export function say(text) {
  statusLine.textContent = text;
  clearTimeout(hiding);
  hiding = setTimeout(() => { statusLine.textContent = ""; }, shownFor);
}

/** Tells what the eye sees anyhow. */
export const whisper = (text) => { quietLine.textContent = text; };

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
  element.replaceChildren(...children.flat(3).filter((c) => c !== null && c !== undefined && c !== false));
}

export function drawn(name, attributes, ...children) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children.filter((c) => c !== null && c !== undefined));
  return element;
}

const icons = {
  undo: "M9 6 4 11l5 5M4 11h10a5 5 0 0 1 0 10h-3", redo: "m15 6 5 5-5 5m5-5H10a5 5 0 0 0 0 10h3", back: "m14 5-7 7 7 7",
  tick: "m6 12.5 4 4 8-9", stop: "M6 12h12", question: "M9.2 9.2a2.9 2.9 0 1 1 4.3 2.5c-1 .6-1.5 1.1-1.5 2.3m0 3v.2",
};

/** A small drawing of ours; what it means stands in words beside it or in the label of its button. */
export const icon = (name, size = 24) => drawn("svg", { viewBox: "0 0 24 24", width: size, height: size, class: `icon ${name}`, "aria-hidden": "true" }, drawn("path", { d: icons[name] }));

/** A figure of so many places, in the language of the page. */
export const figure = (value, places = 4) => value === null || value === undefined || !Number.isFinite(value) ? "–"
  : Number(value.toPrecision(places)).toLocaleString(document.documentElement.lang, { maximumFractionDigits: 12, useGrouping: false });

/** A figure as files and fields write it. */
export const plain = (value, places = 5) => String(Number(value.toPrecision(places)));

export const table = (caption, heads, rows) => el("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": caption },
  el("table", {}, el("thead", {}, el("tr", {}, heads.map((h) => el("th", { scope: "col" }, h)))), el("tbody", {}, rows)));

export const list = (items, name) => el("ul", { class: name }, items.map((i) => el("li", {}, i)));

export const button = (text, onclick, attributes = {}) => el("button", { type: "button", onclick, ...attributes }, text);

/** A picture of a page that the program drew, as wide as the page is. */
export function picture(page, alt, trueSize) {
  const image = el("img", { alt, src: URL.createObjectURL(new Blob([page.svg], { type: "image/svg+xml" })), onload: (e) => URL.revokeObjectURL(e.target.src) });
  image.style.aspectRatio = `${page.widthMm} / ${page.heightMm}`;
  if (trueSize) { image.style.width = `${page.widthMm}mm`; image.style.height = `${page.heightMm}mm`; image.style.maxWidth = "none"; }
  return image;
}

/** Hands a file to the browser. */
export function download(blob, name) {
  const link = el("a", { href: URL.createObjectURL(blob), download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

/** Lets files be dropped on a place. */
export function takesDrops(place, take) {
  place.addEventListener("dragover", (e) => { e.preventDefault(); place.classList.add("over"); });
  place.addEventListener("dragleave", () => place.classList.remove("over"));
  place.addEventListener("drop", (e) => { e.preventDefault(); place.classList.remove("over"); take([...e.dataTransfer.files]); });
  return place;
}

/** The way to a view: the view above it, and what is shown. */
export const way = (label, href, above, here) => el("nav", { class: "way", "aria-label": label }, el("a", { href }, above), el("span", { "aria-hidden": "true" }, " / "), here);

/** Opens what is folded around an element and goes there. */
export function reveal(target) {
  for (let around = target?.closest("details:not([open])"); around; around = around.parentElement.closest("details:not([open])")) around.open = true;
  target?.focus();
  target?.scrollIntoView({ block: "center" });
}
