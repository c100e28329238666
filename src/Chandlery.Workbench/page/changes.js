// What another day's law, or a new version of an oil or wax, would change.
import { askJson } from "./ask.js";
import { el, fill, list, main, say, whisper } from "./elements.js";
import { nameOf, supplies } from "./folder.js";
import { said } from "./told.js";
import { count, t, today } from "./words.js";

const words = { begins: "begins", ends: "ends" }; // told by t()

/** The candles that change, each with what begins and ends, and its batches. */
export function drawChanges(place, data) {
  // A batch stands beside its candle, and may change in a row of its own.
  const sold = new Set(data.changes.flatMap((c) => c.batches.map((b) => b.code)));
  fill(place,
    el("p", { class: "sentence" }, data.changes.length ? `${count(data.changes.length, "1 candle changes.", "{n} candles change.")} ${sold.size ? count(sold.size, "1 batch was poured before.", "{n} batches were poured before.") : ""}` : t("Nothing changes.")),
    data.changes.map((c) => el("section", { "aria-label": c.name ?? c.change.id }, el("h2", {}, el("a", { href: `#/candle/${encodeURIComponent(c.change.id)}` }, c.name ?? c.change.id), el("span", { class: "soft" }, ` ${c.change.edition}`)),
      c.change.remark ? el("p", {}, said(c.change.remark)) : null,
      list(c.change.changes.map((x) => el("span", {}, el("strong", {}, `${t(x.begins ? words.begins : words.ends)}: ${said(x.text)}`), el("span", { class: "soft" }, ` ${said(x.subject)} · ${said(x.why)}`))), "plain"),
      c.batches.length ? el("p", {}, c.batches.map((b) => t("Batch {code}: {made} made, {sent} sent out.", { code: b.code, made: b.made ?? "?", sent: b.dispatched })).join(" ")) : null)));
  whisper(count(data.changes.length, "1 candle changes.", "{n} candles change."));
}

export async function showChanges() {
  const from = el("input", { id: "from", type: "date", value: today() });
  const to = el("input", { id: "to", type: "date", value: `${new Date().getFullYear() + 2}-01-01` });
  const body = el("div", { "aria-live": "polite" });
  const draw = async () => {
    try {
      drawChanges(body, await askJson(`/api/changes?from=${from.value}&to=${to.value}`));
    } catch (error) {
      fill(body, list(error.problems ?? [error.message], "problems"));
    }
  };
  fill(main, el("h1", {}, t("What would change")),
    el("section", { "aria-labelledby": "by-day" }, el("h2", { id: "by-day" }, t("Another day's law")),
      el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw(); } }, el("label", { for: "from" }, t("Law of")), from, el("label", { for: "to" }, t("and of")), to, el("button", { class: "main" }, t("Compare")))),
    el("section", { "aria-labelledby": "by-sheet" }, el("h2", { id: "by-sheet" }, t("A new version of an oil or wax")), el("p", {}, t("A new sheet as PDF comes in under Supplies: its draft stands beside the old oil until you sign it.")),
      el("ul", { class: "rows" }, ["oil", "wax"].flatMap((k) => supplies(k).map((s) => el("li", {}, el("a", { href: `#/changes/${k}/${encodeURIComponent(s.id)}` }, nameOf(k, s.id)), el("span", { class: "soft" }, s.detail)))))), body);
}
