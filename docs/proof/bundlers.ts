// `npm run bundlers` writes what each bundler makes of the package, for the page *Weight*.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { gzipSync } from "node:zlib";
import { build, transform } from "esbuild";
import { rollup } from "rollup";
import webpack from "webpack";
import { root } from "../../tests/support/rooms.js";

/** Bundles and minifies an entry file, as each bundler does by itself, and gives the code. */
const bundlers: Readonly<Record<string, (entry: string, folder: string) => Promise<string>>> = {
  async esbuild(entry) {
    const { outputFiles } = await build({
      entryPoints: [entry],
      bundle: true,
      minify: true,
      format: "esm",
      write: false,
      logLevel: "error",
      tsconfigRaw: "{}",
    });
    return outputFiles.map(({ text }) => text).join("");
  },

  // Rollup finds no packages and minifies nothing by itself. Packages as Node finds them, files of a package as free of
  // side effects as its package.json says, minified by esbuild.
  async Rollup(entry) {
    const packages = {
      name: "packages",
      resolveId: (id: string, from?: string) => ({
        id: /^[./]/.test(id) ? resolve(dirname(from ?? entry), id) : fileURLToPath(import.meta.resolve(id)),
        moduleSideEffects: from === undefined,
      }),
    };
    const bundle = await rollup({ input: entry, plugins: [packages], logLevel: "silent" });
    const { output } = await bundle.generate({ format: "es" });
    const code = output.map((file) => (file.type === "chunk" ? file.code : "")).join("");
    return (await transform(code, { minify: true, format: "esm" })).code;
  },

  async Vite(entry) {
    const { build: viteBuild } = await import("vite");
    const made = await viteBuild({
      root,
      configFile: false,
      publicDir: false,
      logLevel: "silent",
      build: { write: false, minify: true, lib: { entry, formats: ["es"], fileName: "out" } },
    });
    const outputs = (Array.isArray(made) ? made : [made]) as { output: { type: string; code?: string }[] }[];
    return outputs.flatMap(({ output }) => output.map(({ code = "" }) => code)).join("");
  },

  async webpack(entry, folder) {
    const compiler = webpack({
      mode: "production",
      entry,
      target: "web",
      experiments: { outputModule: true },
      output: { path: join(folder, "webpack"), filename: "out.js", library: { type: "module" } },
    });
    const stats = await promisify(compiler.run.bind(compiler))();
    await promisify(compiler.close.bind(compiler))();
    if (stats?.hasErrors()) throw new Error(stats.toString("errors-only"));
    return readdirSync(join(folder, "webpack"))
      .map((name) => readFileSync(join(folder, "webpack", name), "utf8"))
      .join("");
  },
};

const codes = {
  "one function, `coolingTime` of `gelwright/heat`": 'export { coolingTime } from "gelwright/heat/index.js";',
  "the same by the front door, `heat.coolingTime` of `gelwright`":
    'import { heat } from "gelwright";\nexport const coolingTime = heat.coolingTime;',
  "plan and sheet": 'export * from "gelwright/plan/index.js"; export * from "gelwright/sheet/index.js";',
};

const rows: Record<string, Record<string, number>> = {};
for (const [what, code] of Object.entries(codes)) {
  rows[what] = {};
  for (const [name, bundle] of Object.entries(bundlers)) {
    const folder = mkdtempSync(join(tmpdir(), "bundle-"));
    const entry = join(folder, "entry.js");
    const built = code.replaceAll('"gelwright"', `"${root}dist/index.js"`).replaceAll("gelwright/", `${root}dist/`);
    writeFileSync(entry, built);
    rows[what][name] = gzipSync(await bundle(entry, folder), { level: 9 }).length;
    rmSync(folder, { recursive: true });
  }
}

const versionOf = (name: string): string =>
  (JSON.parse(readFileSync(`${root}node_modules/${name}/package.json`, "utf8")) as { version: string }).version;
const versions = Object.fromEntries(Object.keys(bundlers).map((name) => [name, versionOf(name.toLowerCase())]));
writeFileSync(`${root}docs/proof/bundlers.json`, `${JSON.stringify({ versions, bytes: rows }, null, 2)}\n`);
