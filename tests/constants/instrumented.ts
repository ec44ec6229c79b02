import { readFileSync } from "node:fs";
import { relative } from "node:path";
import { Script } from "node:vm";
import { build } from "esbuild";
import type { Rooms } from "../support/look-up.js";
import { root } from "../support/rooms.js";
import { type Constant, constantsOf, sources } from "./constants.js";
import { shippedValue } from "./mutants.js";

/** The library, built so that it takes its constants from a list. */
export interface Instrumented {
  readonly constants: readonly Constant[];
  /** The values as they ship: numbers, texts of factors of units, and logarithms. */
  readonly shipped: readonly unknown[];
  /** The library made anew with these values. What a function reads it reads from the list, and what stands at the top of a file is made once. */
  readonly make: (values: readonly unknown[]) => Rooms;
}

/** Builds the library once; each `make` then runs the top level of its files again, in some milliseconds. */
export async function instrument(): Promise<Instrumented> {
  const constants: Constant[] = [];
  const { outputFiles } = await build({
    entryPoints: [`${root}src/index.ts`],
    bundle: true,
    write: false,
    format: "cjs",
    platform: "node",
    target: "node20",
    logLevel: "error",
    plugins: [
      {
        name: "constants",
        setup({ onLoad }) {
          onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => {
            const file = relative(root, path).replaceAll("\\", "/");
            const text = readFileSync(path, "utf8");
            const found = sources.includes(file) ? constantsOf(file, text) : [];
            const first = constants.push(...found) - found.length;
            return { contents: replaced(text, found, first), loader: "ts" };
          });
        },
      },
    ],
  });
  const program = new Script(`(function (module, exports, require, __values) {${outputFiles[0]?.text}\n})`, {
    filename: "instrumented.js",
  }).runInThisContext() as (module: { exports: object }, exports: object, none: unknown, values: unknown) => void;
  return {
    constants,
    shipped: constants.map(shippedValue),
    make: (values) => {
      const module = { exports: {} };
      program(module, module.exports, undefined, values);
      return module.exports as Rooms;
    },
  };
}

function replaced(text: string, found: readonly Constant[], first: number): string {
  let at = 0;
  const parts = found.map(({ start, end }, index) => {
    const before = text.slice(at, start);
    at = end;
    return `${before}__values[${first + index}]`;
  });
  return parts.join("") + text.slice(at);
}
