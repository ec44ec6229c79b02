// The deletion walk in full, on demand: `npx tsx tests/plan/jobs/walk-all.ts [pairs a job] [name of a job]`. Without each
// optional reading and property, one at a time and in seeded pairs (default 2,000 a job), nothing may become met, no
// answer may vanish, and nothing may throw but a fault of the document that names the field. Prints what does, and counts.
import { plansByName } from "./plans.js";
import { kindOf, type Outcome, pairsOf, removableOf, walk } from "./walk.js";

const [pairs = "2000", only] = process.argv.slice(2);
const counts = new Map<string, number>();
const count = (what: string, by = 1): void => {
  counts.set(what, (counts.get(what) ?? 0) + by);
};
const faults = new Map<string, number>();
const seen = ({ paths, greener, gone, error }: Outcome): void => {
  const kinds = paths.map(kindOf).join(" + ");
  for (const [what, keys] of [
    ["becomes met", greener],
    ["is gone", gone],
  ] as const)
    for (const key of keys)
      faults.set(
        `${kinds}: ${key.split(":")[0]} ${what}`,
        (faults.get(`${kinds}: ${key.split(":")[0]} ${what}`) ?? 0) + 1,
      );
  if (error !== undefined) faults.set(`${kinds}: ${error}`, (faults.get(`${kinds}: ${error}`) ?? 0) + 1);
};

for (const [name, { job, plan }] of plansByName()) {
  if (only !== undefined && only !== name) continue;
  const fields = removableOf(job);
  const before = new Map(
    plan.answers.map((answer) => [
      `${[answer.id, answer.of.material ?? answer.of.phase, answer.of.step, answer.of.place].filter((part) => part !== undefined).join(":")}`,
      answer,
    ]),
  );
  const start = Date.now();
  for (const field of fields) {
    const outcome = walk(job, before, [field]);
    count(`${field.holds}: deleted`);
    count(`${field.holds}: document refused`, outcome.refused ? 1 : 0);
    count(`${field.holds}: from not met to not known`, outcome.lost.length);
    count(`${field.holds}: becomes met`, outcome.greener.length);
    count(`${field.holds}: gone`, outcome.gone.length);
    seen(outcome);
  }
  for (const pair of pairsOf(fields, Number(pairs), 13)) {
    const outcome = walk(job, before, pair);
    count("pairs: deleted");
    count("pairs: document refused", outcome.refused ? 1 : 0);
    count("pairs: from not met to not known", outcome.lost.length);
    count("pairs: becomes met", outcome.greener.length);
    count("pairs: gone", outcome.gone.length);
    seen(outcome);
  }
  console.error(`${name}: ${fields.length} fields, ${Date.now() - start} ms`);
}
for (const [what, number] of [...counts].sort()) console.log(`${what.padEnd(44)} ${number}`);
for (const [what, number] of [...faults].sort((one, other) => other[1] - one[1]))
  console.log(`${String(number).padStart(5)} ${what}`);
