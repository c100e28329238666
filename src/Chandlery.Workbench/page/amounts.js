// The figures of a blend. Each oil keeps what was last saved or typed (its base); what is shown is always reckoned from that,
// never from what was shown before, so that dragging or converting there and back gives the same figure.
import { figure } from "./elements.js";

const shownFigures = 5;

/** A typed figure; not a number when it is none, or when its comma may mark thousands (the program refuses it too). */
export function number(text) {
  const trimmed = String(text).trim();
  if (/^[1-9][0-9]*,[0-9]{3}$/.test(trimmed)) return NaN;
  const point = trimmed.replace(",", ".");
  return /^[0-9]+(\.[0-9]+)?$|^\.[0-9]+$/.test(point) ? Number(point) : NaN;
}

/** The form of a file: every amount is its own base. */
export function formOf(desk) {
  if (!desk.form) return null;
  const form = structuredClone(desk.form);
  form.factor = 1;
  typeLoad(form, form.loadPercent);
  form.oils.forEach(rebase);
  return form;
}

function rebase(oil) {
  oil.base = { amount: oil.amount, measure: oil.measure };
  oil.why = null;
}

/** Takes what was typed for an oil; what a drag had made of the others now stands as if typed. */
export function type(form, oil, amount) {
  oil.amount = amount;
  if (form.factor !== 1) { form.factor = 1; form.oils.forEach(rebase); }
  rebase(oil);
}

/** Takes the load that was typed: conversions start from it, and dragging comes back to it. */
export function typeLoad(form, value) {
  form.loadPercent = value;
  form.homeLoad = value;
  form.baseLoad = { value, of: form.loadOf };
  form.loadWhy = null;
}

/**
 * Tells the same load of the other: of the wax, or of the scented melt. How much else there is for 100 parts of wax follows from the
 * two loads of any assessment, because extras go by the wax. Without one the figure is asked for.
 */
export function loadOf(desk, form, wanted) {
  // What was dragged now stands as if typed.
  if (form.loadPercent !== form.homeLoad) typeLoad(form, form.loadPercent);
  const { value, of } = form.baseLoad;
  const known = desk.assessments[0]?.loadPercent;
  const waxAndExtras = known ? 100 * known.meltOfWax / known.meltOfCandle - known.meltOfWax : NaN;
  const load = number(value);
  const told = wanted === "candle" ? 100 * load / (waxAndExtras + load) : load * waxAndExtras / (100 - load);
  form.loadOf = wanted;
  form.loadPercent = wanted === of ? value : Number.isFinite(told) ? figure(told, shownFigures) : "";
  form.homeLoad = form.loadPercent;
  form.loadWhy = form.loadPercent === "" ? "The load cannot be reckoned for the other measure before the candle is assessed: type it." : null;
}

/** Grams in one of a measure; a share counts as grams in 100 g of the blend. Undefined when it is not declared. */
const gramsIn = (desk, oil, measure) => {
  const declared = desk.oils.find((o) => o.id === oil.oil);
  return measure === "millilitres" ? declared?.gramsPerMl ?? undefined : measure === "drops" ? declared?.gramsPerDrop ?? undefined : 1;
};

const baseGrams = (desk, oil) => number(oil.base.amount) * (gramsIn(desk, oil, oil.base.measure) ?? NaN);

/** Reckons every amount anew from its base. */
function reckon(desk, form) {
  const shares = form.oils.length > 0 && form.oils.every((o) => o.measure === "share");
  const normalised = shares && form.oils.some((o) => o.base.measure !== "share");
  const total = form.oils.reduce((sum, o) => sum + baseGrams(desk, o), 0);
  for (const oil of form.oils) {
    const name = desk.oils.find((o) => o.id === oil.oil)?.name ?? oil.oil;
    oil.why = null;
    if (!normalised && oil.measure === oil.base.measure && (form.factor === 1 || oil.measure === "share")) { oil.amount = oil.base.amount; continue; }
    const missing = [oil.base.measure, oil.measure].find((m) => gramsIn(desk, oil, m) === undefined);
    const value = normalised ? 100 * baseGrams(desk, oil) / total : baseGrams(desk, oil) / (gramsIn(desk, oil, oil.measure) ?? NaN) * form.factor;
    oil.amount = Number.isFinite(value) ? figure(value, shownFigures) : "";
    if (oil.amount === "") {
      oil.why = missing ? `The ${missing === "drops" ? "mass of a drop" : "density"} of ${name} is not declared, so the amount cannot be reckoned: type it.`
        : normalised ? "The share cannot be reckoned, because the mass of another oil is not known: type it."
        : "The amount was no figure: type it in the new measure.";
    }
  }
  if (normalised && form.oils.every((o) => o.why === null)) makeTogether(form, 100);
}

/** The measures that an oil may have: without a load, only what is weighed says how much oil there is. */
export const measuresOf = (form) => form.waxGrams !== null && form.loadPercent === null ? ["grams", "millilitres", "drops"] : ["share", "grams", "millilitres", "drops"];

/** Gives an oil another measure. Shares and weighed amounts cannot stand side by side: the others follow. True when they did. */
export function measure(desk, form, oil, wanted) {
  const others = form.oils.filter((o) => o !== oil && (wanted === "share") !== (o.measure === "share"));
  for (const other of others) other.measure = wanted === "share" ? "share" : "grams";
  oil.measure = wanted;
  reckon(desk, form);
  return others.length > 0;
}

/** The load that was last saved or typed, in percent of the plot's basis; not a number when it cannot be told. */
export function homeLoad(desk, form) {
  return desk.form.loadPercent !== null ? number(form.homeLoad) : 100 * form.oils.reduce((sum, o) => sum + baseGrams(desk, o), 0) / form.waxGrams;
}

/** A weighed blend has no load of its own: its amounts are scaled from what was typed. */
export function setLoad(desk, form, value) {
  const home = homeLoad(desk, form);
  const back = Math.abs(value - home) < 1e-6;
  if (desk.form.loadPercent !== null) {
    form.loadPercent = back ? form.homeLoad : Number(figure(value, shownFigures));
    return;
  }
  if (!(home > 0)) return;
  form.factor = back ? 1 : value / home;
  reckon(desk, form);
}

/** What the shares come to together; null when the blend is not given by shares, or one of them is no figure. */
export function shareTotal(form) {
  if (form.oils.length === 0 || form.oils.some((o) => o.measure !== "share")) return null;
  const total = form.oils.reduce((sum, o) => sum + number(o.amount), 0);
  return Number.isFinite(total) ? Number(total.toFixed(6)) : null;
}

/** Makes the shares 100 % in their present proportions; the largest takes what rounding leaves. */
export function makeWhole(form) {
  makeTogether(form, shareTotal(form));
  form.oils.forEach(rebase);
}

function makeTogether(form, total) {
  const hundredths = form.oils.map((o) => Math.round(10000 * number(o.amount) / total));
  const largest = hundredths.indexOf(Math.max(...hundredths));
  hundredths[largest] += 10000 - hundredths.reduce((a, b) => a + b, 0);
  form.oils.forEach((o, i) => { o.amount = String(hundredths[i] / 100); });
}
