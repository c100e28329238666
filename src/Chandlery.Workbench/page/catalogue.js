// All candles of the folder.
import { askJson, el, fill, list, main, say, showMaker, table } from "./elements.js";

export async function showCatalogue() {
  const data = await askJson("/api/catalogue");
  showMaker(data.maker ?? data.folder);
  const filter = el("input", { id: "filter", type: "search", oninput: () => draw() });
  const body = el("div");
  const draw = () => {
    const wanted = filter.value.trim().toLowerCase();
    const rows = data.rows.filter((r) => `${r.id} ${r.name} ${r.classes} ${r.statements}`.toLowerCase().includes(wanted));
    fill(body,
      table("All candles", ["Candle", "Sold in", "Classes", "Signal word", "Statements", "Limits", "Sale"], rows.map((r) => el("tr", {},
        el("td", {}, el("a", { href: `#/candle/${encodeURIComponent(r.id)}` }, r.name), el("span", { class: "soft" }, ` ${r.id}`)),
        el("td", {}, r.places.join(", ")), el("td", {}, r.classes.join(", ") || "none"), el("td", {}, r.signalWord ?? "none"),
        el("td", {}, r.statements.join(", ") || "none"),
        el("td", { class: r.limitsBroken.length ? "stop" : "good" }, r.limitsBroken.length ? `broken: ${r.limitsBroken.join("; ")}` : "held"),
        el("td", { class: r.stopsSale ? "stop" : "" }, r.stopsSale ? "stopped" : "–")))),
      el("p", { class: "soft" }, `${rows.length} of ${data.rows.length}`));
  };
  draw();
  fill(main,
    el("h1", {}, "Candles"),
    data.problems.length ? el("section", { "aria-label": "Problems" }, el("h2", {}, "Files with problems"), list(data.problems, "problems")) : null,
    el("section", { "aria-label": "Catalogue" }, el("div", { class: "row" }, el("div", {}, el("label", { for: "filter" }, "Find"), filter)), body));
  say(`${data.rows.length} candles assessed.`);
}
