// A field that names files beside the declaration: a logo, a font, photographs. They are chosen or dropped, and copied into the folder.
import { askJson } from "./ask.js";
import { button, el, say, takesDrops } from "./elements.js";
import { t } from "./words.js";

/**
 * The control with a place to drop files.
 * @param control the control that holds the names
 * @param endings what the files' names end with
 * @param of { declares, id } – the declaration, for the files to lie beside it
 * @param take what is done with the names of files that lie there now
 */
export function attachable(control, endings, of, take) {
  const files = el("input", { type: "file", accept: endings.join(","), multiple: control.tagName === "TEXTAREA", class: "unseen", tabindex: "-1", "aria-hidden": "true", onchange: () => bring([...files.files]) });
  const place = el("div", { class: "row attach" }, control, button(t("Choose a file"), () => files.click()), files);
  async function bring(chosen) {
    const names = [];
    try {
      for (const file of chosen) {
        const body = new FormData();
        body.append("declares", of.declares);
        body.append("id", of.id ?? "");
        body.append("files", file, file.name);
        names.push((await askJson("/api/attach", body)).name);
      }
    } catch (error) {
      say(error.message);
    }
    if (names.length) take(names);
  }
  return takesDrops(place, bring);
}
