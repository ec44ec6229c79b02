import fc from "fast-check";
import { mixingTemperature } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const charge = fc.record({
  mass: fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
  specificHeat: fc.double({ min: 500, max: 5000, noNaN: true }),
  temperature: between(-40, 200),
});

test("the mix lies between its coldest and its warmest charge, and no order of pouring changes it", () => {
  fc.assert(
    fc.property(fc.array(charge, { minLength: 1, maxLength: 8 }), (charges) => {
      const mixed = mixingTemperature({ charges });
      const temperatures = charges.map((c) => c.temperature);
      expect(mixed).toBeGreaterThanOrEqual(Math.min(...temperatures) - 1e-9);
      expect(mixed).toBeLessThanOrEqual(Math.max(...temperatures) + 1e-9);
      expect(mixingTemperature({ charges: charges.slice().reverse() })).toBeCloseTo(mixed, 9);
    }),
  );
});

test("a charge without mass is refused by name", () => {
  expect(() => mixingTemperature({ charges: [{ mass: 0, specificHeat: 2000, temperature: 20 }] })).toThrow(
    "charges[0].mass: found 0, expected a finite number above 0",
  );
});
