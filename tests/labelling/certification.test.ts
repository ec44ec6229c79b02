import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import {
  type CertifiedFigure,
  type CertifiedGoal,
  type CertifiedLine,
  certificationShortfalls,
  certifiedShares,
} from "gelwright/labelling";
import { expect, test } from "vitest";
import { sharesToHundred, shuffled } from "./lines.js";

const classes = [
  "physically processed agro-ingredient",
  "chemically processed agro-ingredient",
  "water",
  "mineral",
  "other",
] as const;
const goals: readonly CertifiedGoal[] = [
  "organic of product",
  "organic of physically processed",
  "organic of agro-ingredients",
  "natural origin of product",
];
const percent = fc.integer({ min: 0, max: 100 }).map((count) => `${count} %`);

/** A product with two lines of every class, wholly stated. */
const products: fc.Arbitrary<readonly CertifiedLine[]> = fc
  .tuple(sharesToHundred(10), fc.array(percent, { minLength: 20, maxLength: 20 }))
  .map(([amounts, shares]) =>
    amounts.map((amount, i): CertifiedLine => {
      const kind = classes[i % 5] ?? "other";
      return {
        name: `line ${i}`,
        amount,
        class: kind,
        ...(i % 5 < 2 && { organic: shares[i] ?? "0 %" }),
        ...(i % 5 === 1 && { petrochemical: shares[i + 10] ?? "0 %" }),
      };
    }),
  );

test("classes add up to the product, and bounds are equal where all is stated", () => {
  fc.assert(
    fc.property(products, (lines) => {
      const { classes: shares, figures } = certifiedShares({ lines });
      expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      for (const { min, max } of Object.values(figures)) expect(min).toBe(max);
      const at = (figure: CertifiedFigure) => figures[figure]?.min ?? Number.NaN;
      expect(
        at("natural origin of product") + at("petrochemical moieties of product") + at("other of product"),
      ).toBeCloseTo(1, 12);
      expect(at("organic of product")).toBeLessThanOrEqual(at("organic of agro-ingredients") + 1e-15);
    }),
  );
});

test("shortfalls add up to what the figure lacks, the largest first", () => {
  fc.assert(
    fc.property(products, fc.constantFrom(...goals), (lines, figure) => {
      const all = certificationShortfalls({ lines, figure });
      const sum = all.reduce((so, { max }) => so + max, 0);
      expect(sum).toBeCloseTo(1 - (certifiedShares({ lines }).figures[figure]?.min ?? Number.NaN), 12);
      expect(all.map(({ max }) => max)).toEqual(all.map(({ max }) => max).sort((a, b) => b - a));
    }),
  );
});

test("the order of the lines does not matter", () => {
  fc.assert(
    fc.property(
      products.chain((lines) => fc.tuple(fc.constant(lines), shuffled(lines), fc.constantFrom(...goals))),
      ([lines, others, figure]) => {
        expect(certifiedShares({ lines: others })).toEqual(certifiedShares({ lines }));
        expect(certificationShortfalls({ lines: others, figure })).toEqual(certificationShortfalls({ lines, figure }));
      },
    ),
  );
});

test("taking away a statement keeps the figure between the bounds and never answers a threshold anew", () => {
  fc.assert(
    fc.property(products, fc.nat(9), fc.constantFrom(...goals), percent, (lines, pick, figure, threshold) => {
      const less = lines.map((line, i) => {
        const { organic: _organic, petrochemical: _petrochemical, ...silent } = line;
        return i === pick ? silent : line;
      });
      const table = { jurisdiction: "x", date: "2026-11-28", rows: [{ productType: "gel", figure, min: threshold }] };
      const full = certifiedShares({ lines, productType: "gel", table });
      const part = certifiedShares({ lines: less, productType: "gel", table });
      const value = full.figures[figure]?.min ?? Number.NaN;
      expect(part.figures[figure]?.min).toBeLessThanOrEqual(value);
      expect(part.figures[figure]?.max).toBeGreaterThanOrEqual(value);
      expect([full.thresholds[0]?.verdict, "not-known"]).toContain(part.thresholds[0]?.verdict);
    }),
  );
});

test("a figure of exactly the threshold meets it from either side", () => {
  const lines: readonly CertifiedLine[] = [
    { name: "A", amount: "57 %", class: classes[0], organic: "100 %" },
    { name: "B", amount: "43 %", class: classes[0], organic: "0 %" },
  ];
  const status = (ends: { min?: string; max?: string }) =>
    certifiedShares({
      lines,
      productType: "gel",
      table: {
        jurisdiction: "x",
        date: "2026-11-28",
        rows: [{ productType: "Gel", figure: "organic of product", ...ends }],
      },
    }).thresholds[0]?.verdict;
  expect(status({ min: "57 %" })).toBe("met");
  expect(status({ min: "57.0000000000000000001 %" })).toBe("not-met");
  expect(status({ max: "57 %" })).toBe("met");
  expect(status({ max: "56.9999999999999999999 %" })).toBe("not-met");
  expect(status({ min: "50 %", max: "60 %" })).toBe("met");
});

test("an upper threshold that a range may or may not meet is not known, and one below the range is not met", () => {
  const lines: readonly CertifiedLine[] = [
    { name: "A", amount: "80 %", class: classes[0], organic: "100 %" },
    { name: "B", amount: "20 %", class: classes[1] },
  ];
  const status = (max: string) => {
    const rows = [{ productType: "gel", figure: "organic of product" as const, max }];
    return certifiedShares({ lines, productType: "gel", table: { jurisdiction: "x", date: "2026-11-28", rows } })
      .thresholds[0]?.verdict;
  };
  expect([status("79 %"), status("90 %"), status("100 %")]).toEqual(["not-met", "not-known", "met"]);
});

test("what may take the most stands first, and of equal ones what does so for certain", () => {
  const lines: readonly CertifiedLine[] = [
    { name: "A not stated", amount: "30 %", class: classes[0] },
    { name: "B stated", amount: "20 %", class: classes[0], organic: "0 %" },
    { name: "A2 not stated", amount: "20 %", class: classes[0] },
    { name: "C", amount: "30 %", class: classes[0], organic: "100 %" },
  ];
  const all = certificationShortfalls({ lines, figure: "organic of product" });
  expect(all.map(({ name, min, max }) => [name, min, max])).toEqual([
    ["A not stated", 0, 0.3],
    ["B stated", 0.2, 0.2],
    ["A2 not stated", 0, 0.2],
  ]);
});

test("a threshold of a class that the product has nothing of is not asked", () => {
  const lines: readonly CertifiedLine[] = [{ name: "Water", amount: "100 %", class: "water" }];
  const rows = [{ productType: "gel", figure: "organic of physically processed" as const, min: "95 %" }];
  const table = { jurisdiction: "x", date: "2026-11-28", rows };
  const answer = certifiedShares({ lines, productType: "gel", table });
  expect(answer.thresholds[0]?.verdict).toBe("not-asked");
  expect(answer.figures["organic of physically processed"]).toBeUndefined();
  expect(certificationShortfalls({ lines, figure: "organic of physically processed" })).toEqual([]);
});

test("contradictions and incomplete questions are refused", () => {
  const lines: readonly CertifiedLine[] = [{ name: "Water", amount: "100 %", class: "water" }];
  const table = { jurisdiction: "x", date: "2026-11-28", rows: [] };
  expect(() => certifiedShares({ lines: [{ ...lines[0], organic: "10 %" } as CertifiedLine] })).toThrow(
    /nothing in this class/,
  );
  expect(() => certifiedShares({ lines, productType: "gel" })).toThrow(CalculationError);
  expect(() => certifiedShares({ lines, table })).toThrow(CalculationError);
  expect(() => certifiedShares({ lines, productType: "gel", table })).toThrow(/a type of product that the table names/);
  const open = { ...table, rows: [{ productType: "gel", figure: "organic of product" as const }] };
  expect(() => certifiedShares({ lines, productType: "gel", table: open })).toThrow(/a min, a max or both/);
  expect(() => certificationShortfalls({ lines, figure: "other of product" as never })).toThrow(CalculationError);
});
