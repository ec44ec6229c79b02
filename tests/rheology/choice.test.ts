import { chooseFlowCurve } from "gelwright/rheology";
import { expect, test } from "vitest";

const rates = [1, 2, 5, 10, 20, 50, 100, 200];
/** Readings that miss a curve by some parts in a hundred, now above and now below. */
const readings = (stress: (rate: number) => number, part: number) =>
  rates.map((shearRate, i) => ({ shearRate, stress: stress(shearRate) * (1 + (i % 2 ? part : -part)) }));

test("among models that differ by less than 2 the one with the fewest parameters is taken", () => {
  const points = readings((rate) => 0.5 * rate, 0.03);
  for (const models of [
    ["newton", "power-law", "bingham"],
    ["bingham", "power-law", "newton"],
  ] as const) {
    const { best, candidates } = chooseFlowCurve({ points, models });
    expect(candidates.some(({ difference, fit }) => fit.model !== "newton" && difference < 10)).toBe(true);
    expect(best.model).toBe("newton");
  }
});

test("of models with as many parameters the one with the smaller criterion is taken, whichever is named first", () => {
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
