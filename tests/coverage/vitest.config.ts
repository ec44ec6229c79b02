// `npm run coverage`: which lines and branches of `src` the tests reach. Suites that run the package, the site or another
// process reach none of them here, and are left out.
import type { UserConfig } from "vite";
import { defineConfig, mergeConfig } from "vitest/config";
import tests from "../vitest.config.js";
import { folder } from "./record.js";

const elsewhere = [
  "architecture",
  "browser",
  "constants",
  "docs",
  "fuzz",
  "mutants",
  "package",
  "references",
  "rename",
  "runtimes",
];

const config: UserConfig = mergeConfig(
  tests as UserConfig,
  defineConfig({
    test: {
      exclude: elsewhere.flatMap((name) => [`tests/${name}/**`, `tests/${name}.test.ts`]),
      coverage: {
        provider: "v8",
        include: ["src/**/*.ts"],
        reporter: ["json-summary", "html"],
        reportsDirectory: folder,
        // What a failed test reached is counted too; the run still fails.
        reportOnFailure: true,
      },
    },
  }) as UserConfig,
);

export default config;
