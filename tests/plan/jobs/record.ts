// Records the verdict and the side of every answer of every job, and what the answers to each question rest on:
// `npx tsx tests/plan/jobs/record.ts`, then `npx biome format --write tests/plan/jobs`. It overwrites verdicts.json and
// rests-on.json, and prints how many jobs reach each verdict of
// each question. Write it anew only on purpose: the tests hold the plan to it.
import { writeFileSync } from "node:fs";
import { recordedOf } from "./compare.js";
import { plansByName } from "./plans.js";
import { tableOf } from "./rests-on.js";

const plans = plansByName();
const recorded = plans.map(([name, { plan }]) => [name, recordedOf(plan)] as const);
writeFileSync(new URL("verdicts.json", import.meta.url), `${JSON.stringify(Object.fromEntries(recorded), null, 2)}\n`);
const rests = tableOf(plans.map(([, { job }]) => job));
writeFileSync(new URL("rests-on.json", import.meta.url), `${JSON.stringify(rests, null, 2)}\n`);

const verdicts = ["met", "not-met", "not-known"] as const;
const all = recorded.flatMap(([name, answers]) => answers.map((answer) => ({ name, ...answer })));
console.log("Number of jobs by question and verdict: met, not met, not known");
for (const id of [...new Set(all.map(({ id }) => id))].sort()) {
  const counts = verdicts.map((verdict) => {
    const found = all.filter((one) => one.id === id && one.verdict === verdict);
    return String(new Set(found.map(({ name }) => name)).size).padStart(3);
  });
  console.log(`${id.padEnd(28)} ${counts.join("")}`);
}
