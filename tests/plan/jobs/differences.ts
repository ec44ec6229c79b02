// Lists what differs from the plan before it was rebuilt: `npx tsx tests/plan/jobs/differences.ts`, then
// `npx biome format --write tests/plan/jobs`. Reasons that were given are kept; a new difference gets the reason
// "unexplained", which the tests do not let pass: give it one of the reasons, by hand.
import { writeFileSync } from "node:fs";
import {
  type Checks,
  type Compared,
  type Differences,
  type FigureChange,
  figureChanges,
  nameOf,
  readRecord,
  recordedOf,
  type VerdictChange,
  verdictChanges,
} from "./compare.js";
import { markdownOf } from "./markdown.js";
import { plansByName } from "./plans.js";

/** One digit, rounded up: a bound that a figure of another machine keeps too. */
function bound({ largest, ...others }: FigureChange): FigureChange {
  if (largest === undefined) return others;
  const unit = 10 ** Math.floor(Math.log10(largest));
  return { ...others, largest: Number((Math.ceil(largest / unit) * unit).toPrecision(1)) };
}

const known = readRecord<Differences>("differences.json");
const reasonOf = new Map([...known.verdicts, ...known.figures].map((one) => [nameOf(one), one.reason]));
const reasoned = <Change extends VerdictChange | FigureChange>(
  change: Change,
): Change & { readonly reason: string } => ({
  ...change,
  reason: reasonOf.get(nameOf(change)) ?? "unexplained",
});

const checks = readRecord<Checks>("before.json");
const figures = readRecord<Readonly<Record<string, Compared>>>("figures-before.json");
const plans = plansByName();

const differences: Differences = {
  reasons: known.reasons,
  verdicts: plans.flatMap(([name, { plan }]) =>
    verdictChanges(name, checks[name] ?? [], recordedOf(plan)).map(reasoned),
  ),
  figures: plans.flatMap(([name, { plan }]) => figureChanges(name, figures[name], plan).map(bound).map(reasoned)),
};
writeFileSync(new URL("differences.json", import.meta.url), `${JSON.stringify(differences, null, 2)}\n`);
writeFileSync(new URL("differences.md", import.meta.url), markdownOf(differences));

for (const one of [...differences.verdicts, ...differences.figures])
  if (!(one.reason in differences.reasons)) console.log(`${one.reason}: ${nameOf(one)}`);
