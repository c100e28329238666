// What a declaration was at each time, how to get that back, and what its file is called.
import { ask, askJson } from "./ask.js";
import { button, el, fill, say } from "./elements.js";
import { kept, showAgain } from "./folder.js";
import { said } from "./told.js";
import { moment, t } from "./words.js";

export async function drawPast(place, declares, id) {
  const history = await askJson(`/api/history?declares=${declares}&id=${encodeURIComponent(id)}`);
  const text = el("pre", { tabindex: "0", hidden: true, "aria-label": t("The text as it was") });
  const show = async (hash) => { text.textContent = await (await ask(`/api/history/text?hash=${hash}`)).text(); text.hidden = false; text.focus(); };
  const back = async (hash) => {
    try {
      kept(await askJson("/api/file", { do: "text", declares, id, hash }));
      await showAgain();
      say(t("It is as it was then. Undo takes that back."));
    } catch (error) {
      say(error.message);
    }
  };
  fill(place, el("section", { class: "past", "aria-label": t("History") }, el("p", { class: "lead" }, history.texts.length ? t("Every change made on this page, the latest first.") : t("Nothing was changed on this page yet.")),
    el("ol", { class: "rows" }, history.texts.map((k, i) => el("li", {}, el("span", { class: "soft when" }, moment(k.at)), el("span", {}, said(k.what)),
      k.hash ? el("span", { class: "row" }, button(t("Look"), () => show(k.hash).catch((e) => say(e.message))), i > 0 ? button(t("Put back as it was"), () => back(k.hash)) : null) : el("span", { class: "soft" }, t("put away"))))), text,
    fileName(declares, id)));
}

/** The name of its file, which others name it by, and a place to change it. */
function fileName(declares, id) {
  if (declares === "maker" || declares === "brand") return null;
  const name = el("input", { id: "file-name", value: id, maxlength: "60", autocomplete: "off", spellcheck: "false" });
  const wrong = el("p", { class: "wrong", role: "alert" });
  const call = async (e) => {
    e.preventDefault();
    try {
      const answer = await askJson("/api/file", { do: "call", declares, id, name: name.value.trim() });
      kept(answer);
      say(t("Its file is called {name} now, wherever it is named.", { name: answer.id }));
      location.hash = location.hash.replace(`/${encodeURIComponent(id)}`, `/${encodeURIComponent(answer.id)}`);
    } catch (error) {
      wrong.textContent = error.message;
      name.focus();
    }
  };
  return el("form", { class: "file-name", onsubmit: call }, el("label", { for: "file-name" }, t("Name of its file")), el("div", { class: "row" }, name, el("button", {}, t("Call it so"))),
    el("p", { class: "soft" }, t("Other files name it by this. What people read is its trade name.")), wrong);
}
