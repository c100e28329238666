// What was labelled.
import { ask, askJson } from "./ask.js";
import { button, download, el, fill, list, main, say, whisper } from "./elements.js";
import { count, moment, t } from "./words.js";

function entry(e) {
  const text = el("pre", { tabindex: "0", hidden: true, "aria-label": t("The declaration as it was") });
  const show = async (hash) => { text.textContent = await (await ask(`/api/register/declaration?hash=${hash}`)).text(); text.hidden = false; text.focus(); };
  return el("li", {}, el("details", {}, el("summary", {}, el("strong", {}, `${e.number} · ${e.candle}`), el("span", {}, ` ${e.batch}`), el("span", { class: "soft" }, ` ${moment(e.at)}, ${e.by}`)),
    el("dl", {}, el("dt", {}, t("Law, day")), el("dd", {}, e.law), el("dt", {}, t("Oils and their documents")), el("dd", {}, e.oils.join("; ")), el("dt", {}, t("Substances")), el("dd", {}, e.substances.join("; ")),
      el("dt", {}, t("Papers")), el("dd", {}, e.documents.map((d) => [el("span", {}, d.name), el("span", { class: "soft hash" }, ` ${d.sha256.slice(0, 12)}… `)])),
      el("dt", {}, t("Declarations of that day")), el("dd", {}, e.declarations.map((d) => button(d.path, () => show(d.sha256).catch((x) => say(x.message)), { class: "link" }))),
      el("dt", {}, t("Hash")), el("dd", { class: "hash" }, e.hash)), el("p", {}, el("a", { href: `#/candle/${encodeURIComponent(e.subject)}` }, t("To the candle as it is now"))), text));
}

export async function showRegister() {
  const body = el("div");
  const title = el("h1", {}, t("Register"));
  const find = el("input", { id: "find", type: "search", autocomplete: "off" });
  const draw = async () => {
    const data = await askJson(`/api/register?find=${encodeURIComponent(find.value)}`);
    title.textContent = data.wrong.length ? t("The register was changed afterwards.") : !data.entries.length && !find.value ? t("Nothing was labelled yet.") : find.value ? count(data.entries.length, "1 entry is about that.", "{n} entries are about that.") : count(data.entries.length, "1 entry, and it holds together.", "{n} entries, and they hold together.");
    fill(body, data.wrong.length ? list(data.wrong, "problems") : null, el("ul", { class: "rows entries" }, data.entries.map(entry)), data.hasMore ? el("p", {}, t("Only the latest are shown: search for the others.")) : null,
      data.head ? el("p", { class: "soft" }, t("Write the last hash down elsewhere, and nobody can cut the end off unseen:"), " ", el("span", { class: "hash" }, data.head)) : null);
    whisper(title.textContent);
  };
  const take = async (as, name) => { try { download(await (await ask(`/api/register/file?as=${as}`)).blob(), name); say(t("{name} is in your downloads.", { name })); } catch (error) { say(error.message); } };
  fill(main, title,
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw().catch((x) => say(x.message)); } }, el("label", { for: "find" }, t("Batch, substance or CAS number, oil, or document")), find, el("button", { class: "main" }, t("Find"))), body,
    el("div", { class: "row" }, button(t("Table (CSV)"), () => take("csv", "register.csv")), button(t("Copy of the register"), () => take("copy", "register.db")), button(t("Check every hash"), () => { find.value = ""; draw().catch((x) => say(x.message)); })));
  await draw();
}
