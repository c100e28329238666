// What the program says, in the language of the page. Its sentences come in English, with names and figures in them; a language's file
// tells each, with {0}, {1}, … for what changes. A sentence that the file does not know stays as it came: better read than lost.
import { inWords } from "./plainwords.js";

const firstLetters = 8;
const placeBefore = /^[^\s:]+\.ya?ml(?::\d+:\d+)?: /;
const clauseBehind = / \([^()]*(?:\([^()]*\)[^()]*)*\)$/;
const endOfSentence = /[.?!:;] (?=[\p{Lu}'"(])/gu;
const mostKept = 5000;

let whole = new Map();
let beginning = new Map();
let anywhere = [];
let decimalComma = false;
let nouns = null;
let instead = [];
const kept = new Map();

const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/**
 * Learns a language.
 * @param sentences { sentence: how it is told }, and under "elsewhere" what its words for a candle become for another product
 * @param others what stands in the program's sentences in the stead of "candle", such as "wax melt"
 */
export function teach({ elsewhere = {}, ...sentences }, others, locale) {
  whole = new Map();
  beginning = new Map();
  anywhere = [];
  kept.clear();
  instead = Object.entries(elsewhere).sort((a, b) => b[0].length - a[0].length);
  nouns = others.length ? new RegExp(`\\b(?:${others.toSorted((a, b) => b.length - a.length).map(escaped).join("|")})\\b`, "gi") : null;
  decimalComma = (1.5).toLocaleString(locale).includes(",");
  const withHoles = [];
  for (const [from, to] of Object.entries(sentences)) {
    const pieces = from.split(/\{(\d+)\}/);
    if (pieces.length === 1) { whole.set(from, to); continue; }
    const fixed = pieces.filter((_, i) => i % 2 === 0);
    withHoles.push({ pieces, to, fixed: fixed.join("").length, surest: fixed.reduce((a, b) => b.length > a.length ? b : a) });
  }
  // The more of a sentence is fixed, the surer it is meant.
  for (const known of withHoles.sort((a, b) => b.fixed - a.fixed)) {
    const start = known.pieces[0].slice(0, firstLetters);
    if (start.length < firstLetters) anywhere.push(known);
    else beginning.set(start, [...beginning.get(start) ?? [], known]);
  }
}

/** The sentence's pattern; most are never asked for, so each is made when it is. */
const patternOf = (known) => known.pattern ??= new RegExp(`^${known.pieces.map((p, i) => i % 2 ? "([\\s\\S]*?)" : escaped(p)).join("")}$`);

/** A sentence or several, as the page's language tells them. */
export function said(text) {
  if (typeof text !== "string" || text === "") return text;
  if (!kept.has(text)) {
    if (kept.size > mostKept) kept.clear();
    kept.set(text, inWords(tell(text) ?? text));
  }
  return kept.get(text);
}

/** Tells anew what names fields or files: those of the folder have changed. */
export const forget = () => kept.clear();

/** The whole text told, or sentence by sentence; null when nothing of it is known. */
function tell(text) {
  const place = placeBefore.exec(text)?.[0] ?? "";
  const rest = text.slice(place.length);
  const told = inFull(rest) ?? beforeClause(rest) ?? bySentence(rest);
  return told === null ? null : place + told;
}

/** A text that is known as it stands, or as it stands for a candle. */
const inFull = (text) => matched(text) ?? ofAnotherProduct(text);

/** What stands before a clause in brackets. */
function beforeClause(text) {
  const clause = clauseBehind.exec(text)?.[0];
  const told = clause ? inFull(text.slice(0, -clause.length)) : null;
  return told === null ? null : told + clause;
}

/** Rules are written for candles, and say "wax melt" of a wax melt: it is told as of a candle, and then the words for it become others. */
function ofAnotherProduct(text) {
  const asCandle = nouns === null ? text : text.replace(nouns, (noun) => `${noun[0] === noun[0].toUpperCase() ? "C" : "c"}andle${noun.endsWith("s") ? "s" : ""}`);
  const told = asCandle === text ? null : matched(asCandle);
  return told === null ? null : instead.reduce((words, [candle, product]) => words.replaceAll(candle, product), told);
}

/** Which group of the pattern a number names. */
const holeOf = (known, n) => known.pieces.filter((_, i) => i % 2).indexOf(n) + 1;

function matched(text) {
  const exact = whole.get(text);
  if (exact !== undefined) return exact;
  for (const known of [...beginning.get(text.slice(0, firstLetters)) ?? [], ...anywhere]) {
    const found = text.includes(known.surest) ? patternOf(known).exec(text) : null;
    if (found) return known.to.replace(/\{(\d+)\}/g, (_, n) => part(found[holeOf(known, n)]));
  }
  return null;
}

/** Tells as many sentences at once as are known together; one that is not known stays. */
function bySentence(text) {
  const ends = [...text.matchAll(endOfSentence)].map((m) => m.index + 1);
  for (const end of ends.toReversed()) {
    const told = inFull(text.slice(0, end));
    if (told !== null) return `${told} ${said(text.slice(end + 1))}`;
  }
  if (ends.length === 0) return null;
  const rest = tell(text.slice(ends[0] + 1));
  return rest === null ? null : `${text.slice(0, ends[0])} ${rest}`;
}

/** A name, a figure, or words of the program's own inside a sentence. */
function part(text) {
  if (/^[≤≥<>~ ]*\d+\.\d+(?:[ \d.,x×–%°A-Za-z²/-]*)$/.test(text)) return decimalComma ? text.replace(/(\d)\.(?=\d)/g, "$1,") : text;
  return said(text);
}
