import { expect, test } from "vitest";
import { curveFit } from "../../src/numeric/curve-fit.js";
import { increment, multiple, share, stepsDown, stepsUp } from "../../src/numeric/decimal.js";
import { incompleteBeta } from "../../src/numeric/incomplete-beta.js";
import { leastSquares, lengthOf } from "../../src/numeric/least-squares.js";
import { logGamma } from "../../src/numeric/log-gamma.js";
import { curveAt, curvePlace, monotoneCurve } from "../../src/numeric/monotone-curve.js";
import { normalBelow, normalQuantile } from "../../src/numeric/normal.js";
import { polyline } from "../../src/numeric/polyline.js";
import { fisherAbove, studentBeyond } from "../../src/numeric/tails.js";

test("portions on the grid are as equal as it allows, and none of the mass is lost", () => {
  expect(share(1, 3, 0.01)).toEqual([0.33, 0.33, 0.34]);
  expect(share(0.3, 3, 0.1)).toEqual([0.1, 0.1, 0.1]);
  expect(share(10, 4, 5)).toEqual([0, 5, 0, 5]);
  expect(share(2, 1, 0.5)).toEqual([2]);
});

test("a mass that is a few bits off its step lies on it, and one that is a millionth off does not", () => {
  expect([stepsDown(3 - 1e-13), stepsUp(3 + 1e-13), stepsDown(3), stepsUp(3)]).toEqual([3, 3, 3, 3]);
  expect([stepsDown(3 - 1e-6), stepsUp(3 + 1e-6), stepsDown(3 + 1e-6), stepsUp(3 - 1e-6)]).toEqual([2, 4, 3, 3]);
});

test("an increment is the decimal that the display shows", () => {
  expect(increment(0.025, "x")).toEqual({ digits: 25, exponent: -3 });
  expect(increment(0.1 + 0.2, "x")).toEqual({ digits: 3, exponent: -1 });
  expect(increment(5e-7, "x")).toEqual({ digits: 5, exponent: -7 });
  expect(multiple(3, { digits: 1, exponent: -1 }, "x")).toBe(0.3);
  expect(() => multiple(2 ** 53, { digits: 2, exponent: 0 }, "x")).toThrow("fewer than 9e15 steps");
});

test("the share below the ends of a beta distribution is none or all, and one half by symmetry", () => {
  expect([incompleteBeta(0, 1, 2, 3), incompleteBeta(1, 0, 2, 3), incompleteBeta(0, Number.NaN, 2, 3)]).toEqual([
    0, 1, 0,
  ]);
  for (const a of [0.5, 1, 7, 40]) expect(incompleteBeta(0.5, 0.5, a, a)).toBeCloseTo(0.5, 13);
  // I_x(1, b) = 1 − (1 − x)^b, also where the continued fraction begins with a nought: a = 1, b = 1, x = 1.
  for (const x of [1e-9, 0.2, 0.6, 0.999]) expect(incompleteBeta(x, 1 - x, 1, 5)).toBeCloseTo(1 - (1 - x) ** 5, 13);
});

test("beyond what a double can square nothing is left of a distribution", () => {
  expect([studentBeyond(1e200, 5), studentBeyond(0, 5)]).toEqual([0, 1]);
  expect([fisherAbove(Number.POSITIVE_INFINITY, 3, 4), fisherAbove(1e308, 300, 4), fisherAbove(0, 3, 4)]).toEqual([
    0, 0, 1,
  ]);
});

test("the middle of a normal distribution is exactly nought, and its two ways of summing meet", () => {
  expect(normalQuantile(0.5)).toBe(0);
  expect(normalBelow(0)).toBe(0.5);
  expect(normalBelow(-3) / 0.00134989803163009).toBeCloseTo(1, 13);
  expect(normalBelow(-3 + 1e-12) / normalBelow(-3 - 1e-12)).toBeCloseTo(1 + 2e-12 * 3.283, 11);
});

test("the logarithm of a factorial is that of the product, below and above where the series takes over", () => {
  let product = 0;
  for (let n = 1; n <= 20; n += 1) {
    product += Math.log(n);
    expect(logGamma(n + 1)).toBeCloseTo(product, 12);
  }
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 14);
});

test("a polyline passes its own points exactly, and goes on straight beyond them", () => {
  const [places, values] = [[0.1, 0.3, 0.9], [0.7, 0.1, 5.3] as const];
  places.forEach((place, i) => {
    expect(polyline(places, values, place)).toBe(values[i]);
  });
  expect(polyline(places, values, 0.9)).toBe(5.3);
  expect(polyline([0, 1, 3], [0, 2, 3], 5)).toBe(4);
  expect(polyline([0, 1, 3], [0, 2, 3], -1)).toBe(-2);
});

test("a curve is found again at its ends and on the straight lines beyond them", () => {
  const curve = monotoneCurve([0, 1, 3], [0, 2, 3]);
  for (const place of [-2, 0, 0.4, 1, 2.9, 3, 7])
    expect(curvePlace(curve, curveAt(curve, place))).toBeCloseTo(place, 12);
  expect([curvePlace(curve, 0), curvePlace(curve, 3)]).toEqual([0, 3]);
});

test("columns of any size are measured, and those that depend on one another or overflow are told", () => {
  const column = (...values: number[]) => Float64Array.from(values);
  expect(lengthOf(column(3e200, 4e200)) / 5e200).toBeCloseTo(1, 15);
  expect(lengthOf(column(3e-200, 4e-200)) / 5e-200).toBeCloseTo(1, 15);
  expect([lengthOf(column(0, 0)), lengthOf(column(1, Number.POSITIVE_INFINITY))]).toEqual([
    0,
    Number.POSITIVE_INFINITY,
  ]);
  const right = column(1, 2, 4);
  expect(leastSquares([column(1, 1, 1), column(2, 2, 2)], right)).toBeUndefined();
  expect(leastSquares([column(0, 0, 0)], right)).toBeUndefined();
  expect(leastSquares([column(1, Number.POSITIVE_INFINITY, 1)], right)).toBeUndefined();
  expect(leastSquares([column(1.7e308, 1.7e308, 1.7e308)], right)).toBeUndefined();
  // The mean of 1, 2 and 4, and what is left of them.
  expect(leastSquares([column(1, 1, 1)], right)).toEqual({
    coefficients: [expect.closeTo(7 / 3, 14)],
    sumOfSquares: expect.closeTo(14 / 3, 13),
    inverse: [[expect.closeTo(1 / 3, 14)]],
    projected: expect.closeTo(7 / Math.sqrt(3), 13),
  });
});

// NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b₁(1 − exp(−b₂ x)), with the certified values.
const misra = [
  [77.6, 10.07],
  [114.9, 14.73],
  [141.1, 17.94],
  [190.8, 23.93],
  [239.9, 29.61],
  [289, 35.18],
  [332.8, 40.02],
  [378.4, 44.82],
  [434.8, 50.76],
  [477.3, 55.05],
  [536.8, 61.01],
  [593.1, 66.4],
  [689.1, 75.47],
  [760, 81.78],
] as const;

test.each([
  [500, 0.0001],
  [250, 0.0005],
  [1000, 0.001],
])("a certified fit is found from %d and %d, and its digits are those that were certified", (...start) => {
  let rounds = 0;
  const fit = curveFit(
    {
      target: Float64Array.from(misra, ([, y]) => y),
      valuesAt: ([a = 0, b = 0]) => Float64Array.from(misra, ([x]) => -a * Math.expm1(-b * x)),
      slopesAt: ([a = 0, b = 0]) => {
        rounds += 1;
        return [
          Float64Array.from(misra, ([x]) => -Math.expm1(-b * x)),
          Float64Array.from(misra, ([x]) => a * x * Math.exp(-b * x)),
        ];
      },
    },
    start,
  );
  const [a = 0, b = 0] = fit?.parameters ?? [];
  expect(a / 238.94212918).toBeCloseTo(1, 10);
  expect(b / 5.5015643181e-4).toBeCloseTo(1, 10);
  expect((fit?.sumOfSquares ?? 0) / 0.12455138894).toBeCloseTo(1, 9);
  // Certified standard deviations: of a reading 0.10187876330, of the parameters 2.7070075241 and 7.2668688436e-6.
  const deviation = (k: number) => Math.sqrt((fit?.inverse[k]?.[k] ?? 0) * ((fit?.sumOfSquares ?? 0) / 12));
  expect(deviation(0) / 2.7070075241).toBeCloseTo(1, 8);
  expect(deviation(1) / 7.2668688436e-6).toBeCloseTo(1, 8);
  expect(rounds).toBeLessThan(60);
});

test("readings without scatter are fitted to the last digit, and a model that they do not move is told", () => {
  const places = [0, 1, 2, 3, 4];
  const model = (target: readonly number[]) => ({
    target: Float64Array.from(target),
    valuesAt: ([a = 0, b = 0]: readonly number[]) => Float64Array.from(places, (x) => a * Math.exp(-b * x)),
    slopesAt: ([a = 0, b = 0]: readonly number[]) => [
      Float64Array.from(places, (x) => Math.exp(-b * x)),
      Float64Array.from(places, (x) => -a * x * Math.exp(-b * x)),
    ],
  });
  const exact = curveFit(model(places.map((x) => 3 * Math.exp(-0.5 * x))), [1, 0.1]);
  expect(exact?.parameters[0]).toBeCloseTo(3, 12);
  expect(exact?.parameters[1]).toBeCloseTo(0.5, 12);
  expect(exact?.sumOfSquares).toBeLessThan(1e-24);
  // Nothing is left to fit where a is nought: its slope by b is none.
  expect(curveFit(model([0, 0, 0, 0, 0]), [0, 1])).toBeUndefined();
});
