// The load, and what follows along it: zones, their borders in words, and a handle that everything follows while it is dragged.
import { button, drawn, el, fill, figure } from "./elements.js";
import { t } from "./words.js";
import { homeLoad, loadOf, setLoad, typeLoad } from "./amounts.js";
import { showAmounts } from "./blend.js";
import { fieldId, messagePlace } from "./problems.js";
import { state, touched } from "./state.js";

const step = 0.1, top = 26, height = 40, axis = 26, side = 18, narrow = 480, between = 8;
const zoneWords = { free: "Nothing to say", named: "No warning; allergens named", warning: "Warning label", broken: "Too much" }; // told by t()
const rank = ["free", "named", "warning", "broken"];

const line = () => state.desk.load ?? state.sound?.load ?? null;

/** Neighbouring zones of one kind as one; the kind never falls again once it rose, or a border would say less than the law. */
function zonesOf(load) {
  const zones = [];
  for (const z of load.zones) {
    if (zones.at(-1)?.kind === z.kind) zones.at(-1).to = z.to; else zones.push({ ...z });
  }
  return zones;
}

/** The borders that a maker wants to know: up to where nothing, no warning, and no limit. Steps down to a tenth, never over it. */
function borders(load) {
  return zonesOf(load).slice(1).filter((z, i) => rank.indexOf(z.kind) > rank.indexOf(zonesOf(load)[i].kind))
    .map((z) => ({ at: z.from, kind: z.kind, below: Math.floor(z.from * 10 + 1e-6) / 10 }));
}

const borderWords = { named: "Nothing to say up to {n} %", warning: "Highest without a warning: {n} %", broken: "Highest within every limit: {n} %" }; // told by t()

/** The steps are counted from where the load was last kept or typed, so that as many back lead there again. */
function near(value, most) {
  const home = homeLoad(state.form);
  const least = home > 0 ? home - step * Math.floor(home / step - 1e-9) : step;
  return Math.min(most, Math.max(least, least + step * Math.round((value - least) / step)));
}

/** What a load is of, in words: a liquid has a base and is a product, all else has a wax. */
const isLiquid = () => state.declared.values.base !== undefined;
const ofWords = { wax: "% of the wax", candle: "% of the scented melt", base: "% of the base", product: "% of the product" }; // told by t()
const basisWords = (load) => t(ofWords[load.basis === "wax" ? (isLiquid() ? "base" : "wax") : isLiquid() ? "product" : "candle"]);

export function drawLoadLine() {
  const place = document.getElementById("load");
  const load = line();
  if (!state.form || !load) { fill(place); place.hidden = true; return; }
  place.hidden = false;
  if (!document.getElementById("load-range")) build(place, load);
  showFigures(load);
  if (!state.dragging) draw(load);
  const range = document.getElementById("load-range");
  range.max = String(load.most);
  range.min = String(Number(near(0, load.most).toFixed(10)));
  if (!state.dragging) range.value = String(load.now);
  range.setAttribute("aria-valuetext", `${figure(load.now)} ${basisWords(load)}. ${zoneAt(load, load.now)}`);
}

const zoneAt = (load, value) => t(zoneWords[zonesOf(load).find((z) => value <= z.to + 1e-9)?.kind ?? "broken"]);

function build(place, load) {
  const { form } = state;
  const basis = el("select", { id: fieldId("load.of"), "aria-label": t("Load of"), onchange: (e) => { loadOf(state.desk, form, e.target.value); showAmounts(); touched(); } },
    (isLiquid() ? ["base", "product"] : ["wax", "candle"]).map((of) => el("option", { value: of, selected: form.loadOf === of }, t(ofWords[of]))));
  fill(place,
    el("div", { class: "load-fields" }, el("h2", {}, t("Load")),
      form.hasLoad ? el("div", { class: "row" }, el("input", { id: fieldId("load.percent"), "aria-label": t("Load, %"), inputmode: "decimal", autocomplete: "off", value: form.loadPercent ?? "", oninput: (e) => { typeLoad(form, e.target.value); touched(); } }), basis) : el("p", { id: "load-now" }),
      messagePlace("load"), messagePlace("load.percent"), messagePlace("load.of"), el("p", { id: "load-hint", class: "soft" })),
    el("div", { class: "load-line" }, el("div", { id: "load-drawing" }), el("div", { id: "load-marks", class: "links" }),
      el("div", { class: "thumbs" }, button("−", () => move(near(Number(line().now) - step, line().most)), { "aria-label": t("Less oil") }), button("+", () => move(near(Number(line().now) + step, line().most)), { "aria-label": t("More oil") })),
      el("label", { class: "unseen", for: "load-range" }, t("Load, by the line")),
      el("input", { type: "range", id: "load-range", class: "unseen", step: String(step), oninput: (e) => move(Number(e.target.value)), onkeydown: pageKeys })));
  new ResizeObserver(() => { if (!state.dragging && line()) draw(line()); }).observe(document.getElementById("load-drawing"));
}

/** Page up and down go to the next border. */
function pageKeys(e) {
  if (e.key !== "PageUp" && e.key !== "PageDown") return;
  e.preventDefault();
  const load = line();
  const stops = borders(load).map((b) => b.below);
  const to = e.key === "PageUp" ? stops.find((s) => s > load.now + 1e-6) : stops.findLast((s) => s < load.now - 1e-6);
  if (to !== undefined) move(to);
}

function showFigures(load) {
  const l = state.desk.assessments[0]?.loadPercent;
  const now = document.getElementById("load-now");
  if (now) now.textContent = `${figure(load.now)} ${basisWords(load)}`;
  document.getElementById("load-hint").textContent = !l || isLiquid() ? "" : t("{wax} % of the wax = {melt} % of the scented melt = {candle} % of the finished candle", { wax: figure(l.meltOfWax, 3), melt: figure(l.meltOfCandle, 3), candle: figure(l.finishedCandle, 3) });
}

let place = () => {};

function move(value) {
  place(value);
  setLoad(state.form, value);
  showAmounts();
  touched();
}

let before = null;
function letGo(e) {
  if (!state.dragging) return;
  state.dragging = false;
  document.body.classList.remove("dragging");
  if (e.type === "keydown" || e.type === "pointercancel") move(before);
  touched();
}

// The finger may be lifted anywhere; Escape puts the load back.
for (const end of ["pointerup", "pointercancel"]) addEventListener(end, letGo);
addEventListener("keydown", (e) => { if (e.key === "Escape") letGo(e); });

/** Round figures along the axis, no closer than their widths allow. */
function ticks(most, width) {
  const apart = [1, 2, 5, 10, 20, 25, 50, 100].find((d) => width * d / most >= 34) ?? most;
  return Array.from({ length: Math.floor(most / apart + 1e-9) + 1 }, (_, i) => i * apart);
}

/** On a phone a finger hides what stands in the zones, so each border is told below it: in words where there is room, else by its figure. */
function underLine(load, x, width, font) {
  const told = [];
  for (const b of borders(load).toReversed()) {
    const most = told.length ? told.at(-1).x - between : width;
    for (const text of [`${figure(b.below, 3)} ${t(zoneWords[b.kind])}`, figure(b.below, 3)]) {
      const left = Math.min(x(b.at), most - textWidth(text, font));
      if (left < x(b.at) - between * 3) continue;
      told.push({ x: left, text });
      break;
    }
  }
  return told;
}

const measuring = document.createElement("canvas").getContext("2d");
const textWidth = (text, font) => { measuring.font = font; return measuring.measureText(text).width; };

function draw(load) {
  const holder = document.getElementById("load-drawing");
  if (!holder) return;
  const width = Math.max(280, holder.clientWidth);
  const x = (v) => side + (width - 2 * side) * Math.min(v, load.most) / load.most;
  const font = `13.6px ${getComputedStyle(holder).fontFamily}`;
  const whole = top + height + axis;
  const svg = drawn("svg", { class: "line", viewBox: `0 0 ${width} ${whole}`, width, height: whole, role: "img", "aria-label": t("What holds along the load") });
  // The words of a zone make way for the handle.
  const dodging = [];
  for (const z of zonesOf(load)) {
    svg.append(drawn("rect", { class: `zone ${z.kind}`, x: x(z.from), y: top, width: Math.max(1, x(z.to) - x(z.from)), height }));
    const words = t(zoneWords[z.kind]);
    const long = textWidth(words, font);
    if (long > x(z.to) - x(z.from) - 20) continue;
    const text = drawn("text", { class: `in ${z.kind}`, y: top + height / 2 + 5 }, words);
    svg.append(text);
    dodging.push((at) => {
      const places = [x(z.from) + 10, at + 28, at - 28 - long].filter((p) => p >= x(z.from) + 8 && p + long <= x(z.to) - 8 && (p + long < at - 24 || p > at + 24));
      text.setAttribute("x", places[0] ?? 0);
      text.setAttribute("visibility", places.length ? "visible" : "hidden");
    });
  }
  for (const b of borders(load)) svg.append(drawn("line", { class: "border", x1: x(b.at), x2: x(b.at), y1: top - 12, y2: top + height }));
  const told = width < narrow ? underLine(load, x, width, font) : [];
  for (const at of told) svg.append(drawn("text", { x: at.x, y: top + height + 20 }, at.text));
  if (!told.length) for (const v of ticks(load.most, width - 2 * side)) svg.append(drawn("text", { x: x(v), y: top + height + 20, "text-anchor": "middle" }, v === load.most || v + 1 > load.most ? `${v} %` : `${v}`));
  const ghost = drawn("circle", { class: "was", cx: x(load.now), cy: top + height / 2, r: 18 });
  const handle = drawn("g", { class: "handle" }, drawn("circle", { cx: 0, cy: top + height / 2, r: 20 }));
  const text = drawn("text", { x: 0, y: top + height / 2 + 5, "text-anchor": "middle" });
  handle.append(text);
  place = (v) => {
    handle.setAttribute("transform", `translate(${x(v)} 0)`);
    text.textContent = figure(v, 2);
    for (const dodge of dodging) dodge(x(v));
    handle.classList.toggle("over", zonesOf(load).find((z) => v <= z.to + 1e-9)?.kind === "broken");
  };
  place(load.now);
  svg.append(ghost, handle);
  const follow = (e) => {
    const box = svg.getBoundingClientRect();
    const at = near(((e.clientX - box.left) / box.width * width - side) / (width - 2 * side) * load.most, load.most);
    document.getElementById("load-range").value = String(at);
    move(at);
  };
  svg.addEventListener("pointerdown", (e) => { before = load.now; state.dragging = true; document.body.classList.add("dragging"); svg.setPointerCapture(e.pointerId); follow(e); });
  svg.addEventListener("pointermove", (e) => { if (state.dragging) follow(e); });
  svg.addEventListener("pointerup", letGo);
  fill(holder, svg);
  fill(document.getElementById("load-marks"), borders(load).map((b) => button(t(borderWords[b.kind], { n: figure(b.below, 3) }), () => move(b.below), { class: "link", disabled: b.below <= 0 })));
}
