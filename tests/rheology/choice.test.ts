import { chooseFlowCurve } from "gelwright/rheology";
import { expect, test } from "vitest";

const rates = [1, 2, 5, 10, 20, 50, 100, 200];
/** Readings that miss a curve by some parts in a hundred, now above and now below. */
const readings = (stress: (rate: number) => number, part: number) =>
  rates.map((shearRate, i) => ({ shearRate, stress: stress(shearRate) * (1 + (i % 2 ? part : -part)) }));

/** Readings of a liquid that all but is Newtonian. */
const nearly = (index: number) => readings((rate) => 0.5 * rate ** index, 0.03);

test("among models that differ by less than 2 the one with the fewest parameters is taken, though another is closer", () => {
  for (const models of [
    ["newton", "power-law", "bingham"],
    ["bingham", "power-law", "newton"],
  ] as const) {
    const close = chooseFlowCurve({ points: nearly(0.977), models });
    expect(close.candidates.map(({ fit }) => fit.model)).toEqual(["power-law", "newton", "bingham"]);
    expect(close.candidates[1]?.difference).toBeLessThan(2);
    expect(close.best.model).toBe("newton");
    const apart = chooseFlowCurve({ points: nearly(0.973), models });
    expect(apart.candidates[1]?.fit.model).toBe("newton");
    expect(apart.candidates[1]?.difference).toBeGreaterThan(2);
    expect(apart.best.model).toBe("power-law");
  }
});

test("of close models with as many parameters the one with the smaller criterion is taken, whichever is named first", () => {
  for (const models of [
    ["bingham", "power-law"],
    ["power-law", "bingham"],
  ] as const) {
    const { best, candidates } = chooseFlowCurve({ points: nearly(0.988), models });
    expect(candidates.map(({ fit }) => fit.model)).toEqual(["power-law", "bingham"]);
    expect(candidates[1]?.difference).toBeLessThan(2);
    expect(best.model).toBe("power-law");
  }
});

test("candidates come with the smaller criterion first, and weigh by what they differ", () => {
  const points = readings((rate) => (Math.sqrt(2) + Math.sqrt(0.5 * rate)) ** 2, 0.05);
  const choices = (
    [
      ["bingham", "casson", "power-law"],
      ["power-law", "casson", "bingham"],
    ] as const
  ).map((models) => chooseFlowCurve({ points, models }));
  for (const { best, candidates } of choices) {
    expect(candidates.length).toBeGreaterThan(1);
    expect(best).toBe(candidates[0]?.fit);
    candidates.forEach(({ criterion }, i) => {
      expect(criterion).toBeGreaterThanOrEqual(candidates[i - 1]?.criterion ?? Number.NEGATIVE_INFINITY);
    });
    expect(candidates.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
    for (const { difference, weight } of candidates)
      expect(weight / (candidates[0]?.weight ?? 0)).toBeCloseTo(Math.exp(-difference / 2), 12);
  }
});

test("the criterion of readings that a model meets exactly goes with their unit where weights are absolute, and not where relative", () => {
  const exact = (unit: number) => rates.map((shearRate) => ({ shearRate, stress: unit * 0.5 * shearRate }));
  const criterion = (unit: number, weighting: "absolute" | "relative") =>
    chooseFlowCurve({ points: exact(unit), models: ["newton"], weighting }).candidates[0]?.criterion ?? Number.NaN;
  expect(criterion(1000, "absolute") - criterion(1, "absolute")).toBeCloseTo(2 * rates.length * Math.log(1000), 6);
  expect(criterion(1000, "relative")).toBeCloseTo(criterion(1, "relative"), 6);
});
