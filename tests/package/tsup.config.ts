import { readdirSync, readFileSync } from "node:fs";
import type { Plugin } from "esbuild";
import type { Options } from "tsup";
import { rooms } from "../support/rooms.js";

/**
 * Leaves the rooms outside of the front door, which then reads `export * as heat from "./heat/index.js"`.
 *
 * Bundled in, each would become an object built while the module loads, and that object would hold
 * every function of the room in every bundle that asks the room for one.
 */
const frontDoor: Plugin = {
  name: "front door",
  setup(build) {
    const extension = build.initialOptions.outExtension?.[".js"] ?? ".js";
    build.onResolve({ filter: /^\.\/.*\.js$/ }, ({ importer, path }) =>
      importer.replaceAll("\\", "/").endsWith("/src/index.ts")
        ? { path: path.replace(/\.js$/, extension), external: true }
        : undefined,
    );
  },
};

/** Sets the licence of a package above what is taken of it. */
const licences: Plugin = {
  name: "licences",
  setup(build) {
    build.onLoad({ filter: /[\\/]node_modules[\\/].*js$/ }, ({ path }) => {
      const [home = ""] = /.*[\\/]node_modules[\\/][^\\/]+[\\/]/.exec(path) ?? [];
      const licence = readdirSync(home).find((name) => /^licen[cs]e/i.test(name));
      if (!licence) throw new Error(`${home} has no licence to go with its code`);
      return { contents: `/*! ${readFileSync(home + licence, "utf8")} */\n${readFileSync(path, "utf8")}` };
    });
  },
};

const shared: Options = { format: ["esm", "cjs"], target: "es2022" };

/** For bundlers: what rooms have in common stands in files of its own, once. */
const parts: Options = {
  ...shared,
  // What is built while its module loads, schemas and some tables, would be kept in every bundle that takes anything
  // from the same file. In files of their own they stay away from who does not use them.
  entry: [
    "src/index.ts",
    "src/error.ts",
    "src/*/index.ts",
    "src/*/schema.ts",
    "src/formula/entry.ts",
    "src/plan/codes/*.ts",
    "src/plan/compare-plans.ts",
    "src/units/unit.ts",
    "src/heat/stirred-correlations.ts",
    "src/laws/vapour-pressures.ts",
  ],
  splitting: true,
  esbuildPlugins: [frontDoor],
};

/** For Node, which takes longer to find a file than to read it: every subpath whole, dependencies and all. */
const whole: Options = {
  ...shared,
  entry: {
    index: "src/index.ts",
    error: "src/error.ts",
    ...Object.fromEntries(rooms.map((room) => [room, `src/${room}/index.ts`])),
  },
  outDir: "dist/node",
  splitting: false,
  noExternal: [/./],
  esbuildPlugins: [licences],
};

const config: readonly Options[] = [parts, whole];

export default config;
