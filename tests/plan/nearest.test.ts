import fc from "fast-check";
import { expect, test } from "vitest";
import { nearest, partThatHolds } from "../../src/plan/nearest.js";
import { between } from "../support/between.js";

test("the nearest value lies on the side that holds, within a billionth of the bracket", () => {
  fc.assert(
    fc.property(between(-50, 50), between(-50, 50), between(0.01, 0.99), (from, to, share) => {
      const edge = from + share * (to - from);
      const holds = (value: number): boolean => Math.abs(value - from) >= Math.abs(edge - from);
      const value = nearest({ from, to }, holds);
      expect(holds(value)).toBe(true);
      expect(Math.abs(value - edge)).toBeLessThanOrEqual(2e-9 * Math.abs(to - from));
    }),
  );
});

test("of whole numbers it is the first that holds", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 400 }), (from, more) => {
      const to = from + more;
      const edge = from + Math.ceil(more / 3);
      const looked: number[] = [];
      const holds = (value: number): boolean => looked.push(value) > 0 && value >= edge;
      expect(nearest({ from, to, whole: true }, holds)).toBe(edge);
      expect(looked.filter((value) => !Number.isInteger(value))).toEqual([]);
    }),
  );
});

test("a part is found in the middle of a bracket whose end does not hold, and none where nothing holds", () => {
  const within = (value: number): boolean => value >= 0.06 && value <= 0.12;
  const part = partThatHolds({ from: 0.02, to: 0.9 }, within);
  expect(part && within(part.to) && !within(part.from)).toBe(true);
  expect(part && nearest(part, within)).toBeCloseTo(0.06, 9);
  expect(partThatHolds({ from: 0, to: 1 }, () => false)).toBeUndefined();
  expect(partThatHolds({ from: 0, to: 1 }, (value) => value === 1)).toEqual({ from: 0, to: 1, whole: undefined });
});
