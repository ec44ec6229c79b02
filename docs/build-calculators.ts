// Run after typedoc and after the build: the pages of the calculators, and one script with the functions that they call.
import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { calculators } from "./calculators/all.js";
import { fileOf } from "./calculators/links.js";
import { indexOf, pageOf } from "./calculators/page.js";
import { inBrowser } from "./in-browser.js";

const docs = fileURLToPath(new URL("./", import.meta.url));
const site = `${docs}site/`;
const all = calculators();

mkdirSync(`${site}calculators/`, { recursive: true });
copyFileSync(`${docs}calculators/calculators.css`, `${site}calculators/calculators.css`);
for (const one of all) {
  const { room, name } = one.calculator;
  writeFileSync(`${site}calculators/${fileOf(`${room}.${name}`)}`, pageOf(one));
}
writeFileSync(`${site}calculators/index.html`, indexOf(all.map(({ calculator }) => calculator)));

const functions = all.map(({ calculator: { room, name } }) => ({ room, name }));
await build({
  ...inBrowser,
  stdin: {
    contents: [
      ...functions.map(({ room, name }) => `import { ${name} } from "gelwright/${room}";`),
      'import { start } from "./in-page/calculator.ts";',
      `start({ ${functions.map(({ room, name }) => `"${room}.${name}": ${name}`).join(", ")} });`,
    ].join("\n"),
    resolveDir: docs,
  },
  outfile: `${site}calculators/calculators.js`,
});
