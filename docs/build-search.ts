// Run after everything else that makes pages: reads the site and puts the search over it beside the other scripts.
import { copyFileSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { build, type Plugin } from "esbuild";
import { inBrowser } from "./in-browser.js";
import { readSite } from "./search/read-site.js";

const from = fileURLToPath(new URL("./search/", import.meta.url));
const site = fileURLToPath(new URL("./site/", import.meta.url));
const assets = `${site}assets/`;

const sections: Plugin = {
  name: "sections",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^sections$/ }, () => ({ path: "sections", namespace: "sections" }));
    onLoad({ filter: /^sections$/, namespace: "sections" }, () => ({
      contents: JSON.stringify(readSite(site)),
      loader: "json",
    }));
  },
};

const licence = readFileSync(
  createRequire(import.meta.url)
    .resolve("minisearch")
    .replace(/dist.*$/, "LICENSE.txt"),
  "utf8",
);
await build({ ...inBrowser, entryPoints: [`${from}box/box.ts`], outfile: `${assets}find.js` });
await build({
  ...inBrowser,
  entryPoints: [`${from}box/page.ts`],
  outfile: `${assets}finder.js`,
  plugins: [sections],
  banner: { js: `/* Contains MiniSearch 7. ${licence.trim()} */` },
});

copyFileSync(`${from}box/box.css`, `${assets}find.css`);
copyFileSync(`${from}../front/front.css`, `${assets}front.css`);

// The generator's own search is taken out of its pages, and its script would complain that it is not there.
rmSync(`${assets}search.js`, { force: true });
const script = readFileSync(`${assets}main.js`, "utf8");
const complaint = 'throw new Error("Search controls missing")';
const silence = "return/* the search is another */";
if (!script.includes(complaint) && !script.includes(silence))
  throw new Error("the script of the site no longer looks for its search as it did");
writeFileSync(`${assets}main.js`, script.replace(complaint, silence));
