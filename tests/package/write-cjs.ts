// Run after the bundler: gives every file of dist a twin for `require`, one for one, so that CJS shares parts as ESM does.
// (The bundler's own way to split CJS wraps each `?.` and each call of another part in a function.)
// Then the maps of both are cut to one place for each line.
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { transform } from "esbuild";
import { root } from "../support/rooms.js";
import { byLine, inlined, type Mapped, type SourceMap } from "./source-map.js";

/** What only passes on names of other files comes from no line of its own. */
function write(name: string, { code, map }: Mapped): void {
  const isOwn = map.sources.some((source) => source?.startsWith("../"));
  writeFileSync(`${root}dist/${name}`, isOwn ? `${code}//# sourceMappingURL=${basename(name)}.map\n` : code);
  if (isOwn) writeFileSync(`${root}dist/${name}.map`, JSON.stringify(byLine(map)));
  else rmSync(`${root}dist/${name}.map`, { force: true });
}

for (const name of readdirSync(`${root}dist`, { recursive: true, encoding: "utf8" }))
  if (name.endsWith(".js")) {
    const file: Mapped = {
      code: readFileSync(`${root}dist/${name}`, "utf8"),
      map: JSON.parse(readFileSync(`${root}dist/${name}.map`, "utf8")),
    };
    const { code, map } = await transform(inlined(file), {
      format: "cjs",
      platform: "neutral",
      target: "es2022",
      minifyWhitespace: true,
      charset: "utf8",
      sourcemap: "external",
      sourcesContent: false,
    });
    const twin = code.replaceAll(/(\brequire\("\.{1,2}\/[^"]*)\.js"/g, '$1.cjs"');
    const mapTwin = JSON.parse(map) as SourceMap;
    write(name.replace(/\.js$/, ".cjs"), { code: twin, map: mapTwin });
    write(name, file);
  }
