// An empty folder: three ways to begin.
import { askJson } from "./ask.js";
import { button, drawn, el, fill, main } from "./elements.js";
import { folder } from "./folder.js";
import { t } from "./words.js";
import { dropPlace } from "./drop.js";

/** The label that is to come, with the name as it is typed. */
export function blankLabel(name) {
  const waves = Array.from({ length: 7 }, (_, i) => drawn("path", { d: `M0 ${12 + i * 12}c14-8 28 8 42 0s28-8 48 2`, class: "wave" }));
  const text = drawn("text", { x: 8, y: 118, class: "name" }, name || t("your candle"));
  return drawn("svg", { viewBox: "0 0 240 135", class: "blank", "aria-hidden": "true" }, drawn("rect", { width: 240, height: 135, class: "whole" }), drawn("rect", { width: 90, height: 135, class: "front" }), ...waves, text,
    drawn("path", { d: "M122 8l24 24-24 24-24-24z", class: "frame" }), drawn("text", { x: 156, y: 24, class: "small" }, t("What the law wants")), drawn("text", { x: 156, y: 34, class: "small" }, t("said appears here")), drawn("text", { x: 156, y: 44, class: "small" }, t("as soon as oils are in.")), drawn("text", { x: 232, y: 126, class: "net", "text-anchor": "end" }, "000 g"));
}

export function showBegin() {
  const picture = el("div", { class: "paper" }, blankLabel(""));
  const name = el("input", { id: "candle-name", autocomplete: "off", class: "large", oninput: () => fill(picture, blankLabel(name.value)) });
  const begin = (e) => { e.preventDefault(); sessionStorage.setItem("new-name", name.value.trim()); location.hash = "#/new"; };
  fill(main, el("h1", { class: "large" }, t("Nothing here yet. How would you like to begin?")),
    el("div", { class: "begin" },
      el("section", { "aria-labelledby": "own" }, picture, el("h2", { id: "own" }, t("Start with my own candle")), el("p", {}, t("Five questions, one at a time. The label grows while you answer; what you don't know yet can wait.")),
        el("form", { onsubmit: begin }, el("label", { for: "candle-name" }, t("What is it called?")), el("div", { class: "row" }, name, el("button", { class: "main" }, t("Begin"))))),
      el("div", {},
        el("section", { "aria-labelledby": "sheets" }, el("h2", { id: "sheets" }, t("Bring my suppliers' sheets")), el("p", {}, t("Drop the safety data sheet of an oil here, as PDF, with its certificates. It is read for you; you compare it with its picture and sign.")), dropPlace()),
        el("section", { "aria-labelledby": "example" }, el("h2", { id: "example" }, t("Look at an example")), el("p", {}, t("The candles of an invented maker, with all their papers. Change anything; your own folder stays as it is.")),
          button(t("Open the example"), async () => { await askJson("/api/begin", { example: true }).catch(() => {}); location.reload(); })),
        el("p", { class: "soft aside" }, t("Everything stays in the folder “{folder}” on this computer. Nothing is sent anywhere, and whatever you choose, you can do the other two later.", { folder: folder.folder ?? "" })))));
}
