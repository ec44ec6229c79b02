import { type JobDocument, prepareJob, remedies, runPlan, runPrepared } from "gelwright/plan";
import { toMarkdown } from "gelwright/sheet";
import { describe, expect, test } from "vitest";
import { answerOf, figureOf, known } from "../support/answers.js";
import { changed, coldJob, type Draft } from "../support/example.js";

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
  ] as const)("%s, by %d of the volume: it is %s", (_side, by, verdict) => {
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

describe("oil that is charged into a gel without a schedule", () => {
  /** The vessel of the cold route, where its phase B is charged in so many additions, with shares of the bench against the oil. */
  const poured = (shares: readonly (readonly [oil: number, share: number])[], equalAdditions?: number): JobDocument =>
    changed(coldJob(), (draft: Draft) => {
      draft.bench.emulsion.additionShareMax = shares.map(([oil, share]) => ({
        oil: `${oil} % v/v`,
        share: `${share} %`,
      }));
      draft.process.steps[2] = { do: "charge", phase: "B", ...(equalAdditions && { equalAdditions }) };
    });
  const asked = { id: "additions-within-share", of: { phase: "B" } } as const;
  const verdictOf = (of: JobDocument) => answerOf(of, asked.id, asked.of).verdict;
  /** Oil over what is in the vessel before it, worked out from what is weighed. */
  const ratio = () => {
    const { lines } = runPlan(poured([[0, 10]])).weighing;
    const massOf = (phase: string) =>
      lines.filter((line) => line.phase === phase).reduce((sum, { mass }) => sum + mass, 0);
    return massOf("B") / massOf("A");
  };

  test("is within the shares of the bench in so many equal additions, and in one fewer is not", () => {
    const whole = ratio();
    // The first meets least, and decides.
    const fewest = Math.ceil(whole / 0.1);
    expect([fewest, fewest - 1].map((count) => verdictOf(poured([[0, 10]], count)))).toEqual(["met", "not-met"]);
    const { figure, at } = answerOf(poured([[0, 10]], fewest - 1), asked.id, asked.of);
    expect(known(figure.value)).toBeCloseTo(whole / (fewest - 1), 9);
    expect(at).toMatchObject({ step: 3, addition: 1 });
  });

  test("is decided by a later addition where the bench took up less the more oil there was", () => {
    const shares = [
      [0, 50],
      [79, 1],
    ] as const;
    const { verdict, at, figure, limit } = answerOf(poured(shares, 20), asked.id, asked.of);
    expect(verdict).toBe("not-met");
    // Every addition of a twentieth meets the gel former and those before it.
    const before = known(at.addition) - 1;
    expect(before).toBeGreaterThan(10);
    expect(known(figure.value)).toBeCloseTo(ratio() / 20 / (1 + (ratio() * before) / 20), 9);
    expect(known(limit.max?.value)).toBeLessThan(0.1);
  });

  test("is mended by more equal additions, the fewest that do", () => {
    const prepared = prepareJob(poured([[0, 10]]));
    const [remedy, another] = remedies({ prepared, answer: asked });
    expect(another).toBeUndefined();
    const value = Math.ceil(ratio() / 0.1);
    expect(remedy).toMatchObject({
      lever: "more-additions",
      change: { change: "step", step: 3, field: "equalAdditions", value },
      answer: { verdict: "met", beside: { additions: value } },
    });
    const plan = runPrepared({ prepared, changes: [known(remedy).change] });
    expect(plan.answers).toEqual(runPlan(poured([[0, 10]], value)).answers);
    expect(toMarkdown({ plan })).toContain(`in ${value} equal additions of`);
  });

  test("is mended by 1,000 equal additions at most", () => {
    const leversAt = (additions: number) => {
      const prepared = prepareJob(poured([[0, (100 * ratio()) / additions]]));
      return remedies({ prepared, answer: asked }).map(({ change }) => change.value);
    };
    expect([leversAt(1000), leversAt(1001)]).toEqual([[1000], []]);
  });

  test("has no lever where nothing is there for it to go into, and no part of an addition", () => {
    const first = changed(poured([[0, 10]]), ({ process }) => {
      process.steps.splice(0, 0, ...process.steps.splice(2, 1));
    });
    expect(verdictOf(first)).toBe("not-met");
    expect(remedies({ prepared: prepareJob(first), answer: asked })).toEqual([]);
    const change = { change: "step", step: 3, field: "equalAdditions", value: 2.5 } as const;
    expect(() => runPrepared({ prepared: prepareJob(poured([[0, 10]])), changes: [change] })).toThrow(
      /value: found 2\.5/,
    );
    expect(() => runPlan(poured([[0, 10]], -1))).toThrow(/equalAdditions/);
  });
});

describe("oil counts by what it goes into, not by its phase or its step", () => {
  /** The cold route, of whose gel former so much is in the vessel while the oil goes in; the rest is charged after it. */
  const withheld = (share: string, max: number) =>
    answerOf(
      changed(job({ max }), ({ process }: Draft) => {
        process.steps[0] = { do: "charge", phase: "A", share };
        process.steps.splice(3, 0, { do: "charge", phase: "A" });
      }),
      "maximum-oil-fraction",
    );

  test("a ceiling that is passed on the way stays passed, although gel former that follows brings the gel below it", () => {
    const passed = figureOf(withheld("80 %", 0.95));
    expect(passed).toBeGreaterThan(worst + 0.02);
    const [above, below] = [1e-6, -1e-6].map((by) => withheld("80 %", passed + 0.01 + by));
    expect([above?.verdict, below?.verdict]).toEqual(["met", "not-met"]);
    expect(below?.at.step).toBe(3);
  });

  /** The cold route with one of its oils in the phase of its grains, which is charged in so many additions. */
  const apart = (equalAdditions: number) =>
    runPlan(
      changed(job({ max: 0.87 }), ({ formula: { phases }, process }: Draft) => {
        const [oil] = phases[1].lines.splice(1, 1);
        phases[2].lines.push(oil);
        process.steps.find(({ phase }: Draft) => phase === "C").equalAdditions = equalAdditions;
      }),
    );

  test("what is charged with grains is counted among the oil, and the grains are not", () => {
    const { at, figure } = answerOf(apart(1), "maximum-oil-fraction");
    expect(known(figure.value)).toBeCloseTo(worst, 3);
    expect(at.step).toBe(6);
  });

  test("and is within the shares of the bench in so many additions as keep to them, and in one fewer is not", () => {
    const within = (count: number) => answerOf(apart(count), "additions-within-share", { phase: "C" });
    const { figure, limit } = within(1);
    const fewest = Math.ceil(known(figure.value) / known(limit.max?.value));
    expect(fewest).toBeGreaterThan(2);
    expect([fewest, fewest - 1].map((count) => within(count).verdict)).toEqual(["met", "not-met"]);
  });
});
