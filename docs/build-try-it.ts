// Run after typedoc and after the build: bundles the page on which a job can be run, from the package as it is published.
import { copyFileSync, mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const from = fileURLToPath(new URL("./try-it/", import.meta.url));
const to = fileURLToPath(new URL("./site/try-it/", import.meta.url));
mkdirSync(to, { recursive: true });
for (const file of ["index.html", "try-it.css"]) copyFileSync(from + file, to + file);
await build({
  entryPoints: [`${from}try-it.ts`],
  outfile: `${to}try-it.js`,
  bundle: true,
  minify: true,
  // One classic script: a page opened from a folder may load no modules.
  format: "iife",
  target: "es2022",
  // Without the paths of the checkout the package is found by its own name, and so in `dist`.
  tsconfigRaw: {},
  logLevel: "warning",
  // Chunks of the package import one another for their order alone, which here is of no account.
  logOverride: { "ignored-bare-import": "silent" },
});
