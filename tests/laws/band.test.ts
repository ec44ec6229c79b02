import { readFileSync } from "node:fs";
import fc from "fast-check";
import { type Band, bandAround } from "gelwright/laws";
import { expect, test } from "vitest";
import { shippedBands } from "../support/bands.js";
import { between } from "../support/between.js";
import { root } from "../support/rooms.js";

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

test("every band that is shipped holds its figure and names sources that are in the bibliography", () => {
  const bibliography = JSON.parse(readFileSync(`${root}docs/bibliography.json`, "utf8"));
  expect(shippedBands.length).toBeGreaterThan(25);
  for (const [name, band] of shippedBands) {
    const { min, max } = bandAround({ value: 1, band });
    expect(max, name).toBeGreaterThan(min);
    for (const key of band.sources) expect(bibliography, name).toHaveProperty(key);
    if (band.basis !== "judgement") expect(band.sources.length, name).toBeGreaterThan(0);
  }
});

test("the page of bands shows every band with the ends that it has", () => {
  const page = readFileSync(`${root}docs/how-sure.md`, "utf8");
  const sign = (end: number) => (end > 0 ? `+${end}` : String(end).replace("-", "−"));
  const shown = ({ by, min, max }: Band) => (by === "factor" ? `× ${min} to ${max}` : `${sign(min)} to ${sign(max)}`);
  const missing = shippedBands.filter(
    ([name, band]) =>
      !page
        .split("\n")
        .some((line) => line.includes(`\`${name}\``) && line.includes(shown(band)) && line.includes(band.basis)),
  );
  expect(missing.map(([name, band]) => `${name}: ${shown(band)}, ${band.basis}`)).toEqual([]);
});
