import { sccsDailyExposure, sccsDailyExposureFromMemory } from "gelwright/exposure";
import { expect, test } from "vitest";

/** Amount g/d, amount mg/(kg·d), part that stays on, exposure g/d, exposure mg/(kg·d). */
type Cells = readonly [number, number | undefined, number, number, number];

const cellsOf = (table: typeof sccsDailyExposure): Readonly<Record<string, Cells>> =>
  Object.fromEntries(
    Object.entries(table.rows).map(([type, row]) => [
      type,
      [row.amountPerDay, row.amountPerBodyWeight, row.retention, row.exposurePerDay, row.exposurePerBodyWeight],
    ]),
  );

test("the table of the 12th revision, cell by cell, as a restatement of it has them", () => {
  expect(cellsOf(sccsDailyExposure)).toEqual({
    "shower gel": [18.67, 279.2, 0.01, 0.19, 2.79],
    shampoo: [10.46, 150.49, 0.01, 0.11, 1.51],
    "hair styling": [4, 57.4, 0.1, 0.4, 5.74],
    "body lotion": [7.82, 123.2, 1, 7.82, 123.2],
    "face cream": [1.54, 24.14, 1, 1.54, 24.14],
    "hand cream": [2.16, 32.7, 1, 2.16, 32.7],
    "liquid foundation": [0.51, 7.9, 1, 0.51, 7.9],
    "lipstick, lip salve": [0.057, 0.9, 1, 0.057, 0.9],
    "deodorant, not sprayed": [1.5, 22.08, 1, 1.5, 22.08],
    "deodorant, sprayed": [0.69, 10, 1, 0.69, 10],
    "toothpaste, adult": [2.75, 43.29, 0.05, 0.138, 2.16],
    mouthwash: [21.62, 325.4, 0.1, 2.16, 32.54],
    "hair conditioner": [3.92, undefined, 0.01, 0.04, 0.67],
  });
});

test("both tables say which edition, of which place and day, they are of", () => {
  const { rows: _read, ...read } = sccsDailyExposure;
  const { rows: _remembered, ...remembered } = sccsDailyExposureFromMemory;
  // The day on which the 12th revision was adopted, from memory.
  const dated = { jurisdiction: "EU", date: "2023-05-15" };
  expect(read).toEqual({ edition: "SCCS/1647/22, Tables 3A and 3B", ...dated });
  expect(remembered).toEqual({ edition: "SCCS/1647/22, Table 3B, from memory", ...dated });
});

test("the rows that nobody has read say so, and are no part of the default", () => {
  expect(cellsOf(sccsDailyExposureFromMemory)).toEqual({
    "make-up remover": [5, undefined, 0.1, 0.5, 8.33],
    "eye shadow": [0.02, undefined, 1, 0.02, 0.33],
    mascara: [0.025, undefined, 1, 0.025, 0.42],
    eyeliner: [0.005, undefined, 1, 0.005, 0.08],
    "hand wash soap": [20, undefined, 0.01, 0.2, 3.33],
  });
  const grades = (table: typeof sccsDailyExposure) => new Set(Object.values(table.rows).map(({ grade }) => grade));
  expect(grades(sccsDailyExposureFromMemory)).toEqual(new Set(["from memory"]));
  expect(grades(sccsDailyExposure)).toEqual(new Set(["second-hand"]));
  for (const type of Object.keys(sccsDailyExposureFromMemory.rows))
    expect(Object.keys(sccsDailyExposure.rows)).not.toContain(type);
});

test("what stays on is what is applied times the part that stays on, within one step of the last digit", () => {
  for (const table of [sccsDailyExposure, sccsDailyExposureFromMemory])
    for (const [type, row] of Object.entries(table.rows)) {
      // Shampoo is printed as 0.11 g/d where the product is 0.105: the cells are rounded one by one.
      const step = Number.isInteger(row.exposurePerDay * 100) ? 0.01 : 0.001;
      expect(Math.abs(row.amountPerDay * row.retention - row.exposurePerDay), type).toBeLessThan(step);
      if (row.amountPerBodyWeight !== undefined)
        expect(Math.abs(row.amountPerBodyWeight * row.retention - row.exposurePerBodyWeight), type).toBeLessThan(
          0.0051,
        );
    }
});

test("the exposure by body weight is no quotient by one body weight", () => {
  const weights = Object.values(sccsDailyExposure.rows).map(
    (row) => (1000 * row.exposurePerDay) / row.exposurePerBodyWeight,
  );
  expect(Math.max(...weights) / Math.min(...weights)).toBeGreaterThan(1.1);
});
