import fc from "fast-check";
import {
  conductivityOfMixture,
  densityOfMixture,
  normalise,
  specificHeatOfMixture,
  suppliedShare,
} from "gelwright/formula";
import { expect, test } from "vitest";

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
