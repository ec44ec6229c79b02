// Run after the compiler: gives every declaration of dist a twin for `require`, whose imports name twins.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { root } from "../support/rooms.js";

for (const name of readdirSync(`${root}dist`, { recursive: true, encoding: "utf8" }))
  if (name.endsWith(".d.ts")) {
    const text = readFileSync(`${root}dist/${name}`, "utf8");
    const twin = text.replaceAll(/((?:from |import\()"\.{1,2}\/[^"]*)\.js"/g, '$1.cjs"');
    writeFileSync(`${root}dist/${name.replace(/\.ts$/, ".cts")}`, twin);
  }
