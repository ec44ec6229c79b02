import {
  type CertifiedLine,
  certifiedShares,
  claimFigure,
  fragranceAllergens,
  ingredientList,
  periodAfterOpening,
} from "gelwright/labelling";
import { expect, test } from "vitest";

const oil = "physically processed agro-ingredient";
const lines: readonly CertifiedLine[] = [
  { name: "A", amount: "80 %", class: oil, organic: "100 %" },
  { name: "B", amount: "20 %", class: oil },
];
const asked = (...rows: readonly object[]) =>
  certifiedShares({
    lines,
    productType: "gel",
    table: { jurisdiction: "x", date: "2026-11-28", rows: rows as never },
  }).thresholds;
const organic = { productType: "gel", figure: "organic of product" } as const;

test("a range that ends at the threshold may still meet it, from either side", () => {
  // 80 to 100 %.
  expect(asked({ ...organic, min: "100 %" })[0]?.verdict).toBe("not-known");
  expect(asked({ ...organic, max: "80 %" })[0]?.verdict).toBe("not-known");
  expect(asked({ ...organic, max: "79.999 %" })[0]?.verdict).toBe("not-met");
});

test("each answer carries the ends that were asked, and no others", () => {
  expect(
    asked({ ...organic, min: "50 %" }, { ...organic, max: "100 %" }, { ...organic, min: "1 %", max: "2 %" }),
  ).toEqual([
    { figure: "organic of product", min: 0.5, verdict: "met" },
    { figure: "organic of product", max: 1, verdict: "met" },
    { figure: "organic of product", min: 0.01, max: 0.02, verdict: "not-met" },
  ]);
});

test("without a table no threshold is answered, and half a question is refused at what it lacks", () => {
  const { thresholds, table } = certifiedShares({ lines });
  expect([thresholds, table]).toEqual([[], undefined]);
  const rows = [{ ...organic, min: "50 %" }];
  expect(() => certifiedShares({ lines, productType: "gel" })).toThrow("table: found undefined");
  expect(() => certifiedShares({ lines, table: { jurisdiction: "x", date: "2026-11-28", rows } })).toThrow(
    "productType: found undefined",
  );
});

test("a figure that no standard has is refused in a table, also in a row for another product", () => {
  const row = { productType: "soap", figure: "organic of the label", min: "50 %" };
  expect(() => asked({ ...organic, min: "50 %" }, row)).toThrow("table.rows[1].figure");
});

test("of two changes that reach their limits together the first one stated is named", () => {
  const change = (cause: string) => ({ cause, initial: 0, max: 2, rate: 1e-7 });
  expect(periodAfterOpening({ changes: [change("water"), change("peroxides")] }).first?.cause).toBe("water");
});

test("what stands at a limit when the pack is opened has reached it, at either end", () => {
  const at = (initial: number) =>
    periodAfterOpening({ changes: [{ cause: "pH", initial, min: 5, max: 8, rate: 0 }] }).changes[0]?.status;
  expect([at(4.9), at(5), at(5.1), at(7.9), at(8), at(8.1)]).toEqual([
    ...["reached", "reached", "not-reached"],
    ...["not-reached", "reached", "reached"],
  ]);
  const only = (limits: object) =>
    periodAfterOpening({ changes: [{ cause: "pH", initial: 6, ...limits, rate: 1e-7 }] }).changes[0]?.status;
  expect([only({ min: 5 }), only({ max: 8 })]).toEqual(["not-reached", "reached"]);
  // Two limits that are one leave nothing between them.
  expect(only({ min: 6, max: 6 })).toBe("reached");
});

test("what the basis leaves out is not asked for, and a kind of line is water, salt or nothing", () => {
  const [base, water] = [
    { name: "Base", amount: "60 %", counts: "100 %" },
    { name: "Water", amount: "40 %", kind: "water" },
  ] as const;
  expect(claimFigure({ lines: [base, water], basis: "without water" })).toMatchObject({ percent: 100, notStated: [] });
  expect(claimFigure({ lines: [base, water], basis: "whole product" }).notStated).toEqual(["Water"]);
  expect(() => claimFigure({ lines: [base, { ...water, kind: "oil" as never }], basis: "whole product" })).toThrow(
    "lines[1].kind",
  );
});

test("masses with blanks around them are masses, and the line q.s. may stand anywhere", () => {
  const shares = (...amounts: readonly string[]) =>
    ingredientList({ lines: amounts.map((amount, i) => ({ name: `L${i}`, amount })) }).names;
  expect(shares(" 30 g ", "70 g")).toEqual(["L1", "L0"]);
  expect(shares("q.s.", "30 %")).toEqual(["L0", "L1"]);
  expect(shares("30 %", "q.s.")).toEqual(["L1", "L0"]);
  expect(() => shares("q.s.", "100 %")).toThrow('beside the line "q.s."');
  expect(() => shares("30 %", "60 %")).toThrow("exactly 100 %");
});

test("allergens that nobody states are reported by material, and others by substance, once each", () => {
  const table = { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "Linalool" }] };
  const fragrance = (name: string) => ({ name, amount: "1 %", allergens: [{ name: "Musk", amount: "1 %" }] });
  const found = fragranceAllergens({
    lines: [fragrance("F1"), fragrance("F2"), { name: "Wax", amount: "2 %" }, { name: "Oil", amount: "q.s." }],
    use: "rinse-off",
    table,
  });
  expect(found).toMatchObject({ toName: [], notAbove: [], notStated: ["Oil", "Wax"], notInTable: ["Musk"] });
});

test("what is not stated is reported in the order of the names", () => {
  const lines = ["Zinc", "Almond", "Mica"].map((name, i) => ({ name, amount: ["50 %", "30 %", "20 %"][i] ?? "" }));
  expect(claimFigure({ lines, basis: "whole product" }).notStated).toEqual(["Almond", "Mica", "Zinc"]);
});
