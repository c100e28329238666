// What another day's law would change.
import { askJson, el, fill, list, main, say } from "./elements.js";

export async function showChanges() {
  const today = new Date().toISOString().slice(0, 10);
  const from = el("input", { id: "from", type: "date", value: today });
  const to = el("input", { id: "to", type: "date", value: "2028-01-01" });
  const body = el("div", { "aria-live": "polite" });
  const draw = async () => {
    const data = await askJson(`/api/changes?from=${from.value}&to=${to.value}`);
    if (data.problems) { fill(body, list(data.problems, "problems")); return; }
    fill(body, data.changes.length ? null : el("p", {}, "Nothing changes."), ...data.changes.map((c) => el("section", {}, el("h2", {}, `${c.id} (${c.edition})`), c.remark ? el("p", {}, c.remark) : "",
      list(c.changes.map((x) => el("span", {}, el("strong", {}, `${x.begins ? "begins" : "ends"}: ${x.subject}: ${x.text}`), el("br"), el("span", { class: "soft" }, x.why))), "plain"))));
    say(`${data.changes.length} candles change.`);
  };
  fill(main, el("h1", {}, "What would change"), el("section", { "aria-label": "Days" },
    el("p", {}, "Compares the folder under the law of two days. For a new oil revision or another folder use the command 'changes'."),
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw().catch((x) => say(x.message)); } },
      el("div", {}, el("label", { for: "from" }, "Law of"), from), el("div", {}, el("label", { for: "to" }, "and of"), to), el("button", { class: "main" }, "Compare"))), body);
}
