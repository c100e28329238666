// The vessel from above with its wicks, to scale. Where the wicks stand is reckoned by the program.
import { drawn } from "./elements.js";
import { state } from "./state.js";

/** A small drawing of the vessel's inside; null while it is not known. */
export function drawWicks() {
  const plan = state.desk.wicks;
  if (!plan) return null;
  const corners = plan.wall.length ? plan.wall : [[-plan.radius, -plan.radius], [plan.radius, plan.radius]];
  const [xs, ys] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
  const [left, low, right, high] = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  const across = Math.max(right - left, high - low), room = across * 0.04;
  const wall = plan.wall.length ? drawn("polygon", { points: plan.wall.map((c) => c.join(",")).join(" "), class: "wall" }) : drawn("circle", { cx: 0, cy: 0, r: plan.radius, class: "wall" });
  const wicks = plan.wicks.flatMap(([x, y]) => [drawn("circle", { cx: x, cy: y, r: plan.free, class: "room" }), drawn("circle", { cx: x, cy: y, r: Math.max(across / 60, 1.5), class: "wick" })]);
  return drawn("svg", { viewBox: `${left - room} ${low - room} ${across + 2 * room} ${across + 2 * room}`, width: 96, height: 96, class: "wicks", "aria-hidden": "true" }, wall, ...wicks);
}
