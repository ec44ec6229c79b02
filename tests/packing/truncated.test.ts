import { expect, test } from "vitest";
import { quadraticOf, truncated } from "../../src/packing/truncated.js";

const { POSITIVE_INFINITY: infinity } = Number;

test("the whole normal distribution has the powers 0, 1, 0 and 3, its upper half those of the half-normal one", () => {
  const whole = truncated(-infinity, infinity);
  expect(whole.share).toBeCloseTo(1, 14);
  expect(whole.powers.map((power) => power + 1)).toEqual([1, 2, 1, 4].map((power) => expect.closeTo(power, 13)));
  const half = truncated(0, infinity);
  const mean = Math.sqrt(2 / Math.PI);
  expect(half.share).toBeCloseTo(0.5, 14);
  expect(half.powers).toEqual([mean, 1, 2 * mean, 3].map((power) => expect.closeTo(power, 13)));
  expect(truncated(-infinity, 0).powers).toEqual([-mean, 1, -2 * mean, 3].map((power) => expect.closeTo(power, 13)));
});

test("a tail keeps its digits on either side", () => {
  // Abramowitz and Stegun, table 26.2: the normal distribution leaves 6.22096e-16 beyond 8.
  expect(truncated(8, infinity).share / 6.22096057427178e-16).toBeCloseTo(1, 10);
  expect(truncated(-infinity, -8).share / 6.22096057427178e-16).toBeCloseTo(1, 10);
  expect(truncated(8, 8.5).powers[0]).toBeGreaterThan(8);
  expect(truncated(8, 8.5).powers[0]).toBeLessThan(8.5);
  expect(truncated(-8.5, -8).powers[0]).toBeCloseTo(-truncated(8, 8.5).powers[0], 12);
});

test("between two places powers are the means over its parts, each by its share", () => {
  const [left, right, both] = [truncated(-1, 0.5), truncated(0.5, 2), truncated(-1, 2)];
  expect(left.share + right.share).toBeCloseTo(both.share, 14);
  for (const i of [0, 1, 2, 3] as const)
    expect((left.powers[i] * left.share + right.powers[i] * right.share) / both.share).toBeCloseTo(both.powers[i], 12);
  expect(truncated(1, 1)).toEqual({ share: 0, powers: [0, 0, 0, 0] });
});

test("a quadratic of a standard normal has the mean and the variance of chi squared", () => {
  const whole = truncated(-infinity, infinity);
  // α z + β (z − m)²: mean β(1 + m²), variance (α − 2βm)² + 2β².
  for (const [alpha, beta, m] of [
    [0, 1, 0],
    [2, 0, 1],
    [1, 3, 0],
    [1.5, 0.5, -2],
  ] as const) {
    const { mean, variance } = quadraticOf(whole, alpha, beta, m);
    expect(mean).toBeCloseTo(beta * (1 + m * m), 12);
    expect(variance).toBeCloseTo((alpha - 2 * beta * m) ** 2 + 2 * beta ** 2, 11);
  }
});

test("of any part, a quadratic has the mean and the variance that narrow slices of the part add up to", () => {
  for (const [from, to] of [
    [-1, 0.5],
    [0.3, 2],
    [-6, -1.5],
  ] as const)
    for (const [alpha, beta, m] of [
      [1, 0.5, 0.7],
      [0.2, -1, -0.4],
    ] as const) {
      const slices = Array.from({ length: 20_000 }, (_, i) => from + ((to - from) * (i + 0.5)) / 20_000);
      const sum = (of: (z: number) => number) =>
        slices.reduce((total, z) => total + of(z) * Math.exp((-z * z) / 2), 0) /
        slices.reduce((total, z) => total + Math.exp((-z * z) / 2), 0);
      const value = (z: number) => alpha * z + beta * (z - m) ** 2;
      const { mean, variance } = quadraticOf(truncated(from, to), alpha, beta, m);
      const expected = sum(value);
      expect(mean).toBeCloseTo(expected, 7);
      expect(variance).toBeCloseTo(
        sum((z) => (value(z) - expected) ** 2),
        7,
      );
    }
});
