import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";
import { root } from "../../src/numeric/root.js";

// Roots to 25 digits by mpmath 1.3.0 (findroot), rounded here: a root finder outside the project.
const known = [
  { name: "x tan x = 1", of: (x: number) => x * Math.sin(x) - Math.cos(x), low: 0.1, high: 1.5, at: 0.86033358901938 },
  { name: "tan x = x", of: (x: number) => Math.sin(x) - x * Math.cos(x), low: 3.2, high: 4.7, at: 4.493409457909064 },
  { name: "exp x = 2", of: (x: number) => Math.exp(x) - 2, low: -5, high: 50, at: Math.LN2 },
  { name: "cos x = x", of: (x: number) => Math.cos(x) - x, low: 0, high: 2, at: 0.739085133215161 },
];

test.each(known)("finds the tabled root of $name, from either end", ({ of, low, high, at }) => {
  expect(Math.abs(root(of, low, high, "x") - at)).toBeLessThan(2e-15 * Math.abs(at) + 5e-16);
  expect(Math.abs(root(of, high, low, "x") - at)).toBeLessThan(2e-15 * Math.abs(at) + 5e-16);
});

test("any power and any steep exponential is undone, in fewer steps than plain bisection would take", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 50, noNaN: true }), fc.integer({ min: 1, max: 15 }), (at, power) => {
      let calls = 0;
      const found = root(
        (x) => {
          calls += 1;
          return x ** power - at ** power;
        },
        0,
        60,
        "x",
      );
      expect(Math.abs(found - at)).toBeLessThanOrEqual(1e-14 * at);
      expect(calls).toBeLessThan(120);
    }),
  );
});

test("a function that jumps over zero is followed to its jump", () => {
  expect(root((x) => (x < Math.SQRT2 ? -1 : 1), 0, 3, "x")).toBeCloseTo(Math.SQRT2, 14);
});

test("an end that is the root is the answer", () => {
  expect(root((x) => x - 1, 1, 5, "x")).toBe(1);
  expect(root((x) => x - 5, 1, 5, "x")).toBe(5);
});

test("a coarse tolerance is kept and costs fewer steps", () => {
  const counted = (tolerance: number): [number, number] => {
    let calls = 0;
    const curve = (x: number): number => {
      calls += 1;
      return Math.exp(x) - 2;
    };
    const found = root(curve, -5, 50, "x", tolerance);
    return [found, calls];
  };
  const [coarse, few] = counted(1e-3);
  expect(Math.abs(coarse - Math.LN2)).toBeLessThanOrEqual(1e-3);
  expect(few).toBeLessThan(counted(0)[1]);
});

test.each([
  ["above zero at both ends", (x: number) => x * x],
  ["below zero at both ends", (x: number) => -x * x],
  ["no number at the lower end", (x: number) => (x === 1 ? Number.NaN : x - 1.5)],
  ["no number at the upper end", (x: number) => (x === 2 ? Number.NaN : x - 1.5)],
  ["no number within", (x: number) => (x === 1 || x === 2 ? x - 1.5 : Number.NaN)],
])("a function that is %s has no root, whichever end comes first", (_name, of) => {
  expect(() => root(of, 1, 2, "x")).toThrow(CalculationError);
  expect(() => root(of, 2, 1, "x")).toThrow(CalculationError);
});

test("a jump at all but nought has no last place to be found to, and needs a tolerance", () => {
  const jump = (x: number) => (x < 1e-250 ? -1 : 1);
  expect(() => root(jump, -1, 1, "x")).toThrow(expect.objectContaining({ code: "not-converged" }));
  expect(Math.abs(root(jump, -1, 1, "x", 1e-12))).toBeLessThanOrEqual(1e-12);
});
