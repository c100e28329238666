// Labels of the candle on a bought sheet, or one for a roll of a thermal printer.
import { askJson } from "./ask.js";
import { button, el, fill } from "./elements.js";
import { shapes } from "./folder.js";
import { state } from "./state.js";
import { said } from "./told.js";
import { t } from "./words.js";
import { decimal } from "./amounts.js";
import { takeFile } from "./taking.js";

const chosen = { stock: null, copies: "", start: "1", offsetXMm: "0", offsetYMm: "0", isCropMarked: false };

/**
 * The choices, folded until somebody wants them.
 * @param show shows pages with their warnings, { pages, warnings, whyNot }
 */
export function stockChoices(show) {
  chosen.stock ??= shapes.stocks[0]?.id;
  const inside = el("div", { class: "inside" });
  const stock = () => shapes.stocks.find((s) => s.id === chosen.stock);
  const number = (key, label, more = {}) => [el("label", { for: `stock-${key}` }, label), el("input", { id: `stock-${key}`, inputmode: "decimal", autocomplete: "off", value: chosen[key], oninput: (e) => { chosen[key] = e.target.value; }, ...more })];
  const body = (more) => ({ id: state.declared.id, edits: state.declared.edits(), stock: chosen.stock, edition: state.paper.edition, ...more });
  const asked = (isTest) => ({ copies: Number(chosen.copies) || null, start: stock().count ? Number(chosen.start) || 1 : null, offsetXMm: Number(decimal(chosen.offsetXMm)) || 0, offsetYMm: Number(decimal(chosen.offsetYMm)) || 0, isCropMarked: chosen.isCropMarked, isTest });

  async function look(isTest = false) {
    try {
      show(await askJson("/api/label-sheet", body({ options: asked(isTest) })));
    } catch (error) {
      show({ pages: [], warnings: [], whyNot: error.message });
    }
  }

  function take() {
    const name = `${state.declared.id}-${chosen.stock}.${stock().count ? "pdf" : "png"}`;
    return takeFile(name, "/api/label-sheet", body({ options: asked(false), format: "file" }));
  }

  function draw() {
    const isSheet = Boolean(stock()?.count);
    fill(inside,
      el("div", { class: "field" }, el("label", { for: "stock" }, t("Labels to print on")), el("select", { id: "stock", onchange: (e) => { chosen.stock = e.target.value; draw(); look(); } }, shapes.stocks.map((s) => el("option", { value: s.id, selected: s.id === chosen.stock }, said(s.name))))),
      isSheet ? [
        el("div", { class: "field" }, number("copies", t("How many labels"), { placeholder: t("the whole sheet") })),
        el("div", { class: "field" }, number("start", t("First free label of the sheet"))),
        el("details", {}, el("summary", {}, t("The printer prints beside the labels")), el("p", { class: "soft" }, t("Print the test page, hold it against a sheet of labels, and write how far it must be moved.")),
          el("div", { class: "field" }, number("offsetXMm", t("To the right, mm"))), el("div", { class: "field" }, number("offsetYMm", t("Down, mm"))),
          el("label", { class: "row" }, el("input", { type: "checkbox", checked: chosen.isCropMarked, onchange: (e) => { chosen.isCropMarked = e.target.checked; } }), t("Crop marks")), button(t("Test page"), () => look(true)))] : null,
      el("div", { class: "row" }, button(t("Show"), () => look()), button(isSheet ? t("Sheet as PDF") : t("Label as dots (PNG)"), take)));
  }

  draw();
  return el("details", { class: "stocks" }, el("summary", {}, t("Labels on a sheet or roll")), inside);
}
