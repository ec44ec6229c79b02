// Run after the compiler of TypeScript's syntax, which writes each file of `src` by itself: Node takes longer to find and
// open seven hundred files than to run them. Those of a room are put together in one, with what rooms share beside them.
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { build } from "esbuild";
import { type OutputChunk, rollup } from "rollup";
import { rooms, root } from "../support/rooms.js";
import { pureTop } from "./pure-top.js";

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

const bundle = await rollup({
  input: Object.fromEntries(subpaths.map((subpath) => [subpath, `${dist}${subpath}.js`])),
  external: /^[^./]/,
  // Nothing at the top of a file of `src` does more than make a value.
  treeshake: "smallest",
  onwarn({ code, message }) {
    // Two files of one room may call functions of each other; two parts may not wait for each other.
    if (code !== "CIRCULAR_DEPENDENCY") throw new Error(message);
  },
});
const { output } = await bundle.generate({
  format: "es",
  entryFileNames: "[name].js",
  chunkFileNames: "parts/[name].js",
  hoistTransitiveImports: false,
  generatedCode: "es2015",
  manualChunks: (id, { getModuleInfo }) => partOf(id, (other) => getModuleInfo(other) ?? nothing),
});
await bundle.close();

const frontDoor = readFileSync(`${dist}index.js`, "utf8");
for (const name of readdirSync(dist)) rmSync(dist + name, { recursive: true });

/** Only within a bundle is `const` made `var`, which loads faster and is shorter. */
async function small(code: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: code },
    bundle: true,
    write: false,
    format: "esm",
    target: "es2022",
    minifyWhitespace: true,
    minifySyntax: true,
    external: ["*"],
    charset: "utf8",
  });
  return outputFiles[0]?.text ?? "";
}

const files = output.filter((file): file is OutputChunk => file.type === "chunk");
for (const { fileName, code } of [...files, { fileName: "index.js", code: frontDoor }]) {
  mkdirSync(dirname(dist + fileName), { recursive: true });
  writeFileSync(dist + fileName, pureTop(await small(code)));
}
