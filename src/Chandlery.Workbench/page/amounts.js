// The figures of a blend. Each oil keeps what was last saved or typed (its base); what is shown is always reckoned from that,
// never from what was shown before, so that dragging or converting there and back gives the same figure.
import { plain } from "./elements.js";
import { nameOf, supplies } from "./folder.js";
import { t } from "./words.js";

/** A typed figure; not a number when it is none, or when its comma may mark thousands (the program refuses it too). */
export function number(text) {
  const trimmed = String(text).trim();
  if (/^[1-9][0-9]*,[0-9]{3}$/.test(trimmed)) return NaN;
  const point = trimmed.replace(",", ".");
  return /^[0-9]+(\.[0-9]+)?$|^\.[0-9]+$/.test(point) ? Number(point) : NaN;
}

/** What was typed as a file writes it; as it is when its comma may mark thousands, or when it is no figure. */
export const decimal = (text) => Number.isNaN(number(text)) ? String(text).trim() : String(text).trim().replace(",", ".");

const measures = ["share", "grams", "millilitres", "drops"];

/** The amounts of a candle's file: every one is its own base. */
export function amountsOf(values) {
  const form = {
    oils: (values.oils ?? []).map((o) => { const measure = measures.find((m) => m in o) ?? "share"; return { oil: o.oil, amount: o[measure] ?? "", measure }; }),
    loadOf: values.load?.of ?? null,
    waxGrams: values.waxGrams === undefined ? null : number(values.waxGrams),
    hasLoad: values.load !== undefined,
    factor: 1,
  };
  typeLoad(form, values.load?.percent ?? null);
  form.oils.forEach(rebase);
  return form;
}

/** Writes the amounts into the candle's values. */
export function write(form, values) {
  values.oils = form.oils.map((o) => ({ oil: o.oil, [o.measure]: decimal(o.amount) }));
  if (form.hasLoad) values.load = { ...values.load, percent: decimal(form.loadPercent ?? ""), of: form.loadOf };
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
  const told = wanted === "candle" || wanted === "product" ? 100 * load / (waxAndExtras + load) : load * waxAndExtras / (100 - load);
  form.loadOf = wanted;
  form.loadPercent = wanted === of ? value : Number.isFinite(told) ? plain(told) : "";
  form.homeLoad = form.loadPercent;
  form.loadWhy = form.loadPercent === "" ? t("The load cannot be reckoned for the other measure before the candle is assessed: type it.") : null;
}

/** Grams in one of a measure; a share counts as grams in 100 g of the blend. Undefined when it is not declared. */
const gramsIn = (oil, measure) => {
  const declared = supplies("oil").find((o) => o.id === oil.oil);
  return measure === "millilitres" ? declared?.gramsPerMl ?? undefined : measure === "drops" ? declared?.gramsPerDrop ?? undefined : 1;
};

const baseGrams = (oil) => number(oil.base.amount) * (gramsIn(oil, oil.base.measure) ?? NaN);

/** Reckons every amount anew from its base. */
function reckon(form) {
  const shares = form.oils.length > 0 && form.oils.every((o) => o.measure === "share");
  const normalised = shares && form.oils.some((o) => o.base.measure !== "share");
  const total = form.oils.reduce((sum, o) => sum + baseGrams(o), 0);
  for (const oil of form.oils) {
    const name = nameOf("oil", oil.oil);
    oil.why = null;
    if (!normalised && oil.measure === oil.base.measure && (form.factor === 1 || oil.measure === "share")) { oil.amount = oil.base.amount; continue; }
    const missing = [oil.base.measure, oil.measure].find((m) => gramsIn(oil, m) === undefined);
    const value = normalised ? 100 * baseGrams(oil) / total : baseGrams(oil) / (gramsIn(oil, oil.measure) ?? NaN) * form.factor;
    oil.amount = Number.isFinite(value) ? plain(value) : "";
    if (oil.amount === "") {
      oil.why = missing === "drops" ? t("The mass of a drop of {name} is not declared, so the amount cannot be reckoned: type it.", { name })
        : missing ? t("The density of {name} is not declared, so the amount cannot be reckoned: type it.", { name })
        : normalised ? t("The share cannot be reckoned, because the mass of another oil is not known: type it.")
        : t("The amount was no figure: type it in the new measure.");
    }
  }
  if (normalised && form.oils.every((o) => o.why === null)) makeTogether(form, 100);
}

/** The measures that an oil may have: without a load, only what is weighed says how much oil there is. */
export const measuresOf = (form) => form.hasLoad ? measures : measures.slice(1);

/** Gives an oil another measure. Shares and weighed amounts cannot stand side by side: the others follow. True when they did. */
export function measure(form, oil, wanted) {
  const others = form.oils.filter((o) => o !== oil && (wanted === "share") !== (o.measure === "share"));
  for (const other of others) other.measure = wanted === "share" ? "share" : "grams";
  oil.measure = wanted;
  reckon(form);
  return others.length > 0;
}

/** The load that was last saved or typed, in percent of the plot's basis; not a number when it cannot be told. */
export function homeLoad(form) {
  return form.hasLoad ? number(form.homeLoad) : 100 * form.oils.reduce((sum, o) => sum + baseGrams(o), 0) / form.waxGrams;
}

/** A weighed blend has no load of its own: its amounts are scaled from what was typed. */
export function setLoad(form, value) {
  const home = homeLoad(form);
  const back = Math.abs(value - home) < 1e-6;
  if (form.hasLoad) {
    form.loadPercent = back ? form.homeLoad : plain(value);
    return;
  }
  if (!(home > 0)) return;
  form.factor = back ? 1 : value / home;
  reckon(form);
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
