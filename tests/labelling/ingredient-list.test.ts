import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { euIngredientOrder, ingredientList, type LabelLine } from "gelwright/labelling";
import { expect, test } from "vitest";
import { sharesToHundred, shuffled } from "./lines.js";

const names = ["Almond Oil", "Gel Former", "Tocopherol", "Parfum", "Mica", "CI 77891", "Gel Former"];

/** A formula with a premix, a name that comes twice, and colourants. */
const formulas = sharesToHundred(names.length).map((amounts) => {
  const lines: LabelLine[] = names.map((name, i) => ({
    name,
    amount: amounts[i] ?? "q.s.",
    colourant: name === "Mica" || name.startsWith("CI"),
  }));
  const parts = [
    { name: "Squalane", amount: "40 %" },
    { name: "Almond Oil", amount: "60 %" },
  ];
  return lines.map((line, i) => (i === 1 ? { ...line, name: "a premix", parts } : line));
});

test("the list does not depend on the order of the lines", () => {
  fc.assert(
    fc.property(
      formulas.chain((lines) => fc.tuple(fc.constant(lines), shuffled(lines))),
      ([lines, others]) => {
        expect(ingredientList({ lines: others })).toEqual(ingredientList({ lines }));
      },
    ),
  );
});

test("shares fall within each group, add up to the whole, and every name stands once", () => {
  fc.assert(
    fc.property(formulas, (lines) => {
      const list = ingredientList({ lines });
      const groups = [list.ordered, list.anyOrder, list.colourants];
      for (const group of groups)
        expect(group.map(({ share }) => share)).toEqual(group.map(({ share }) => share).sort((a, b) => b - a));
      expect(groups.flat().reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(new Set(list.names).size).toBe(list.names.length);
      expect([...list.names].sort()).toEqual([...new Set([...names, "Squalane"])].sort());
      for (const { share } of list.ordered) expect(share).toBeGreaterThanOrEqual(0.01);
      for (const { share } of list.anyOrder) expect(share).toBeLessThan(0.01);
    }),
  );
});

test("exactly 1 % stays in the ordered part, also as a sum that doubles miss", () => {
  const tenths = Array.from({ length: 10 }, () => ({ name: "Tocopherol", amount: "0.1 %" }));
  expect(tenths.reduce((sum) => sum + 0.1, 0)).not.toBe(1);
  const { ordered, anyOrder } = ingredientList({
    lines: [...tenths, { name: "Wax", amount: "0.99999999999999999999 %" }, { name: "Oil", amount: "q.s." }],
  });
  expect(ordered.map(({ name }) => name)).toEqual(["Oil", "Tocopherol"]);
  expect(anyOrder.map(({ name }) => name)).toEqual(["Wax"]);
});

test("another rule can put exactly 1 % among those of any order", () => {
  const lines = [
    { name: "Tocopherol", amount: "1 %" },
    { name: "Oil", amount: "q.s." },
  ];
  const rule = { jurisdiction: "elsewhere", date: "2026-11-28", orderedAbove: "1 %", exactly: "any order" as const };
  const list = ingredientList({ lines, rule });
  expect(list.anyOrder.map(({ name }) => name)).toEqual(["Tocopherol"]);
  expect([list.jurisdiction, list.date]).toEqual(["elsewhere", "2026-11-28"]);
  expect(ingredientList({ lines }).jurisdiction).toBe(euIngredientOrder.jurisdiction);
});

test("a premix at any depth is the same as its parts written out", () => {
  const inner = {
    name: "inner",
    amount: "25 %",
    parts: [
      { name: "A", amount: "1 g" },
      { name: "B", amount: "3 g" },
    ],
  };
  const nested = [
    { name: "outer", amount: "8 %", parts: [inner, { name: "A", amount: "75 %" }] },
    { name: "Oil", amount: "q.s." },
  ];
  const flat = [
    { name: "A", amount: "6.5 %" },
    { name: "B", amount: "1.5 %" },
    { name: "Oil", amount: "92 %" },
  ];
  expect(ingredientList({ lines: nested })).toEqual(ingredientList({ lines: flat }));
});

test("masses give the list of their shares", () => {
  const masses = ["0.5 kg", "1 lb", "12 g"];
  const list = ingredientList({ lines: masses.map((amount, i) => ({ name: `I${i}`, amount })) });
  const sum = 0.5 + 0.45359237 + 0.012;
  expect(list.names).toEqual(["I0", "I1", "I2"]);
  expect(list.ordered[1]?.share).toBeCloseTo(0.45359237 / sum, 15);
});

test("capitals and spaces tell no ingredients apart", () => {
  const lines = [
    { name: "Almond Oil", amount: "40 %" },
    { name: "almond  oil", amount: "20 %" },
    { name: "Squalane", amount: "40 %" },
  ];
  expect(ingredientList({ lines }).ordered).toEqual([
    { name: "Almond Oil", share: 0.6 },
    { name: "Squalane", share: 0.4 },
  ]);
});

test("a fragrance allergen above the threshold joins the list, unless it stands there already", () => {
  const table = { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "Linalool" }, { name: "Citral" }] };
  const fragrance = { name: "Parfum", amount: "1.5 %", allergens: [{ name: "linalool", amount: "2 %" }] };
  const lines = [fragrance, { name: "Oil", amount: "q.s." }];
  const list = ingredientList({ lines, allergens: { use: "leave-on", table } });
  expect(list.names).toEqual(["Oil", "Parfum", "Linalool"]);
  expect(list.allergens).toEqual({
    added: ["Linalool"],
    notStated: ["Oil"],
    notInTable: [],
    jurisdiction: "EU",
    date: "2026-11-28",
  });
  expect(list.anyOrder).toEqual([{ name: "Linalool", share: 0.0003 }]);

  const twice = [...lines, { name: "Linalool", amount: "0.2 %" }];
  const other = ingredientList({ lines: twice, allergens: { use: "leave-on", table } });
  expect(other.names).toEqual(["Oil", "Parfum", "Linalool"]);
  expect(other.anyOrder).toEqual([{ name: "Linalool", share: 0.002 }]);
  expect(other.allergens?.added).toEqual([]);
});

test("a fragrance allergen of exactly the threshold does not join the list", () => {
  const table = { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "Linalool" }] };
  const named = (amount: string) =>
    ingredientList({
      lines: [
        { name: "Parfum", amount: "1 %", allergens: [{ name: "Linalool", amount }] },
        { name: "Oil", amount: "q.s.", allergens: [] },
      ],
      allergens: { use: "leave-on", table },
    }).allergens?.added;
  expect(named("0.1 %")).toEqual([]);
  expect(named("0.10000000000000000001 %")).toEqual(["Linalool"]);
});

test("without a list of allergens nothing is said of them, and one without its place or date is refused", () => {
  const lines = [{ name: "Parfum", amount: "100 %" }];
  expect(ingredientList({ lines })).not.toHaveProperty("allergens");
  const table = { jurisdiction: "EU", date: "2026-11-28", substances: [{ name: "Linalool" }] };
  for (const field of ["jurisdiction", "date"] as const) {
    const { [field]: _taken, ...undated } = table;
    expect(() => ingredientList({ lines, allergens: { use: "leave-on", table: undated as never } })).toThrow(
      `allergens.table.${field}`,
    );
  }
});

test("the default rule of order is dated, and starts any order below 1 %", () => {
  // Regulation (EC) No 1223/2009, Article 19(1)(g), as restatements have it; its day, 30 November 2009, from memory.
  expect(euIngredientOrder).toEqual({
    jurisdiction: "EU",
    date: "2009-11-30",
    orderedAbove: "1 %",
    exactly: "ordered",
  });
  const { jurisdiction, date } = ingredientList({ lines: [{ name: "Oil", amount: "100 %" }] });
  expect([jurisdiction, date]).toEqual(["EU", "2009-11-30"]);
});

test("every spelling of a mass counts as one, and masses beside shares are refused as such", () => {
  const list = (amounts: readonly string[]) =>
    ingredientList({ lines: amounts.map((amount, i) => ({ name: `I${i}`, amount })) });
  expect(list(["500 \u03bcg", "500 ug", "1 \u00b5g"]).ordered[0]?.share).toBe(500 / 1001);
  expect(list(["1 US ton", "2000 lb"]).ordered.map(({ share }) => share)).toEqual([0.5, 0.5]);
  expect(() => list(["50 %", "50 g"])).toThrow(/a mass on every line/);
  expect(() => list(["q.s.", "50 g"])).toThrow(/a mass on every line/);
});

test("a letter with its accent is one letter, however it is written", () => {
  const lines = ["Karit\u00e9", "Karite\u0301"].map((name) => ({ name, amount: "50 %" }));
  expect(ingredientList({ lines }).names).toHaveLength(1);
});

test("what cannot be a formula is refused", () => {
  const refused: readonly (readonly LabelLine[])[] = [
    [],
    [{ name: "Oil", amount: "99.9 %" }],
    [{ name: "Oil", amount: "100.1 %" }],
    [{ name: "", amount: "100 %" }],
    [
      { name: "Oil", amount: "0 %" },
      { name: "Wax", amount: "q.s." },
    ],
    [
      { name: "Oil", amount: "q.s." },
      { name: "Wax", amount: "q.s." },
    ],
    [
      { name: "Oil", amount: "100 %" },
      { name: "Wax", amount: "q.s." },
    ],
    [
      { name: "Oil", amount: "50 %" },
      { name: "Wax", amount: "50 g" },
    ],
    [
      { name: "Mica", amount: "50 %", colourant: true },
      { name: "mica", amount: "50 %" },
    ],
    [{ name: "a premix", amount: "100 %", allergens: [], parts: [{ name: "Oil", amount: "100 %" }] }],
    [{ name: "a premix", amount: "100 %", colourant: true, parts: [{ name: "Oil", amount: "100 %" }] }],
    [{ name: "a premix", amount: "100 %", parts: [{ name: "Oil", amount: "90 %" }] }],
  ];
  for (const lines of refused) expect(() => ingredientList({ lines })).toThrow(CalculationError);
});
