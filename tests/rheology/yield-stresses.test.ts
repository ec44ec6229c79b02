import fc from "fast-check";
import { shearStressAt } from "gelwright/laws";
import { cassonRegression, sweepYieldStresses, yieldStresses } from "gelwright/rheology";
import { expect, test } from "vitest";
import { between, logarithmic, relative } from "./arbitraries.js";

const rates = [0.1, 0.3, 1, 3, 10, 30, 100];
const gel = { law: "herschel-bulkley", yieldStress: 10, consistency: 8, flowIndex: 0.5 } as const;
const points = rates.map((shearRate) => ({ shearRate, stress: shearStressAt({ curve: gel, shearRate }) }));

test("the conventions disagree in the order that their makers would expect", () => {
  const by = Object.fromEntries(yieldStresses({ points }).map((one) => [one.convention, one.yieldStress]));
  expect(by["herschel-bulkley"]).toBeCloseTo(10, 8);
  expect(by["lowest-rate"]).toBe(points[0]?.stress);
  expect(by["casson"]).toBeGreaterThan(10);
  expect(by["bingham"]).toBeGreaterThan(by["casson"] as number);
});

test("a convention that the readings do not serve says what they lack", () => {
  const reasons = Object.fromEntries(
    yieldStresses({ points: points.slice(0, 3) }).map((one) => [one.convention, one.reason]),
  );
  expect(reasons["herschel-bulkley"]).toContain("at least 4 readings");
  expect(reasons["viscosity-maximum"]).toContain("readings at lower stresses, in creep");
  expect(reasons["lowest-rate"]).toBeUndefined();
});

test("a ramp that creeps first and flows then has its yield stress where the viscosity is greatest", () => {
  const creep = [
    { stress: 2, shearRate: 2e-4 },
    { stress: 5, shearRate: 3e-4 },
    { stress: 9, shearRate: 4e-4 },
    { stress: 12, shearRate: 0.5 },
    { stress: 20, shearRate: 4 },
  ];
  expect(
    yieldStresses({ points: creep }).find(({ convention }) => convention === "viscosity-maximum")?.yieldStress,
  ).toBe(9);
});

test("the line through the roots finds Casson's constants again", () => {
  fc.assert(
    fc.property(between(0.5, 100), logarithmic(0.01, 10), (yieldStress, plasticViscosity) => {
      const curve = { law: "casson", yieldStress, plasticViscosity } as const;
      const found = cassonRegression({
        points: rates.map((shearRate) => ({ shearRate, stress: shearStressAt({ curve, shearRate }) })),
      });
      expect(relative(found.yieldStress, yieldStress)).toBeLessThan(1e-10);
      expect(relative(found.plasticViscosity, plasticViscosity)).toBeLessThan(1e-10);
      expect(relative(found.determination, 1)).toBeLessThan(1e-12);
    }),
  );
  const thickening = rates.map((shearRate) => ({ shearRate, stress: shearRate ** 1.5 }));
  expect(() => cassonRegression({ points: thickening })).toThrow(
    "found no yield stress, expected readings at lower shear rates",
  );
  const falling = rates.map((shearRate) => ({ shearRate, stress: 10 / shearRate }));
  expect(() => cassonRegression({ points: falling })).toThrow("stresses that rise with the rate");
  const one = [1, 2].map((stress) => ({ shearRate: 5, stress }));
  expect(() => cassonRegression({ points: one })).toThrow("two or more different shear rates");
});

test("a sweep gives way before it flows, wherever its moduli cross", () => {
  fc.assert(
    fc.property(logarithmic(1, 1000), between(0.02, 0.5), (crossing, ratio) => {
      // G′ = G₀/(1 + (τ/c)²) crosses a constant G″ = G₀/2 at the stress c.
      const sweep = [...Array(60).keys()].map((i) => {
        const stress = crossing * 10 ** (i / 15 - 3);
        return { stress, storageModulus: 1000 / (1 + (stress / crossing) ** 2), lossModulus: 500 };
      });
      const { yieldPoint, flowPoint } = sweepYieldStresses({ points: sweep, drop: ratio / 2 });
      expect(relative(flowPoint, crossing)).toBeLessThan(5e-3);
      // G′ = (1 − ε) G₀ at c √(ε/(1 − ε)).
      expect(relative(yieldPoint, crossing * Math.sqrt(ratio / 2 / (1 - ratio / 2)))).toBeLessThan(2e-2);
      expect(yieldPoint).toBeLessThan(flowPoint);
      expect(sweepYieldStresses({ points: [...sweep].reverse(), drop: ratio / 2 })).toEqual({ yieldPoint, flowPoint });
    }),
  );
});

test("a sweep that stops short is asked for more", () => {
  const short = [
    { stress: 1, storageModulus: 400, lossModulus: 40 },
    { stress: 10, storageModulus: 399, lossModulus: 41 },
  ];
  expect(() => sweepYieldStresses({ points: short })).toThrow(
    "found end of the linear range not reached, expected readings at higher stresses",
  );
  const melted = [
    { stress: 1, storageModulus: 30, lossModulus: 40 },
    { stress: 10, storageModulus: 20, lossModulus: 41 },
  ];
  expect(() => sweepYieldStresses({ points: melted })).toThrow("found flow point passed at the first reading");
  expect(() => sweepYieldStresses({ points: [short[0], short[0]] as typeof short })).toThrow(
    "one reading at each stress",
  );
  expect(() => sweepYieldStresses({ points: short, drop: 1 })).toThrow("drop: found 1, expected between 0 and 1");
});
