import fc from "fast-check";
import { expect, test } from "vitest";
import { polyline } from "../../src/numeric/polyline.js";
import { between } from "../support/between.js";

const corners = fc
  .array(fc.tuple(fc.integer({ min: -1000, max: 1000 }), fc.integer({ min: -50, max: 50 })), {
    minLength: 2,
    maxLength: 8,
  })
  .map((points) => [...new Map(points)].sort(([one], [other]) => one - other))
  .filter((points) => points.length > 1);

test("a line through points passes through each of them, and lies between two in between", () => {
  fc.assert(
    fc.property(corners, between(0, 1), (points, share) => {
      const [places, values] = [points.map(([place]) => place), points.map(([, value]) => value)];
      points.forEach(([place, value]) => {
        expect(polyline(places, values, place)).toBeCloseTo(value, 10);
      });
      const [low, high] = [places[0] as number, places[1] as number];
      const between = polyline(places, values, low + share * (high - low));
      const [from, to] = [values[0] as number, values[1] as number];
      expect(between).toBeGreaterThanOrEqual(Math.min(from, to) - 1e-9);
      expect(between).toBeLessThanOrEqual(Math.max(from, to) + 1e-9);
    }),
  );
});

test("beyond its ends it goes on along the first and the last line", () => {
  expect(polyline([0, 1, 3], [0, 2, 2], -1)).toBe(-2);
  expect(polyline([0, 1, 3], [0, 2, 4], 5)).toBe(6);
});
