import { fileURLToPath } from "node:url";
import { defineConfig, type ViteUserConfigExport } from "vitest/config";
import { writeExamples } from "./examples/write.js";

// Before the test files are looked for, since these are some of them.
writeExamples();

const src = fileURLToPath(new URL("../src/", import.meta.url));

const config: ViteUserConfigExport = defineConfig({
  root: fileURLToPath(new URL("../", import.meta.url)),
  resolve: {
    alias: [
      { find: /^gelwright$/, replacement: `${src}index.ts` },
      { find: /^gelwright\/error$/, replacement: `${src}error.ts` },
      { find: /^gelwright\/([a-z-]+)$/, replacement: `${src}$1/index.ts` },
    ],
  },
  test: {
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/setup.ts"],
    // The fuzzing of documents damages every field of a whole job; a slow machine is no failure.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    // The library keeps no state, so its tests may share a thread: a sixth of the time.
    pool: "threads",
    isolate: false,
    // On two cores, as CI has, the default is one thread.
    maxWorkers: "100%",
    reporters: ["default", "./tests/support/reporter.ts"],
  },
});

export default config;
