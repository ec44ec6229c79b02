import {
  allowableVariationsHandbook133,
  type BatchTestTable,
  batchTestsEec1976,
  batchTestsEec1976Destructive,
  batchTestsHandbook133,
  batchTestsNewZealand1999,
  batchTestsOimlR87,
  batchTestsUk2006,
  correctionFactor,
  type ErrorTable,
  tolerableErrorsEec1976,
  tolerableErrorsNewZealand1999,
  tolerableErrorsOimlR87,
} from "gelwright/packing";
import { expect, test } from "vitest";

/** Rows as they were copied out of the act a second time: end of the row (- for none), and the error in g or %. */
const copied = (text: string) =>
  text
    .trim()
    .split("\n")
    .map((line) => {
      const [end = "", error = ""] = line.trim().split(" ");
      const nominalMax = end === "-" ? null : Number(end);
      return error.endsWith("%")
        ? { nominalMax, errorRelative: Number(`${error.slice(0, -1)}e-2`) }
        : { nominalMax, error: Number(error) };
    });

const european = `
50 9%
100 4.5
200 4.5%
300 9
500 3%
1000 15
10000 1.5%`;
const beyondTenKilograms = `
15000 150
- 1%`;
const handbook = `
36 10%
54 3.6
81 5.4
117 7.2
154 9.0
208 10.8
263 12.7
317 14.5
381 16.3
426 18.1
489 19.9
571 21.7
635 23.5
698 25.4
771 27.2
852 29.0
970 31.7
1120 35.3
1250 39.0
1450 42.6
1760 49.8
2130 54.4
2630 63.5
3080 68.0
3580 77.1
4260 86.1
5300 99.7
6480 113
8020 127
10520 140
14330 167
19230 199
24670 226
- 2%`;

test.each<[string, ErrorTable, string]>([
  ["the European directive", tolerableErrorsEec1976, european],
  ["New Zealand", tolerableErrorsNewZealand1999, european + beyondTenKilograms],
  ["the handbook of the United States", allowableVariationsHandbook133, handbook],
])("every cell of the errors of %s is that of a second copy", (_, table, text) => {
  expect(table.rows).toEqual(copied(text));
});

test("the international recommendation has the rows of New Zealand, and rounds to whole units above 1000", () => {
  const rounded = tolerableErrorsOimlR87.rows.map(({ roundUpTo = 0 }) => roundUpTo);
  expect(rounded).toEqual([0, 0, 0, 0, 0, 0, 1, 0, 1]);
  const plain = tolerableErrorsOimlR87.rows.map(({ roundUpTo: _, ...row }) => row);
  expect(plain).toEqual(copied(european + beyondTenKilograms));
});

test.each<[string, BatchTestTable, readonly (readonly number[])[]]>([
  // Packs from and to (0 for no end); first sample, accept, reject; second sample, accept of both; mean sample and factor × 1000.
  [
    "the European directive",
    batchTestsEec1976,
    [
      [100, 500, 30, 1, 3, 30, 4, 30, 503],
      [501, 3200, 50, 2, 5, 50, 6, 50, 379],
      [3201, 0, 80, 3, 7, 80, 8, 50, 379],
    ],
  ],
  ["the European directive, packs opened", batchTestsEec1976Destructive, [[100, 0, 20, 1, 0, 0, 0, 20, 640]]],
  [
    "the United Kingdom",
    batchTestsUk2006,
    [
      [100, 500, 50, 3, 0, 0, 0, 30, 503],
      [501, 3200, 80, 5, 0, 0, 0, 50, 379],
      [3201, 0, 125, 7, 0, 0, 0, 50, 379],
    ],
  ],
  [
    "New Zealand",
    batchTestsNewZealand1999,
    [
      ...Array.from({ length: 11 }, (_all, i) => [i + 2, i + 2, i + 2, 0, 0, 0, 0, i + 2, 0]),
      [13, 39, 12, 0, 0, 0, 0, 12, 746],
      [40, 79, 12, 1, 0, 0, 0, 12, 826],
      [80, 149, 12, 2, 0, 0, 0, 12, 860],
      [150, 399, 32, 3, 0, 0, 0, 32, 465],
      [400, 4000, 32, 4, 0, 0, 0, 32, 483],
      [4001, 0, 80, 6, 0, 0, 0, 80, 295],
    ],
  ],
  [
    "the international recommendation",
    batchTestsOimlR87,
    [
      [100, 500, 50, 3, 0, 0, 0, 50, 379],
      [501, 3200, 80, 5, 0, 0, 0, 80, 295],
      [3201, 0, 125, 7, 0, 0, 0, 125, 234],
    ],
  ],
  [
    "the handbook of the United States",
    batchTestsHandbook133,
    [
      ...Array.from({ length: 11 }, (_all, i) => [i + 1, i + 1, i + 1, 0, 0, 0, 0, i + 1, 0]),
      [12, 250, 12, 0, 0, 0, 0, 12, 635],
      [251, 3200, 24, 0, 0, 0, 0, 24, 422],
      [3201, 0, 48, 1, 0, 0, 0, 48, 291],
    ],
  ],
])("every cell of the tests of %s is that of a second copy", (_, table, rows) => {
  const shipped = table.rows.map(({ packsMin, packsMax, test: own }) => [
    packsMin,
    packsMax ?? 0,
    own.sampleSize,
    own.defectivesMax,
    own.second?.rejectedFrom ?? 0,
    own.second?.sampleSize ?? 0,
    own.second?.defectivesMax ?? 0,
    own.mean.sampleSize,
    Math.round(1000 * own.mean.factor),
  ]);
  expect(shipped).toEqual(rows);
});

test("the factors of European law are Student's t at 99.5 %, those of the handbook at 97.5 %, to the digits printed", () => {
  const factors = (tables: readonly BatchTestTable[], confidence: number) =>
    tables
      .flatMap(({ rows }) => rows.map(({ test: { mean } }) => mean))
      .filter(({ factor }) => factor > 0)
      .map(({ factor, sampleSize }) => [factor, correctionFactor({ sampleSize, confidence })]);
  const european = [batchTestsEec1976, batchTestsEec1976Destructive, batchTestsUk2006, batchTestsOimlR87];
  for (const [printed = 0, exact = 0] of factors(european, 0.995))
    expect(Math.abs(printed - exact)).toBeLessThan(0.0006);
  for (const [printed = 0, exact = 0] of factors([batchTestsHandbook133], 0.975))
    expect(Math.abs(printed - exact)).toBeLessThan(0.0012);
});

test("every table says where and when it holds and how it was read, and is from memory if a part of it was not read", () => {
  const tables = [
    tolerableErrorsEec1976,
    tolerableErrorsNewZealand1999,
    tolerableErrorsOimlR87,
    allowableVariationsHandbook133,
    batchTestsEec1976,
    batchTestsEec1976Destructive,
    batchTestsUk2006,
    batchTestsNewZealand1999,
    batchTestsOimlR87,
    batchTestsHandbook133,
  ];
  for (const { jurisdiction, act, date, source } of tables)
    expect([jurisdiction, act, date, source].every((text) => text.length > 0)).toBe(true);
  expect(tables.filter(({ grade }) => grade === "from memory").map(({ act }) => act)).toEqual([
    "NIST Handbook 133, Table 2-5, packages labeled by weight",
    "OIML R 87, Table 2",
    "NIST Handbook 133, Table 2-1, category A",
  ]);
});
