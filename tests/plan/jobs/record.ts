// Records the verdict and the side of every answer of every job: `npx tsx tests/plan/jobs/record.ts`, then
// `npx biome format --write tests/plan/jobs`. It overwrites verdicts.json and prints how many jobs reach each verdict of
// each question. Write it anew only on purpose: the tests hold the plan to it.
import { writeFileSync } from "node:fs";
import { recordedOf } from "./compare.js";
import { plansByName } from "./plans.js";

const recorded = plansByName().map(([name, { plan }]) => [name, recordedOf(plan)] as const);
writeFileSync(new URL("verdicts.json", import.meta.url), `${JSON.stringify(Object.fromEntries(recorded), null, 2)}\n`);

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
