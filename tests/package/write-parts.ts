// Run after the compiler of TypeScript's syntax, which writes each file of `src` by itself: Node takes longer to find and
// open seven hundred files than to run them. Those of a room are put together in one, with what rooms share beside them.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { build } from "esbuild";
import { type OutputChunk, rollup } from "rollup";
import { rooms, root } from "../support/rooms.js";
import { pureTop } from "./pure-top.js";
import { shortLocals } from "./short-locals.js";
import { inlined, type Mapped, type SourceMap } from "./source-map.js";

const dist = `${root}dist/`;
const subpaths = ["error", ...rooms.map((room) => `${room}/index`)];

interface Links {
  readonly importedIds: readonly string[];
  readonly importers: readonly string[];
}

const nothing: Links = { importedIds: [], importers: [] };

const roomOf = (id: string): string | undefined => /^([^/]+)\//.exec(id.slice(dist.length))?.[1];

/** Whether a file is of a sort, or leads to one that is. */
function reaches(
  id: string,
  sort: (id: string) => boolean,
  next: (id: string) => readonly string[],
  seen = new Set<string>(),
): boolean {
  if (sort(id)) return true;
  if (seen.has(id)) return false;
  seen.add(id);
  return next(id).some((other) => reaches(other, sort, next, seen));
}

/** The part that a file goes into: its room, or what several rooms load of one without the rest. */
function partOf(id: string, info: (id: string) => Links): string {
  const room = roomOf(id);
  if (room === undefined) return id.endsWith("error.js") ? "error" : "numeric";
  const needs = (name: string) =>
    reaches(
      id,
      (other) => other === name,
      (other) => info(other).importedIds,
    );
  // Exact numbers without the tables of units, mixtures without documents: many rooms take these and read no text.
  if (room === "units") return needs("convert-units") ? "units" : "numeric";
  if (room === "formula") return needs("valibot") ? "documents" : needs("convert-units") ? "units" : "mixtures";
  // The sheet takes codes and what compares answers. Whoever prints a plan that ran elsewhere loads no more of `plan`.
  const readAbove = reaches(
    id,
    (other) => roomOf(other) !== room,
    (other) => (other.endsWith("index.js") ? [] : info(other).importers),
  );
  return room === "plan" && readAbove ? "answers" : room;
}

/** A file that the compiler wrote, with its map. */
function mapped(id: string): { code: string; map: string } {
  return { code: readFileSync(id, "utf8"), map: readFileSync(`${id}.map`, "utf8") };
}

const bundle = await rollup({
  input: Object.fromEntries(subpaths.map((subpath) => [subpath, `${dist}${subpath}.js`])),
  external: /^[^./]/,
  // Nothing at the top of a file of `src` does more than make a value.
  treeshake: "smallest",
  plugins: [{ name: "maps of the step before", load: mapped }],
  onwarn({ code, message }) {
    // Two files of one room may call functions of each other; two parts may not wait for each other.
    if (code !== "CIRCULAR_DEPENDENCY") throw new Error(message);
  },
});
const { output } = await bundle.generate({
  dir: dist,
  format: "es",
  entryFileNames: "[name].js",
  chunkFileNames: "parts/[name].js",
  hoistTransitiveImports: false,
  generatedCode: "es2015",
  sourcemap: "hidden",
  manualChunks: (id, { getModuleInfo }) => partOf(id, (other) => getModuleInfo(other) ?? nothing),
});
await bundle.close();

const frontDoor = {
  fileName: "index.js",
  code: mapped(`${dist}index.js`).code,
  map: JSON.parse(mapped(`${dist}index.js`).map),
};
for (const name of readdirSync(dist)) rmSync(dist + name, { recursive: true });

/** Only within a bundle is `const` made `var`, which loads faster and is shorter. */
async function small(file: Mapped): Promise<Mapped> {
  const { outputFiles } = await build({
    stdin: { contents: inlined(file), loader: "js" },
    outfile: "small.js",
    sourcemap: "external",
    sourcesContent: false,
    bundle: true,
    write: false,
    format: "esm",
    target: "es2022",
    minifyWhitespace: true,
    minifySyntax: true,
    external: ["*"],
    charset: "utf8",
  });
  const [map, code] = outputFiles.map(({ text }) => text) as [string, string];
  return { code, map: JSON.parse(map) as SourceMap };
}

const files = output.filter((file): file is OutputChunk => file.type === "chunk");
for (const { fileName, code, map } of [...files, frontDoor]) {
  mkdirSync(dirname(dist + fileName), { recursive: true });
  const made = pureTop(await shortLocals(await small({ code, map: map as unknown as SourceMap })));
  writeFileSync(dist + fileName, made.code);
  writeFileSync(`${dist}${fileName}.map`, JSON.stringify(made.map));
}
