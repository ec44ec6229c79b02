// Recomputes the answers of whole plans by a script that shares no code with the library, and prints how far off each
// question is: `npx tsx tests/references/plan.ts`. With `--write` it stores what the script gives for the tests. Debian:
// apt install python3-scipy; the variable PYTHON names another interpreter.
import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { compareAnswers, notRecomputed, type RecomputedJobs } from "../plan/independent/compare.js";
import { plansByName } from "../plan/jobs/plans.js";
import { root } from "../support/rooms.js";

const { stdout, stderr, status } = spawnSync(
  process.env["PYTHON"] ?? "/usr/bin/python3",
  [`${root}tests/references/plan/recompute.py`],
  { encoding: "utf8", maxBuffer: 1 << 26 },
);
if (status !== 0) throw new Error(stderr);
const recomputed = JSON.parse(stdout) as RecomputedJobs;
if (process.argv.includes("--write"))
  writeFileSync(`${root}tests/plan/independent/recomputed.json`, `${JSON.stringify(recomputed, null, 2)}\n`);

const plans = plansByName().flatMap(([name, { plan }]) => {
  const theirs = recomputed.jobs[name];
  return theirs ? [{ name, answers: plan.answers, theirs }] : [];
});
const all = plans.flatMap(({ name, answers, theirs }) =>
  compareAnswers(answers, theirs).map((one) => ({ name, ...one })),
);
const missing = plans.flatMap(({ name, answers, theirs }) =>
  notRecomputed(answers, theirs).map((key) => `${name} ${key}`),
);
for (const id of [...new Set(all.map((one) => one.id))]) {
  const of = all.filter((one) => one.id === id);
  const worst = of.reduce((first, one) => (one.deviation > first.deviation ? one : first));
  console.log(`${id.padEnd(28)} ${String(of.length).padStart(3)}  ${worst.deviation.toExponential(1)}  ${worst.name}`);
}
const off = all.filter(({ deviation, allowed, differs }) => deviation > allowed || differs.length > 0);
for (const { name, key, deviation, differs } of off)
  console.log(`${name} ${key}: off by ${deviation.toExponential(1)} ${differs.join("; ")}`);
console.log(
  Object.entries(recomputed.versions)
    .map(([name, version]) => `${name} ${version}`)
    .join(", "),
);
console.log(`${plans.length} jobs, ${all.length} answers recomputed, ${missing.length} not, ${off.length} differ`);
for (const one of missing) console.log(`not recomputed: ${one}`);
process.exitCode = off.length > 0 ? 1 : 0;
