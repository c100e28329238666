// Asking the program.
import { untilBack } from "./away.js";
import { said } from "./told.js";
import { t } from "./words.js";

/** What must not be done twice: whether it was done before the program went away, nobody knows. */
const onlyOnce = new Set(["/api/keep", "/api/enter", "/api/step", "/api/begin", "/api/file", "/api/sheet/answer"]);

/**
 * Asks; what the program refuses is thrown, with its status. A body that is a form goes as it is, any other as JSON. Where the program
 * does not answer, it is asked again until it does, but for what must not be done twice: that is thrown, marked isAway.
 */
export async function ask(path, body) {
  const options = body === undefined ? {} : { method: "POST", headers: { "X-Workbench": "1" }, body };
  if (body !== undefined && !(body instanceof FormData)) {
    options.headers["Content-Type"] = "application/json";
    options.body = JSON.stringify(body);
  }
  const isOnce = onlyOnce.has(path) || body instanceof FormData;
  let response = null;
  while (!response) {
    response = await fetch(path, options).catch(() => null);
    if (!response && isOnce) throw Object.assign(new Error(t("The program does not answer. Is it still running?")), { isAway: true, problems: [] });
    if (!response) await untilBack();
  }
  if (!response.ok) {
    const text = await response.text();
    let problems = [text];
    try { problems = JSON.parse(text).problems; } catch { /* the answer was plain text */ }
    problems = problems.map(said);
    throw Object.assign(new Error(problems.join(" ") || `The program answered with ${response.status}.`), { status: response.status, problems });
  }
  return response;
}

export const askJson = async (path, body) => (await ask(path, body)).json();
