import fc from "fast-check";
import { nearestBlend, type SolubilityParameters, solubilityDistance, solubilityOfBlend } from "gelwright/oils";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const parameter = between(0, 30);
const liquid: fc.Arbitrary<SolubilityParameters> = fc.record({
  dispersion: parameter,
  polar: parameter,
  hydrogenBonding: parameter,
});

test("no other blend of the two liquids comes nearer", () => {
  fc.assert(
    fc.property(liquid, liquid, liquid, between(0, 1), (first, second, target, other) => {
      fc.pre(solubilityDistance({ first, second }).distance > 0.01);
      const nearest = nearestBlend({ first, second, target });
      const parts = [
        { volume: other, parameters: first },
        { volume: 1 - other, parameters: second },
      ];
      const elsewhere = solubilityDistance({ first: solubilityOfBlend({ parts }), second: target }).distance;
      expect(nearest.distance).toBeLessThanOrEqual(elsewhere + 1e-9);
    }),
  );
});

test("a blend of the two is found again, and a target beyond one end is answered with that liquid", () => {
  const first = { dispersion: 18, polar: 1.4, hydrogenBonding: 2 };
  const second = { dispersion: 15.8, polar: 8.8, hydrogenBonding: 19.4 };
  const parts = [
    { volume: 0.3, parameters: first },
    { volume: 0.7, parameters: second },
  ];
  const nearest = nearestBlend({ first, second, target: solubilityOfBlend({ parts }) });
  expect(nearest.volumeFractionFirst).toBeCloseTo(0.3, 12);
  expect(nearest.distance).toBeCloseTo(0, 12);
  const beyond = { dispersion: 20.2, polar: 0, hydrogenBonding: 0 };
  expect(nearestBlend({ first, second, target: beyond }).volumeFractionFirst).toBe(1);
});

test("a distance is the same from either end, and none to itself", () => {
  fc.assert(
    fc.property(liquid, liquid, (first, second) => {
      expect(solubilityDistance({ first, second }).distance).toBe(
        solubilityDistance({ first: second, second: first }).distance,
      );
      expect(solubilityDistance({ first, second: first }).distance).toBe(0);
    }),
  );
});

test("two liquids that are alike have no blend to choose", () => {
  const first = { dispersion: 16, polar: 3, hydrogenBonding: 4 };
  expect(() => nearestBlend({ first, second: first, target: first })).toThrow("another liquid");
});
