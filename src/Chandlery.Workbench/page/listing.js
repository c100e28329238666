// Texts of the candle for a web shop or an advertisement: each part with a button that copies it, and all as a file.
import { askJson } from "./ask.js";
import { button, el, list, say } from "./elements.js";
import { state } from "./state.js";
import { said } from "./told.js";
import { languageName, t } from "./words.js";
import { takeFile } from "./taking.js";

const uses = [["shop", "Text for a shop"], ["advert", "Text for an advertisement"]]; // told by t()
const formats = [["text", "txt"], ["html", "html"], ["csv", "csv"]];

const wish = (kind, format = null) => ({ id: state.declared.id, edits: state.declared.edits(), paper: { kind, edition: state.paper.edition, format } });

/**
 * The choices.
 * @param show puts elements where papers are shown
 */
export const listingChoices = (show) => el("details", { class: "stocks" }, el("summary", {}, t("Texts for shop and advertisement")),
  el("div", { class: "inside" }, el("p", { class: "soft" }, t("What an offer or an advertisement must say, in each language of the label.")),
    el("div", { class: "row" }, uses.map(([use, name]) => button(t(name), () => look(use, show))))));

async function look(use, show) {
  try {
    const { listings, refused } = await askJson("/api/listing", wish(use));
    show(el("div", { class: "listing" }, el("h2", { tabindex: "-1", id: "listing-title" }, t(uses.find(([u]) => u === use)[1])),
      refused.length ? list(refused.map(said), "problems") : null,
      listings.length ? el("div", { class: "row", role: "group", "aria-label": t("Downloads") }, formats.map(([format, ending]) => button(ending.toUpperCase(), () => take(use, format, ending)))) : null,
      listings.map(one)));
    document.getElementById("listing-title")?.focus();
  } catch (error) {
    show(el("p", { class: "stop none" }, error.message));
  }
}

function one(listing) {
  return el("section", { "aria-label": languageName(listing.language) }, el("h3", {}, languageName(listing.language)),
    el("dl", { lang: listing.language }, listing.parts.map((p) => [el("dt", {}, p.heading), el("dd", {}, p.texts.map((text) => el("p", {}, text)), el("p", { class: "soft", lang: document.documentElement.lang }, p.clause, " ", button(t("Copy"), () => copy(p.texts), { class: "link", "aria-label": `${t("Copy")}: ${p.heading}` })))])),
    listing.look.length ? [el("h3", {}, t("Mind before handing it out")), list(listing.look.map(said), "plain")] : null);
}

async function copy(texts) {
  try {
    await navigator.clipboard.writeText(texts.join("\n"));
    say(t("Copied."));
  } catch {
    say(t("The browser does not let this page copy: mark the text and copy it by hand."));
  }
}

const take = (use, format, ending) => takeFile(`${state.declared.id}-${use}.${ending}`, "/api/listing", wish(use, format));
