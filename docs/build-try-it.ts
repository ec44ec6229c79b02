// Run after typedoc and after the build: bundles the pages that run the library, from the package as it is published.
import { copyFileSync, mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { inBrowser } from "./in-browser.js";

const docs = fileURLToPath(new URL("./", import.meta.url));
const site = `${docs}site/`;

const script = (from: string, to: string) => build({ ...inBrowser, entryPoints: [docs + from], outfile: site + to });

/** A worker as a script that keeps its code as text, which the page makes a worker of. */
async function worker(from: string, to: string): Promise<void> {
  const { outputFiles } = await build({ ...inBrowser, entryPoints: [docs + from], write: false });
  writeFileSync(site + to, `globalThis.gelwrightWorker=${JSON.stringify(outputFiles?.[0]?.text ?? "")}`);
}

mkdirSync(`${site}try-it/`, { recursive: true });
copyFileSync(`${docs}in-page/tools.css`, `${site}tools.css`);
for (const file of ["index.html", "try-it.css", "form.css", "editor.css"])
  copyFileSync(`${docs}try-it/${file}`, `${site}try-it/${file}`);
await Promise.all([
  script("try-it/try-it.ts", "try-it/try-it.js"),
  script("try-it/editor.ts", "try-it/editor.js"),
  script("in-page/plots.ts", "plots.js"),
  worker("try-it/worker.ts", "try-it/worker.js"),
]);
