// The colours that stand for oils: of one note, one colour.
import { el, fill } from "./elements.js";
import { supplies } from "./folder.js";

export const toneOf = (id) => `tone note-${supplies("oil").find((s) => s.id === id)?.note ?? "none"}`;

/** A blend as a bar: parts of an oil and its percent, each as long as that. */
export const drawBar = (bar, parts) => fill(bar, parts.map(([oil, percent]) => { const part = el("span", { class: toneOf(oil) }); part.style.flexGrow = percent; return part; }));
