import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { besselJ } from "../../src/numeric/bessel.js";

const { values } = JSON.parse(readFileSync(new URL("./bessel.json", import.meta.url), "utf8")) as {
  readonly values: readonly (readonly [x: number, j0: number, j1: number])[];
};

test.each(values)("J0 and J1 at %d are those of mpmath to 5e-16", (x, j0, j1) => {
  const [found0, found1] = besselJ(x);
  expect(Math.abs(found0 - j0)).toBeLessThanOrEqual(5e-16);
  expect(Math.abs(found1 - j1)).toBeLessThanOrEqual(5e-16);
});

test("close to zero J1 is x/2 to the last digits", () => {
  for (const x of [1e-160, 1e-12, 1e-5])
    expect(Math.abs(besselJ(x)[1] / (x / 2 - x ** 3 / 16) - 1)).toBeLessThan(1e-15);
});

test("J0 falls by J1, on both sides of where the two ways meet", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 1000, noNaN: true }), (x) => {
      const step = 1e-3;
      // The central difference, with its first correction: J0''' = J1 (1 − 2/x²) + J0/x.
      const slope = (besselJ(x + step)[0] - besselJ(Math.abs(x - step))[0]) / (2 * step);
      const [j0, j1] = besselJ(x);
      const third = j1 * (1 - 2 / (x * x)) + j0 / x;
      if (x > 0.1) expect(Math.abs(slope + j1 - (third * step * step) / 6)).toBeLessThan(1e-11);
    }),
  );
});
