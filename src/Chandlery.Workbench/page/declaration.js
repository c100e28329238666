// A declaration of any kind: its form, what it would change, and its history.
import { askJson } from "./ask.js";
import { button, el, fill, main, picture, say, way } from "./elements.js";
import { readFolder, supplies } from "./folder.js";
import { t } from "./words.js";
import { Declared, merged } from "./declared.js";
import { copy } from "./files.js";
import { drawFields, fieldsOf } from "./form.js";
import { drawPast } from "./past.js";
import { drawProblems } from "./problems.js";

const titles = { oil: "New oil", wax: "New wax", base: "New base of a liquid", set: "New gift set", vessel: "New vessel", extra: "New extra", lot: "New lot", test: "New burn test", weighing: "New weighing", dispatch: "Something sent out", incident: "Complaint or accident", maker: "The maker", brand: "The brand", batch: "New batch" }; // told by t()

export async function showDeclaration(kind, id) {
  const answer = await askJson("/api/form", { declares: kind, id });
  const declared = new Declared(answer, () => nameNow());
  const nameNow = () => declared.values.name ?? declared.values.code ?? (declared.hash === null || kind === "maker" || kind === "brand" ? t(titles[kind] ?? kind) : id);
  const isNew = answer.hash === null;
  let asked = 0;

  /** What is wrong with a new one is told when it is to be kept: nobody is blamed for fields that are still empty. */
  let strict = !isNew;
  const check = async () => {
    const mine = ++asked;
    declared.changed();
    const now = await askJson("/api/form", declared.request);
    if (mine !== asked) return;
    declared.problems = now.problems;
    if (strict) drawProblems(now.problems, document.getElementById("summary"));
    document.getElementById("title").textContent = nameNow();
    if (!isNew) { declared.keepSoon(); drawLive(); }
  };
  declared.reload = async (mine, base) => {
    const now = await askJson("/api/form", { declares: kind, id });
    const { values } = mine ? merged(now.values, mine, base) : { values: now.values };
    Object.assign(declared, { hash: now.hash, base: now.values, values, problems: now.problems, refused: null });
    draw();
    await check();
  };

  const keepNew = async (e) => {
    e.preventDefault();
    strict = true;
    await check();
    if (declared.problems.length) { document.querySelector("[aria-invalid=true]")?.focus(); return; }
    if (!await declared.keep(t("{name} made", { name: nameNow() }))) return;
    document.body.dataset.unkept = "";
    await readFolder();
    say(t("{name} is kept.", { name: nameNow() }));
    // Whoever came from a new candle's questions goes back to them.
    location.hash = sessionStorage.getItem("new-candle") ? "#/new" : `#/declaration/${kind}/${encodeURIComponent(declared.id)}`;
  };

  function draw() {
    const past = el("div");
    fill(main,
      el("div", { class: "path" }, way(t("Way"), "#/supplies", t("Supplies"), el("h1", { id: "title", tabindex: "-1" }, nameNow()))),
      el("div", { id: "conflict" }), el("div", { id: "summary" }),
      el("div", { class: "declaration" },
        el("form", { class: "form", novalidate: true, onsubmit: isNew ? keepNew : (e) => e.preventDefault() }, drawFields(fieldsOf(kind, ["draft"]), { values: declared.values, changed: () => check().catch((e) => say(e.message)), of: { declares: kind, id } }), isNew ? el("div", { class: "row" }, el("button", { class: "main", id: "keep" }, t("Keep"))) : null),
        isNew ? null : el("aside", { "aria-label": t("About it") },
          answer.usedBy.length ? el("p", {}, t("Used by {names}.", { names: answer.usedBy.join(", ") })) : null,
          declared.values.draft ? el("p", {}, el("a", { href: `#/sheet/${encodeURIComponent(id)}` }, t("Compare it with its supplier's PDF"))) : null,
          el("div", { id: "live" }),
          kind === "oil" || kind === "wax" ? el("p", {}, el("a", { href: `#/changes/${kind}/${encodeURIComponent(id)}` }, t("What would a new version change?"))) : null,
          kind === "maker" || kind === "brand" ? null : button(t("Copy"), () => copy(kind, id, nameNow()).then((to) => { if (to) location.hash = `#/declaration/${kind}/${encodeURIComponent(to)}`; }).catch((e) => say(e.message))),
          el("details", { ontoggle: (e) => { if (e.target.open) drawPast(past, kind, id); } }, el("summary", {}, t("History")), past))));
    if (!isNew) drawLive();
  }

  /** A brand's front with the first candle, as it is kept. */
  async function drawLive() {
    const place = document.getElementById("live");
    const first = supplies("candle")[0];
    if (kind !== "brand" || !first || declared.problems.length) return;
    const drawnNow = await askJson("/api/designs", { id: first.id, brand: declared.edits() }).catch(() => null);
    const page = drawnNow?.designs.find((d) => d.name === declared.values.design)?.page ?? drawnNow?.designs[0]?.page;
    if (page && place.isConnected) fill(place, el("h2", {}, t("With {name}", { name: first.name })), el("div", { class: "paper" }, picture(page, t("The front"))));
  }

  draw();
  return () => declared.leave();
}
