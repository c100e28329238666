// Asking the program.
import { said } from "./told.js";

/** Asks; what the program refuses is thrown, with its status. A body that is a form goes as it is, any other as JSON. */
export async function ask(path, body) {
  const options = body === undefined ? {} : { method: "POST", headers: { "X-Workbench": "1" }, body };
  if (body !== undefined && !(body instanceof FormData)) {
    options.headers["Content-Type"] = "application/json";
    options.body = JSON.stringify(body);
  }
  let response;
  try {
    response = await fetch(path, options);
  } catch {
    throw new Error(said("The program does not answer. Is it still running?"));
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
