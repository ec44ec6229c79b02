import { CalculationError } from "gelwright/error";
import { dailyExposure, sccsDailyExposure, sccsDailyExposureFromMemory } from "gelwright/exposure";
import { expect, test } from "vitest";

test("a row comes back as it stands, with its edition, its grade and the caution", () => {
  for (const [productType, row] of Object.entries(sccsDailyExposure.rows))
    expect(dailyExposure({ productType })).toEqual({
      productType,
      ...row,
      edition: "SCCS/1647/22, Tables 3A and 3B",
      jurisdiction: "EU",
      date: "2023-05-15",
      caution: "qualified-assessor-decides",
    });
});

test("a row from memory is found only in the table that the caller passes", () => {
  expect(() => dailyExposure({ productType: "mascara" })).toThrow(/one of shower gel/);
  const row = dailyExposure({ productType: "mascara", table: sccsDailyExposureFromMemory });
  expect([row.exposurePerBodyWeight, row.grade]).toEqual([0.42, "from memory"]);
});

test("nothing is chosen for a product by its name", () => {
  for (const productType of ["Body Lotion", "gel", "body", "toString", "__proto__"])
    expect(() => dailyExposure({ productType })).toThrow(CalculationError);
});

test("a table of another place takes the place of the default", () => {
  const row = { ...sccsDailyExposure.rows["body lotion"], exposurePerBodyWeight: 100, grade: "first-hand" };
  const table = { edition: "own study", jurisdiction: "house", date: "2026-11-28", rows: { "body gel": row as never } };
  expect(dailyExposure({ productType: "body gel", table })).toMatchObject({
    edition: "own study",
    exposurePerBodyWeight: 100,
  });
  const ungraded = { ...table, rows: { "body gel": { ...(row as object), grade: "sure" } as never } };
  expect(() => dailyExposure({ productType: "body gel", table: ungraded })).toThrow(/grade/);
});
