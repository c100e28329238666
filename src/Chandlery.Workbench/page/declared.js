// A declaration that is being edited: what the file says, what the fields say, and keeping it.
import { askJson } from "./ask.js";
import { untilBack } from "./away.js";
import { button, el, fill, say } from "./elements.js";
import { kept, showKept } from "./folder.js";
import { edits } from "./values.js";
import { t } from "./words.js";

const pauseBeforeKeeping = 600;

export class Declared {
  #waiting = null;
  #keeping = null;

  /** answer is what the program says of a declaration; called is what people call it. */
  constructor(answer, called) {
    this.declares = answer.declares;
    this.id = answer.hash === null ? "" : answer.id;
    this.called = called;
    this.hash = answer.hash;
    this.base = answer.values ?? {};
    this.values = structuredClone(this.base);
    this.problems = answer.problems;
    /** Why the last keeping was refused; until something is changed. */
    this.refused = null;
    showKept(this.hash === null ? "" : t("All changes kept"));
  }

  /** Only what differs from the file goes to the program; null when nothing does. */
  edits() { return edits(this.base, this.values); }

  get request() { return { declares: this.declares, id: this.id, edits: this.edits() }; }

  /** Says that something was changed: nothing is kept before the program has said what is wrong with it. */
  changed() {
    clearTimeout(this.#waiting);
    this.refused = null;
    const isChanged = this.edits() !== null;
    document.body.dataset.unkept = isChanged ? "yes" : "";
    showKept(isChanged ? t("Keeping…") : t("All changes kept"));
  }

  /** Keeps after a pause, unless something is wrong. A new declaration is kept when it is asked for. */
  keepSoon() {
    clearTimeout(this.#waiting);
    const isChanged = this.edits() !== null;
    document.body.dataset.unkept = isChanged ? "yes" : "";
    if (!isChanged) { showKept(t("All changes kept")); return; }
    if (this.problems.length) showKept(t("Not kept: see the problem"), true); else showKept(t("Keeping…"));
    if (this.hash !== null && !this.problems.length && !this.refused) this.#waiting = setTimeout(() => this.keep(), pauseBeforeKeeping);
  }

  /** Keeps now. True when everything is in the file; one keeping at a time. */
  async keep(what = null) {
    clearTimeout(this.#waiting);
    while (this.#keeping) await this.#keeping;
    const sending = this.edits();
    if (sending === null && this.hash !== null) return true;
    const sent = structuredClone(this.values);
    this.#keeping = askJson("/api/keep", { declares: this.declares, id: this.id, edits: sending, hash: this.hash, what: what ?? t("{name} changed", { name: this.called() }) });
    try {
      const answer = await this.#keeping;
      this.id = answer.id;
      this.hash = answer.hash;
      this.base = sent;
      this.#keeping = null;
      kept(answer);
      this.keepSoon();
      return true;
    } catch (error) {
      this.#keeping = null;
      if (error.isAway) {
        showKept(t("Not kept"), true);
        untilBack().then(() => this.keepSoon());
        return false;
      }
      this.refused = error;
      showKept(t("Not kept"), true);
      say(error.message);
      if (error.status === 409) this.offerMerge(error.message);
      return false;
    }
  }

  /** Before another view: keeps what can be kept, and asks where something would be lost. */
  async leave() {
    if (this.edits() === null || (!this.problems.length && await this.keep())) { document.body.dataset.unkept = ""; return true; }
    const may = confirm(t("Leave without keeping your changes?"));
    if (may) document.body.dataset.unkept = "";
    return may;
  }

  /** Somebody else changed the file: loads it with the changes of the fields, or without. Who shows the declaration says how. */
  offerMerge(message) {
    const place = document.getElementById("conflict");
    if (!place) return;
    fill(place, el("section", { class: "problems", "aria-labelledby": "conflict-title" }, el("h2", { id: "conflict-title" }, t("Not kept")), el("p", {}, message),
      el("div", { class: "row" },
        button(t("Load it with my changes"), () => this.reload(this.values, this.base).catch((e) => say(e.message)), { class: "main", id: "merge" }),
        button(t("Load it without my changes"), () => this.reload(null, null).catch((e) => say(e.message))))));
    document.getElementById("merge").focus();
  }

  /** Set by who shows the declaration: shows it anew; with values, those that differ from base go on top of what the file says now. */
  async reload() {}
}

/** The values of the file with the maker's changes on top. Fields that both changed are named. */
export function merged(file, mine, base) {
  const values = structuredClone(file);
  const both = [];
  for (const key of new Set([...Object.keys(mine), ...Object.keys(base)])) {
    if (JSON.stringify(mine[key]) === JSON.stringify(base[key])) continue;
    if (JSON.stringify(file[key]) !== JSON.stringify(base[key])) both.push(key);
    if (mine[key] === undefined) delete values[key]; else values[key] = mine[key];
  }
  return { values, both };
}
