// Records what the public functions give while the tests of the rooms run: `tsx calls-in-tests.ts CHECKOUT FOLDER`.
// Property tests call them with thousands of arguments, the same on both tips, since the seed is fixed.
import { spawnSync } from "node:child_process";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

/** What stands behind each alias: the functions of a room, each of which writes down the doubles that it gives. */
function roomModule(root: string, folder: string, file: string, room: string, members: object): string {
  const source = JSON.stringify(join(root, `src/${file}/index.ts`));
  const wrapped = Object.entries(members)
    .filter(([, value]) => typeof value === "function")
    .map(([name]) => `export const ${name} = recording(${JSON.stringify(`${room}.${name}`)}, real.${name});`);
  return `import * as real from ${source};
import { recording } from ${JSON.stringify(join(folder, "record.mjs"))};
export * from ${source};
${wrapped.join("\n")}
`;
}

/** The doubles of a result sorted by their bits, so that neither names nor the order of fields matter. */
const recorder = (output: string): string => `
import { createHash } from "node:crypto";
import { appendFileSync } from "node:fs";
import { threadId } from "node:worker_threads";
const held = [];
export function flush() {
  if (held.length > 0) appendFileSync(${JSON.stringify(output)} + "/" + process.pid + "-" + threadId, held.splice(0).join(""));
}
function collect(value, into, seen) {
  if (typeof value === "number") {
    const view = new DataView(new ArrayBuffer(8));
    view.setFloat64(0, value);
    into.push(view.getBigUint64(0).toString(16));
  } else if (typeof value === "object" && value !== null && !seen.has(value)) {
    seen.add(value);
    for (const inner of Object.values(value)) collect(inner, into, seen);
  }
}
function note(name, value) {
  const doubles = [];
  collect(value, doubles, new Set());
  const digest = createHash("sha1").update(doubles.sort().join(" ")).digest("base64").slice(0, 16);
  held.push(name + " " + doubles.length + " " + digest + "\\n");
  if (held.length > 20000) flush();
}
export function recording(name, call) {
  return (...args) => {
    let result;
    try {
      result = call(...args);
    } catch (error) {
      held.push(name + " 0 throws:" + (error?.code ?? error?.name) + "\\n");
      throw error;
    }
    if (typeof result === "function") return recording(name, result);
    note(name, result);
    return result;
  };
}
`;

const config = (root: string, folder: string, files: readonly string[]): string => {
  const alias = [
    { find: "gelwright/error", replacement: join(root, "src/error.ts") },
    ...files.map((file) => ({ find: `gelwright/${file}`, replacement: join(folder, `room-${file}.ts`) })),
  ];
  const tests = files.map((file) => `tests/${file}/**/*.test.ts`);
  return `export default {
  root: ${JSON.stringify(root)},
  resolve: { alias: [{ find: /^gelwright$/, replacement: ${JSON.stringify(join(root, "src/index.ts"))} }, ...${JSON.stringify(alias)}] },
  test: {
    include: ${JSON.stringify(tests)},
    globals: true,
    setupFiles: ["./tests/support/setup.ts", ${JSON.stringify(join(folder, "setup.mjs"))}],
    testTimeout: 600000,
    hookTimeout: 600000,
    pool: "threads",
    isolate: false,
    reporters: ["dot"],
  },
};
`;
};

const [root = "", folder = ""] = process.argv.slice(2);
const output = join(folder, "calls");
mkdirSync(output, { recursive: true });
const rooms = (await import(pathToFileURL(join(root, "src/index.ts")).href)) as Record<string, object>;
const nameOf = (file: string) => file.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
const files = readdirSync(join(root, "src")).filter((file) => typeof rooms[nameOf(file)] === "object");
for (const file of files) {
  const room = nameOf(file);
  writeFileSync(join(folder, `room-${file}.ts`), roomModule(root, folder, file, room, rooms[room] ?? {}));
}
writeFileSync(join(folder, "package.json"), '{ "type": "module" }');
writeFileSync(join(folder, "record.mjs"), recorder(output));
writeFileSync(
  join(folder, "setup.mjs"),
  `import { flush } from ${JSON.stringify(join(folder, "record.mjs"))};\nglobalThis.afterAll(flush);\n`,
);
writeFileSync(join(folder, "vitest.config.mjs"), config(root, folder, files));
const vitest = join(root, "node_modules/vitest/vitest.mjs");
const ran = spawnSync(process.execPath, [vitest, "run", "--config", join(folder, "vitest.config.mjs")], {
  cwd: root,
  stdio: ["ignore", "ignore", "inherit"],
});

/** How often each function gave each digest. */
const counts = new Map<string, number>();
for (const file of readdirSync(output))
  for (const line of readFileSync(join(output, file), "utf8").split("\n"))
    if (line) counts.set(line, (counts.get(line) ?? 0) + 1);
writeFileSync(join(folder, "calls.json"), JSON.stringify([...counts]));
console.log(
  `${root}: ${[...counts.values()].reduce((sum, n) => sum + n, 0)} calls${ran.status === 0 ? "" : ", with failing tests"}`,
);
