import fc from "fast-check";
import { chargeForEvaporation, lossFraction, massAfterEvaporation } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

test("what is charged for a loss leaves what was wanted, and weighing it gives the loss back", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), between(0, 0.99), (delivered, loss) => {
      const charge = chargeForEvaporation({ delivered, lossFraction: loss });
      expect(Math.abs(massAfterEvaporation({ charge, lossFraction: loss }) / delivered - 1)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(lossFraction({ massBefore: charge, massAfter: delivered }) - loss)).toBeLessThanOrEqual(1e-15);
    }),
  );
});

test("a volatile part is charged up alone, and the product has the composition of the formula", () => {
  const charged = chargeForEvaporation({ delivered: 0.03 * 50, lossFraction: 0.1 });
  expect(charged + 0.97 * 50).toBeCloseTo(50.1666667, 6);
  expect(massAfterEvaporation({ charge: charged, lossFraction: 0.1 }) / 50).toBeCloseTo(0.03, 12);
});

test("a mass that has grown is no loss, and what is lost whole cannot be charged for", () => {
  expect(() => lossFraction({ massBefore: 1, massAfter: 1.01 })).toThrow(
    "massAfter: found 1.01, expected not more than massBefore (1)",
  );
  expect(() => chargeForEvaporation({ delivered: 1, lossFraction: 1 })).toThrow("a fraction below 1");
});
