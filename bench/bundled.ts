import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { root } from "../tests/support/rooms.js";

/**
 * Runs the speed benches as a user's bundler would leave them. Run as they stand they would measure the wrong thing: the
 * runner of TypeScript names every closure as it is made, which costs a short function half its time.
 */
export async function runSpeeds(): Promise<void> {
  const outfile = `${root}node_modules/.cache/gelwright-bench.mjs`;
  await build({
    entryPoints: [fileURLToPath(new URL("./speeds.ts", import.meta.url))],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    packages: "external",
    logLevel: "error",
  });
  await import(outfile);
}
