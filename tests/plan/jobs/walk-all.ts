// The deletion walk in full, on demand: `npx tsx tests/plan/jobs/walk-all.ts [pairs a job] [name of a job]`. Every job
// is run without each optional reading and property, one at a time and in seeded pairs (default 2,000 a job). Prints the
// counts a class, and what became met, is gone or throws.
//
// A single field is deleted from the whole plan, and so is every 25th pair, whose answers are held against those of the
// questions by themselves; of the other pairs only the questions are answered, which takes half the time.
import { isDeepStrictEqual } from "node:util";
import { type Answer, runPlan } from "gelwright/plan";
import { inDocument } from "../../../src/plan/masses.js";
import { runOf } from "../../../src/plan/prepared-run.js";
import { questions } from "../../../src/plan/questions/index.js";
import { answersTo } from "../../../src/plan/questions/question.js";
import { readJob } from "../../../src/plan/read.js";
import { keyOf, plansByName } from "./plans.js";
import { kindOf, type Outcome, pairsOf, type Removable, removableOf, walk } from "./walk.js";

const [pairs = "2000", only] = process.argv.slice(2);
const counts = new Map<string, number>();
const found = new Map<string, number>();

function count(into: Map<string, number>, what: string, by: number): void {
  into.set(what, (into.get(what) ?? 0) + by);
}

/** The answers to all questions, and nothing else of the plan. */
function answersAlone(document: unknown): readonly Answer[] {
  const read = readJob(document);
  const run = inDocument(read.job, () => runOf(read));
  return questions.flatMap((question) => answersTo(question, run));
}

/** The answers by both ways, which are the same. */
function answersByBoth(document: unknown): readonly Answer[] {
  const { answers } = runPlan(document);
  count(counts, "pairs: answered by both ways", 1);
  count(
    counts,
    "pairs: answered otherwise by the other way",
    isDeepStrictEqual(answers, answersAlone(document)) ? 0 : 1,
  );
  return answers;
}

function note(what: string, { paths, greener, gone, lost, error, refused }: Outcome): void {
  count(counts, `${what}: deleted`, 1);
  count(counts, `${what}: the document is refused, and the field named`, refused ? 1 : 0);
  count(counts, `${what}: answers from not met to not known`, lost.length);
  count(counts, `${what}: answers that become met`, greener.length);
  count(counts, `${what}: answers that vanish`, gone.length);
  count(counts, `${what}: other errors`, error === undefined ? 0 : 1);
  const kinds = paths.map(kindOf).join(" + ");
  const whole = [
    ...greener.map((key) => `${key} becomes met`),
    ...gone.map((key) => `${key} is gone`),
    ...(error === undefined ? [] : [error]),
  ];
  for (const one of whole) {
    console.error(`  ${paths.join(" + ")}: ${one}`);
    count(found, `${kinds}: ${one.replace(/^([\w-]+)\S*/, "$1")}`, 1);
  }
}

for (const [name, { job, plan }] of plansByName()) {
  if (only !== undefined && only !== name) continue;
  const fields = removableOf(job);
  const before = new Map(plan.answers.map((answer) => [keyOf(answer), answer]));
  for (const field of fields) note(field.holds, walk(job, before, [field]));
  const chosen: readonly (readonly Removable[])[] = pairsOf(fields, Number(pairs), 13);
  for (const [i, pair] of chosen.entries())
    note("pairs", walk(job, before, pair, i % 25 === 0 ? answersByBoth : answersAlone));
  console.error(
    `${name}: ${fields.length} fields, ${chosen.length} pairs, ${Math.round(process.cpuUsage().user / 1e6)} s`,
  );
}
for (const [what, number] of [...counts].sort()) console.log(`${String(number).padStart(6)} ${what}`);
console.log("");
for (const [what, number] of [...found].sort((one, other) => other[1] - one[1]))
  console.log(`${String(number).padStart(6)} ${what}`);
