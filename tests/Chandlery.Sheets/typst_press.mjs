// Prints random sheets that Chandlery.Sheets wrote for Typst: node typst_press.mjs FILE.typ...
import { createRequire } from "node:module";
import { readFileSync, writeFileSync } from "node:fs";

const { NodeCompiler } = createRequire(`${process.env.TYPST_MODULES}/`)("@myriaddreamin/typst-ts-node-compiler");
const compiler = NodeCompiler.create();
for (const file of process.argv.slice(2)) {
  try {
    writeFileSync(file.replace(/\.typ$/, ".pdf"), compiler.pdf({ mainFileContent: readFileSync(file, "utf8") }));
  } catch (fault) {
    console.error(`${file}: ${fault.message}`);
  }
}
