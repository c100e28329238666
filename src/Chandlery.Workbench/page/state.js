// The candle on the desk, shared by the parts of its page.
export const state = {
  /** What the program last said of the candle; its form and hash stay those of the file. */
  desk: null,
  /** What the fields hold now; null for what cannot be edited. */
  form: null,
  changed: false,
  /** True while a finger holds the mark of the plot. */
  dragging: false,
  /** Counts the candles that were opened: what was asked for an earlier one is dropped. */
  visit: 0,
};

const text = (value) => value === null || value === undefined ? null : String(value);
const bare = (oils) => oils.map((o) => ({ oil: o.oil, amount: o.amount, measure: o.measure }));

/** Only what differs from the file goes to the program; null when nothing does. */
export function edits() {
  const { desk, form } = state;
  if (!form || !desk.form) return null;
  const differs = (key) => text(form[key]) !== text(desk.form[key]) ? text(form[key]) : null;
  const oils = JSON.stringify(bare(form.oils)) === JSON.stringify(bare(desk.form.oils)) ? null : bare(form.oils);
  const all = { name: differs("name"), netGrams: differs("netGrams"), loadPercent: differs("loadPercent"), loadOf: differs("loadOf"), wickCount: differs("wickCount"), oils };
  return Object.values(all).every((v) => v === null) ? null : all;
}
