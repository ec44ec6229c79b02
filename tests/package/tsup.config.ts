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
    const extension = build.initialOptions.outExtension?.[".js"] ?? ".js";
    build.onResolve({ filter: /^\.\/.*\.js$/ }, ({ importer, path }) =>
      importer.replaceAll("\\", "/").endsWith("/src/index.ts")
        ? { path: path.replace(/\.js$/, extension), external: true }
        : undefined,
    );
  },
};

const config: Options = {
  // What is built while its module loads, schemas and some tables, would be kept in every bundle that takes anything
  // from the same file. In files of their own they stay away from who does not use them.
  entry: [
    "src/index.ts",
    "src/error.ts",
    "src/*/index.ts",
    "src/*/schema.ts",
    "src/units/unit.ts",
    "src/heat/stirred-correlations.ts",
    "src/laws/vapour-pressures.ts",
  ],
  format: ["esm", "cjs"],
  target: "es2022",
  splitting: true,
  clean: true,
  esbuildPlugins: [frontDoor],
};

export default config;
