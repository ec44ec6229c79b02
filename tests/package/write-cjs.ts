// Run after the bundler: gives every file of dist a twin for `require`, one for one, so that CJS shares parts as ESM does.
// (The bundler's own way to split CJS wraps each `?.` and each call of another part in a function.)
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { transform } from "esbuild";
import { root } from "../support/rooms.js";

for (const name of readdirSync(`${root}dist`, { recursive: true, encoding: "utf8" }))
  if (name.endsWith(".js")) {
    const { code } = await transform(readFileSync(`${root}dist/${name}`, "utf8"), {
      format: "cjs",
      platform: "neutral",
      target: "es2022",
      minifyWhitespace: true,
      charset: "utf8",
    });
    const twin = code.replaceAll(/(\brequire\("\.{1,2}\/[^"]*)\.js"/g, '$1.cjs"');
    writeFileSync(`${root}dist/${name.replace(/\.js$/, ".cjs")}`, twin);
  }
