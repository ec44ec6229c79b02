import fc from "fast-check";
import { expect, test } from "vitest";
import { rootBeyond } from "../../src/numeric/root-beyond.js";

test("a search in growing strides finds the root up or down, and asks no further than twice as far", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 900, noNaN: true }), fc.constantFrom(1, -1), (distance, sense) => {
      let farthest = 0;
      const valueAt = (x: number): number => {
        farthest = Math.max(farthest, Math.abs(x - 20));
        return sense * (x - 20) - distance;
      };
      const found = rootBeyond(valueAt, 20, 20 + sense * 1000, "x", 1e-12);
      expect(Math.abs((found ?? Number.NaN) - 20)).toBeCloseTo(distance, 9);
      expect(farthest).toBeLessThanOrEqual(Math.max(1, 2 * distance));
    }),
  );
});

test("a root at the very end of the way is found, up or down", () => {
  expect(rootBeyond((x) => x - 23, 20, 23, "x", 1e-12)).toBe(23);
  expect(rootBeyond((x) => 17 - x, 20, 17, "x", 1e-12)).toBe(17);
});

test("a function that stays below zero as far as it is looked for has no root", () => {
  expect(rootBeyond((x) => x - 2000, 0, 1000, "x", 1e-12)).toBeUndefined();
});
