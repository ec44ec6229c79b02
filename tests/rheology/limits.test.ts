import {
  capillaryReach,
  cassonRegression,
  chooseFlowCurve,
  fitFlowCurve,
  fittedStressAt,
  fitVogel,
  fitWalther,
  waltherViscosityAt,
  yieldStresses,
  yieldStressForReach,
} from "gelwright/rheology";
import { expect, test } from "vitest";
import { pullAlong } from "../../src/rheology/slope.js";

const code = (is: string) => expect.objectContaining({ code: is });
const rates = [0.1, 0.5, 2, 8, 30, 100];
const herschel = rates.map((shearRate, i) => ({
  shearRate,
  stress: (20 + 8 * Math.sqrt(shearRate)) * (1 + (i % 2 ? 0.01 : -0.01)),
}));

test("a fit is read as it was made: its parameters in their order, its limits by Student, its ends by its readings", () => {
  const fit = fitFlowCurve({ model: "herschel-bulkley", points: herschel });
  const at = (shearRate: number, confidence?: number) =>
    fittedStressAt({ fit, shearRate, ...(confidence !== undefined && { confidence }) });
  expect(at(0.1).extrapolated || at(100).extrapolated).toBe(false);
  expect([at(0.0999).extrapolated, at(100.1).extrapolated]).toEqual([true, true]);
  const { stress, standardError, min, max } = at(5);
  // Three degrees of freedom: 3.18244631 at 95 %, 2.35336343 at 90 %.
  expect((max - stress) / standardError).toBeCloseTo(3.18244631, 6);
  expect((stress - min) / standardError).toBeCloseTo(3.18244631, 6);
  expect((at(5, 0.9).max - stress) / standardError).toBeCloseTo(2.35336343, 6);
  const [first, second, third] = fit.parameters as unknown as [string, string, string];
  for (const parameters of [
    [second, first, third],
    [first, third, second],
    [first, second],
    [first, second, third, third],
  ])
    expect(() => fittedStressAt({ fit: { ...fit, parameters } as never, shearRate: 5 })).toThrow("fit.parameters");
  expect(() => fittedStressAt({ fit: { ...fit, model: "maxwell" } as never, shearRate: 5 })).toThrow("fit.model");
});

test("an option that is wrong is refused, and is no reason to go on with the next model or convention", () => {
  expect(() => chooseFlowCurve({ points: herschel, weighting: "squared" as never })).toThrow("weighting");
  expect(() => chooseFlowCurve({ points: herschel, models: ["maxwell" as never] })).toThrow("model");
  expect(() => yieldStresses({ points: herschel, weighting: "squared" as never })).toThrow("weighting");
  expect(() => fitVogel({ points: [], weighting: "squared" as never })).toThrow("weighting");
  const readings = [20, 40, 60, 80].map((temperature) => ({
    temperature,
    viscosity: Math.exp(-9 + 900 / (temperature + 110)),
  }));
  for (const weighting of ["relative", "absolute"] as const) {
    const { law } = fitVogel({ points: readings, weighting });
    expect(law.lnFactor).toBeCloseTo(-9, 6);
    expect(law.coefficient).toBeCloseTo(900, 3);
    expect(law.temperatureVogel).toBeCloseTo(-110, 4);
  }
});

test("of models that fit alike the one with fewer parameters is taken, and the weights make up the whole", () => {
  const bingham = rates.map((shearRate, i) => ({
    shearRate,
    stress: (20 + 3 * shearRate) * (1 + (i % 2 ? 0.02 : -0.02)),
  }));
  const { best, candidates } = chooseFlowCurve({
    points: bingham,
    models: ["herschel-bulkley", "bingham", "newton"],
    scatter: 0.05,
  });
  expect(best.model).toBe("bingham");
  expect(candidates.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  expect(candidates[0]?.difference).toBe(0);
  candidates.forEach(({ weight, difference }) => {
    expect(weight / (candidates[0]?.weight ?? 0)).toBeCloseTo(Math.exp(-difference / 2), 12);
  });
});

test("the yield stress by the largest viscosity is that of the reading, in whichever order readings come", () => {
  const points = [
    { shearRate: 1, stress: 10 },
    { shearRate: 0.001, stress: 3 },
    { shearRate: 0.0001, stress: 2 },
    { shearRate: 0.001, stress: 1 },
    { shearRate: 10, stress: 20 },
  ];
  const by = (rows: typeof points) =>
    Object.fromEntries(yieldStresses({ points: rows }).map((one) => [one.convention, one]));
  for (const rows of [points, [...points].reverse()]) {
    expect(by(rows)["viscosity-maximum"]?.yieldStress).toBe(2);
    expect(by(rows)["lowest-rate"]?.yieldStress).toBe(2);
  }
  const falling = points.filter(({ stress }) => stress > 1);
  expect(by(falling)["viscosity-maximum"]?.reason).toContain("lowest stress");
});

test("Casson's straight line gives its own figures back, and one through the origin has no yield stress", () => {
  const points = [1, 4, 9, 16].map((shearRate) => ({ shearRate, stress: (3 + 2 * Math.sqrt(shearRate)) ** 2 }));
  expect(cassonRegression({ points })).toEqual({
    ...{
      yieldStress: expect.closeTo(9, 9),
      plasticViscosity: expect.closeTo(4, 9),
      determination: expect.closeTo(1, 12),
    },
  });
  const through = points.map(({ shearRate }) => ({ shearRate, stress: 4 * shearRate }));
  const below = points.map(({ shearRate }) => ({ shearRate, stress: (2 * Math.sqrt(shearRate) - 1) ** 2 }));
  expect(() => cassonRegression({ points: below })).toThrow("no yield stress");
  for (const rows of [through, below]) expect(() => cassonRegression({ points: rows.slice(0, 1) })).toThrow("points");
  const flat = points.map(({ shearRate }) => ({ shearRate, stress: 36 - shearRate }));
  expect(() => cassonRegression({ points: flat })).toThrow("does not rise");
});

test("Walther's line runs through its readings, falls as it warms, and ends at 2 mm²/s unless it is extended", () => {
  const points = [
    { temperature: 40, kinematicViscosity: 1e-4 },
    { temperature: 100, kinematicViscosity: 1.1e-5 },
  ];
  const line = fitWalther({ points });
  for (const { temperature, kinematicViscosity } of points)
    expect(waltherViscosityAt({ ...line, temperature }) / kinematicViscosity).toBeCloseTo(1, 10);
  const rising = points.map(({ temperature }, i) => ({ temperature, kinematicViscosity: 1e-5 * (i + 1) }));
  expect(() => fitWalther({ points: rising })).toThrow("does not fall");
  const level = points.map(({ temperature }) => ({ temperature, kinematicViscosity: 1e-5 }));
  expect(() => fitWalther({ points: level })).toThrow(code("unreachable"));
  const thin = [
    { temperature: 20, kinematicViscosity: 5e-6 },
    { temperature: 60, kinematicViscosity: 2e-6 },
  ];
  expect(() => fitWalther({ points: thin })).toThrow(code("range"));
  expect(fitWalther({ points: thin, beyond: "extend" }).slope).toBeGreaterThan(0);
  expect(() => fitWalther({ points: [points[0], { ...points[0] }] as never })).toThrow("points");
});

test("a slope is above 0° and up to a wall, and a contact angle from 0 to 180°", () => {
  expect(pullAlong(undefined)).toBeCloseTo(9.80665, 12);
  expect(pullAlong(90)).toBeCloseTo(9.80665, 12);
  expect(pullAlong(30)).toBeCloseTo(9.80665 / 2, 12);
  for (const wrong of [0, -1, 90.1, "30", Number.NaN]) expect(() => pullAlong(wrong as number)).toThrow("degrees");
  const pull = { surfaceTension: 0.03 };
  const reach = (contactAngle: number) => capillaryReach({ ...pull, contactAngle, yieldStress: 3 });
  expect([reach(0), reach(60), reach(90.0001), reach(180)]).toEqual([0.01, expect.closeTo(0.005, 12), 0, 0]);
  for (const wrong of [-0.1, 180.1]) expect(() => reach(wrong)).toThrow("contactAngle");
  expect(yieldStressForReach({ ...pull, contactAngle: 180, distance: 1 })).toBe(0);
  // A groove as deep as wide pulls where its walls wet more than its mouth is wide: cos θ above 1/3.
  const groove = { width: 1e-4, depth: 1e-4 };
  expect(capillaryReach({ ...pull, groove, yieldStress: 3 })).toBeCloseTo(0.01 * (1 - 1 / 3), 12);
  expect(capillaryReach({ ...pull, groove, contactAngle: 71, yieldStress: 3 })).toBe(0);
  expect(capillaryReach({ ...pull, groove, contactAngle: 70, yieldStress: 3 })).toBeGreaterThan(0);
});
