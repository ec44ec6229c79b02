/**
 * The shape of `plan` in figures: `npm run shape`. Its own minified code, with the rooms left out; bundles gzipped; the
 * longest chain of imports and circles inside it, types included; files that only one other file uses; and tests for what
 * is not known outside the files that may make them. `npm run shape -- src/other` looks at another folder.
 */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import ts from "typescript";

const [folder = "src/plan"] = process.argv.slice(2);
/** Of two files of which one alone uses the other, this many lines together fit on a screen or two. */
const linesTogether = 150;

const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => join(folder, name))
  .sort();

/** Which files of the folder a file imports, types included. */
const imports = new Map(
  files.map((file) => {
    const { importedFiles } = ts.preProcessFile(readFileSync(file, "utf8"), true, true);
    const inside = importedFiles
      .map(({ fileName }) => relative(".", resolve(dirname(file), fileName)).replace(/\.js$/, ".ts"))
      .filter((name) => files.includes(name));
    return [file, [...new Set(inside)]] as const;
  }),
);

/** The longest chain of imports from a file, itself included; circles are noted on the way. */
const circles: string[] = [];
const chains = new Map<string, readonly string[]>();
function chainFrom(file: string, above: readonly string[] = []): readonly string[] {
  if (above.includes(file)) {
    circles.push([...above.slice(above.indexOf(file)), file].join(" -> "));
    return [];
  }
  const known = chains.get(file);
  if (known) return known;
  const below = (imports.get(file) ?? []).map((next) => chainFrom(next, [...above, file]));
  const longest = below.reduce<readonly string[]>((max, one) => (one.length > max.length ? one : max), []);
  const chain = [file, ...longest];
  chains.set(file, chain);
  return chain;
}
const longest = files.map((file) => chainFrom(file)).reduce((max, one) => (one.length > max.length ? one : max), []);

const lines = (file: string): number => readFileSync(file, "utf8").split("\n").length - 1;
/** A row of a table stands in an `index.ts` of its folder; `index.ts` of the room itself is what is public. */
const once = files.flatMap((file) => {
  const users = files.filter((user) => imports.get(user)?.includes(file));
  const [only] = users;
  if (!only || users.length > 1 || only.endsWith("/index.ts")) return [];
  return lines(file) + lines(only) < linesTogether
    ? [`${file} (${lines(file)}), only used by ${only} (${lines(only)})`]
    : [];
});

async function minified(entry: string, external: boolean): Promise<Uint8Array> {
  const { outputFiles } = await build({
    stdin: { contents: `export * from "./${entry}";`, resolveDir: ".", loader: "ts" },
    bundle: true,
    minify: true,
    write: false,
    format: "esm",
    target: "es2022",
    plugins: external
      ? [
          {
            name: "rooms outside",
            setup(bundler) {
              bundler.onResolve({ filter: /.*/ }, ({ path, resolveDir, kind }) => {
                if (kind === "entry-point") return undefined;
                const inside = path.startsWith(".") && relative(".", resolve(resolveDir, path)).startsWith(folder);
                return inside ? undefined : { path, external: true };
              });
            },
          },
        ]
      : [],
  });
  return outputFiles[0]?.contents ?? new Uint8Array();
}

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
const own = await minified(`${folder}/index.ts`, true);
const room = await minified(`${folder}/index.ts`, false);
const everything = await minified("src/index.ts", false);
const source = files.map((file) => readFileSync(file, "utf8")).join("\n");
const count = (pattern: RegExp): number => source.match(pattern)?.length ?? 0;

console.log(`${folder}: ${files.length} files, ${files.reduce((sum, file) => sum + lines(file), 0)} lines`);
console.log(`own minified code, rooms outside: ${kilobytes(own.length)}`);
console.log(
  `bundle, gzipped: ${kilobytes(gzipSync(room).length)} (plan), ${kilobytes(gzipSync(everything).length)} (everything)`,
);
console.log(`longest chain of imports: ${longest.length} files\n  ${longest.join("\n  ")}`);
console.log(`circles: ${circles.length}${circles.map((circle) => `\n  ${circle}`).join("")}`);
console.log(
  `files that one other uses, short enough to stand in it: ${once.length}${once.map((one) => `\n  ${one}`).join("")}`,
);
console.log(`typeof tests: ${count(/typeof \w+[^;\n]*===/g)}`);
