import type { Plugin } from "esbuild";
import type { Options } from "tsup";

/**
 * Leaves the rooms outside of the front door, which then reads `export * as heat from "./heat/index.js"`.
 *
 * Bundled in, each would become an object built while the module loads, and that object would hold
 * every function of the room in every bundle that asks the room for one.
 */
const frontDoor: Plugin = {
  name: "front door",
  setup(build) {
    build.onResolve({ filter: /^\.\/.*\.js$/ }, ({ importer, path }) =>
      importer.replaceAll("\\", "/").endsWith("/src/index.ts") ? { path, external: true } : undefined,
    );
  },
};

/** One build for Node, browsers and bundlers: what rooms have in common stands in files of its own, once. */
const config: Options = {
  format: ["esm"],
  target: "es2022",
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
  // Names are kept for who reads a stack trace.
  minifyWhitespace: true,
  minifySyntax: true,
  esbuildOptions: (options) => {
    options.charset = "utf8";
    options.chunkNames = "parts/[hash]";
  },
  esbuildPlugins: [frontDoor],
};

export default config;
