// Run after the compiler, which writes the declarations of each file: those that a subpath reaches are put together in a
// few files. They stand once, in `dist/types`; what `import` and what `require` are given leads there.
import { cpSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { rollup } from "rollup";
import { dts } from "rollup-plugin-dts";
import { rooms, root } from "../support/rooms.js";

const declarations = `${root}docs/api/declarations/`;
const subpaths = ["error", ...rooms.map((room) => `${room}/index`)];

rmSync(`${root}dist/types`, { recursive: true, force: true });
const bundle = await rollup({
  input: Object.fromEntries(subpaths.map((subpath) => [subpath, `${declarations}${subpath}.d.ts`])),
  plugins: [
    dts(),
    { name: "tabs", renderChunk: (code) => code.replace(/^( {4})+/gm, ({ length }) => "\t".repeat(length / 4)) },
  ],
  external: /^[^./]/,
});
await bundle.write({
  dir: `${root}dist/types`,
  entryFileNames: "[name].d.ts",
  chunkFileNames: "shared/[hash].d.ts",
});
// The front door only names the rooms.
cpSync(`${declarations}index.d.ts`, `${root}dist/types/index.d.ts`);
// To either kind of import a module of names is the same, if it is one that `require` can take.
writeFileSync(`${root}dist/types/package.json`, '{ "type": "commonjs" }\n');

for (const subpath of ["index", ...subpaths]) {
  const home = subpath.includes("/") ? "../types" : "./types";
  mkdirSync(dirname(`${root}dist/${subpath}`), { recursive: true });
  for (const ending of ["d.ts", "d.cts"])
    writeFileSync(`${root}dist/${subpath}.${ending}`, `export * from "${home}/${subpath}.js";\n`);
}
