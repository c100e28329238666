// The page's own words. The English sentence is the key; a language's file tells it in that language. What rules and law say is
// told in told.js.
import { askJson } from "./ask.js";
import { teach } from "./told.js";

let words = {};
let statements = {};
let marks = {};

/** How people of the page's language write figures, days and names where they live. */
let locale = "en";
export const languages = new Map();

/** The sentence in the language of the page, with its figures and names filled in. */
export const t = (sentence, parts = {}) => (words[sentence] ?? sentence).replace(/\{(\w+)\}/g, (whole, key) => key in parts ? String(parts[key]) : whole);

/** Whether the language's file tells it, and not only the key itself. */
export const isTold = (sentence) => sentence in words;

/** What the law says of a class by its statement's code, in the language of the page; null where it has no text. */
export const statementOf = (code) => statements[code] ?? null;

/** What the law calls a signal word or a pictogram, in the language of the page. */
export const markOf = (name) => marks[name] ?? name;

/** One of two sentences, by a number; {n} stands for it. */
export const count = (n, one, more) => t(n === 1 ? one : more, { n });

export async function learn() {
  const wanted = localStorage.getItem("language") ?? navigator.language.slice(0, 2);
  const answer = await askJson(`/api/words?language=${encodeURIComponent(wanted)}`);
  words = answer.words;
  statements = answer.statements;
  marks = answer.marks;
  for (const [code, name] of Object.entries(answer.languages)) languages.set(code, name);
  document.documentElement.lang = answer.language;
  locale = navigator.languages.find((l) => l === answer.language || l.startsWith(`${answer.language}-`)) ?? answer.language;
  teach(answer.told, answer.nouns, answer.language);
}

export function choose(code) {
  localStorage.setItem("language", code);
  location.reload();
}

const named = (type, code) => { try { return new Intl.DisplayNames(locale, { type }).of(code); } catch { return undefined; } };

/** A sentence that goes on after a colon: a small letter, but for German, which begins anew. */
export const afterColon = (sentence) => document.documentElement.lang === "de" ? sentence : sentence.replace(/^./, (c) => c.toLowerCase());

/** Name of a place of sale; places that are no country have names of the program's. */
export const placeName = (code, own) => code === "NI" || code === "XI" ? own ?? "Northern Ireland" : named("region", code) ?? own ?? code;
export const languageName = (code) => named("language", code) ?? code;

/** Several things as a sentence tells them. */
export const listed = (items) => { try { return new Intl.ListFormat(locale, { type: "conjunction" }).format(items); } catch { return items.join(", "); } };

/** Today, as files write a day. */
export const today = () => new Date().toISOString().slice(0, 10);

/** A day or a time as people of the language write it. */
export const day = (text) => new Date(text).toLocaleDateString(locale, { day: "numeric", month: "long", year: "numeric" });
export const moment = (text) => new Date(text).toLocaleString(locale, { day: "numeric", month: "short", year: "numeric", hour: "2-digit", minute: "2-digit" });
