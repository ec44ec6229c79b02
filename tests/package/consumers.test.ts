import { readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { build } from "esbuild";
import ts from "typescript";
import { afterAll, beforeAll, expect, test } from "vitest";
import { nameOf, rooms } from "../support/rooms.js";
import { installTarball, type Scratch } from "./scratch.js";

let scratch: Scratch;
beforeAll(async () => {
  scratch = await installTarball();
});
afterAll(() => scratch.remove());

const subpaths = ["gelwright", "gelwright/error", ...rooms.map((room) => `gelwright/${room}`)];
const frontDoor = ["CalculationError", ...rooms.map(nameOf)].sort();
const call = "mixingTemperature({ charges: [{ mass: 1, specificHeat: 2000, temperature: 20 }] })";
const wrong = "mixingTemperature({ charges: [{ mass: -1, specificHeat: 2000, temperature: 20 }] })";

test("an ESM project imports every subpath", async () => {
  scratch.write({
    "every.mjs": `const names = {};
for (const path of ${JSON.stringify(subpaths)}) names[path] = Object.keys(await import(path));
console.log(JSON.stringify(names));`,
  });
  const names = (await scratch.json("every.mjs")) as Record<string, string[]>;
  expect(names["gelwright"]?.sort()).toEqual(frontDoor);
  expect(subpaths.filter((path) => !names[path]?.length)).toEqual([]);
});

test("a CJS project requires every subpath, and finds there what the ESM project found", async () => {
  scratch.write({
    "every.cjs": `const load = async () => {
  const differing = [];
  for (const path of ${JSON.stringify(subpaths)}) {
    const esm = Object.keys(await import(path)).sort().join();
    if (Object.keys(require(path)).sort().join() !== esm) differing.push(path);
  }
  console.log(JSON.stringify({ names: Object.keys(require("gelwright")), differing }));
};
load();`,
  });
  const { names, differing } = (await scratch.json("every.cjs")) as { names: string[]; differing: string[] };
  expect(names.sort()).toEqual(frontDoor);
  expect(differing).toEqual([]);
});

test("an error thrown by any copy is a CalculationError to every copy, and no other error is", async () => {
  scratch.write({
    "errors.mjs": `import { createRequire } from "node:module";
const require = createRequire(import.meta.url);
const copies = (path) => import(path).then((esm) => ({ esm, cjs: require(path) }));
const front = await copies("gelwright"), error = await copies("gelwright/error"), heat = await copies("gelwright/heat");
const throwers = { esmFront: front.esm.heat, cjsFront: front.cjs.heat, esmRoom: heat.esm, cjsRoom: heat.cjs };
const classes = { esmFront: front.esm, cjsFront: front.cjs, esmError: error.esm, cjsError: error.cjs };
const verdicts = {};
for (const [thrower, room] of Object.entries(throwers))
  for (const [catcher, { CalculationError }] of Object.entries(classes))
    try { room.${wrong}; } catch (thrown) {
      verdicts[thrower + " to " + catcher] = [thrown instanceof CalculationError, thrown instanceof Error, thrown.code];
    }
for (const [catcher, { CalculationError }] of Object.entries(classes))
  verdicts["another error to " + catcher] = [new TypeError("x") instanceof CalculationError];
console.log(JSON.stringify({ verdicts, twoCopies: front.esm.CalculationError !== front.cjs.CalculationError }));`,
  });
  const { verdicts, twoCopies } = (await scratch.json("errors.mjs")) as {
    verdicts: Record<string, unknown[]>;
    twoCopies: boolean;
  };
  expect(twoCopies).toBe(true);
  const entries = Object.entries(verdicts);
  expect(entries.filter(([, verdict]) => verdict.length === 3)).toHaveLength(16);
  for (const [name, verdict] of entries)
    expect([name, ...verdict]).toEqual(name.startsWith("another") ? [name, false] : [name, true, true, "input"]);
});

const uses = `import { CalculationError, heat } from "gelwright";
import { mixingTemperature } from "gelwright/heat";
${rooms.map((room) => `import * as ${nameOf(room)}Room from "gelwright/${room}";`).join("\n")}
export const all = [${rooms.map((room) => `${nameOf(room)}Room`).join(", ")}];
export const warm: number = heat.${call} + ${call};
export const isOurs = (value: unknown): string => (value instanceof CalculationError ? value.code : "");
`;
const strict = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noEmit: true,
  types: [],
  lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
  skipDefaultLibCheck: true,
  target: ts.ScriptTarget.ES2022,
};
const resolutions: Readonly<Record<string, readonly [string, ts.CompilerOptions]>> = {
  "nodenext, ESM": ["uses.mts", { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext }],
  "nodenext, CJS": ["uses.cts", { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext }],
  "node16, CJS, without the DOM": [
    "plain.cts",
    { module: ts.ModuleKind.Node16, moduleResolution: ts.ModuleResolutionKind.Node16, lib: ["lib.es2022.d.ts"] },
  ],
  bundler: ["uses.ts", { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }],
};

/** The language's own declarations, which every project reads alike. */
const standard = new Map<string, ts.SourceFile | undefined>();

function hostFor(options: ts.CompilerOptions): ts.CompilerHost {
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile;
  host.getSourceFile = (name, ...how) => {
    if (!/\/lib\.[^/]*\.d\.ts$/.test(name)) return read(name, ...how);
    if (!standard.has(name)) standard.set(name, read(name, ...how));
    return standard.get(name);
  };
  return host;
}

/** What the compiler says, in all: the library's own types are checked with the project that uses them. */
function diagnose(files: readonly string[], options: ts.CompilerOptions): string[] {
  const paths = files.map((file) => join(scratch.folder, file));
  const all = { ...strict, ...options };
  const program = ts.createProgram(paths, all, hostFor(all));
  return ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ file, messageText }) =>
        `${basename(file?.fileName ?? "")}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`,
    );
}

test.each(Object.entries(resolutions))(
  "a TypeScript project checks, and its mistake is found (%s)",
  (_name, [file, options]) => {
    scratch.write({ [file]: uses, [`wrong-${file}`]: uses.replaceAll("charges", "charge") });
    const found = diagnose([file, `wrong-${file}`], options);
    expect(found.filter((message) => !message.startsWith("wrong-"))).toEqual([]);
    expect(found).toHaveLength(2);
    expect(found.join()).toContain("'charge' does not exist");
  },
);

test("a browser bundle works where there is nothing of Node", async () => {
  scratch.write({
    "browser.js": `import * as front from "gelwright";
import { mixingTemperature } from "gelwright/heat";
globalThis.answer = [mixingTemperature === front.heat.mixingTemperature, ${call}];`,
  });
  const outfile = join(scratch.folder, "bundle.js");
  const entryPoints = [join(scratch.folder, "browser.js")];
  await build({ entryPoints, outfile, bundle: true, format: "iife", platform: "browser", logLevel: "silent" });
  const page = createContext({});
  runInContext(readFileSync(outfile, "utf8"), page);
  expect([...(page["answer"] as unknown[])]).toEqual([true, 20]);
});
