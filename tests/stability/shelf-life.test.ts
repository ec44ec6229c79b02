import fc from "fast-check";
import { shelfLife } from "gelwright/stability";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const month = 2_629_800;
const ages = [0, 3, 6, 9, 12, 18];
const scatter = fc.array(between(-0.3, 0.3), { minLength: ages.length, maxLength: ages.length });
const lotOf = (name: string, start: number, slope: number, noise: readonly number[]) => ({
  name,
  readings: ages.map((age, i) => ({ time: age * month, value: start + slope * age + (noise[i] ?? 0) })),
});

test("a stricter limit or a higher confidence never lengthens the shelf life", () => {
  fc.assert(
    fc.property(scatter, scatter, between(-0.5, -0.1), between(0, 5), (one, other, slope, stricter) => {
      const lots = [lotOf("A", 100, slope, one), lotOf("B", 100.2, slope, other)];
      const life = (min: number, confidence: number) =>
        shelfLife({ lots, limits: { min }, confidence }).duration ?? Number.POSITIVE_INFINITY;
      expect(life(90 + stricter, 0.95)).toBeLessThanOrEqual(life(90, 0.95));
      expect(life(90, 0.99)).toBeLessThanOrEqual(life(90, 0.95));
      // With limits on both sides each of them counts two-sided.
      const both = shelfLife({ lots, limits: { min: 90, max: 110 } }).duration ?? Number.POSITIVE_INFINITY;
      expect(both).toBeLessThanOrEqual(life(90, 0.95));
    }),
  );
});

test("the unit of time, the order of the lots and a mirror of the values change nothing but their names", () => {
  fc.assert(
    fc.property(scatter, scatter, between(-0.5, -0.1), (one, other, slope) => {
      const lots = [lotOf("A", 100, slope, one), lotOf("B", 101, slope * 1.3, other)];
      const plain = shelfLife({ lots, limits: { min: 90 } });
      const inMonths = shelfLife({
        lots: lots.map((lot) => ({
          ...lot,
          readings: lot.readings.map(({ time, value }) => ({ time: time / month, value })),
        })),
        limits: { min: 90 },
      });
      const mirrored = shelfLife({
        lots: lots.map((lot) => ({
          ...lot,
          readings: lot.readings.map(({ time, value }) => ({ time, value: -value })),
        })),
        limits: { max: -90 },
      });
      const reversed = shelfLife({ lots: lots.slice().reverse(), limits: { min: 90 } });
      expect((inMonths.duration ?? 0) * month).toBeCloseTo(plain.duration ?? 0, 0);
      expect(mirrored.duration).toBeCloseTo(plain.duration ?? 0, 0);
      expect(reversed.duration).toBeCloseTo(plain.duration ?? 0, 0);
      expect([inMonths.model, mirrored.model, reversed.model]).toEqual([plain.model, plain.model, plain.model]);
      expect(reversed.lot === plain.lot || plain.model === "common line").toBe(true);
    }),
  );
});

test("at the shelf life the confidence limit stands at the specification, for a line that was worked out apart", () => {
  // Four readings with residuals +e, -e, -e, +e: s² = 4e²/2, the line is 100 − t exactly.
  const e = 0.5;
  const values = [100 + e, 99 - e, 98 - e, 97 + e];
  const lots = [{ name: "A", readings: values.map((value, time) => ({ time, value })) }];
  const t = 2.9199855803537; // one-sided 95 %, 2 degrees
  const duration = shelfLife({ lots, limits: { min: 90 } }).duration ?? 0;
  const half = t * Math.sqrt(2 * e * e) * Math.sqrt(1 / 4 + (duration - 1.5) ** 2 / 5);
  expect(100 - duration - half).toBeCloseTo(90, 8);
});

test("a value that moves away from its limit has no end, and one that starts beyond it has no shelf life", () => {
  const rising = [lotOf("A", 100, 0.5, [0.1, -0.1, 0.1, -0.1, 0.1, -0.1])];
  expect(shelfLife({ lots: rising, limits: { min: 90 } })).toMatchObject({ duration: null, extrapolated: true });
  expect(shelfLife({ lots: rising, limits: { min: 105 } }).duration).toBe(0);
});

test("lots of one line are pooled, lots side by side share a slope, and lots that part do not", () => {
  const noise = [0.1, -0.1, 0.05, -0.05, 0.1, -0.1];
  const model = (start: number, slope: number) =>
    shelfLife({
      lots: [lotOf("A", 100, -0.3, noise), lotOf("B", start, slope, noise.slice().reverse())],
      limits: { min: 90 },
    }).model;
  expect(model(100, -0.3)).toBe("common line");
  expect(model(104, -0.3)).toBe("common slope");
  expect(model(100, -0.6)).toBe("separate lines");
});

test("readings without any scatter are pooled only if they lie on one line", () => {
  const flat = [0, 0, 0, 0, 0, 0];
  const model = (start: number, slope: number) =>
    shelfLife({ lots: [lotOf("A", 100, -0.25, flat), lotOf("B", start, slope, flat)], limits: { min: 90 } }).model;
  expect(model(100, -0.25)).toBe("common line");
  expect(model(102, -0.25)).toBe("common slope");
  expect(model(100, -0.5)).toBe("separate lines");
});

test("too few readings, or all at one age, are refused", () => {
  const two = {
    name: "A",
    readings: [
      { time: 0, value: 100 },
      { time: month, value: 99 },
    ],
  };
  expect(() => shelfLife({ lots: [two], limits: { min: 90 } })).toThrow("lots: found 2 readings, expected 3 at least");
  const one = { name: "A", readings: [0, 0, 0].map((time) => ({ time, value: 100 })) };
  expect(() => shelfLife({ lots: [one], limits: { min: 90 } })).toThrow("readings at two times at least");
});
