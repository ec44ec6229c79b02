import type { BuildOptions } from "esbuild";

/** How scripts of the site are bundled, from the package as it is published. */
export const inBrowser: BuildOptions = {
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
};
