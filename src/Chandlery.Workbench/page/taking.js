// Files that the program makes, as downloads.
import { ask } from "./ask.js";
import { download, say } from "./elements.js";
import { t } from "./words.js";

/** Asks for a file and hands it to the browser; why there is none is said, or told to failed. */
export async function takeFile(name, path, body, failed = (error) => say(error.message)) {
  try {
    download(await (await ask(path, body)).blob(), name);
    say(t("{name} is in your downloads.", { name }));
  } catch (error) {
    failed(error);
  }
}
