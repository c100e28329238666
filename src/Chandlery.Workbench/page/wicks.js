// The vessel from above with its wicks, to scale. Where the wicks stand is reckoned by the program.
import { drawn } from "./elements.js";
import { state } from "./state.js";

/** A small drawing of the vessel's inside; null while it is not known. */
export function drawWicks() {
  const plan = state.desk.wicks;
  if (!plan) return null;
  const points = plan.points.map(([x, y]) => drawn("circle", { cx: x, cy: y, r: Math.max(plan.across / 60, 1.5), class: "wick" }));
  const room = plan.free ? plan.points.map(([x, y]) => drawn("circle", { cx: x, cy: y, r: plan.free, class: "room" })) : [];
  const wall = plan.lengthMm ? drawn("rect", { x: -plan.lengthMm / 2, y: -plan.widthMm / 2, width: plan.lengthMm, height: plan.widthMm, class: "wall" }) : drawn("circle", { cx: 0, cy: 0, r: plan.across / 2, class: "wall" });
  const box = plan.across * 0.54;
  return drawn("svg", { viewBox: `${-box} ${-box} ${2 * box} ${2 * box}`, width: 96, height: 96, class: "wicks", "aria-hidden": "true" }, wall, ...room, ...points);
}
