// `npm run runtimes -- /path/of/node22 /path/of/bun …`: what the inputs of all checks give in each runtime, beside what the
// Node that runs this gives. `bun`, `deno` and Chromium are found by themselves where they are installed. Writes
// docs/proof/runtimes.json for the page *Runtimes*, after a build; a runtime that is not there keeps its last run.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { build } from "esbuild";
import { chromium } from "playwright-core";
import { isRefusal } from "../support/check.js";
import { chromiumPath } from "../support/chromium-path.js";
import { root } from "../support/rooms.js";
import { readChecks } from "../support/run-check.js";
import { neverRun, type Ran, type RuntimesRecord, withRuns } from "./record.js";

/** By function and check, then by place in the result. */
type Answers = Readonly<Record<string, Readonly<Record<string, number | string>>>>;

/** How far a result may be off that of Node, relative to itself: runtimes have powers and logarithms of their own. */
const bound = 1e-10;

const calls = readChecks()
  .flatMap(({ checks }) => checks)
  .filter((check) => !isRefusal(check))
  .map(({ id, call, inputs, at }) => ({ id, call, inputs, at }));
const { outputFiles } = await build({
  entryPoints: [`${root}tests/runtimes/evaluate.ts`],
  bundle: true,
  write: false,
  format: "iife",
  target: "es2022",
  // The package as it is built, not its source.
  tsconfigRaw: "{}",
  banner: { js: `const calls = ${JSON.stringify(calls)};` },
});
const folder = mkdtempSync(join(tmpdir(), "runtimes-"));
const script = join(folder, "evaluate.js");
writeFileSync(script, outputFiles[0]?.text ?? "");

function byCommand(command: string): Answers {
  const args = basename(command).startsWith("deno") ? ["run", script] : [script];
  const { stdout, stderr, status, error } = spawnSync(command, args, { encoding: "utf8", maxBuffer: 1e9 });
  if (status !== 0) throw new Error(`${command}: ${error ?? stderr}`);
  return JSON.parse(stdout) as Answers;
}

async function byChromium(executablePath: string): Promise<{ readonly version: string; readonly answers: Answers }> {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ path: script });
    const text = await page.evaluate("answers");
    return { version: browser.version(), answers: JSON.parse(String(text)) as Answers };
  } finally {
    await browser.close();
  }
}

/** What is left of a difference that is 0 but for the last digits: a residual of 1e-14 K beside a temperature of 74 °C. */
const nothing = 1e-14;

/** What differs from Node: for each function the largest deviation. */
function beside(own: Answers, other: Answers) {
  const differing: Record<string, number> = {};
  let results = 0;
  for (const name of new Set([...Object.keys(own), ...Object.keys(other)])) {
    const [call = ""] = name.split(" ");
    const [ours, theirs] = [own[name] ?? {}, other[name] ?? {}];
    const largest = Math.max(...Object.values(ours).map((one) => (typeof one === "number" ? Math.abs(one) : 0)));
    for (const place of new Set([...Object.keys(ours), ...Object.keys(theirs)])) {
      results += 1;
      const off = apart(ours[place], theirs[place], nothing * largest);
      if (off > 0) differing[call] = Math.max(differing[call] ?? 0, off);
    }
  }
  return { results, differing };
}

type Answer = number | string | undefined;

/** How far two results are apart, relative to the larger; words that differ, or a place that one lacks, beyond all bounds. */
function apart(one: Answer, other: Answer, negligible: number): number {
  if (one === other) return 0;
  if (typeof one !== "number" || typeof other !== "number") return Number.MAX_VALUE;
  const larger = Math.max(Math.abs(one), Math.abs(other));
  return larger <= negligible ? 0 : Math.abs(one - other) / larger;
}

const versionOf = (command: string): string =>
  /\d+\.\d+\.\d+/.exec(spawnSync(command, ["--version"], { encoding: "utf8" }).stdout ?? "")?.[0] ?? "";
const nameOf = (command: string): string =>
  (/bun|deno/.exec(basename(command))?.[0] ?? "Node").replace(/^[bd]/, (first) => first.toUpperCase());

const own = byCommand(process.execPath);
const named = process.argv.slice(2);
const found = ["bun", "deno"].filter(
  (name) => versionOf(name) !== "" && !named.some((path) => basename(path).startsWith(name)),
);
const runs: Ran[] = [];
const date = new Date().toISOString().slice(0, 10);
const take = (name: string, version: string, answers: Answers): void => {
  runs.push({ name, version, date, node: process.versions.node, ...beside(own, answers) });
};
for (const command of [...named, ...found]) take(nameOf(command), versionOf(command), byCommand(command));
if (chromiumPath !== undefined) {
  const { version, answers } = await byChromium(chromiumPath);
  take("Chromium", version, answers);
}
rmSync(folder, { recursive: true });

for (const { name, version, node, results, differing } of runs) {
  const off = Object.entries(differing).sort(([, one], [, other]) => other - one);
  console.log(`${name} ${version}: ${results} results, ${off.length} functions differ from Node ${node}`);
  for (const [call, deviation] of off) console.log(`  ${call}: ${deviation.toExponential(1)}`);
  if (off.some(([, deviation]) => deviation > bound)) process.exitCode = 1;
}
const path = `${root}docs/proof/runtimes.json`;
const runtimes = withRuns((JSON.parse(readFileSync(path, "utf8")) as RuntimesRecord).runtimes, runs);
for (const { name, version, date: last } of runtimes.filter((one) => !runs.includes(one)))
  console.log(`${name} ${version}: not run, it is not installed; what is kept is of ${last}`);
for (const name of neverRun(runtimes)) console.log(`${name}: never run`);
const record: RuntimesRecord = { bound, runtimes };
writeFileSync(path, `${JSON.stringify(record, null, 2)}\n`);
