// The deletion walk in full, on demand: `npx tsx tests/plan/jobs/walk-all.ts [pairs a job] [name of a job]`. Every job
// is run without each optional reading and property, one at a time and in seeded pairs (default 2,000 a job). Prints the
// counts a class, and what became met, is gone or throws.
import { keyOf, plansByName } from "./plans.js";
import { kindOf, type Outcome, pairsOf, type Removable, removableOf, walk } from "./walk.js";

const [pairs = "2000", only] = process.argv.slice(2);
const counts = new Map<string, number>();
const found = new Map<string, number>();

function count(into: Map<string, number>, what: string, by: number): void {
  into.set(what, (into.get(what) ?? 0) + by);
}

function note(what: string, { paths, greener, gone, lost, error, refused }: Outcome): void {
  count(counts, `${what}: deleted`, 1);
  count(counts, `${what}: the document is refused, and the field named`, refused ? 1 : 0);
  count(counts, `${what}: answers from not met to not known`, lost.length);
  count(counts, `${what}: answers that become met`, greener.length);
  count(counts, `${what}: answers that vanish`, gone.length);
  count(counts, `${what}: other errors`, error === undefined ? 0 : 1);
  const kinds = paths.map(kindOf).join(" + ");
  for (const key of greener) count(found, `${kinds}: ${key.split(":")[0]} becomes met`, 1);
  for (const key of gone) count(found, `${kinds}: ${key.split(":")[0]} is gone`, 1);
  if (error !== undefined) count(found, `${kinds}: ${error}`, 1);
}

for (const [name, { job, plan }] of plansByName()) {
  if (only !== undefined && only !== name) continue;
  const fields = removableOf(job);
  const before = new Map(plan.answers.map((answer) => [keyOf(answer), answer]));
  const without = (some: readonly Removable[]): Outcome => walk(job, before, some);
  for (const field of fields) note(field.holds, without([field]));
  for (const pair of pairsOf(fields, Number(pairs), 13)) note("pairs", without(pair));
  console.error(`${name}: ${fields.length} fields`);
}
for (const [what, number] of [...counts].sort()) console.log(`${String(number).padStart(6)} ${what}`);
console.log("");
for (const [what, number] of [...found].sort((one, other) => other[1] - one[1]))
  console.log(`${String(number).padStart(6)} ${what}`);
