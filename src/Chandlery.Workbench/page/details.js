// Everything that a candle's or batch's declaration holds, each field with what it means.
import { button, el, fill } from "./elements.js";
import { t } from "./words.js";
import { amountsOf } from "./amounts.js";
import { fieldName } from "./fields.js";
import { drawFields, fieldsOf } from "./form.js";
import { goToField } from "./problems.js";
import { state, touched } from "./state.js";

export function drawDetails(place) {
  const { declared } = state;
  const form = {
    values: declared.values,
    changed: () => {
      // Oils and load are typed here as well: the amounts of the blend follow.
      if (state.form) state.form = amountsOf(declared.values);
      touched();
    },
  };
  const fields = fieldsOf(declared.declares);
  // A declaration is longer than the screen: the list beside it leads to each field.
  fill(place, el("div", { class: "declaration" }, el("form", { class: "form", "aria-label": t("Details"), onsubmit: (e) => e.preventDefault() }, el("p", { class: "soft" }, t("What you change is kept at once and can be taken back.")), drawFields(fields, form)),
    el("aside", { class: "contents", "aria-label": t("Contents") }, el("ul", { class: "plain" }, fields.map((f) => el("li", {}, button(fieldName(f.key), () => goToField(f.key), { class: "link" })))))));
}
