import fc from "fast-check";
import { type Band, bandAround } from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

test("a band of factors scales with its figure, one of differences moves with it, and both hold it", () => {
  const ends = { basis: "judgement", sources: [] } as const;
  fc.assert(
    fc.property(between(-1e6, 1e6), between(0.01, 1), between(1, 100), between(0.1, 10), (value, low, high, times) => {
      const band: Band = { by: "factor", min: low, max: high, ...ends };
      const { min, max } = bandAround({ value, band });
      expect(min).toBeLessThanOrEqual(value);
      expect(max).toBeGreaterThanOrEqual(value);
      const other = bandAround({ value: value * times, band });
      expect(other.max - other.min).toBeCloseTo(times * (max - min), 4);
      const shift: Band = { by: "difference", min: -low, max: high, ...ends };
      expect(bandAround({ value, band: shift })).toEqual({ min: value - low, value, max: value + high });
    }),
  );
});

test("a band that does not hold its own figure is refused", () => {
  const ends = { basis: "judgement", sources: [] } as const;
  const around = (band: Partial<Band>) =>
    bandAround({ value: 1, band: { by: "factor", min: 1, max: 1, ...ends, ...band } });
  expect(() => around({ min: 1.1 })).toThrow("above 0 and up to 1");
  expect(() => around({ min: 0 })).toThrow("above 0 and up to 1");
  expect(() => around({ max: 0.9 })).toThrow("1 or more");
  expect(() => around({ by: "difference", min: 0.1 })).toThrow("0 or less");
  expect(() => around({ by: "share" as never })).toThrow('"factor" or "difference"');
});
