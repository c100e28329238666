// The workbench: one page, no framework. Every text from the program goes into the page as text, never as markup.
const main = document.getElementById("main");
const statusLine = document.getElementById("status");
const say = (text) => { statusLine.textContent = text; };

/** Makes an element: name, attributes (on… are listeners), children. */
function el(name, attributes = {}, ...children) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (key.startsWith("on")) element.addEventListener(key.slice(2), value);
    else if (value === true) element.setAttribute(key, "");
    else if (value !== false && value !== null && value !== undefined) element.setAttribute(key, value);
  }
  fill(element, ...children);
  return element;
}

/** Puts children into an element in place of those it has; null stands for none, which the DOM itself would write as a word. */
function fill(element, ...children) {
  element.replaceChildren(...children.flat().filter((c) => c !== null && c !== undefined));
}

function drawn(name, attributes, ...children) {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
}

const figure = (value, digits = 4) => value === null || value === undefined ? "–" : Number(value.toPrecision(digits)).toString();

async function ask(path, body) {
  const options = body === undefined ? {} : { method: "POST", headers: { "Content-Type": "application/json", "X-Workbench": "1" }, body: JSON.stringify(body) };
  let response;
  try {
    response = await fetch(path, options);
  } catch {
    throw new Error("The program does not answer. Is it still running?");
  }
  if (!response.ok) {
    const text = await response.text();
    let what = text;
    try { what = JSON.parse(text).problems.join(" "); } catch { /* the answer was plain text */ }
    throw new Error(what || `The program answered with ${response.status}.`);
  }
  return response;
}

const table = (caption, heads, rows) => el("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": caption },
  el("table", {}, el("thead", {}, el("tr", {}, heads.map((h) => el("th", { scope: "col" }, h)))), el("tbody", {}, rows)));

const list = (items, name) => el("ul", { class: name }, items.map((i) => el("li", {}, i)));

// ---- candles -------------------------------------------------------------------------------------------------------

async function showCatalogue() {
  const data = await (await ask("/api/catalogue")).json();
  document.getElementById("maker").textContent = `· ${data.maker ?? data.folder}`;
  const filter = el("input", { id: "filter", type: "search", oninput: () => draw() });
  const body = el("div");
  const draw = () => {
    const wanted = filter.value.trim().toLowerCase();
    const rows = data.rows.filter((r) => `${r.id} ${r.name} ${r.classes} ${r.statements}`.toLowerCase().includes(wanted));
    fill(body,
      table("All candles", ["Candle", "Sold in", "Classes", "Signal word", "Statements", "Limits", "Sale"], rows.map((r) => el("tr", {},
        el("td", {}, el("a", { href: `#/candle/${encodeURIComponent(r.id)}` }, r.name), el("span", { class: "soft" }, ` ${r.id}`)),
        el("td", {}, r.places.join(", ")), el("td", {}, r.classes.join(", ") || "none"), el("td", {}, r.signalWord ?? "none"),
        el("td", {}, r.statements.join(", ") || "none"),
        el("td", { class: r.limitsBroken.length ? "stop" : "good" }, r.limitsBroken.length ? `broken: ${r.limitsBroken.join("; ")}` : "held"),
        el("td", { class: r.stopsSale ? "stop" : "" }, r.stopsSale ? "stopped" : "–")))),
      el("p", { class: "soft" }, `${rows.length} of ${data.rows.length}`));
  };
  draw();
  fill(main,
    el("h1", {}, "Candles"),
    data.problems.length ? el("section", { "aria-label": "Problems" }, el("h2", {}, "Files with problems"), list(data.problems, "problems")) : null,
    el("section", { "aria-label": "Catalogue" }, el("div", { class: "row" }, el("div", {}, el("label", { for: "filter" }, "Find"), filter)), body));
  say(`${data.rows.length} candles assessed.`);
}

// ---- one candle ----------------------------------------------------------------------------------------------------

let desk = null;
let form = null;
let changed = false;
let latest = 0;

async function showCandle(id) {
  desk = await (await ask("/api/desk", { id })).json();
  changed = false;
  form = desk.form ? structuredClone(desk.form) : null;
  const editor = el("div", { id: "editor" });
  const results = el("div", { id: "results" });
  const papers = el("div", { id: "papers" });
  fill(main, el("h1", { id: "title" }, form?.name ?? desk.assessments[0]?.name ?? id), el("div", { class: "desk" }, el("div", {}, editor, results), papers));
  drawEditor();
  drawResults();
  await drawPapers();
  say(desk.problems.length ? "This candle has problems." : "Assessed.");
}

/** Only what differs from the file goes to the program. */
function edits() {
  if (!form || !desk.form) return null;
  const before = desk.form;
  const text = (v) => v === null || v === undefined ? null : String(v);
  const differs = (key) => text(form[key]) !== text(before[key]) ? text(form[key]) : null;
  const oils = JSON.stringify(form.oils) === JSON.stringify(before.oils) ? null : form.oils;
  const all = { name: differs("name"), netGrams: differs("netGrams"), loadPercent: differs("loadPercent"), loadOf: differs("loadOf"), wickCount: differs("wickCount"), oils };
  return Object.values(all).every((v) => v === null) ? null : all;
}

let waiting;
let dragging = false;
function touched() {
  changed = edits() !== null;
  for (const id of ["save", "drop"]) { const button = document.getElementById(id); if (button) button.disabled = !changed; }
  clearTimeout(waiting);
  waiting = setTimeout(tryOut, 250);
}

async function tryOut() {
  // A new plot under the finger would end the drag.
  if (dragging) { waiting = setTimeout(tryOut, 150); return; }
  const mine = ++latest;
  say("Assessing…");
  try {
    const answer = await (await ask("/api/desk", { id: desk.id, edits: edits() })).json();
    if (mine !== latest) return;
    // The form of the file stays what edits are compared with.
    desk = { ...answer, form: desk.form, hash: desk.hash };
    drawResults();
    drawHints();
    await drawPreview();
    say(answer.problems.length ? `${answer.problems.length} problem${answer.problems.length > 1 ? "s" : ""}: see below.` : changed ? "Assessed with your changes; not saved yet." : "Assessed.");
  } catch (error) {
    if (mine === latest) say(error.message);
  }
}

function field(label, key, attributes = {}) {
  const id = `f-${key}`;
  return el("div", {}, el("label", { for: id }, label),
    el("input", { id, value: form[key] ?? "", autocomplete: "off", oninput: (e) => { form[key] = e.target.value; if (key === "name") document.getElementById("title").textContent = e.target.value; touched(); }, ...attributes }));
}

function drawEditor() {
  const editor = document.getElementById("editor");
  if (!form) {
    fill(editor, el("section", { "aria-label": "Batch" }, el("h2", {}, "Batch"), el("p", {}, "A batch is what was weighed; it is written in its file.")));
    return;
  }
  const load = desk.form.loadPercent !== null;
  const measures = ["share", "grams", "millilitres", "drops"];
  const names = Object.fromEntries(desk.oils.map((o) => [o.id, o.name]));
  const oilRow = (oil, i) => el("tr", {},
    el("td", {}, names[oil.oil] ?? oil.oil, el("br"), el("span", { class: "soft", "data-grams": oil.oil })),
    el("td", {}, el("input", { "aria-label": `Amount of ${names[oil.oil] ?? oil.oil}`, inputmode: "decimal", value: oil.amount, oninput: (e) => { oil.amount = e.target.value; touched(); } })),
    el("td", {}, el("select", { "aria-label": `Measure of ${names[oil.oil] ?? oil.oil}`, onchange: (e) => { oil.measure = e.target.value; touched(); } },
      measures.map((m) => el("option", { value: m, selected: m === oil.measure }, m === "share" ? "% of blend" : m)))),
    el("td", {}, el("button", { type: "button", "aria-label": `Take ${names[oil.oil] ?? oil.oil} out`, onclick: () => { form.oils.splice(i, 1); drawEditor(); touched(); } }, "Take out")));
  const adding = el("select", { id: "add-oil" }, desk.oils.filter((o) => form.oils.every((f) => f.oil !== o.id)).map((o) => el("option", { value: o.id }, o.name)));
  fill(editor, el("form", { class: "panel", "aria-label": "Blend", onsubmit: (e) => { e.preventDefault(); save(); } },
    el("h2", {}, "Blend"),
    el("div", { class: "fields" },
      field("Name", "name"), field("Net grams", "netGrams", { inputmode: "decimal" }), field("Wicks", "wickCount", { inputmode: "numeric" }),
      load ? field("Load, %", "loadPercent", { inputmode: "decimal" }) : null,
      load ? el("div", {}, el("label", { for: "f-loadOf" }, "of the"), el("select", { id: "f-loadOf", onchange: (e) => { form.loadOf = e.target.value; touched(); } },
        el("option", { value: "wax", selected: form.loadOf === "wax" }, "wax"), el("option", { value: "candle", selected: form.loadOf === "candle" }, "scented melt"))) : null),
    el("p", { id: "load-hint", class: "soft" }),
    table("Oils", ["Oil, per candle", "Amount", "Measure", "Change"], form.oils.map(oilRow)),
    adding.options.length ? el("div", { class: "row" }, el("div", {}, el("label", { for: "add-oil" }, "Another oil"), adding),
      el("button", { type: "button", onclick: () => { form.oils.push({ oil: adding.value, amount: "10", measure: form.oils[0]?.measure ?? "share" }); drawEditor(); touched(); } }, "Add")) : null,
    el("div", { class: "row" },
      el("button", { class: "main", id: "save", disabled: !changed }, "Save to the file"),
      el("button", { type: "button", id: "drop", disabled: !changed, onclick: () => showCandle(desk.id) }, "Drop my changes"))));
  drawHints();
}

/** Both meanings of the load, and what each oil comes to. */
function drawHints() {
  const hint = document.getElementById("load-hint");
  const first = desk.assessments[0];
  if (!hint || !first) return;
  const l = first.loadPercent;
  hint.textContent = `${figure(l.meltOfWax)} % of the wax = ${figure(l.meltOfCandle)} % of the scented melt = ${figure(l.finishedCandle)} % of the finished candle.`;
  for (const oil of desk.recipe ?? []) {
    const cell = document.querySelector(`[data-grams="${CSS.escape(oil.id)}"]`);
    if (cell) cell.textContent = [`${figure(oil.grams)} g`, oil.millilitres ? `${figure(oil.millilitres, 3)} ml` : null, oil.drops ? `${Math.round(oil.drops)} drops` : null].filter(Boolean).join(" · ");
  }
}

async function save() {
  try {
    const answer = await (await ask("/api/save", { id: desk.id, edits: edits(), hash: desk.hash })).json();
    const id = desk.id;
    await showCandle(id);
    desk.hash = answer.hash;
    say("Saved. Comments and order of the file were kept.");
  } catch (error) {
    say(error.message);
  }
}

function working(c) {
  const w = c.working;
  return el("details", {}, el("summary", {}, `${c.class} ${c.category} (${c.statement})`),
    el("p", {}, w.sentence), el("p", { class: "soft" }, `${w.formula}: ${figure(w.value)} ${w.unit}, limit ${figure(w.threshold)} ${w.unit} · ${w.clause} · ${w.confidence}`),
    table(`Working of ${c.class}`, ["Substance", "Class", "Share, %", "Adds", "Whose word"], w.lines.map((l) => el("tr", {},
      el("td", {}, l.substance), el("td", {}, l.hazard), el("td", { class: "num" }, figure(l.percent)), el("td", { class: "num" }, figure(l.adds)), el("td", {}, l.source)))));
}

function limit(l) {
  const known = l.holds !== null && l.value !== null && l.limit;
  const most = known ? Math.max(l.value, l.limit) * 1.1 : 1;
  const words = known ? `${figure(l.value)} of at most ${figure(l.limit)} ${l.unit}; ${l.holds ? `margin ${figure(l.margin)}` : "broken"}` : "not checked";
  return el("li", {}, el("span", {}, l.name), el("br"), el("span", { class: known ? (l.holds ? "good" : "stop") : "soft" }, words),
    known ? el("div", { class: "bar", "aria-hidden": "true" }, drawn("svg", { viewBox: "0 0 100 10", preserveAspectRatio: "none" },
      drawn("rect", { class: l.holds ? "held" : "broken", width: 100 * l.value / most, height: 10 }), drawn("rect", { x: 100 * l.limit / most - 0.5, width: 1, height: 10, fill: "currentColor" }))) : null,
    el("span", { class: "soft" }, l.explanation));
}

function drawResults() {
  const results = document.getElementById("results");
  const open = [...results.querySelectorAll("details[open] > summary")].map((s) => s.textContent);
  const parts = [];
  if (desk.problems.length) parts.push(el("section", { "aria-label": "Problems" }, el("h2", {}, "Problems"), list(desk.problems, "problems")));
  for (const a of desk.assessments) {
    const stops = a.findings.filter((f) => f.stopsSale);
    const looks = a.findings.filter((f) => !f.stopsSale);
    const clause = (f) => f.clause ? ` (${f.clause})` : "";
    parts.push(el("section", { "aria-label": `Result, ${a.edition}` },
      el("h2", {}, `What follows in ${a.soldIn.join(", ")}`),
      el("p", {}, el("strong", { class: stops.length ? "stop" : "good" }, stops.length ? "Stop: this candle must not be sold like this." : "Nothing found that stops the sale.")),
      stops.length ? list(stops.map((f) => f.what + clause(f)), "problems") : null,
      el("h3", {}, "Classes"), a.classes.length ? el("div", {}, a.classes.map(working)) : el("p", {}, "None from the declared data."),
      el("h3", {}, "On the label"),
      list([a.signalWord ? `Signal word: ${a.signalWord}` : "No signal word", ...(a.pictograms.length ? [`Pictograms: ${a.pictograms.join(", ")}`] : []),
        ...["hazard", "supplemental", "precautionary"].flatMap((k) => a.statements[k].map((s) => `${s.code}: ${s.text}`)),
        ...(a.ufi ? [`UFI ${a.ufi}`] : [])], "plain"),
      el("h3", {}, "Limits"), el("ul", { class: "plain" }, a.limits.map(limit)),
      el("details", {}, el("summary", {}, `What is in it (${a.composition.length} substances, up to ${figure(a.unknownPercent)} % unknown)`),
        table("Composition", ["Substance", "CAS", "From, %", "To, %"], a.composition.map((i) => el("tr", {},
          el("td", {}, i.name), el("td", {}, i.cas ?? "–"), el("td", { class: "num" }, figure(i.lowPercent)), el("td", { class: "num" }, figure(i.highPercent)))))),
      el("details", {}, el("summary", {}, `What could not be assessed (${a.unassessed.length}) and what to look at (${looks.length})`),
        list(a.unassessed, "plain"), list(looks.map((f) => f.what + clause(f)), "plain"))));
  }
  if (desk.plot && form) parts.splice(desk.problems.length ? 1 : 0, 0, plot());
  fill(results, ...parts);
  for (const details of results.querySelectorAll("details")) if (open.includes(details.firstElementChild.textContent)) details.open = true;
}

/** Load against consequences. The mark is a slider: drag it, or use the arrow keys on the range below. */
function plot() {
  const p = desk.plot;
  const width = 480, left = 168, right = 14, lane = 24, top = 8;
  const height = top + lane * Math.max(1, p.lanes.length) + 34;
  const x = (v) => left + (width - left - right) * v / p.most;
  const svg = drawn("svg", { class: "plot", viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": `Load against consequences, ${figure(p.now)} % of the ${p.basis} now. ${p.lanes.map((l) => `${l.what}: ${l.spans.map((s) => `${figure(s[0])} to ${figure(s[1])} %`).join(", ")}`).join(". ")}` });
  p.lanes.forEach((l, i) => {
    const y = top + i * lane;
    svg.append(drawn("text", { x: left - 8, y: y + 15, "text-anchor": "end" }, l.what.length > 27 ? l.what.slice(0, 26) + "…" : l.what));
    for (const s of l.spans) svg.append(drawn("rect", { class: "band", x: x(s[0]), y: y + 3, width: Math.max(1, x(s[1]) - x(s[0])), height: lane - 6, rx: 3 }));
  });
  const base = height - 28;
  svg.append(drawn("line", { class: "axis", x1: left, x2: width - right, y1: base, y2: base }));
  for (let v = 0; v <= p.most; v += p.most > 16 ? 4 : 2) svg.append(drawn("text", { x: x(v), y: base + 16, "text-anchor": "middle" }, `${v}`));
  const line = drawn("line", { class: "now", y1: 2, y2: base });
  const handle = drawn("circle", { class: "handle", cy: base, r: 9 });
  const place = (v) => { line.setAttribute("x1", x(v)); line.setAttribute("x2", x(v)); handle.setAttribute("cx", x(v)); };
  place(p.now);
  svg.append(line, handle);
  const range = el("input", { type: "range", id: "load-range", min: "0.1", max: String(p.most), step: "0.1", value: String(p.now),
    "aria-valuetext": `${figure(p.now)} percent of the ${p.basis}`, oninput: (e) => { place(Number(e.target.value)); setLoad(Number(e.target.value)); } });
  const at = (event) => { const box = svg.getBoundingClientRect(); return Math.min(p.most, Math.max(0.1, ((event.clientX - box.left) / box.width * width - left) / (width - left - right) * p.most)); };
  const move = (event) => { const v = Math.round(at(event) * 10) / 10; place(v); range.value = String(v); setLoad(v); };
  svg.addEventListener("pointerdown", (e) => { dragging = true; svg.setPointerCapture(e.pointerId); move(e); });
  svg.addEventListener("pointermove", (e) => { if (dragging) move(e); });
  for (const element of [svg, range]) for (const end of ["pointerup", "pointercancel"]) element.addEventListener(end, () => { dragging = false; });
  range.addEventListener("pointerdown", () => { dragging = true; });
  const focused = document.activeElement?.id === "load-range";
  if (focused) queueMicrotask(() => document.getElementById("load-range")?.focus());
  return el("section", { "aria-label": "Load and consequences" }, el("h2", {}, "How far the load can go"), svg,
    el("label", { for: "load-range" }, `Load, % of the ${p.basis === "wax" ? "wax" : "scented melt"}`), range);
}

/** A weighed blend has no load of its own: its amounts are scaled. */
function setLoad(value) {
  if (desk.form.loadPercent !== null) {
    form.loadPercent = value;
    const input = document.getElementById("f-loadPercent");
    if (input) input.value = value;
  } else {
    const factor = value / desk.plot.now;
    form.oils = form.oils.map((o) => o.measure === "share" ? o : { ...o, amount: figure(Number(String(o.amount).replace(",", ".")) * factor, 5) });
    drawEditor();
  }
  touched();
}

// ---- papers --------------------------------------------------------------------------------------------------------

// Which papers there are comes from the program.
let paper = { kind: null, edition: null, language: null, trueSize: false, count: "6" };
const chosenPaper = () => desk.papers.find((p) => p.id === paper.kind) ?? desk.papers[0];

async function drawPapers() {
  const editions = desk.assessments.map((a) => a.edition);
  if (!editions.includes(paper.edition)) paper.edition = editions[0] ?? null;
  const redraw = (key) => (e) => { paper[key] = e.target.value; drawPreview(); };
  const choose = (key) => (e) => { paper[key] = e.target.value; drawPaperOptions(); drawPreview(); };
  paper.kind = chosenPaper().id;
  fill(document.getElementById("papers"), el("section", { "aria-label": "Papers" }, el("h2", {}, "Papers"),
    el("div", { class: "row" },
      el("div", {}, el("label", { for: "kind" }, "Paper"), el("select", { id: "kind", onchange: choose("kind") }, desk.papers.map((p) => el("option", { value: p.id, selected: p.id === paper.kind }, p.title)))),
      editions.length > 1 ? el("div", {}, el("label", { for: "edition" }, "Law"), el("select", { id: "edition", onchange: choose("edition") }, editions.map((e) => el("option", { value: e, selected: e === paper.edition }, e)))) : null,
      el("div", { id: "language-choice" }, el("label", { for: "language" }, "Language"), el("select", { id: "language", onchange: redraw("language") })),
      el("div", { id: "count-choice" }, el("label", { for: "count" }, "Candles"), el("input", { id: "count", inputmode: "numeric", value: paper.count, oninput: redraw("count") })),
      el("div", {}, el("label", { for: "true-size" }, "True size"), el("input", { id: "true-size", type: "checkbox", checked: paper.trueSize, onchange: (e) => { paper.trueSize = e.target.checked; drawPreview(); } }))),
    el("div", { id: "warnings" }),
    el("div", { id: "preview", class: "previews fit" }),
    el("div", { class: "row", role: "group", "aria-label": "Downloads" }, ["pdf", "png", "svg", "yaml", "json"].map((f) => el("button", { type: "button", onclick: () => download(f) }, f.toUpperCase()))),
    el("h3", {}, "Register"),
    el("div", { class: "row" }, el("div", {}, el("label", { for: "by" }, "Issued by"), el("input", { id: "by", autocomplete: "name" })), el("button", { type: "button", onclick: enter }, "Enter the label in the register"))));
  drawPaperOptions();
  await drawPreview();
}

/** Shows only what the chosen paper asks for. */
function drawPaperOptions() {
  const languages = chosenPaper().languages[paper.edition] ?? [];
  if (languages.every((l) => l.code !== paper.language)) paper.language = languages[0]?.code ?? null;
  fill(document.getElementById("language"), ...languages.map((l) => el("option", { value: l.code, selected: l.code === paper.language }, l.name)));
  document.getElementById("language-choice").hidden = languages.length < 2;
  document.getElementById("count-choice").hidden = !chosenPaper().takesCount;
}

const wanted = () => ({ id: desk.id, edits: edits(), kind: paper.kind, edition: paper.edition, language: paper.language, count: Number.parseInt(paper.count, 10) || 1 });

async function drawPreview() {
  const preview = document.getElementById("preview");
  if (!preview) return;
  const mine = latest;
  try {
    const answer = await (await ask("/api/preview", wanted())).json();
    if (mine !== latest || !preview.isConnected) return;
    preview.className = paper.trueSize ? "previews" : "previews fit";
    fill(preview, ...answer.pages.map((p, i) => {
      const image = el("img", { alt: `${chosenPaper().title}, page ${i + 1} of ${answer.pages.length}`, src: URL.createObjectURL(new Blob([p.svg], { type: "image/svg+xml" })), onload: (e) => URL.revokeObjectURL(e.target.src) });
      if (paper.trueSize) { image.width = p.widthMm * 96 / 25.4; image.height = p.heightMm * 96 / 25.4; }
      return image;
    }));
    fill(document.getElementById("warnings"), answer.warnings.length ? el("section", { "aria-label": "Mind before handing it out" }, el("h3", {}, "Mind before handing it out"), list(answer.warnings, "plain")) : null);
    if (answer.whyNot) fill(preview, el("p", { class: "stop" }, answer.whyNot));
  } catch (error) {
    fill(preview, el("p", { class: "stop" }, error.message));
  }
}

async function download(format) {
  try {
    const blob = await (await ask("/api/paper", { ...wanted(), format })).blob();
    const name = ["yaml", "json"].includes(format) ? `${desk.id}.${format}` : `${desk.id}-${(chosenPaper().languages[paper.edition] ?? []).length > 1 ? `${paper.language}-` : ""}${paper.kind}.${format}`;
    const link = el("a", { href: URL.createObjectURL(blob), download: name });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    say(`${name} is in your downloads.`);
  } catch (error) {
    say(error.message);
  }
}

async function enter() {
  try {
    const answer = await (await ask("/api/register", { id: desk.id, edits: edits(), edition: paper.edition, by: document.getElementById("by").value })).json();
    say(`Entered in the register as number ${answer.number}.`);
  } catch (error) {
    say(error.message);
  }
}

// ---- register and changes ------------------------------------------------------------------------------------------

async function showRegister() {
  const body = el("div");
  const find = el("input", { id: "find", type: "search" });
  const draw = async () => {
    const data = await (await ask(`/api/register?find=${encodeURIComponent(find.value)}`)).json();
    fill(body,
      data.wrong.length ? list(data.wrong, "problems") : el("p", { class: "good" }, data.entries.length ? "The entries hold together." : "No entries."),
      data.entries.length ? table("Register", ["No.", "When (UTC)", "By", "Batch", "Candle", "Law, day", "Oils and their documents", "Documents"], data.entries.map((e) => el("tr", {},
        el("td", { class: "num" }, String(e.number)), el("td", {}, e.at), el("td", {}, e.by), el("td", {}, e.batch), el("td", {}, e.candle), el("td", {}, e.law), el("td", {}, e.oils.join("; ")), el("td", {}, e.documents.join(", "))))) : "");
    say(`${data.entries.length} entries.`);
  };
  fill(main, el("h1", {}, "Register"), el("section", { "aria-label": "Entries" },
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw().catch((x) => say(x.message)); } },
      el("div", {}, el("label", { for: "find" }, "Batch, substance or CAS number, oil, or document"), find), el("button", { class: "main" }, "Find")), body));
  await draw();
}

async function showChanges() {
  const today = new Date().toISOString().slice(0, 10);
  const from = el("input", { id: "from", type: "date", value: today });
  const to = el("input", { id: "to", type: "date", value: "2028-01-01" });
  const body = el("div", { "aria-live": "polite" });
  const draw = async () => {
    const data = await (await ask(`/api/changes?from=${from.value}&to=${to.value}`)).json();
    if (data.problems) { fill(body, list(data.problems, "problems")); return; }
    fill(body, data.changes.length ? null : el("p", {}, "Nothing changes."), ...data.changes.map((c) => el("section", {}, el("h2", {}, `${c.id} (${c.edition})`), c.remark ? el("p", {}, c.remark) : "",
      list(c.changes.map((x) => el("span", {}, el("strong", {}, `${x.begins ? "begins" : "ends"}: ${x.subject}: ${x.text}`), el("br"), el("span", { class: "soft" }, x.why))), "plain"))));
    say(`${data.changes.length} candles change.`);
  };
  fill(main, el("h1", {}, "What would change"), el("section", { "aria-label": "Days" },
    el("p", {}, "Compares the folder under the law of two days. For a new oil revision or another folder use the command 'changes'."),
    el("form", { class: "row", onsubmit: (e) => { e.preventDefault(); draw().catch((x) => say(x.message)); } },
      el("div", {}, el("label", { for: "from" }, "Law of"), from), el("div", {}, el("label", { for: "to" }, "and of"), to), el("button", { class: "main" }, "Compare"))), body);
}

// ---- where we are --------------------------------------------------------------------------------------------------

async function route() {
  const path = decodeURIComponent(location.hash.slice(1) || "/");
  for (const link of document.querySelectorAll("nav a")) {
    const own = link.getAttribute("href").slice(1);
    if (own === path || (own === "/" && path.startsWith("/candle/"))) link.setAttribute("aria-current", "page"); else link.removeAttribute("aria-current");
  }
  try {
    if (path.startsWith("/candle/")) await showCandle(path.slice(8));
    else if (path === "/register") await showRegister();
    else if (path === "/changes") await showChanges();
    else await showCatalogue();
  } catch (error) {
    fill(main, el("h1", {}, "That did not work"), el("p", { class: "stop" }, error.message));
    say(error.message);
  }
  document.title = `${main.querySelector("h1")?.textContent ?? "Workbench"} · Chandlery`;
}

let here = location.hash;
addEventListener("hashchange", () => {
  if (changed && location.hash !== here && !confirm("Leave without saving your changes?")) { history.replaceState(null, "", here || "#/"); return; }
  changed = false;
  here = location.hash;
  route().then(() => main.focus());
});
addEventListener("beforeunload", (e) => { if (changed) e.preventDefault(); });
route();
