import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { rooms, root } from "../../tests/support/rooms.js";
import { table } from "./markdown.js";

/** What a bundle pays for some code of the built package, minified and gzipped [B]. */
async function gzipped(code: string): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: root },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    logLevel: "error",
    tsconfigRaw: "{}",
  });
  return outputFiles.reduce((sum, file) => sum + gzipSync(file.contents, { level: 9 }).length, 0);
}

const inKilobytes = (bytes: number) => (bytes / 1000).toFixed(1);

/** One function of a room that many need, to show what an import of it alone costs. */
const single: readonly (readonly [room: string, name: string])[] = [
  ["heat", "coolingTime"],
  ["heat", "largestAddition"],
  ["units", "convert"],
  ["particles", "settlingOverCooling"],
  ["packing", "fillMass"],
  ["batch", "roundToBalances"],
  ["natural-origin", "productContent"],
  ["mixing", "scaleUp"],
  ["oils", "profileValues"],
];

interface ByBundler {
  readonly versions: Readonly<Record<string, string>>;
  readonly bytes: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

/** What each bundler makes of the package, as `npm run bundlers` last found it. Refused once the package weighs another tenth. */
function byBundler(oneFunction: number): string[] {
  const { versions, bytes } = JSON.parse(readFileSync(`${root}docs/proof/bundlers.json`, "utf8")) as ByBundler;
  const then = Object.values(bytes)[0]?.["esbuild"] ?? 0;
  if (Math.abs(oneFunction / then - 1) > 0.1)
    throw new Error(`one function weighed ${then} B and weighs ${oneFunction} B: run npm run bundlers`);
  const names = Object.keys(versions);
  return table(
    ["kB", ...names.map((name) => `${name} ${versions[name]}`)],
    Object.entries(bytes).map(([what, row]) => [what, ...names.map((name) => inKilobytes(row[name] ?? Number.NaN))]),
    1,
  );
}

/** The page *Weight*: what each subpath adds to a bundle, measured as the page is built. */
export async function weightPage(): Promise<string> {
  const whole = await Promise.all(
    rooms.map(async (room) => [
      `\`gelwright/${room}\``,
      inKilobytes(await gzipped(`export * from "./dist/${room}/index.js";`)),
    ]),
  );
  const one = await Promise.all(
    single.map(async ([room, name]) => [
      `\`${name}\` of \`gelwright/${room}\``,
      inKilobytes(await gzipped(`export { ${name} } from "./dist/${room}/index.js";`)),
    ]),
  );
  const all = inKilobytes(await gzipped('export * from "./dist/index.js";'));
  return [
    "# Weight",
    "",
    "What the package adds to a page or an app: minified by esbuild and gzipped, its dependencies included, measured when this page was built. A bundler keeps only what you use, so a whole room is the maximum that it can add.",
    "",
    "## One function",
    "",
    ...table(["import", "kB"], one, 1),
    "",
    "## A whole room",
    "",
    `Rooms share code, so two of them together weigh less than their sum. All of them together weigh ${all} kB.`,
    "",
    ...table(["import", "kB"], whole, 1),
    "",
    "## By bundler",
    "",
    'Each bundler minifies as it does by itself (Rollup by esbuild). `import { heat } from "gelwright"` names a whole room: some bundlers look through it, and some keep more than is used, so import from the room where the weight counts.',
    "",
    ...byBundler(await gzipped('export { coolingTime } from "./dist/heat/index.js";')),
    "",
    "Node and bundlers read the same files, ESM or CJS. Dependencies are packages of their own: `convert-units` and `valibot`, which only the rooms that read quantities or documents import.",
  ].join("\n");
}
