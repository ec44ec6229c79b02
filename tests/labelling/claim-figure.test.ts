import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { type ClaimLine, claimFigure } from "gelwright/labelling";
import { expect, test } from "vitest";

test("a whole percent is claimed as it is, though doubles would lose some of them", () => {
  expect(Math.floor(0.57 * 100)).toBe(56);
  for (let percent = 1; percent < 100; percent++) {
    const lines = [
      { name: "A", amount: `${percent} %`, counts: "100 %" },
      { name: "B", amount: "q.s.", counts: "0 %" },
    ];
    expect(claimFigure({ lines, basis: "whole product" }).percent).toBe(percent);
  }
});

test("the figure is rounded down, by less than one step", () => {
  const share = fc.integer({ min: 1, max: 9999 });
  fc.assert(
    fc.property(share, share, fc.integer({ min: 0, max: 6 }), (amount, counts, decimals) => {
      const lines = [
        { name: "A", amount: `${amount / 100} %`, counts: `${counts / 100} %` },
        { name: "B", amount: "q.s.", counts: "0 %" },
      ];
      const { percent, share: exact } = claimFigure({ lines, basis: "whole product", decimals });
      expect(percent).toBeLessThanOrEqual(exact.min * 100 * (1 + 1e-15));
      expect(percent + 10 ** -decimals).toBeGreaterThan(exact.min * 100 * (1 - 1e-15));
      expect(exact.min).toBeCloseTo((amount * counts) / 1e8, 14);
    }),
  );
});

test("what is not stated lowers the claim and widens the range", () => {
  const stated: readonly ClaimLine[] = [
    { name: "Oil", amount: "90 %", counts: "100 %" },
    { name: "Parfum", amount: "10 %", counts: "50 %" },
  ];
  const silent = stated.map(({ name, amount, counts }) =>
    name === "Parfum" ? { name, amount } : { name, amount, counts: counts ?? "" },
  );
  expect(claimFigure({ lines: stated, basis: "whole product" })).toMatchObject({ percent: 95, notStated: [] });
  expect(claimFigure({ lines: silent, basis: "whole product" })).toMatchObject({
    percent: 90,
    share: { min: 0.9, max: 1 },
    notStated: ["Parfum"],
  });
});

test("each basis leaves out what it says", () => {
  const lines: readonly ClaimLine[] = [
    { name: "Oil", amount: "40 %", counts: "100 %" },
    { name: "Wax", amount: "10 %", counts: "0 %" },
    { name: "Water", amount: "30 %", kind: "water", counts: "0 %" },
    { name: "Salt", amount: "20 %", kind: "salt", counts: "0 %" },
  ];
  const percent = (basis: "whole product" | "without water" | "without water and salt") =>
    claimFigure({ lines, basis }).percent;
  expect(percent("whole product")).toBe(40);
  expect(percent("without water")).toBe(57);
  expect(percent("without water and salt")).toBe(80);
});

test("a basis that leaves nothing, and one that is none, are refused", () => {
  const lines: readonly ClaimLine[] = [{ name: "Water", amount: "100 %", kind: "water" }];
  expect(() => claimFigure({ lines, basis: "without water" })).toThrow(/leave out/);
  expect(() => claimFigure({ lines, basis: "toString" as never })).toThrow(CalculationError);
  expect(() => claimFigure({ lines, basis: "whole product", decimals: 7 })).toThrow(CalculationError);
});
