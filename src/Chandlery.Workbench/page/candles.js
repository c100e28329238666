// All candles and batches of the folder.
import { askJson } from "./ask.js";
import { button, el, fill, list, main, say } from "./elements.js";
import { folder, shapes, showAgain } from "./folder.js";
import { said } from "./told.js";
import { count, markOf, moment, placeName, t } from "./words.js";
import { bringBack, copy, putAway } from "./files.js";

const rowHeight = 64, spare = 8;

/** A candle under several editions of the law is one row. */
function rowsOf(data) {
  const byId = new Map();
  for (const r of data.rows) {
    const row = byId.get(r.id) ?? { id: r.id, name: r.name, places: [], stops: false, words: [], ufi: r.ufi };
    row.places.push(...r.places);
    row.stops ||= r.stopsSale;
    row.words.push(r.limitsBroken.length ? t("over a limit: {what}", { what: r.limitsBroken.join(", ") }) : r.signalWord ? t("warning label “{word}”", { word: markOf(r.signalWord) }) : r.statements.length ? t("no warning, substances named") : t("no warning"));
    row.search = `${row.search ?? ""} ${r.id} ${r.name} ${r.classes.join(" ")} ${r.statements.join(" ")}`.toLowerCase();
    byId.set(r.id, row);
  }
  for (const w of data.wrong) byId.set(w.id, { id: w.id, name: w.id, places: [], stops: true, why: w.why, words: [t("cannot be assessed")], search: w.id.toLowerCase() });
  return [...byId.values()];
}

function sentence(rows) {
  const stopped = rows.filter((r) => r.stops).length;
  return !rows.length ? t("No candle yet.") : stopped === 0 ? count(rows.length, "1 candle, and it may be sold.", "All {n} candles and batches may be sold.")
    : `${count(rows.length, "1 candle", "{n} candles and batches")}; ${count(stopped, "1 must not be sold as it is.", "{n} must not be sold as they are.")}`;
}

export async function showCandles() {
  const data = await askJson("/api/candles");
  const all = rowsOf(data);
  const history = await askJson("/api/history?declares=candle&id=none");
  const filter = el("input", { id: "filter", type: "search", autocomplete: "off", oninput: () => { sessionStorage.setItem("filter", filter.value); draw(); }, value: sessionStorage.getItem("filter") ?? "" });
  const shown = el("p", { class: "soft", role: "status" });
  const rows = el("div", { class: "many", role: "list" });
  const lines = new Map();
  let found = [];
  const draw = () => {
    const wanted = filter.value.trim().toLowerCase();
    found = all.filter((r) => r.search.includes(wanted));
    shown.textContent = t("{n} of {all}", { n: found.length, all: all.length });
    rows.style.height = `${found.length * rowHeight}px`;
    window_();
  };
  // Only the rows that can be seen are in the page: two thousand candles scroll as ten do. A row that stays keeps its element, and the row in
  // use stays wherever it is: a click that begins before the page scrolls under it still ends where it began.
  const window_ = () => {
    const from = Math.max(0, Math.floor((scrollY - rows.offsetTop) / rowHeight) - spare);
    const until = from + Math.ceil(innerHeight / rowHeight) + 2 * spare;
    const wanted = new Map();
    found.forEach((r, i) => { if ((i >= from && i < until) || lines.get(r.id)?.contains(document.activeElement)) wanted.set(r.id, i); });
    for (const [id, line] of lines) if (!wanted.has(id)) { line.remove(); lines.delete(id); }
    let next = rows.firstChild;
    for (const [id, at] of wanted) {
      const line = lines.get(id) ?? row(found[at]);
      lines.set(id, line);
      line.style.top = `${at * rowHeight}px`;
      line.setAttribute("aria-setsize", found.length);
      line.setAttribute("aria-posinset", at + 1);
      if (line === next) next = next.nextSibling;
      else rows.insertBefore(line, next);
    }
  };
  const away = history.putAway.filter((f) => f.file.startsWith("candles/") || f.file.startsWith("batches/"));
  fill(main, el("div", { class: "lead-row" }, el("h1", {}, sentence(all)), el("a", { class: "button main", href: "#/new" }, t("New candle"))),
    folder.problems.length ? el("section", { class: "problems", "aria-label": t("Files with problems") }, el("h2", {}, t("Files with problems")), list(folder.problems.map(said), "plain")) : null,
    el("div", { class: "row" }, el("label", { for: "filter" }, t("Find")), filter, shown), rows,
    away.length ? el("details", {}, el("summary", {}, count(away.length, "1 file put away", "{n} files put away")), el("ul", { class: "rows" }, away.map((f) => el("li", {}, el("span", {}, f.file.replace(/^.*\/|\.ya?ml$/g, "")), el("span", { class: "soft" }, moment(f.at)),
      button(t("Bring back"), () => bringBack(f.file, f.hash).then(showAgain).catch((e) => say(e.message))))))) : null);
  draw();
  addEventListener("scroll", window_, { passive: true });
  return async () => { removeEventListener("scroll", window_); return true; };
}

function row(r) {
  const href = `#/candle/${encodeURIComponent(r.id)}`;
  const isBatch = folder.supplies.batch?.some((b) => b.id === r.id);
  const places = [...new Set(r.places)].map((code) => placeName(code, shapes.places.find((p) => p.code === code)?.name)).join(", ");
  const work = (done) => done.then(showAgain).catch((e) => say(e.message));
  return el("div", { class: r.stops ? "one stopped" : "one", role: "listitem" },
    el("a", { href }, el("strong", {}, r.name), el("span", { class: "soft" }, ` ${isBatch ? r.id : ""}`)),
    el("span", { class: r.stops ? "stop" : "" }, r.stops ? t("must not be sold") : "", r.stops ? " · " : "", [...new Set(r.words)].join("; ")), el("span", { class: "soft" }, said(r.why) ?? places),
    isBatch ? el("span") : el("span", { class: "row" }, button(t("Copy"), () => copy("candle", r.id, r.name).then((id) => { if (id) location.hash = `#/candle/${encodeURIComponent(id)}`; }).catch((e) => say(e.message)), { "aria-label": t("Copy {name}", { name: r.name }) }),
      button(t("Put away"), () => work(putAway("candle", r.id, r.name)), { "aria-label": t("Put {name} away", { name: r.name }) })));
}
