import { CalculationError } from "gelwright/error";
import { answerQuestions, type Change, prepareJob, runPrepared, sweep } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { allJobsByName } from "./jobs/jobs.js";

const jobs = Object.entries(allJobsByName());

/** One figure of every step that has it, moved to a value that a step may have. */
function changesOf(job: (typeof jobs)[number][1]): readonly Change[] {
  const to = { to: 66, for: 700, within: 2000, speed: 0.7, packsPerMinute: 7, jacketAt: 41, equalAdditions: 4 };
  return job.process.steps.flatMap((step, i) =>
    Object.entries(to).flatMap(([field, value]): readonly Change[] =>
      field in step ? [{ change: "step", step: i + 1, field: field as keyof typeof to, value }] : [],
    ),
  );
}

/** The plan as text, or the words of the error. */
function textOf(find: () => unknown): string {
  try {
    return JSON.stringify(find());
  } catch (error) {
    if (error instanceof CalculationError) return error.message;
    throw error;
  }
}

describe("what a prepared job keeps of its first run", () => {
  test.each(jobs)("changes no later one: %s", (_name, job) => {
    const prepared = prepareJob(job);
    const first = textOf(() => runPrepared({ prepared }));
    const changes = changesOf(job);
    expect(changes.length).toBeGreaterThan(0);
    // The last step of all, and one in the middle: the steps before it are kept, those after it are not.
    for (const change of [changes.at(-1), changes[Math.floor(changes.length / 2)]] as Change[])
      expect(
        textOf(() => runPrepared({ prepared, changes: [change] })),
        JSON.stringify(change),
      ).toBe(textOf(() => runPrepared({ prepared: prepareJob(job), changes: [change] })));
    expect(textOf(() => runPrepared({ prepared }))).toBe(first);
  });
});

/** Writes over everything that a result holds. */
function spoil(part: unknown): void {
  if (typeof part !== "object" || part === null) return;
  const fields = part as Record<string, unknown>;
  for (const [key, value] of Object.entries(fields))
    if (typeof value === "object") spoil(value);
    else fields[key] = typeof value === "number" ? 12_345 : "spoiled";
}

test("what a caller writes into a result changes no later one", () => {
  for (const [, job] of jobs.slice(0, 6)) {
    const prepared = prepareJob(job);
    const results = [
      () => runPrepared({ prepared }),
      () => answerQuestions({ prepared }),
      () => sweep({ prepared, rows: [{ label: "as it is", changes: [] }] }),
    ];
    const before = results.map(textOf);
    for (const result of results) spoil(result());
    expect(results.map(textOf)).toEqual(before);
  }
});
