import { type JobDocument, runPlan } from "gelwright/plan";
import { describe, expect, test } from "vitest";
import { answerOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob } from "../support/example.js";

type Draft = ReturnType<typeof JSON.parse>;

/** The cold route's example with figures of its bench and its process in place of its own. */
function job({ max, margin, tolerance }: { max: number; margin?: string; tolerance?: string }): JobDocument {
  return changed(coldJob(), (draft) => {
    draft.bench.emulsion.volumeFractionOilMax = `${100 * max} % v/v`;
    if (margin !== undefined) draft.process.oilFractionMargin = margin;
    if (tolerance !== undefined) draft.batch.weighingTolerance = tolerance;
  });
}

const found = answerOf(job({ max: 0.95 }), "maximum-oil-fraction");
const worst = figureOf(found);
const planned = known(found.beside?.["planned"]) as number;

describe("the ceiling of oil", () => {
  test("is held at the ends of the weighing tolerance", () => {
    expect(worst).toBeGreaterThan(planned);
    // Half a percent more oil in half a percent less gel former.
    expect(worst / (1 - worst) / (planned / (1 - planned))).toBeCloseTo(1.005 / 0.995, 3);
    const coarse = answerOf(job({ max: 0.95, tolerance: "3 %" }), "maximum-oil-fraction");
    expect(figureOf(coarse)).toBeGreaterThan(worst);
  });

  test.each([
    ["just above the figure and its margin", 1e-6, "met"],
    ["just below", -1e-6, "not-met"],
  ] as const)("%s is %s", (_side, by, verdict) => {
    expect(answerOf(job({ max: worst + 0.01 + by }), "maximum-oil-fraction").verdict).toBe(verdict);
    expect(answerOf(job({ max: worst + 0.03 + by, margin: "3 % v/v" }), "maximum-oil-fraction").verdict).toBe(verdict);
  });

  test("keeps one part in a hundred by volume, common practice", () => {
    expect(found.margin).toEqual({ max: 0.01 });
  });

  test("a weighing that may pass it is not met, although the planned masses stay below", () => {
    const between = job({ max: (planned + worst) / 2, margin: "0 % v/v" });
    expect(answerOf(between, "maximum-oil-fraction").verdict).toBe("not-met");
  });
});

/** A bench that took up one addition of so much of its gel former, and states what it took up at most. */
function bench(share: number, form?: string): JobDocument {
  return changed(coldJob(), (draft: Draft) => {
    draft.bench.emulsion.additionShareMax = [{ oil: "0 % v/v", share: "10 %" }];
    const oil = Array.from({ length: 40 }, (_, i) => `${60 * 0.09 * 1.09 ** i} g`);
    draft.bench.emulsion.additions = { gelFormer: "60 g", oil: [`${60 * share} g`, ...oil.slice(1)] };
    if (form !== undefined) draft.process.steps[2].additions = form;
  });
}

/** What is told of the job itself, apart from the gel in use. */
const told = (of: JobDocument) =>
  runPlan(of).notes.filter(({ code }) => code !== "rinse-off" && code !== "drawn-into-lines");

describe("additions and shares of the bench", () => {
  test("that agree, just below, are not told of", () => {
    expect(told(bench(0.1009))).toEqual([]);
  });

  test("that contradict one another, just above, are told", () => {
    expect(told(bench(0.1011))).toEqual([
      { code: "bench-additions-beyond-shares", addition: 1, count: 1, share: expect.closeTo(0.1011, 9), shareMax: 0.1 },
    ]);
  });

  test("leave it not known whether the bench's own additions are small enough, and no other schedule", () => {
    const asThere = answerOf(bench(0.11, "as at the bench"), "additions-within-share", { phase: "B" });
    expect(asThere.verdict).toBe("not-known");
    expect(asThere.notKnown).toEqual([{ code: "contradiction", field: "emulsion-share-max" }]);
    expect(answerOf(bench(0.1009, "as at the bench"), "additions-within-share", { phase: "B" }).verdict).toBe("met");
    expect(answerOf(bench(0.11, "largest"), "additions-within-share", { phase: "B" }).verdict).toBe("met");
  });
});
