import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { folders, root } from "../support/rooms.js";

/** The house, from the ground up: a folder may import from the lines above its own, and from no neighbour. */
const layers = [
  ["numeric"],
  ["units"],
  ["laws"],
  ["transient"],
  ["formula"],
  [
    "natural-origin",
    "gel",
    "heat",
    "mixing",
    "oils",
    "packing",
    "particles",
    "rheology",
    "stability",
    "labelling",
    "exposure",
  ],
  ["batch"],
  ["plan"],
  ["sheet"],
];
const layerOf = (folder: string) => layers.findIndex((layer) => layer.includes(folder));
const house = layers.flat();
const documents = ["formula", "batch", "plan", "sheet"];

interface Snippet {
  readonly file: string;
  readonly code: string;
  readonly allowed: boolean;
}

const snippets: readonly Snippet[] = [
  ...house.flatMap((from) =>
    house
      .filter((to) => to !== from)
      .map((to) => ({
        file: `src/${from}/to-${to}.ts`,
        code: `export * from "../${to}/thing.js";`,
        allowed: layerOf(to) < layerOf(from),
      })),
  ),
  ...house.flatMap((from) => [
    { file: `src/${from}/to-itself.ts`, code: 'export * from "./thing.js";', allowed: true },
    { file: `src/${from}/to-error.ts`, code: 'export * from "../error.js";', allowed: true },
    { file: `src/${from}/to-guards.ts`, code: 'export * from "../guards.js";', allowed: true },
    { file: `src/${from}/to-front-door.ts`, code: 'export * from "../index.js";', allowed: false },
    { file: `src/${from}/to-node.ts`, code: 'export * from "node:fs";', allowed: false },
    { file: `src/${from}/to-node-unmarked.ts`, code: 'export * from "fs";', allowed: false },
    { file: `src/${from}/to-valibot.ts`, code: 'export * from "valibot";', allowed: documents.includes(from) },
    { file: `src/${from}/to-engine.ts`, code: 'export * from "convert-units";', allowed: from === "units" },
    { file: `src/${from}/late.ts`, code: 'export const late = import("../index.js");', allowed: false },
    { file: `src/${from}/clock.ts`, code: "export const now = Date.now();", allowed: false },
    { file: `src/${from}/browser.ts`, code: "export const title = document.title;", allowed: false },
    { file: `src/${from}/runtime.ts`, code: "export const home = process.env;", allowed: false },
    { file: `src/${from}/printing.ts`, code: 'console.log("x");', allowed: false },
  ]),
  // The plan has folders of its own: questions stand on parts, parts on steps, all on codes, and nothing else on a neighbour.
  { file: "src/plan/questions/to-parts.ts", code: 'export * from "../parts/thing.js";', allowed: true },
  { file: "src/plan/notes/to-parts.ts", code: 'export * from "../parts/thing.js";', allowed: true },
  { file: "src/plan/parts/to-notes.ts", code: 'export * from "../notes/thing.js";', allowed: false },
  { file: "src/plan/parts/to-steps.ts", code: 'export * from "../steps/thing.js";', allowed: true },
  { file: "src/plan/parts/to-codes.ts", code: 'export * from "../codes/thing.js";', allowed: true },
  { file: "src/plan/codes/to-outer.ts", code: 'export * from "../thing.js";', allowed: false },
  { file: "src/plan/codes/to-another.ts", code: 'export * from "./thing.js";', allowed: false },
  { file: "src/plan/parts/to-questions.ts", code: 'export * from "../questions/thing.js";', allowed: false },
  { file: "src/plan/steps/to-parts.ts", code: 'export * from "../parts/thing.js";', allowed: false },
  ...house.map((to) => ({
    file: `src/plan/inner/to-${to}.ts`,
    code: `export * from "../../${to}/thing.js";`,
    allowed: layerOf(to) < layerOf("plan"),
  })),
  { file: "src/plan/inner/to-outer.ts", code: 'export * from "../thing.js";', allowed: true },
  { file: "src/plan/inner/to-neighbour.ts", code: 'export * from "../other/thing.js";', allowed: false },
  { file: "src/plan/inner/to-front-door.ts", code: 'export * from "../../index.js";', allowed: false },
  { file: "src/sheet/words/to-plan.ts", code: 'export * from "../../plan/thing.js";', allowed: true },
  { file: "src/sheet/words/answers/to-words.ts", code: 'export * from "../types.js";', allowed: true },
  { file: "src/sheet/words/to-front-door.ts", code: 'export * from "../../index.js";', allowed: false },
  { file: "src/error.ts", code: 'export * from "./numeric/root.js";', allowed: false },
  { file: "src/guards.ts", code: 'export * from "./numeric/root.js";', allowed: false },
  { file: "src/index.ts", code: 'export * as heat from "./heat/cooling.js";', allowed: false },
  // A folder that the table does not know may import nothing but the error type, until somebody gives it a place.
  ...house.map((to) => ({
    file: `src/unplaced/to-${to}.ts`,
    code: `export * from "../${to}/index.js";`,
    allowed: false,
  })),
];

const folder = mkdtempSync(join(tmpdir(), "layers-"));
let refused: ReadonlySet<string>;

beforeAll(async () => {
  cpSync(`${root}biome.json`, join(folder, "biome.json"));
  for (const { file, code } of snippets) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), `${code}\n`);
  }
  refused = await lint(folder);
});

afterAll(() => rmSync(folder, { recursive: true }));

/** The files in which the linter finds a fault, by their path from the folder. */
function lint(where: string): Promise<ReadonlySet<string>> {
  const biome = [`${root}node_modules/@biomejs/biome/bin/biome`, "lint", "--max-diagnostics=none", "--reporter=json"];
  return new Promise((done, fail) =>
    execFile(process.execPath, biome, { cwd: where, maxBuffer: 1e8 }, (_error, stdout, stderr) => {
      try {
        const report = JSON.parse(stdout) as { diagnostics: { severity: string; location: { path: string } }[] };
        done(new Set(report.diagnostics.filter((d) => d.severity === "error").map((d) => d.location.path)));
      } catch {
        fail(new Error(`the linter gave no report: ${stderr}`));
      }
    }),
  );
}

test.each(snippets.filter((snippet) => !snippet.allowed))("the linter refuses $file", ({ file }) => {
  expect(refused).toContain(file);
});

test.each(snippets.filter((snippet) => snippet.allowed))("the linter allows $file", ({ file }) => {
  expect(refused).not.toContain(file);
});

test("every folder of src has its place in the house", () => {
  expect(folders.filter((name) => !house.includes(name))).toEqual([]);
});
