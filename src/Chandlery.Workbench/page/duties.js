// What is due for a candle beside its hazard label: what is open first, and the way to where it is done.
import { askJson } from "./ask.js";
import { el, fill } from "./elements.js";
import { state } from "./state.js";
import { said } from "./told.js";
import { count, day, listed, placeName, t } from "./words.js";
import { shapes, supplies } from "./folder.js";

const groups = [["open", "Open"], ["byHand", "Yours to do, outside the program"], ["later", "Due later"], ["done", "Done, and shown"], ["notDue", "Not due for this candle"]]; // told by t()

/** Where a duty is done on the page; null where it is done elsewhere. */
function placeOf(by) {
  const own = `#/candle/${encodeURIComponent(state.declared.id)}`;
  const maker = supplies("maker")[0];
  return {
    assessment: own, ufi: own, answers: `${own}/details`, wick: `${own}/details`, packaging: `${own}/details`, card: `${own}/papers`, listing: `${own}/papers`, advert: `${own}/papers`, technicalFile: `${own}/papers`, procedure: `${own}/papers`, batchCode: `${own}/pour`,
    lots: "#/declaration/lot", tests: "#/declaration/test", dispatches: "#/declaration/dispatch", weighings: "#/declaration/weighing", incidents: "#/declaration/incident",
    roles: maker ? `#/declaration/maker/${encodeURIComponent(maker.id)}` : "#/declaration/maker",
  }[by] ?? null;
}

const placesOf = (codes) => listed(codes.map((c) => placeName(c, shapes.places.find((p) => p.code === c)?.name)));

function line({ duty, by }) {
  const href = duty.state === "open" || duty.state === "byHand" ? placeOf(by) : null;
  return el("li", { class: "duty" }, el("p", {}, el("strong", {}, said(duty.says)), " ", el("span", { class: "soft" }, placesOf(duty.places))),
    el("p", { class: duty.state === "open" ? "stop" : "" }, duty.state === "later" && duty.from ? t("From {day} on.", { day: day(duty.from) }) : said(duty.shown)),
    el("p", { class: "soft" }, duty.clause, href ? " · " : null, href ? el("a", { href }, t("Go there")) : null));
}

export async function drawDuties(place) {
  fill(place, el("p", {}, t("Looking…")));
  try {
    const { duties, unknown } = await askJson("/api/duties", { id: state.declared.id, edits: state.declared.edits() });
    if (!place.isConnected) return;
    const open = duties.filter((d) => d.duty.state === "open").length;
    fill(place, el("div", { class: "duties" },
      el("p", { class: "sentence" }, open ? count(open, "1 duty is open.", "{n} duties are open.") : duties.length ? t("No duty that is known here is open.") : t("No duties are known here.")),
      el("p", { class: "soft" }, t("What the law asks of you beside the hazard label. What the program cannot see is yours to do; it does not replace a competent person.")),
      unknown.length ? el("p", { class: "unknown" }, t("No duties are known here for {places}: that does not mean that there are none.", { places: listed(unknown) })) : null,
      groups.map(([name, title]) => [name, title, duties.filter((d) => d.duty.state === name)]).filter(([, , rows]) => rows.length).map(([name, title, rows]) => name === "done" || name === "notDue"
        ? el("details", {}, el("summary", {}, `${t(title)} (${rows.length})`), el("ul", { class: "rows" }, rows.map(line)))
        : el("section", { "aria-label": t(title) }, el("h2", {}, t(title)), el("ul", { class: "rows" }, rows.map(line))))));
  } catch (error) {
    fill(place, el("p", { class: "stop" }, error.message));
  }
}
