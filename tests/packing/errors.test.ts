import fc from "fast-check";
import {
  allPacksTest,
  batchTestFor,
  batchTestsEec1976,
  batchTestsHandbook133,
  tolerableError,
  tolerableErrorsEec1976,
  tolerableErrorsNewZealand1999,
  tolerableErrorsOimlR87,
} from "gelwright/packing";
import { expect, test } from "vitest";

const tables = [tolerableErrorsEec1976, tolerableErrorsNewZealand1999, tolerableErrorsOimlR87];

test("a larger pack never has a smaller tolerable error, and never a larger share of itself", () => {
  const grams = fc.double({ min: 5, max: 10_000, noNaN: true });
  fc.assert(
    fc.property(grams, grams, fc.constantFrom(...tables), (one, other, table) => {
      const [small, large] = [Math.min(one, other), Math.max(one, other)];
      const error = (of: number) => 1000 * tolerableError({ table, nominal: of / 1000, by: "mass" }).error;
      expect(error(large)).toBeGreaterThanOrEqual(error(small) - 1e-9);
      // Rounding up adds a step at most.
      const step = table === tolerableErrorsOimlR87 ? 1 : 0.1;
      expect(error(large) / large).toBeLessThanOrEqual((error(small) + step) / small + 1e-9);
    }),
  );
});

test("grams and millilitres have the same error", () => {
  fc.assert(
    fc.property(fc.integer({ min: 50, max: 100_000 }), (tenths) => {
      const by = (unit: "mass" | "volume", scale: number) =>
        tolerableError({ table: tolerableErrorsEec1976, nominal: tenths / scale, by: unit }).error;
      expect(by("volume", 1e7) * 1000).toBeCloseTo(by("mass", 1e4), 12);
    }),
  );
});

test("the rows in per cent are rounded up to a tenth, and a figure that is on a tenth stays", () => {
  const error = (nominal: number) => tolerableError({ table: tolerableErrorsEec1976, nominal, by: "mass" }).error;
  expect(error(0.15)).toBe(0.0068);
  expect(error(0.03)).toBe(0.0027);
  expect(error(0.0301)).toBe(0.0028);
  const international = tolerableError({ table: tolerableErrorsOimlR87, nominal: 1.23, by: "mass" });
  expect(international.error).toBe(0.019);
  const unrounded = tolerableError({ table: tolerableErrorsNewZealand1999, nominal: 0.15, by: "mass" });
  expect(unrounded).toMatchObject({ error: 0.00675, grade: "first-hand" });
});

test("what lies outside a table is refused with the name of the act", () => {
  const at = (nominal: number) => tolerableError({ table: tolerableErrorsEec1976, nominal, by: "mass" });
  expect(() => at(0.004)).toThrow("a quantity within Directive 76/211/EEC, Annex I 2.4");
  expect(() => at(10.5)).toThrow("a quantity within Directive 76/211/EEC, Annex I 2.4");
});

test("a batch takes the row that it falls in, and one that is too small takes none", () => {
  const size = (packs: number) => batchTestFor({ table: batchTestsEec1976, packs }).sampleSize;
  expect([100, 500, 501, 3200, 3201, 1e6].map(size)).toEqual([30, 30, 50, 50, 80, 80]);
  expect(() => size(99)).toThrow("small ones are tested pack by pack");
  expect(batchTestFor({ table: batchTestsHandbook133, packs: 12 }).defectivesMax).toBe(0);
});

test("of a small batch all packs are measured, and one in twenty of them may be short", () => {
  const size = (packs: number) => allPacksTest({ packs, shareDefectiveMax: 0.05 });
  expect(size(60)).toEqual({
    sampleSize: 60,
    defectivesMax: 3,
    mean: { sampleSize: 60, factor: 0 },
    noneBeyondTwo: false,
  });
  expect([19, 20, 99].map((packs) => size(packs).defectivesMax)).toEqual([0, 1, 4]);
});

test("a table of the caller's own needs no more than the rows of the law", () => {
  const table = {
    jurisdiction: "elsewhere",
    act: "Decree 7, table A",
    date: "2024-05-01",
    grade: "first-hand",
    source: "read in the gazette",
    nominalMin: 1,
    rows: [
      { nominalMax: 100, errorRelative: 0.05 },
      { nominalMax: null, error: 5 },
    ],
  } as const;
  expect(tolerableError({ table, nominal: 0.04, by: "mass" })).toEqual({
    error: 0.002,
    act: "Decree 7, table A",
    grade: "first-hand",
  });
});
