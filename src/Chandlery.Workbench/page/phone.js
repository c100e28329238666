// Weighing on a phone: the page is opened to the maker's own network, and shut again.
import { askJson } from "./ask.js";
import { button, el, fill, say } from "./elements.js";
import { t } from "./words.js";

const isHere = ["127.0.0.1", "localhost"].includes(location.hostname);
let open = null;

/** The button that lets a phone in, and what the phone must scan; nothing on the phone itself. */
export function byPhone() {
  if (!isHere) return null;
  const place = el("section", { class: "by-phone", "aria-label": t("Weigh on my phone") });
  draw(place);
  return place;
}

function draw(place) {
  if (!open) { fill(place, button(t("Weigh on my phone"), () => turn(place, true))); return; }
  const code = el("img", { alt: t("QR code of the address below"), width: 200, height: 200, src: `data:image/svg+xml,${encodeURIComponent(open.code)}` });
  fill(place, el("h2", {}, t("Weigh on my phone")), code, el("p", {}, t("Scan this with the phone's camera, or open the address on it. It opens for one phone; ask for a new one for another.")),
    el("p", {}, el("code", {}, open.address)),
    el("p", { class: "soft" }, t("The phone must be in the same network as this computer. What it sends is not encrypted: do this in your own network, not in one that strangers use. The door shuts when you shut it, and with the program.")),
    el("div", { class: "row" }, button(t("A new code"), () => turn(place, true)), button(t("Shut the door"), () => turn(place, false))));
}

async function turn(place, wanted) {
  try {
    const answer = await askJson("/api/phone", { open: wanted, at: location.hash.slice(1) });
    open = answer.address ? answer : null;
    if (!open) say(t("Shut: no phone reaches the page any more."));
  } catch (error) {
    say(error.message);
  }
  draw(place);
}
