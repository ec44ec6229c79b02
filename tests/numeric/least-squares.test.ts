import fc from "fast-check";
import { expect, test } from "vitest";
import { curveFit } from "../../src/numeric/curve-fit.js";
import { leastSquares } from "../../src/numeric/least-squares.js";
import { between } from "../support/between.js";

const rows = [0.5, 1, 2, 3, 5, 8, 13];
const column = (power: number, scale = 1) => Float64Array.from(rows, (x) => scale * x ** power);

test("what is left is at right angles to every column, which is what least means", () => {
  fc.assert(
    fc.property(fc.array(between(-10, 10), { minLength: rows.length, maxLength: rows.length }), (values) => {
      const right = Float64Array.from(values);
      const columns = [column(0), column(1), column(-1)];
      const fit = leastSquares(columns, right);
      const left = right.map(
        (value, i) =>
          value - columns.reduce((sum, one, k) => sum + (one[i] as number) * (fit?.coefficients[k] ?? 0), 0),
      );
      for (const one of columns)
        expect(Math.abs(one.reduce((sum, value, i) => sum + value * (left[i] as number), 0))).toBeLessThan(1e-11);
      expect(fit?.sumOfSquares).toBeCloseTo(
        left.reduce((sum, one) => sum + one * one, 0),
        9,
      );
    }),
  );
});

test("columns may be in any unit", () => {
  const right = Float64Array.from(rows, (x) => 3 + 2 * x + Math.sin(x));
  const plain = leastSquares([column(0), column(1)], right);
  const odd = leastSquares([column(0, 1e-150), column(1, 1e120)], right);
  expect((odd?.coefficients[0] as number) * 1e-150).toBeCloseTo(plain?.coefficients[0] as number, 12);
  expect((odd?.coefficients[1] as number) * 1e120).toBeCloseTo(plain?.coefficients[1] as number, 12);
});

test("the inverse is that of the normal equations of a straight line", () => {
  const fit = leastSquares([column(0), column(1)], column(2));
  const n = rows.length;
  const mean = rows.reduce((sum, x) => sum + x, 0) / n;
  const spread = rows.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  expect(fit?.inverse[1]?.[1]).toBeCloseTo(1 / spread, 14);
  expect(fit?.inverse[0]?.[0]).toBeCloseTo(1 / n + mean ** 2 / spread, 14);
  expect(fit?.inverse[0]?.[1]).toBeCloseTo(-mean / spread, 14);
});

test("columns that say the same, or say nothing, give no answer", () => {
  expect(leastSquares([column(1), column(1, 7)], column(0))).toBeUndefined();
  expect(
    leastSquares([column(0), column(1), column(0).map((one, i) => one + (rows[i] as number))], column(2)),
  ).toBeUndefined();
  expect(leastSquares([new Float64Array(rows.length)], column(0))).toBeUndefined();
  expect(leastSquares([column(1, Number.POSITIVE_INFINITY)], column(0))).toBeUndefined();
});

test("seven powers, which the normal equations would lose, come back", () => {
  const powers = [0, 1, 2, 3, 4, 5, 6];
  const right = Float64Array.from(rows, (x) => powers.reduce((sum, power) => sum + x ** power, 0));
  const fit = leastSquares(
    powers.map((power) => column(power)),
    right,
  );
  for (const one of fit?.coefficients ?? [Number.NaN]) expect(Math.abs(one - 1)).toBeLessThan(1e-6);
});

/** y = a exp(−b x), of which only readings and derivatives are told. */
const decay = (target: Float64Array) => ({
  target,
  valuesAt: ([a = 0, b = 0]: readonly number[]) => Float64Array.from(rows, (x) => a * Math.exp(-b * x)),
  slopesAt: ([a = 0, b = 0]: readonly number[]) => [
    Float64Array.from(rows, (x) => Math.exp(-b * x)),
    Float64Array.from(rows, (x) => -a * x * Math.exp(-b * x)),
  ],
});

test("a curve is found again from a start far off", () => {
  fc.assert(
    fc.property(between(0.1, 100), between(0.05, 1), (a, b) => {
      const fit = curveFit(decay(decay(column(0)).valuesAt([a, b])), [1, 0.3]);
      expect(Math.abs((fit?.parameters[0] ?? 0) / a - 1)).toBeLessThan(1e-9);
      expect(Math.abs((fit?.parameters[1] ?? 0) / b - 1)).toBeLessThan(1e-9);
    }),
    { numRuns: 60 },
  );
});

test("Rosenbrock's valley is followed to its end", () => {
  const fit = curveFit(
    {
      target: Float64Array.of(0, 1),
      valuesAt: ([x = 0, y = 0]) => Float64Array.of(10 * (y - x * x), x),
      slopesAt: ([x = 0]) => [Float64Array.of(-20 * x, 1), Float64Array.of(10, 0)],
    },
    [-1.2, 1],
  );
  expect(fit?.parameters[0]).toBeCloseTo(1, 12);
  expect(fit?.parameters[1]).toBeCloseTo(1, 12);
});

/** The angle of the place on a circle of radius 1 that lies closest to a point at 0.7 rad, so many radii from the middle. */
function closest(distance: number, start: number): number | undefined {
  return curveFit(
    {
      target: Float64Array.of(distance * Math.cos(0.7), distance * Math.sin(0.7)),
      valuesAt: ([angle = 0]) => Float64Array.of(Math.cos(angle), Math.sin(angle)),
      slopesAt: ([angle = 0]) => [Float64Array.of(-Math.sin(angle), Math.cos(angle))],
    },
    [start],
  )?.parameters[0];
}

test("a valley without an end is known for one in a few steps, once what the values are linear in is settled", () => {
  // a (1 + (b x)²)^(−0.4) comes ever closer to a power of x as b grows, and never has a best b.
  const bent = (b: number) => Float64Array.from(rows, (x) => (1 + (b * x) ** 2) ** -0.4);
  const target = column(-0.8);
  let looks = 0;
  const fittable = {
    target,
    valuesAt: ([a = 0, b = 0]: readonly number[]) => {
      looks += 1;
      return bent(b).map((value) => a * value);
    },
    slopesAt: ([a = 0, b = 0]: readonly number[]) => [
      bent(b),
      bent(b).map((value, i) => (-0.8 * a * value * b * (rows[i] ?? 0) ** 2) / (1 + (b * (rows[i] ?? 0)) ** 2)),
    ],
  };
  const settled = ([, b = 0]: readonly number[]) => [leastSquares([bent(b)], target)?.coefficients[0] ?? Number.NaN, b];
  const ends = (fit: ReturnType<typeof curveFit>) => fit === undefined || (fit.parameters[1] ?? 0) > 1e3;
  expect(ends(curveFit({ ...fittable, settled }, [1, 1]))).toBe(true);
  expect(looks).toBeLessThan(40);
  const straight = looks;
  curveFit(fittable, [1, 1]);
  expect(looks - straight).toBeGreaterThan(2 * straight);
});

test.each([0.6, 0.9, 1.3])(
  "the closest place on a circle to a point at %d radii is found to the last digits",
  (distance) => {
    for (const start of [0.3, -1, 1.5]) expect(closest(distance, start)).toBeCloseTo(0.7, 12);
  },
);

test("where the undamped step overshoots, the closest place is found as far as the sum of squares tells places apart", () => {
  for (const distance of [1.9, 2.5, 3]) expect(closest(distance, 0.3)).toBeCloseTo(0.7, 6);
});

test("the unit of a parameter and that of the readings change nothing but the figures' unit", () => {
  // Units that differ by powers of two, so that no digit is rounded otherwise.
  const fit = (ofReadings: number, ofRate: number) => {
    const target = Float64Array.from(rows, (x, i) => ofReadings * (5 * Math.exp(-0.4 * x) + (i % 2) / 8));
    let looks = 0;
    const own = decay(target);
    const found = curveFit(
      {
        target,
        valuesAt: ([a = 0, b = 0]) => {
          looks += 1;
          return own.valuesAt([a, b * ofRate]);
        },
        slopesAt: ([a = 0, b = 0]) => {
          const [byFactor, byRate] = own.slopesAt([a, b * ofRate]) as [Float64Array, Float64Array];
          return [byFactor, byRate.map((slope) => slope * ofRate)];
        },
      },
      [ofReadings, 2 / ofRate],
    );
    return [(found?.parameters[0] ?? 0) / ofReadings, (found?.parameters[1] ?? 0) * ofRate, looks];
  };
  const plain = fit(1, 1);
  expect(plain[0]).toBeGreaterThan(4);
  for (const [ofReadings, ofRate] of [
    [2 ** 30, 1],
    [2 ** -30, 1],
    [1, 2 ** 20],
    [1, 2 ** -20],
  ] as const)
    expect(fit(ofReadings, ofRate)).toEqual(plain);
});

test("where no step has values a start is the end if it fits to a ten millionth, and else there is none", () => {
  const alone = (start: number) =>
    curveFit(
      {
        target: column(1),
        valuesAt: ([a = 0]) => column(1, a === start ? a : Number.NaN),
        slopesAt: () => [column(1)],
      },
      [start],
    );
  expect(alone(0.5)).toBeUndefined();
  expect(alone(1 - 2e-7)).toBeUndefined();
  expect(alone(1 - 0.5e-7)?.parameters[0]).toBe(1);
});

test("readings that do not tell the parameters apart, or a start without values, give no answer", () => {
  const same = {
    target: column(1),
    valuesAt: ([a = 0, b = 0]: readonly number[]) => column(1, a + b),
    slopesAt: () => [column(1), column(1)],
  };
  expect(curveFit(same, [0, 0])).toBeUndefined();
  expect(curveFit(decay(column(0)), [Number.NaN, 1])).toBeUndefined();
});
