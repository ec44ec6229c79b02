import fc from "fast-check";
import {
  conductivityOfMixture,
  densityOfMixture,
  normalise,
  refractiveIndexOfMixture,
  specificHeatOfMixture,
  suppliedShare,
} from "gelwright/formula";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const parts = fc.array(
  fc.record({
    mass: fc.double({ min: 1e-6, max: 1e3, noNaN: true }),
    density: fc.double({ min: 600, max: 3000, noNaN: true }),
    specificHeat: fc.double({ min: 500, max: 4500, noNaN: true }),
    conductivity: fc.double({ min: 0.05, max: 1, noNaN: true }),
  }),
  { minLength: 1, maxLength: 9 },
);

test("a mixture lies between its parts and forgets their order", () => {
  fc.assert(
    fc.property(parts, (parts) => {
      for (const [of, key] of [
        [densityOfMixture, "density"],
        [specificHeatOfMixture, "specificHeat"],
        [conductivityOfMixture, "conductivity"],
      ] as const) {
        const mixed = of({ parts });
        const values = parts.map((part) => part[key]);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-12));
        expect(mixed).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-12));
        expect(of({ parts: [...parts].reverse() }) / mixed).toBeCloseTo(1, 12);
      }
    }),
    { numRuns: 60 },
  );
});

/** A refraction, (n² − 1)/(n² + 2), of which the shares of the volume are added up. */
const refraction = (n: number) => (n * n - 1) / (n * n + 2);

test("the refraction of a mixture is that of its parts, each by its share of the volume", () => {
  const part = fc.record({
    mass: between(0.1, 50),
    density: between(700, 1400),
    refractiveIndex: between(1.3, 1.7),
  });
  fc.assert(
    fc.property(part, part, (one, other) => {
      const mixed = refractiveIndexOfMixture({ temperature: 20, parts: [one, other] });
      const [own, rest] = [one.mass / one.density, other.mass / other.density];
      const share = own / (own + rest);
      expect(refraction(mixed)).toBeCloseTo(
        share * refraction(one.refractiveIndex) + (1 - share) * refraction(other.refractiveIndex),
        13,
      );
      expect(refractiveIndexOfMixture({ temperature: 20, parts: [one] })).toBeCloseTo(one.refractiveIndex, 13);
    }),
  );
});

test("an index below that of empty space, or above any of a solid, and a density of nothing are refused at their place", () => {
  const part = { mass: 1, density: 900, refractiveIndex: 1.5 };
  const mix = (change: object) => () =>
    refractiveIndexOfMixture({ temperature: 20, parts: [part, { ...part, ...change }] });
  expect(mix({ refractiveIndex: 1 })()).toBeLessThan(1.5);
  expect(mix({ refractiveIndex: 3 })()).toBeGreaterThan(1.5);
  for (const refractiveIndex of [0.999, 3.001, "1.5", Number.NaN])
    expect(mix({ refractiveIndex })).toThrow("parts[1].refractiveIndex");
  expect(mix({ density: 0 })).toThrow("parts[1].density");
  expect(() => refractiveIndexOfMixture({ temperature: -274, parts: [part] })).toThrow("temperature");
});

test("a result that is too small for a double is refused, and not given as nothing", () => {
  expect(() => specificHeatOfMixture({ parts: [{ mass: 1e-200, specificHeat: 1e-200 }] })).toThrow(
    "specific heat of the mixture",
  );
});

test("normalised amounts sum to 1 and keep their proportions", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 1e-3, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 30 }),
      (amounts) => {
        const shares = normalise({ amounts });
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
        shares.forEach((share, i) => {
          expect(((share / (shares[0] ?? 1)) * (amounts[0] ?? 1)) / (amounts[i] ?? Number.NaN)).toBeCloseTo(1, 12);
        });
      },
    ),
  );
});

test("more active part than the material holds is refused", () => {
  expect(() => suppliedShare({ active: 0.6, strength: 0.5 })).toThrow("0.5 at most");
});
