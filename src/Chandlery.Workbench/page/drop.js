// A place to drop suppliers' PDFs.
import { askJson } from "./ask.js";
import { button, el, fill, list, say, takesDrops } from "./elements.js";
import { t } from "./words.js";

/** The PDFs of one oil come in; its draft is shown for review. */
export function dropPlace() {
  const told = el("div", { role: "status" });
  const files = el("input", { type: "file", accept: "application/pdf,.pdf", multiple: true, class: "unseen", id: "pdf-files", "aria-label": t("PDFs of one oil"), onchange: () => take([...files.files]) });
  const place = el("div", { class: "drop" }, el("p", {}, t("Drop the PDFs of one oil here")), button(t("Choose files"), () => files.click()), files, told);
  async function take(chosen) {
    if (!chosen.length) return;
    const body = new FormData();
    for (const file of chosen) body.append("files", file, file.name);
    fill(told, el("p", {}, t("Reading {name}…", { name: chosen.map((f) => f.name).join(", ") })));
    try {
      const answer = await askJson("/api/sheets", body);
      location.hash = `#/sheet/${encodeURIComponent(answer.id)}`;
    } catch (error) {
      fill(told, list(error.problems ?? [error.message], "problems plain"));
      say(error.message);
    }
  }
  return takesDrops(place, take);
}
