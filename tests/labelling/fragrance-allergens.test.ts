import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { euAllergenThresholds, fragranceAllergens, type LabelLine } from "gelwright/labelling";
import { expect, test } from "vitest";
import { shuffled } from "./lines.js";

const table = {
  jurisdiction: "EU",
  date: "2026-11-28",
  substances: [
    { name: "Linalool" },
    { name: "Limonene" },
    { name: "Rose Ketones", members: ["alpha-Damascone", "Damascenone"] },
  ],
};
const oil: LabelLine = { name: "Oil", amount: "q.s.", allergens: [] };

/** Two fragrances that bring so many billionths of the product each. */
const fragrances = (left: number, right: number): readonly LabelLine[] =>
  [left, right].map((billionths, i) => ({
    name: `Fragrance ${i}`,
    amount: "1 %",
    allergens: [{ name: "Linalool", amount: `${billionths / 1e5} %` }],
  }));

test("a sum of exactly the threshold is not above it, and one digit more is", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9999 }), fc.constantFrom(-1, 0, 1), (first, more) => {
      const lines = [...fragrances(first, 10_000 - first + more), oil];
      const { toName, notAbove } = fragranceAllergens({ lines, use: "leave-on", table });
      expect([toName.length, notAbove.length]).toEqual(more > 0 ? [1, 0] : [0, 1]);
    }),
  );
});

test("0.001 % as the sum that doubles put above it is not named", () => {
  const lines: readonly LabelLine[] = [
    { name: "A", amount: "0.064 %", allergens: [{ name: "Linalool", amount: "1 %" }] },
    { name: "B", amount: "0.32 %", allergens: [{ name: "Linalool", amount: "0.1 %" }] },
    { name: "C", amount: "0.2 %", allergens: [{ name: "Linalool", amount: "0.02 %" }] },
    oil,
  ];
  expect(0.00064 + 0.00032 + 0.00004).toBeGreaterThan(0.001);
  expect(fragranceAllergens({ lines, use: "leave-on", table }).toName).toEqual([]);
});

test("what is named when rinsed off is named when left on", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 300_000 }), fc.integer({ min: 0, max: 300_000 }), (left, right) => {
      const lines = [...fragrances(left, right), oil];
      const named = (use: "leave-on" | "rinse-off") =>
        fragranceAllergens({ lines, use, table }).toName.map(({ name }) => name);
      expect(named("leave-on")).toEqual(expect.arrayContaining(named("rinse-off")));
    }),
  );
});

test("the order of the lines does not matter", () => {
  const lines = [...fragrances(20_000, 3), { name: "Limonene", amount: "0.02 %" }, oil];
  const expected = fragranceAllergens({ lines, use: "leave-on", table });
  fc.assert(
    fc.property(shuffled(lines), (others) => {
      expect(fragranceAllergens({ lines: others, use: "leave-on", table })).toEqual(expected);
    }),
  );
});

test("the members of a group are summed under its name", () => {
  const lines: readonly LabelLine[] = [
    {
      name: "Parfum",
      amount: "1 %",
      allergens: [
        { name: "Alpha-damascone", amount: "0.06 %" },
        { name: "Damascenone", amount: "0.05 %" },
      ],
    },
    oil,
  ];
  const { toName } = fragranceAllergens({ lines, use: "leave-on", table });
  expect(toName).toEqual([{ name: "Rose Ketones", share: 0.000011, sources: [{ name: "Parfum", share: 0.000011 }] }]);
});

test("a material that is itself on the list counts whole, and what else is in it is asked for", () => {
  const lines = [{ name: "limonene", amount: "0.5 %" }, oil];
  const { toName, notStated } = fragranceAllergens({ lines, use: "rinse-off", table });
  expect(toName.map(({ name, share }) => [name, share])).toEqual([["Limonene", 0.005]]);
  expect(notStated).toEqual(["limonene"]);
  const oils = [{ name: "Limonene", amount: "0.5 %", allergens: [{ name: "Linalool", amount: "3 %" }] }, oil];
  const both = fragranceAllergens({ lines: oils, use: "rinse-off", table });
  expect(both.toName.map(({ name, share }) => [name, share])).toEqual([
    ["Limonene", 0.005],
    ["Linalool", 0.00015],
  ]);
  expect(both.notStated).toEqual([]);
  const twice = [{ name: "Limonene", amount: "0.5 %", allergens: [{ name: "Limonene", amount: "95 %" }] }, oil];
  expect(() => fragranceAllergens({ lines: twice, use: "rinse-off", table })).toThrow(/counts whole/);
});

test("a statement that is taken away is reported, and never as free of allergens", () => {
  const [first] = fragrances(20_000, 1);
  const { allergens: _taken, ...silent } = first as LabelLine;
  const report = fragranceAllergens({ lines: [silent, oil], use: "leave-on", table });
  expect(report.toName).toEqual([]);
  expect(report.notStated).toEqual(["Fragrance 0"]);
  expect(fragranceAllergens({ lines: [first as LabelLine, oil], use: "leave-on", table }).notStated).toEqual([]);
});

test("a substance that the list does not name is reported, and never passed over", () => {
  const allergens = [
    { name: "d-Limonene", amount: "20 %" },
    { name: "Linalool", amount: "20 %" },
  ];
  const lines: readonly LabelLine[] = [{ name: "Parfum", amount: "1 %", allergens }, oil];
  const report = fragranceAllergens({ lines, use: "leave-on", table });
  expect(report.toName.map(({ name }) => name)).toEqual(["Linalool"]);
  expect(report.notInTable).toEqual(["d-Limonene"]);
  const substances = [{ name: "Limonene", members: ["d-Limonene"] }, { name: "Linalool" }];
  expect(fragranceAllergens({ lines, use: "leave-on", table: { ...table, substances } }).notInTable).toEqual([]);
});

test("parts of a premix bring their allergens by their share of the product", () => {
  const part: LabelLine = { name: "Parfum", amount: "10 %", allergens: [{ name: "Linalool", amount: "1 %" }] };
  const premix: LabelLine = { name: "base", amount: "20 %", parts: [part, { ...oil, amount: "q.s." }] };
  const { toName } = fragranceAllergens({ lines: [premix, oil], use: "leave-on", table });
  expect(toName[0]?.share).toBe(0.0002);
});

test("thresholds of another place take the place of the default", () => {
  const lines = [...fragrances(20_000, 1), oil];
  const stricter = { ...table, thresholds: { "leave-on": "0.01 %", "rinse-off": "0.1 %" } };
  const report = fragranceAllergens({ lines, use: "leave-on", table: stricter });
  expect([report.toName.length, report.threshold]).toEqual([0, 0.0001]);
});

test("the thresholds of the EU are the default for the EU and for no other place", () => {
  // Regulation (EU) 2023/1545, recitals, as announcements quote them: above 0.001 % left on, above 0.01 % rinsed off.
  expect(euAllergenThresholds).toEqual({ "leave-on": "0.001 %", "rinse-off": "0.01 %" });
  const of = (jurisdiction: string) => ({ lines: [oil], use: "leave-on", table: { ...table, jurisdiction } }) as const;
  expect(fragranceAllergens(of("eu")).threshold).toBe(0.00001);
  expect(() => fragranceAllergens(of("Elsewhere"))).toThrow(/the thresholds of Elsewhere/);
  const own = { ...table, jurisdiction: "Elsewhere", thresholds: euAllergenThresholds };
  expect(fragranceAllergens({ lines: [oil], use: "leave-on", table: own }).jurisdiction).toBe("Elsewhere");
});

test("a list that names a substance twice, or a use that is none, is refused", () => {
  const twice = { ...table, substances: [{ name: "Linalool" }, { name: "Other", members: ["LINALOOL"] }] };
  expect(() => fragranceAllergens({ lines: [oil], use: "leave-on", table: twice })).toThrow(CalculationError);
  expect(() => fragranceAllergens({ lines: [oil], use: "spray" as never, table })).toThrow(CalculationError);
  const undated = { ...table, date: "2026-02-29" };
  expect(() => fragranceAllergens({ lines: [oil], use: "leave-on", table: undated })).toThrow(/calendar/);
});
