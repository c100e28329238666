// What was labelled.
import { ask, askJson } from "./ask.js";
import { button, el, fill, list, main, say, whisper } from "./elements.js";
import { said as told } from "./told.js";
import { count, moment, t } from "./words.js";
import { takeFile } from "./taking.js";

function entry(e) {
  const text = el("pre", { tabindex: "0", hidden: true, "aria-label": t("The declaration as it was") });
  const show = async (hash) => { text.textContent = await (await ask(`/api/register/declaration?hash=${hash}`)).text(); text.hidden = false; text.focus(); };
  return el("li", {}, el("details", {}, el("summary", {}, el("strong", {}, `${e.number} · ${e.candle}`), el("span", {}, ` ${e.batch}`), el("span", { class: "soft" }, ` ${moment(e.at)}, ${e.by}`)),
    el("dl", {}, el("dt", {}, t("Law, day")), el("dd", {}, e.law), el("dt", {}, t("Oils and their documents")), el("dd", {}, e.oils.join("; ")), el("dt", {}, t("Substances")), el("dd", {}, e.substances.join("; ")),
      el("dt", {}, t("Papers")), el("dd", {}, e.documents.map((d) => [el("span", {}, d.name), el("span", { class: "soft hash" }, ` ${d.sha256.slice(0, 12)}… `)])),
      el("dt", {}, t("Declarations of that day")), el("dd", { class: "links" }, e.declarations.map((d) => button(d.path, () => show(d.sha256).catch((x) => say(x.message)), { class: "link" }))),
      el("dt", {}, t("Hash")), el("dd", { class: "hash" }, e.hash)), el("p", {}, el("a", { href: `#/candle/${encodeURIComponent(e.subject)}` }, t("To the candle as it is now"))), text));
}

export async function showRegister() {
  const body = el("div");
  const title = el("h1", {}, t("Register"));
  const find = el("input", { id: "find", type: "search", autocomplete: "off" });
  const said = (data, shown) => data.wrong.length ? t("The register was changed afterwards.") : !data.entries.length && !find.value ? t("Nothing was labelled yet.") : find.value ? (data.hasMore ? t("More than {n} entries are about that.", { n: shown }) : count(shown, "1 entry is about that.", "{n} entries are about that.")) : data.isChecked ? count(data.count, "1 entry, and it holds together.", "{n} entries, and they hold together.") : count(data.count, "1 entry.", "{n} entries.");
  let asked = 0;
  const draw = async (check = "") => {
    const mine = ++asked;
    const about = find.value;
    const page = (more) => askJson(`/api/register?find=${encodeURIComponent(about)}${more}`);
    const data = await page(check && "&check=all");
    // What was asked first and is answered last is not drawn over what came after.
    if (mine !== asked) return;
    title.textContent = said(data, data.entries.length);
    const rows = el("ul", { class: "rows entries" }, data.entries.map(entry));
    const older = button(t("Show older entries"), async () => {
      try {
        const next = await page(`&before=${rows.dataset.last}`);
        rows.append(...next.entries.map(entry));
        if (next.entries.length) rows.dataset.last = next.entries.at(-1).number;
        older.hidden = !next.hasMore;
        whisper(count(next.entries.length, "1 entry.", "{n} entries."));
      } catch (error) { say(error.message); }
    });
    rows.dataset.last = data.entries.at(-1)?.number ?? 0;
    older.hidden = !data.hasMore;
    fill(body, data.wrong.length ? [list(data.wrong.map(told), "problems"), button(t("Make anew what is searched"), rebuild)] : null, rows, el("p", {}, older),
      data.head ? el("p", { class: "soft" }, t("Write the last hash down elsewhere, and nobody can cut the end off unseen:"), " ", el("span", { class: "hash" }, data.head)) : null);
    whisper(title.textContent);
  };
  const rebuild = async () => {
    try { await ask("/api/register/rebuild", {}); await draw("all"); say(t("What is searched was made anew from what is signed.")); } catch (error) { say(error.message); }
  };
  const take = (as, name) => takeFile(name, `/api/register/file?as=${as}`);
  fill(main, title,
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw().catch((x) => say(x.message)); } }, el("label", { for: "find" }, t("Batch, substance or CAS number, oil, or document")), find, el("button", { class: "main" }, t("Find")), el("span", { class: "push" }), el("a", { href: "#/recall" }, t("Who has it, and a recall"))), body,
    el("div", { class: "row" }, button(t("Table (CSV)"), () => take("csv", "register.csv")), button(t("Copy of the register"), () => take("copy", "register.db")), button(t("Check every hash"), () => { find.value = ""; draw("all").catch((x) => say(x.message)); })));
  await draw();
}
