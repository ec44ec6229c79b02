import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";
import { integrate, nodes } from "../../src/numeric/quadrature.js";
import { between } from "../support/between.js";

const one = (curve: (x: number) => number, ...edges: number[]): number =>
  integrate(
    edges,
    (x, values) => {
      values[0] = curve(x);
    },
    1,
    "integral",
  )[0] ?? Number.NaN;

// Integrals to 30 digits by mpmath 1.3.0 (quad), rounded here.
test.each([
  ["a bell", (x: number) => Math.exp(-x * x), 0, 2, 0.882081390762422],
  ["Runge's curve", (x: number) => 1 / (1 + 25 * x * x), -1, 1, 0.5493603067780063],
  ["a logarithm", Math.log, 1, 5, 4.047189562170502],
  ["a steep exponential", (x: number) => Math.exp(12 * x), 0, 1, 13562.81595158366],
])("%s comes out to the last digits", (_name, curve, from, to, expected) => {
  expect(Math.abs(one(curve, from, to) / expected - 1)).toBeLessThan(5e-15);
  expect(one(curve, to, from)).toBeCloseTo(-one(curve, from, to), 9);
});

test("a polynomial of degree 47 needs one panel", () => {
  let calls = 0;
  const integral = one(
    (x) => {
      calls += 1;
      return 48 * x ** 47 + 1e9;
    },
    0,
    1,
  );
  expect(Math.abs(integral - 1 - 1e9)).toBeLessThan(1e-5);
  expect(calls).toBe(24);
});

test("a narrow panel gets by with twelve nodes, and gives the same", () => {
  let calls = 0;
  const [integral = Number.NaN] = integrate(
    [0, 0.5, 1],
    (x, values) => {
      calls += 1;
      values[0] = Math.exp(-x);
    },
    1,
    "integral",
    nodes.narrow,
  );
  expect(Math.abs(integral / -Math.expm1(-1) - 1)).toBeLessThan(5e-15);
  expect(calls).toBe(24);
});

test("a rough part that hardly counts is not halved, whichever end it stands at", () => {
  const calls = (...edges: number[]): number => {
    let count = 0;
    one(
      (x) => {
        count += 1;
        return x < 1e-6 ? Math.sqrt(x) : 1;
      },
      ...edges,
    );
    return count;
  };
  expect(calls(0, 1e-6, 1)).toBe(48);
  expect(calls(1, 1e-6, 0)).toBe(48);
});

test("a breakpoint that is no edge is found by halving, one that is an edge costs nothing", () => {
  const kinked = (x: number) => Math.abs(x - 0.3);
  expect(Math.abs(one(kinked, 0, 1) / 0.29 - 1)).toBeLessThan(1e-9);
  expect(Math.abs(one(kinked, 0, 0.3, 1) / 0.29 - 1)).toBeLessThan(5e-15);
  expect(Math.abs(one(Math.sqrt, 0, 1) * 1.5 - 1)).toBeLessThan(1e-9);
});

test("functions that are integrated together come out as they do alone", () => {
  const together = integrate(
    [0, 1],
    (x, values) => {
      values[0] = Math.exp(x);
      values[1] = Math.sin(x);
    },
    2,
    "integrals",
  );
  expect([...together]).toEqual([one(Math.exp, 0, 1), one(Math.sin, 0, 1)]);
});

test("stretches add up to the whole", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), between(-8, 8), (at, k) => {
      const curve = (x: number) => Math.exp(k * x);
      expect(Math.abs((one(curve, 0, at) + one(curve, at, 1)) / one(curve, 0, 1) - 1)).toBeLessThan(1e-13);
    }),
  );
});

test("an integral that does not exist is refused", () => {
  expect(() => one((x) => 1 / x, 0, 1)).toThrow(CalculationError);
});
