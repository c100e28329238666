// The program speaks of fields and files as they are written, 'netGrams: 180' in candles/fig-tin.yaml; whoever works on the page has
// seen neither, and reads what the page calls them.
import { fieldName } from "./fields.js";
import { t } from "./words.js";

const quotedField = /'([a-z][A-Za-z]*)(?::\s*((?:'[^']*'|[^'])*?))?'(?![A-Za-z])/g;
const fileOf = /(?<![\w/.])(?:([a-z]+)\/)?([\w-]+)\.yaml(:\d+:\d+)?(?=[\s:,;.?!)]|$)/gu;

let keys = new Set();
let nameOfFile = () => null;

/** Learns the fields of all forms, and who knows what a file declares: (folder, file name without ending) => name, or null. */
export function teachFields(forms, names) {
  const found = new Set();
  const take = (field) => { if (field.key) found.add(field.key); field.fields.forEach(take); };
  for (const fields of Object.values(forms)) fields.forEach(take);
  keys = found;
  nameOfFile = names;
}

/** A text with the page's own words for fields and files. */
export const inWords = (text) => text
  .replace(quotedField, (whole, key, value) => keys.has(key) ? t("“{word}”", { word: [fieldName(key), valueInWords(value ?? "")].filter(Boolean).join(": ") }) : whole)
  .replace(fileOf, (whole, folder, file) => { const name = nameOfFile(folder ?? "", file); return name === null ? whole : t("“{word}”", { word: name }); });

/** What a file writes behind a field; three dots stand for what the maker knows. */
function valueInWords(value) {
  const bare = value.trim();
  if (bare === "" || bare === "...") return "";
  if (/^\{.*\}$/.test(bare)) return parts(bare).map(pairInWords).join("; ");
  if (/^\[.*\]$/.test(bare)) return parts(bare).map(valueInWords).join(", ");
  return t(bare.replace(/^["']|["']$/g, ""));
}

function pairInWords(pair) {
  const [, key, value] = /^(\w+)(?::\s*(.*))?$/s.exec(pair) ?? [];
  return key === undefined ? pair : [fieldName(key), valueInWords(value ?? "")].filter(Boolean).join(" ");
}

/** What stands between the brackets, up to each comma that is in no bracket of its own. */
function parts(text) {
  const found = [""];
  let depth = 0;
  for (const c of text.slice(1, -1)) {
    if ("{[".includes(c)) depth++;
    if ("}]".includes(c)) depth--;
    if (c === "," && depth === 0) found.push(""); else found[found.length - 1] += c;
  }
  return found.map((p) => p.trim()).filter(Boolean);
}
