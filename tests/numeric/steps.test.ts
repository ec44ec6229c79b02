import fc from "fast-check";
import { expect, test } from "vitest";
import { integrate, nodes } from "../../src/numeric/quadrature.js";
import { root } from "../../src/numeric/root.js";
import { rootBeyond } from "../../src/numeric/root-beyond.js";
import { between } from "../support/between.js";

/** A root, and how often the function was asked. */
function counted(of: (x: number) => number, low: number, high: number, tolerance?: number) {
  let calls = 0;
  const valueAt = (x: number): number => {
    calls += 1;
    return of(x);
  };
  return { at: root(valueAt, low, high, "x", tolerance), calls };
}

// Bisection halves the bracket 52 times until it is down to the last place.
test.each([
  ["x³ − 2x − 5", (x: number) => x ** 3 - 2 * x - 5, 2, 3, 2.0945514815423265],
  ["exp x − 2", (x: number) => Math.exp(x) - 2, 0, 1, Math.LN2],
  ["cos x − x", (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
  ["1/x − 3", (x: number) => 1 / x - 3, 0.1, 1, 1 / 3],
  ["ln x", (x: number) => Math.log(x), 0.5, 5, 1],
])(
  "a smooth function such as %s takes a quarter of the steps of bisection, from either end",
  (_, of, low, high, at) => {
    for (const { at: found, calls } of [counted(of, low, high), counted(of, high, low)]) {
      expect(Math.abs(found / at - 1)).toBeLessThan(5e-16);
      expect(calls).toBeLessThanOrEqual(13);
    }
  },
);

test("a straight line is solved by its middle and one step more", () => {
  const { at, calls } = counted((x) => 3 * x - 1, 0, 1);
  expect(at).toBeCloseTo(1 / 3, 15);
  expect(calls).toBeLessThanOrEqual(5);
  // A root at the middle ends the search there.
  expect(counted((x) => x - 0.5, 0, 1)).toEqual({ at: 0.5, calls: 3 });
});

test("flat powers and jumps take no more than some twice the steps of bisection", () => {
  for (const of of [
    (x: number) => x ** 9 - 1e-9,
    (x: number) => (x < 0.1234 ? -1 : 1),
    (x: number) => Math.cbrt(x - 0.1),
  ])
    expect(counted(of, 0, 1).calls).toBeLessThanOrEqual(110);
});

test("a root as flat as a cube's or steeper takes hardly more steps than the 47 of bisection, from either end", () => {
  for (const [of, low, high] of [
    [(x: number) => (x - 0.777) ** 3, 0, 1],
    [(x: number) => x ** 19, -1, 4],
  ] as const)
    for (const { calls } of [counted(of, low, high, 1e-14), counted(of, high, low, 1e-14)])
      expect(calls).toBeLessThanOrEqual(65);
});

test("the answer lies within the tolerance, of a jump as of a smooth function", () => {
  fc.assert(
    fc.property(between(0.01, 0.99), fc.constantFrom(0.2, 0.05, 1e-3), (place, tolerance) => {
      expect(Math.abs(counted((x) => (x < place ? -1 : 1), 0, 1, tolerance).at - place)).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(counted((x) => (x < place ? 1 : -5), 0, 1, tolerance).at - place)).toBeLessThanOrEqual(tolerance);
    }),
  );
  // Of the two ends of the last bracket the better one is the answer.
  const { at } = counted((x) => (x < 0.3 ? x - 0.31 : x + 5), 0, 1, 0.1);
  expect(at).toBeLessThan(0.3);
});

test("a function that breaks off is not taken for one that passes zero", () => {
  expect(() => root((x) => (x === 0 ? -1 : x === 1 ? 1 : Number.NaN), 0, 1, "x")).toThrow(
    expect.objectContaining({ code: "not-converged" }),
  );
});

test("strides grow from 1 K and end at the end, up or down", () => {
  const asked = (start: number, end: number) => {
    const places: number[] = [];
    const valueAt = (x: number): number => {
      places.push(x);
      return -1;
    };
    expect(rootBeyond(valueAt, start, end, "x", 1e-12)).toBeUndefined();
    return places;
  };
  expect(asked(20, 30)).toEqual([21, 22, 24, 28, 30]);
  expect(asked(20, 12)).toEqual([19, 18, 16, 12]);
  expect(asked(20, 21)).toEqual([21]);
  expect(asked(20, 20)).toEqual([]);
  expect(rootBeyond((x) => x - 21, 20, 40, "x", 1e-12)).toBe(21);
});

/** The integral of a power over a panel, and how often it was asked. */
function power(degree: number, order: number) {
  let looks = 0;
  const [total = Number.NaN] = integrate(
    [0, 1],
    (x, values) => {
      looks += 1;
      values[0] = (degree + 1) * (2 * x - 1) ** degree;
    },
    1,
    "x",
    order,
  );
  return { total, looks };
}

test("a polynomial below the two highest that a panel sees is resolved at once, and those are not", () => {
  for (const order of [nodes.slim, nodes.narrow, nodes.wide]) {
    const even = power(order - 4, order);
    expect(even.looks).toBe(order);
    expect(even.total).toBeCloseTo(1, 13);
    // Of an odd power about the middle the two halves cancel; it is seen by its coefficient all the same.
    expect(power(order - 3, order)).toMatchObject({ looks: order, total: expect.closeTo(0, 13) });
    for (const degree of [order - 2, order - 1]) expect(power(degree, order).looks).toBeGreaterThan(order);
  }
});

/** Legendre's polynomial of a degree, by its recurrence. */
function legendre(degree: number, x: number): number {
  let [own, before] = [1, 0];
  for (let k = 1; k <= degree; k += 1) [own, before] = [((2 * k - 1) * x * own - (k - 1) * before) / k, own];
  return own;
}

test("a panel is resolved once each of its two last Legendre coefficients is a ten thousand millionth of the whole", () => {
  for (const order of [nodes.slim, nodes.narrow, nodes.wide])
    for (const degree of [order - 2, order - 1]) {
      const looksAt = (part: number) => {
        let looks = 0;
        integrate(
          [-1, 1],
          (x, values) => {
            looks += 1;
            values[0] = 0.5 + part * legendre(degree, x);
          },
          1,
          "x",
          order,
        );
        return looks;
      };
      expect(looksAt(0.98e-10)).toBe(order);
      expect(looksAt(1.02e-10)).toBeGreaterThan(order);
      expect(looksAt(-1.02e-10)).toBeGreaterThan(order);
    }
});

test("what halving brings to light counts as part of the whole, beside which a later kink is small", () => {
  let later = 0;
  const [total = 0] = integrate(
    [0, 1, 2],
    (x, values) => {
      if (x > 1) later += 1;
      // A needle that the first look sees the foot of.
      values[0] = x > 1 ? Math.abs(x - 1.3) : 1e14 * Math.exp(-(((x - 0.3) / 5e-3) ** 2));
    },
    1,
    "x",
  );
  expect(total / (5e11 * Math.sqrt(Math.PI))).toBeCloseTo(1, 9);
  expect(later).toBe(24);
});

test("what is small beside the whole need not be resolved, wherever in the whole it comes", () => {
  const looksAt = (kink: number) => {
    let looks = 0;
    integrate(
      [0, 1, 2],
      (x, values) => {
        looks += 1;
        values[0] = 1 + 1e-13 * Math.abs(x - kink);
      },
      1,
      "x",
    );
    return looks;
  };
  expect([looksAt(0.3), looksAt(1.3)]).toEqual([48, 48]);
});

test("each of several functions is resolved, and each against its own size", () => {
  const [ones = 0, kinked = 0] = integrate(
    [0, 1],
    (x, values) => {
      values[0] = 1e6;
      values[1] = Math.abs(x - 1 / 3);
    },
    2,
    "x",
  );
  expect(ones).toBeCloseTo(1e6, 6);
  expect(kinked).toBeCloseTo(5 / 18, 10);
});
