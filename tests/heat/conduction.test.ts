import { readFileSync } from "node:fs";
import fc from "fast-check";
import {
  type BiotNumber,
  type ConductionShape,
  conductionRoot,
  meanRelativeTemperature,
  relativeTemperature,
  temperatureAfterCooling,
} from "gelwright/heat";
import { expect, test } from "vitest";
import { earlyTemperature } from "../../src/heat/conduction-early.js";
import { lateTemperature } from "../../src/heat/conduction-history.js";
import { between } from "../support/between.js";

const shapes: readonly ConductionShape[] = ["slab", "cylinder", "sphere"];
const shape = fc.constantFrom(...shapes);
const biot: fc.Arbitrary<BiotNumber> = fc.oneof(
  between(-6, 6).map((power) => 10 ** power),
  fc.constant("infinite" as const),
);
const fourier = between(-6, 1).map((power) => 10 ** power);

function rowsOf<Row>(file: string): readonly Row[] {
  return (JSON.parse(readFileSync(new URL(file, import.meta.url), "utf8")) as { readonly values: readonly Row[] })
    .values;
}

type Place = number | "mean";
const leftAt = (shape: ConductionShape, biot: BiotNumber, fourier: number, place: Place): number =>
  place === "mean"
    ? meanRelativeTemperature({ shape, biot, fourier })
    : relativeTemperature({ shape, biot, fourier, position: place });

test("agrees to 1e-13 with numerical inversion of the Laplace transform by mpmath, which knows no root and no series", () => {
  const rows = rowsOf<[ConductionShape, BiotNumber, number, Place, number]>("./conduction.json");
  expect(rows.length).toBeGreaterThan(200);
  for (const [shape, biot, fourier, place, value] of rows)
    expect(Math.abs(leftAt(shape, biot, fourier, place) - value)).toBeLessThan(1e-13);
});

test("a slab that has just begun to cool is the semi-infinite solid, in erfc by mpmath, to 1e-12", () => {
  for (const [biot, fourier, position, value] of rowsOf<[number, number, number, number]>("./conduction-early.json"))
    expect(Math.abs(relativeTemperature({ shape: "slab", biot, fourier, position }) - value)).toBeLessThan(1e-12);
});

test("series and early solution agree to 1e-11 where they overlap", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 2 }),
      biot,
      between(-4, -2.7),
      fc.oneof(between(0, 1), fc.constant("mean" as const)),
      (bend, biot, power, place) => {
        const number = biot === "infinite" ? Number.POSITIVE_INFINITY : biot;
        const early = earlyTemperature(bend, number, place, 10 ** power);
        expect(Math.abs(early - lateTemperature(bend, number, place)(10 ** power))).toBeLessThan(1e-11);
      },
    ),
  );
});

test("a small Biot number gives the lumped law: one temperature throughout, an exponential in time", () => {
  for (const [bend, shape] of shapes.entries())
    for (const biot of [1e-9, 1e-7, 1e-5])
      for (const constants of [0.01, 0.5, 3]) {
        // Surface over volume is (1 + bend) over the half dimension.
        const fourier = constants / ((1 + bend) * biot);
        const lumped = temperatureAfterCooling({
          heatCapacity: 1,
          conductance: (1 + bend) * biot,
          temperatureAmbient: 0,
          temperatureStart: 1,
          duration: fourier,
        });
        for (const place of [0, 0.5, 1, "mean"] as const)
          expect(Math.abs(leftAt(shape, biot, fourier, place) - lumped)).toBeLessThan(biot);
      }
});

test("a large Biot number comes to the surface that is held", () => {
  fc.assert(
    fc.property(shape, fourier, between(0, 0.9), (shape, fourier, position) => {
      const held = relativeTemperature({ shape, biot: "infinite", fourier, position });
      const nearly = relativeTemperature({ shape, biot: 1e9, fourier, position });
      expect(Math.abs(held - nearly)).toBeLessThan(1e-6);
      expect(relativeTemperature({ shape, biot: "infinite", fourier, position: 1 })).toBe(0);
    }),
  );
});

test("it cools with time, from the outside in, and the mean lies between surface and centre", () => {
  fc.assert(
    fc.property(shape, biot, fourier, between(1.01, 3), between(0, 1), (shape, biot, fourier, later, position) => {
      const here = relativeTemperature({ shape, biot, fourier, position });
      expect(relativeTemperature({ shape, biot, fourier: later * fourier, position })).toBeLessThanOrEqual(
        here + 1e-12,
      );
      const centre = relativeTemperature({ shape, biot, fourier });
      const surface = relativeTemperature({ shape, biot, fourier, position: 1 });
      const mean = meanRelativeTemperature({ shape, biot, fourier });
      expect(here).toBeLessThanOrEqual(centre + 1e-12);
      expect(here).toBeGreaterThanOrEqual(surface - 1e-12);
      expect(mean).toBeLessThanOrEqual(centre + 1e-12);
      expect(mean).toBeGreaterThanOrEqual(surface - 1e-12);
    }),
  );
});

test("what the mean loses has passed the surface: d mean/d Fo = −(m + 1) Bi × surface", () => {
  fc.assert(
    fc.property(fc.constantFrom(0, 1, 2), between(0.05, 50), between(0.01, 1), (bend, biot, fourier) => {
      const shape = shapes[bend] ?? "slab";
      const mean = (at: number) => meanRelativeTemperature({ shape, biot, fourier: at });
      // Five-point difference: its error is the fifth derivative times step⁴/30.
      const step = 1e-3 * fourier;
      const rate =
        (8 * (mean(fourier + step) - mean(fourier - step)) - mean(fourier + 2 * step) + mean(fourier - 2 * step)) /
        (12 * step);
      const flow = (bend + 1) * biot * relativeTemperature({ shape, biot, fourier, position: 1 });
      expect(Math.abs(rate + flow)).toBeLessThan(1e-8 * (1 + flow));
    }),
  );
});

test("the start is 1 throughout: a coefficient is the mean of its wave over the mean of the wave's square", () => {
  for (const [bend, shape] of shapes.entries())
    for (const biot of [0.01, 0.7, 1, 25])
      for (const order of [1, 2, 3, 4]) {
        const { root, coefficient } = conductionRoot({ shape, biot, order });
        // Midpoint rule: its error is of the order of (root / points)².
        const points = 4000;
        let mean = 0;
        let square = 0;
        for (let k = 0; k < points; k += 1) {
          const x = (k + 0.5) / points;
          const height = waveOf(shape, root * x);
          mean += (height * x ** bend) / points;
          square += (height * height * x ** bend) / points;
        }
        expect(Math.abs(coefficient * square - mean)).toBeLessThan(1e-5 * square);
      }
});

/** The standing wave, J0 by its power series. */
function waveOf(shape: ConductionShape, x: number): number {
  if (shape === "slab") return Math.cos(x);
  if (shape === "sphere") return Math.sin(x) / x;
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 40; k += 1) {
    term *= (-x * x) / (4 * k * k);
    sum += term;
  }
  return sum;
}

test("held at the surface, the roots are those of cos, J0 and sin", () => {
  // The zeros of J0 are tabled, here from mpmath 1.3.0, mpmath.besseljzero(0, n).
  const zeros = [2.404825557695773, 5.520078110286311, 8.653727912911013];
  zeros.forEach((zero, k) => {
    const rootOf = (shape: ConductionShape) => conductionRoot({ shape, biot: "infinite", order: k + 1 }).root;
    expect(rootOf("slab")).toBeCloseTo((k + 0.5) * Math.PI, 13);
    expect(rootOf("cylinder")).toBeCloseTo(zero, 13);
    expect(rootOf("sphere")).toBeCloseTo((k + 1) * Math.PI, 13);
  });
});

test("the one-term approximation is within 2 % of the centre from Fo = 0.2 on", () => {
  fc.assert(
    fc.property(shape, biot, between(0.2, 2), (shape, biot, fourier) => {
      const { root, coefficient } = conductionRoot({ shape, biot });
      const one = coefficient * Math.exp(-root * root * fourier);
      expect(Math.abs(one / relativeTemperature({ shape, biot, fourier }) - 1)).toBeLessThan(0.02);
    }),
  );
});

test("nothing has happened at the start; an unknown shape, a number outside and a place outside are refused", () => {
  for (const shape of shapes) {
    expect(relativeTemperature({ shape, biot: 2, fourier: 0, position: 1 })).toBe(1);
    expect(meanRelativeTemperature({ shape, biot: "infinite", fourier: 0 })).toBe(1);
  }
  const wall = { shape: "slab", biot: 1, fourier: 1 } as const;
  expect(() => relativeTemperature({ ...wall, shape: "cube" as never })).toThrow('"slab", "cylinder" or "sphere"');
  expect(() => relativeTemperature({ ...wall, biot: Number.POSITIVE_INFINITY })).toThrow('(or "infinite")');
  expect(() => relativeTemperature({ ...wall, position: 1.01 })).toThrow("position");
  expect(() => conductionRoot({ shape: "slab", biot: 1, order: 1.5 })).toThrow("a whole number from 1 to 1000000");
});
