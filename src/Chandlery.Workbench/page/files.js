// Copies, puts away and brings back declarations.
import { askJson } from "./ask.js";
import { say } from "./elements.js";
import { kept } from "./folder.js";
import { t } from "./words.js";

/** Makes a copy under another name and goes there. */
export async function copy(declares, id, name) {
  const wanted = prompt(t("What is the copy called?"), t("{name}, copy", { name }));
  if (!wanted) return null;
  const answer = await askJson("/api/file", { do: "copy", declares, id, name: wanted });
  kept(answer);
  say(t("{name} is there.", { name: wanted }));
  return answer.id;
}

export async function putAway(declares, id, name) {
  const answer = await askJson("/api/file", { do: "away", declares, id });
  kept(answer);
  say(t("{name} is put away. Undo brings it back.", { name }));
}

export async function bringBack(file, hash) {
  const [folder, name] = [file.split("/").at(-2) ?? "", file.split("/").at(-1)];
  const declares = { batches: "batch", waxes: "wax", dispatches: "dispatch" }[folder] ?? (folder ? folder.replace(/s$/, "") : name.replace(/\.ya?ml$/, ""));
  kept(await askJson("/api/file", { do: "back", declares, id: name.replace(/\.ya?ml$/, ""), hash }));
}
