// Load against consequences. The mark is a slider: drag it, or use the arrow keys on the range below.
import { drawn, el, fill, figure } from "./elements.js";
import { state } from "./state.js";
import { homeLoad, setLoad } from "./amounts.js";
import { showAmounts } from "./blend.js";
import { touched } from "./candle.js";

const step = 0.1, lineHeight = 15, lanePad = 6, bandHeight = 15, right = 16, top = 4, handle = 9, axisRoom = 36;
const measuring = document.createElement("canvas").getContext("2d");

/** Breaks a text into lines of a width; a word that is wider is broken too. */
function wrapped(text, width) {
  const fits = (t) => measuring.measureText(t).width <= width;
  const lines = [];
  let line = "";
  for (const word of text.split(" ")) {
    const longer = line ? `${line} ${word}` : word;
    if (fits(longer)) { line = longer; continue; }
    if (line) lines.push(line);
    line = "";
    for (const letter of word) {
      if (line && !fits(line + letter)) { lines.push(line); line = ""; }
      line += letter;
    }
  }
  return [...lines, line].filter(Boolean);
}

/** Round figures along the axis, no closer than their widths allow. */
function ticks(most, width) {
  const apart = [1, 2, 5, 10, 20, 25, 50, 100].find((d) => width * d / most >= 32) ?? most;
  return Array.from({ length: Math.floor(most / apart + 1e-9) + 1 }, (_, i) => i * apart);
}

/** The steps are counted from where the load was last saved or typed, so that as many back lead there again. */
function grid(home, most) {
  const least = home > 0 ? home - step * Math.floor(home / step - 1e-9) : step;
  const near = (value) => Math.min(most, Math.max(least, least + step * Math.round((value - least) / step)));
  return { least, near };
}

let place = () => {};

export function drawPlot() {
  const holder = document.getElementById("load-plot");
  const p = state.desk.plot;
  if (!p || !state.form) { fill(holder); return; }
  if (!document.getElementById("load-range")) build(holder);
  draw(p);
  const range = document.getElementById("load-range");
  range.min = String(Number(grid(homeLoad(state.desk, state.form), p.most).least.toFixed(10)));
  range.max = String(p.most);
  range.value = String(p.now);
  range.setAttribute("aria-valuetext", `${figure(p.now)} percent of the ${p.basis}`);
  document.querySelector("label[for=load-range]").textContent = `Load, % of the ${p.basis === "wax" ? "wax" : "scented melt"}`;
}

function build(holder) {
  const range = el("input", { type: "range", id: "load-range", step: String(step), oninput: (e) => move(Number(e.target.value)), onpointerdown: () => { state.dragging = true; } });
  fill(holder, el("section", { "aria-label": "Load and consequences" }, el("h2", {}, "How far the load can go"), el("div", { id: "plot-drawing" }), el("label", { for: "load-range" }), range));
  new ResizeObserver(() => { if (!state.dragging && state.desk.plot) draw(state.desk.plot); }).observe(document.getElementById("plot-drawing"));
}

function move(value) {
  place(value);
  setLoad(state.desk, state.form, value);
  showAmounts();
  touched(0);
}

function letGo() {
  if (!state.dragging) return;
  state.dragging = false;
  touched(0);
}

// The finger may be lifted anywhere.
for (const end of ["pointerup", "pointercancel"]) addEventListener(end, letGo);

function draw(p) {
  const drawing = document.getElementById("plot-drawing");
  const width = Math.max(240, drawing.clientWidth);
  const left = Math.round(width * 0.38);
  measuring.font = `12px ${getComputedStyle(drawing).fontFamily}`;
  const lanes = p.lanes.map((l) => ({ ...l, lines: wrapped(l.what, left - 12) }));
  const heights = lanes.map((l) => l.lines.length * lineHeight + lanePad);
  const base = top + Math.max(lineHeight, heights.reduce((a, b) => a + b, 0)) + 4;
  const height = base + axisRoom;
  const x = (v) => left + (width - left - right) * v / p.most;
  const svg = drawn("svg", { class: "plot", viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": `Load against consequences, ${figure(p.now)} % of the ${p.basis} now. ${p.lanes.map((l) => `${l.what}: ${l.spans.map((s) => `${figure(s[0])} to ${figure(s[1])} %`).join(", ")}`).join(". ")}` });
  let y = top;
  lanes.forEach((l, i) => {
    l.lines.forEach((line, n) => svg.append(drawn("text", { x: left - 10, y: y + lanePad / 2 + 11 + n * lineHeight, "text-anchor": "end" }, line)));
    for (const s of l.spans) svg.append(drawn("rect", { class: "band", x: x(s[0]), y: y + (heights[i] - bandHeight) / 2, width: Math.max(1, x(s[1]) - x(s[0])), height: bandHeight, rx: 3 }));
    y += heights[i];
  });
  svg.append(drawn("line", { class: "axis", x1: left, x2: width - right, y1: base, y2: base }));
  // The figures stand below the handle, so that neither it nor the line ever lies on one.
  for (const v of ticks(p.most, width - left - right)) svg.append(drawn("text", { x: x(v), y: base + handle + 16, "text-anchor": "middle" }, `${v}`));
  const line = drawn("line", { class: "now", y1: 2, y2: base });
  const mark = drawn("circle", { class: "handle", cy: base, r: handle });
  place = (v) => { line.setAttribute("x1", x(v)); line.setAttribute("x2", x(v)); mark.setAttribute("cx", x(v)); };
  place(p.now);
  svg.append(line, mark);
  const follow = (event) => {
    const box = svg.getBoundingClientRect();
    const value = ((event.clientX - box.left) / box.width * width - left) / (width - left - right) * p.most;
    const at = grid(homeLoad(state.desk, state.form), p.most).near(value);
    document.getElementById("load-range").value = String(at);
    move(at);
  };
  svg.addEventListener("pointerdown", (e) => { state.dragging = true; svg.setPointerCapture(e.pointerId); follow(e); });
  svg.addEventListener("pointermove", (e) => { if (state.dragging) follow(e); });
  fill(drawing, svg);
}
