// Oils, waxes, vessels and all else that candles are made of, and the maker.
import { button, el, fill, main, say } from "./elements.js";
import { folder, showAgain, supplies } from "./folder.js";
import { said } from "./told.js";
import { count, t } from "./words.js";
import { putAway } from "./files.js";
import { dropPlace } from "./drop.js";

const groups = [["oil", "Oils"], ["wax", "Waxes"], ["vessel", "Vessels"], ["base", "Bases of liquids"], ["extra", "Dyes and other extras"], ["set", "Gift sets"], ["lot", "Lots"], ["test", "Burn tests"], ["weighing", "Weighings"], ["dispatch", "Sent out"], ["incident", "Complaints and accidents"]]; // told by t()
const alone = [["maker", "The maker"], ["brand", "The brand"]]; // told by t()

export function showSupplies() {
  const unsigned = supplies("oil").filter((o) => o.asks);
  const put = (kind, s) => putAway(kind, s.id, s.name).then(showAgain).catch((e) => say(e.message));
  fill(main, el("h1", {}, unsigned.length ? count(unsigned.length, "1 oil waits for your signature: no label is printed with it before.", "{n} oils wait for your signature: no label is printed with them before.") : t("Every oil is signed.")),
    el("div", { class: "supplies" },
      el("section", { "aria-labelledby": "bring" }, el("h2", { id: "bring" }, t("Bring a supplier's sheet")), dropPlace(),
        el("ul", { class: "rows" }, alone.map(([kind, title]) => el("li", {}, el("a", { href: `#/declaration/${kind}${supplies(kind).length ? `/${encodeURIComponent(supplies(kind)[0].id)}` : ""}` }, t(title)), el("span", { class: "soft" }, supplies(kind)[0]?.detail ?? t("not there yet")))))),
      groups.map(([kind, title]) => el("section", { "aria-labelledby": `kind-${kind}` }, el("div", { class: "lead-row" }, el("h2", { id: `kind-${kind}` }, t(title)), el("a", { href: `#/declaration/${kind}`, "aria-label": `${t("Add")}: ${t(title)}` }, t("Add"))),
        el("ul", { class: "rows" }, supplies(kind).map((s) => el("li", {}, el("a", { href: s.asks ? `#/sheet/${encodeURIComponent(s.id)}` : `#/declaration/${kind}/${encodeURIComponent(s.id)}` }, s.name), el("span", { class: "soft" }, s.detail), s.asks ? el("strong", { class: "question" }, t("to be signed")) : null,
          button(t("Put away"), () => put(kind, s), { "aria-label": t("Put {name} away", { name: s.name }) }))))))),
    folder.problems.length ? el("section", { class: "problems" }, el("h2", {}, t("Files with problems")), el("ul", {}, folder.problems.map((p) => el("li", {}, said(p))))) : null);
}
