import fc from "fast-check";
import { expect, test } from "vitest";
import { curveAt, curvePlace, monotoneCurve } from "../../src/numeric/monotone-curve.js";
import { between } from "../support/between.js";

/** Two to nine points that rise in both directions, with gaps that differ a hundredfold. */
const points = fc
  .array(fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0.01, max: 1, noNaN: true })), {
    minLength: 2,
    maxLength: 9,
  })
  .map((gaps) => {
    const summed = (side: 0 | 1) => gaps.map((_, i) => gaps.slice(0, i + 1).reduce((sum, gap) => sum + gap[side], -2));
    return { x: summed(0), y: summed(1) };
  });

test("the curve passes through its points, and rises everywhere, beyond its ends too", () => {
  fc.assert(
    fc.property(points, ({ x, y }) => {
      const curve = monotoneCurve(x, y);
      x.forEach((at, i) => {
        expect(curveAt(curve, at)).toBe(y[i]);
      });
      const heights = Array.from({ length: 1200 }, (_, i) => curveAt(curve, -3 + i / 100));
      expect(heights.findIndex((height, i) => height <= (heights[i - 1] ?? Number.NEGATIVE_INFINITY))).toBe(-1);
    }),
    { numRuns: 50 },
  );
});

test("a height leads back to its place", () => {
  fc.assert(
    fc.property(points, between(-4, 12), ({ x, y }, at) => {
      const curve = monotoneCurve(x, y);
      const back = curvePlace(curve, curveAt(curve, at));
      // A flat stretch tells places apart only as well as heights can be told apart.
      expect(Math.abs(curveAt(curve, back) - curveAt(curve, at))).toBeLessThan(1e-13);
      expect(Math.abs(back - at)).toBeLessThan(1e-11);
    }),
  );
});

test("points on a straight line give the line", () => {
  const line = monotoneCurve([0, 1, 3, 4], [1, 3, 7, 9]);
  for (const at of [-5, 0.3, 1, 2.2, 3.9, 100]) expect(curveAt(line, at)).toBeCloseTo(1 + 2 * at, 12);
});

test("a flat beginning never makes the curve fall or stand still beyond its end", () => {
  const bent = monotoneCurve([0, 1, 2], [0, 0.001, 5]);
  expect(curveAt(bent, -1)).toBeLessThan(curveAt(bent, 0));
});
