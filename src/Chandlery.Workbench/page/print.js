// Printing from the browser, exactly to scale and with nothing else on the sheet.
import { el, fill, picture } from "./elements.js";

// What was printed once must not be printed again from another view; and the browser's own command means the view's button.
addEventListener("afterprint", () => { fill(document.getElementById("sheet")); document.adoptedStyleSheets = []; });
addEventListener("keydown", (e) => {
  const print = document.getElementById("print");
  if ((e.ctrlKey || e.metaKey) && !e.altKey && !e.shiftKey && e.key.toLowerCase() === "p" && print) { e.preventDefault(); print.click(); }
});

/** Prints pages one to a sheet, each as large as it is. */
export async function printPages(pages) {
  const sheet = document.getElementById("sheet");
  const style = new CSSStyleSheet();
  const [width, height] = [Math.max(...pages.map((p) => p.widthMm)), Math.max(...pages.map((p) => p.heightMm))];
  // A paper of its own size is printed without a margin; a label stands in the corner of whatever sheet the printer has.
  style.replaceSync(width > 180 && height > 250 ? `@page { size: ${width}mm ${height}mm; margin: 0 }` : "@page { margin: 8mm }");
  const images = pages.map((p) => picture(p, "", true));
  fill(sheet, images.map((i) => el("div", {}, i)));
  await Promise.all(images.map((i) => i.decode().catch(() => {})));
  document.adoptedStyleSheets = [style];
  print();
}
