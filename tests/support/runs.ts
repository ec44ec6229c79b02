import { CalculationError } from "gelwright/error";
import { type JobDocument, runPlan } from "gelwright/plan";
import { expect } from "vitest";
import { changed } from "./example.js";

/** Where the faults of a job stand, in order of their paths; a job without faults fails the test. */
export function faultPaths(job: JobDocument): readonly string[] {
  try {
    runPlan(job);
  } catch (error) {
    if (error instanceof CalculationError) return error.faults.map(({ path }) => path).sort();
    throw error;
  }
  return expect.unreachable("a job without faults");
}

/** Takes away one field after another: each time there is a plan of finite figures, or a word on what is needed. */
export function expectFiniteWithoutAnyField(job: JobDocument): void {
  const without = [...removals(job)];
  expect(without.length).toBeGreaterThan(150);
  for (const document of without) {
    try {
      expect(notFinite(runPlan(document))).toEqual([]);
    } catch (error) {
      expect(error).toBeInstanceOf(CalculationError);
    }
  }
}

function* removals(value: JobDocument): Generator<JobDocument> {
  const places = (at: unknown, path: readonly string[]): (readonly string[])[] =>
    typeof at === "object" && at !== null
      ? Object.entries(at).flatMap(([key, inner]) => [
          ...(Array.isArray(at) ? [] : [[...path, key]]),
          ...places(inner, [...path, key]),
        ])
      : [];
  for (const path of places(value, []))
    yield changed(value, (draft) => {
      const owner = path.slice(0, -1).reduce((at, key) => at[key], draft);
      delete owner[path.at(-1) ?? ""];
    });
}

/** Paths of the numbers that are not finite. Collected, since a plan has a thousand numbers and an assertion for each takes as long as the plan. */
function notFinite(value: unknown, path = "plan"): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}
