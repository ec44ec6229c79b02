// Shows that the change of names changed no number: `npx tsx tests/rename/compare.ts [OLD_CHECKOUT [NEW_CHECKOUT]]`.
// Without a checkout of the old tip it makes one for itself. Exits 1 on any difference; `--all` lists every place,
// `--tests` compares what the functions give while the tests of the rooms run, `--names` lists the names that changed.
import { execFileSync, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { type Calls, type CallsCompared, compareCalls } from "./compare-calls.js";
import { type Comparison, compareTips } from "./compare-results.js";
import type { Result } from "./leaves.js";
import { namesOf } from "./names.js";

const oldTip = "33bb12d";
const here = fileURLToPath(new URL("../../", import.meta.url));
const given = process.argv.slice(2).filter((word) => !word.startsWith("--"));
const listed = process.argv.includes("--all") ? Number.POSITIVE_INFINITY : 40;
const folder = mkdtempSync(join(tmpdir(), "compare-names-"));

/** The tip before the names changed, in a work tree of its own. */
function checkoutOfOldTip(): string {
  const checkout = join(folder, "old-checkout");
  execFileSync("git", ["-C", here, "worktree", "add", "--detach", checkout, oldTip], { stdio: "ignore" });
  symlinkSync(join(here, "node_modules"), join(checkout, "node_modules"));
  return checkout;
}

function removeCheckout(checkout: string): void {
  execFileSync("git", ["-C", here, "worktree", "remove", "--force", checkout], { stdio: "ignore" });
}

/** Runs a checkout by its own sources, with a script of this folder that is the same for both tips. */
async function run(script: string, checkout: string, output: string): Promise<void> {
  const tsx = join(here, "node_modules/tsx/dist/cli.mjs");
  const options = ["--tsconfig", join(checkout, "tsconfig.json")];
  const args = [tsx, ...options, join(here, "tests/rename", script), checkout, output];
  const child = spawn(process.execPath, args, { cwd: checkout, stdio: ["ignore", "inherit", "inherit"] });
  const code = await new Promise((done) => child.on("close", done));
  if (code !== 0) throw new Error(`${script} did not run to its end in ${checkout}`);
}

async function resultsOf(checkout: string, tip: string): Promise<Result[]> {
  const output = join(folder, tip, "results.ndjson");
  mkdirSync(join(folder, tip));
  await run("run-tip.ts", checkout, output);
  return readFileSync(output, "utf8")
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Result);
}

async function callsOf(checkout: string, tip: string): Promise<Calls> {
  const own = join(folder, `${tip}-tests`);
  mkdirSync(own);
  await run("calls-in-tests.ts", checkout, own);
  return JSON.parse(readFileSync(join(own, "calls.json"), "utf8")) as Calls;
}

/** Whether whatever the old tests got is got by the new ones. They may ask for more: new tests are no difference. */
function printCalls(compared: readonly CallsCompared[]): boolean {
  const total = (key: "old" | "now" | "missing" | "added") => compared.reduce((sum, one) => sum + one[key], 0);
  console.log(`\ncalls in tests: ${total("old")} old, ${total("now")} new, ${compared.length} functions`);
  console.log(`  with doubles that only the old tip gave: ${total("missing")}; only the new: ${total("added")}`);
  for (const { call, old, now, missing, added } of compared)
    if (missing + added > 0) console.log(`  ${call}: ${old} old, ${now} new; only old ${missing}, only new ${added}`);
  return total("missing") === 0;
}

function print({ counts, differences, renamed }: Comparison): void {
  const columns = ["resultsOld", "resultsNew", "leavesOld", "leavesNew", "doubles"] as const;
  const faults = ["digits", "words", "missing", "added", "clashes"] as const;
  const row = (cells: readonly (string | number)[]) =>
    console.log(cells.map((cell, i) => (i === 0 ? String(cell).padEnd(14) : String(cell).padStart(11))).join(""));
  row(["", ...columns, ...faults]);
  for (const [group, of] of counts) row([group, ...[...columns, ...faults].map((key) => of[key])]);
  row(["all", ...[...columns, ...faults].map((key) => [...counts.values()].reduce((sum, of) => sum + of[key], 0))]);
  for (const kind of new Set(differences.map((one) => one.kind))) {
    const of = differences.filter((one) => one.kind === kind);
    const places = [...new Set(of.map((one) => one.place))];
    console.log(`\n${kind}: ${of.length}, in ${places.length} places`);
    for (const place of places.slice(0, listed)) {
      const alike = of.filter((one) => one.place === place);
      console.log(`  ${place}: ${alike.length}, such as ${alike[0]?.id}: ${alike[0]?.text}`);
    }
    if (places.length > listed) console.log(`  and ${places.length - listed} more places (--all lists them)`);
  }
  console.log(`\n${renamed.size} names of fields changed in the results`);
  if (process.argv.includes("--names"))
    for (const [change, times] of [...renamed].sort()) console.log(`  ${change} (${times} leaves)`);
  console.log(differences.length === 0 ? "\nno difference" : `\n${differences.length} differences`);
}

const now = resolve(given[1] ?? here);
const old = given[0] ? resolve(given[0]) : checkoutOfOldTip();
try {
  const names = await namesOf(now);
  const [before, after] = await Promise.all([resultsOf(old, "old"), resultsOf(now, "new")]);
  const comparison = compareTips(before, after, names);
  const blocks = (results: readonly Result[]) => new Set(results.flatMap(({ block }) => block ?? [])).size;
  console.log(`examples: ${blocks(before)} blocks old, ${blocks(after)} new; a result is a statement of theirs`);
  print(comparison);
  // One after the other: the tests keep both cores busy.
  const tests = process.argv.includes("--tests");
  const callsAgree = !tests || printCalls(compareCalls(await callsOf(old, "old"), await callsOf(now, "new"), names));
  process.exitCode = comparison.differences.length === 0 && callsAgree ? 0 : 1;
} finally {
  if (!given[0]) removeCheckout(old);
  rmSync(folder, { recursive: true, force: true });
}
