// What was labelled.
import { askJson, el, fill, list, main, say, table } from "./elements.js";

export async function showRegister() {
  const body = el("div");
  const find = el("input", { id: "find", type: "search" });
  const draw = async () => {
    const data = await askJson(`/api/register?find=${encodeURIComponent(find.value)}`);
    fill(body,
      data.wrong.length ? list(data.wrong, "problems") : el("p", { class: "good" }, data.entries.length ? "The entries hold together." : "No entries."),
      data.entries.length ? table("Register", ["No.", "When (UTC)", "By", "Batch", "Candle", "Law, day", "Oils and their documents", "Documents"], data.entries.map((e) => el("tr", {},
        el("td", { class: "num" }, String(e.number)), el("td", {}, e.at), el("td", {}, e.by), el("td", {}, e.batch), el("td", {}, e.candle), el("td", {}, e.law), el("td", {}, e.oils.join("; ")), el("td", {}, e.documents.join(", "))))) : "");
    say(`${data.entries.length} entries.`);
  };
  fill(main, el("h1", {}, "Register"), el("section", { "aria-label": "Entries" },
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw().catch((x) => say(x.message)); } },
      el("div", {}, el("label", { for: "find" }, "Batch, substance or CAS number, oil, or document"), find), el("button", { class: "main" }, "Find")), body));
  await draw();
}
