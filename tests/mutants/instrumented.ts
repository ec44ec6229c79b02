import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";
import { Instrumenter } from "@stryker-mutator/instrumenter";
import { build, type Plugin } from "esbuild";
import { root } from "../support/rooms.js";

/** One change of the source. */
export interface Mutant {
  readonly index: number;
  /** `src/plan/judge.ts`. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  /** Which of Stryker's mutators made it. */
  readonly mutator: string;
  readonly original: string;
  readonly replacement: string;
}

/** The sources with a switch at every place that a mutant changes. */
export interface Instrumented {
  readonly mutants: readonly Mutant[];
  /** Text by path. */
  readonly sources: ReadonlyMap<string, string>;
}

/** What a file of tests is run with: which mutant is on, and who counts. */
export interface Switches {
  /** The index of the mutant that is on, or -1. */
  active: number;
  /** Called where that one is taken. */
  hit(): void;
  /** Called where these could be taken. */
  cover(...indices: readonly number[]): void;
}

/** A file of tests with all that it imports from here, to be evaluated as often as wanted. */
export type TestProgram = (switches: Switches, vitest: object) => void;

const quiet = (): undefined => undefined;
const never = (): boolean => false;
const logger = {
  ...{ trace: quiet, debug: quiet, info: quiet, warn: quiet, error: quiet, fatal: quiet },
  ...{ isTraceEnabled: never, isDebugEnabled: never, isInfoEnabled: never },
  ...{ isWarnEnabled: never, isErrorEnabled: never, isFatalEnabled: never },
};

/** Puts the mutants of Stryker's default mutators into files of `src`, each behind a switch. */
export async function instrument(files: readonly string[]): Promise<Instrumented> {
  const texts = new Map(files.map((file) => [file, readFileSync(`${root}${file}`, "utf8")]));
  const { mutants, files: out } = await new Instrumenter(logger).instrument(
    [...texts].map(([name, content]) => ({ name: `${root}${name}`, content, mutate: true })),
    { plugins: null, ignorers: [], excludedMutations: [], noHeader: true },
  );
  return {
    mutants: mutants
      .filter(({ status }) => status === undefined)
      .map(({ id, fileName, location: { start, end }, mutatorName, replacement }) => {
        const file = relative(root, fileName).replaceAll("\\", "/");
        const lines = (texts.get(file) ?? "").split("\n").slice(start.line, end.line + 1);
        const last = lines.length - 1;
        const cut = lines.map((line, i) => line.slice(i === 0 ? start.column : 0, i === last ? end.column : undefined));
        const original = cut.join("\n").replace(/\s+/g, " ");
        return {
          ...{ index: Number(id), file, line: start.line + 1, mutator: mutatorName },
          ...{ original, replacement: replacement.replace(/\s+/g, " ") },
        };
      }),
    sources: new Map(out.map(({ name, content }) => [name, content])),
  };
}

/** Stryker's calls with texts, as comparisons of numbers: they stand in the innermost loops. */
function quick(text: string, counts: boolean): string {
  return text
    .replace(/stryMutAct_9fa48\("(\d+)"\)/g, "(__switches.active === $1 && (__switches.hit(), true))")
    .replace(/stryCov_9fa48\(([^)]*)\)/g, (_, ids: string) =>
      counts ? `__switches.cover(${ids.replaceAll('"', "")})` : "0",
    );
}

/** Builds files of tests, each with all that it imports from here; `counts` keeps the calls of `cover`. */
export async function programsOf(
  tests: readonly string[],
  { sources }: Instrumented,
  counts: boolean,
): Promise<readonly TestProgram[]> {
  const plugin: Plugin = {
    name: "mutants",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^gelwright(\/|$)/ }, ({ path: name }) => {
        const room = name.split("/")[1];
        return { path: `${root}src/${room === undefined ? "index" : room === "error" ? room : `${room}/index`}.ts` };
      });
      onResolve({ filter: /^[^./]/ }, ({ kind }) => (kind === "entry-point" ? undefined : { external: true }));
      onLoad({ filter: /\.ts$/ }, ({ path: file }) => {
        const source = sources.get(file);
        if (source !== undefined) return { contents: quick(source, counts), loader: "ts" };
        if (file.startsWith(`${root}src/`)) return undefined;
        const url = JSON.stringify(pathToFileURL(file).href);
        return { contents: readFileSync(file, "utf8").replaceAll("import.meta.url", url), loader: "ts" };
      });
    },
  };
  const { outputFiles } = await build({
    entryPoints: tests.map((test, i) => ({ in: `${root}${test}`, out: String(i) })),
    inject: [`${root}tests/support/setup.ts`],
    ...{ bundle: true, write: false, outdir: "/", format: "cjs", platform: "node", target: "node20" },
    // The package says that none of its files has an effect; those of the tests have.
    ...{ ignoreAnnotations: true, logLevel: "silent" },
    plugins: [plugin],
  });
  const texts = new Map(outputFiles.map(({ path, text }) => [basename(path, ".js"), text]));
  return tests.map((test, i) => programOf(`${root}${test}`, texts.get(String(i)) ?? ""));
}

function programOf(path: string, text: string): TestProgram {
  const wrapped = `(function (module, exports, require, __switches) {${text}\n})`;
  const program = new Script(wrapped, { filename: path }).runInThisContext() as (
    module: object,
    exports: object,
    require: (name: string) => unknown,
    switches: Switches,
  ) => void;
  const require = createRequire(path);
  // A bundle takes the whole of a CommonJS module for its default, as Node does.
  const take = (name: string): unknown => {
    const taken = require(name) as { readonly default?: unknown };
    return typeof taken.default === "function" ? taken.default : taken;
  };
  return (switches, vitest) => {
    const module = { exports: {} };
    program(module, module.exports, (name) => (name === "vitest" ? vitest : take(name)), switches);
  };
}
