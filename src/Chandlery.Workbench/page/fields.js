// What the fields of a declaration are called on the page: their names in the file, as words.
import { isTold, t } from "./words.js";

const units = [["GramsPerMl", "g/ml"], ["Milligrams", "mg"], ["MgPerKg", "mg/kg"], ["MgPerLitre", "mg/l"], ["Millilitres", "ml"], ["Celsius", "°C"], ["Percent", "%"], ["Grams", "g"], ["Hours", "h"], ["Minutes", "min"], ["Ppm", "ppm"], ["Mm", "mm"], ["Ml", "ml"]];

/** What a field is called: its name in the file as words, with its unit. */
export function fieldName(key) {
  const unit = units.find(([end]) => key.endsWith(end) && key.length > end.length);
  const bare = unit ? key.slice(0, -unit[0].length) : key;
  const words = bare.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase().replace(/^./, (c) => c.toUpperCase());
  if (!unit) return t(words);
  // A few names mean another thing with a unit behind them.
  const whole = `${words}, ${unit[1]}`;
  return isTold(whole) ? t(whole) : `${t(words)}, ${unit[1]}`;
}
