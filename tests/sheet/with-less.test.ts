import { CalculationError } from "gelwright/error";
import { exposureFor, type JobDocument, labelFor, prepareJob, runPrepared } from "gelwright/plan";
import {
  exposureToMarkdown,
  fillCheckToMarkdown,
  labelToMarkdown,
  scalesToMarkdown,
  stabilityToMarkdown,
  toMarkdown,
} from "gelwright/sheet";
import { expect, test } from "vitest";
import { deletions } from "../plan/jobs/deletions.js";
import { allJobsByName } from "../plan/jobs/jobs.js";
import { kindOf } from "../plan/jobs/walk.js";

/** Each kind of field once, in the first of the jobs that has it, with the job without it. */
const cases = new Map<string, { readonly name: string; readonly job: JobDocument }>();
for (const [name, job] of Object.entries(allJobsByName()))
  for (const { path, document } of deletions(job)) {
    const kind = kindOf(path);
    if (!cases.has(kind)) cases.set(kind, { name: `${name} without ${kind}`, job: document as JobDocument });
  }

/** What is made, or nothing if the job is refused or lacks what it is made of. */
function ifMade<T>(make: () => T): readonly T[] {
  try {
    return [make()];
  } catch (error) {
    if (error instanceof CalculationError) return [];
    throw error;
  }
}

function textsOf(job: JobDocument): readonly string[] {
  return ifMade(() => prepareJob(job)).flatMap((prepared) => {
    const plan = runPrepared({ prepared });
    return [
      ...[toMarkdown({ plan }), fillCheckToMarkdown({ plan }), stabilityToMarkdown({ plan })],
      scalesToMarkdown({ plans: [plan, plan] }),
      ...ifMade(() => labelToMarkdown({ label: labelFor({ prepared }) })),
      ...ifMade(() => exposureToMarkdown({ exposure: exposureFor({ prepared }) })),
    ];
  });
}

/** Two of five kinds of field, so that it takes seconds; the walk of the plan goes through all. */
const some = [...cases.values()].filter((_, i) => i % 5 < 2);

test("whatever a job lacks, none of its sheets says undefined, null, NaN or Infinity", () => {
  const made = some.map(({ name, job }) => ({ name, texts: textsOf(job) })).filter(({ texts }) => texts.length > 0);
  for (const { name, texts } of made)
    for (const text of texts)
      expect(/\b(undefined|NaN|Infinity|null)\b|\[object /.exec(text)?.[0], name).toBeUndefined();
  expect(made.length).toBeGreaterThan(60);
});
