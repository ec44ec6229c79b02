import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { ingredientLimits } from "gelwright/exposure";
import { expect, test } from "vitest";

const table = {
  jurisdiction: "house rule",
  date: "2026-11-28",
  rows: [
    { name: "Essential Oil", productType: "body lotion", max: "0.6 %" },
    { name: "Essential Oil", productType: "lip salve", max: "0.1 %" },
  ],
};
const statusOf = (amounts: readonly string[], productType = "body lotion") =>
  ingredientLimits({ ingredients: amounts.map((amount) => ({ name: "essential oil", amount })), productType, table })
    .answers[0]?.status;

test("a share of exactly the limit is within it, also as a sum, and one digit more is above", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 599 }), fc.constantFrom(-1, 0, 1), (first, more) => {
      const amounts = [first, 600 - first + more].map((thousandths) => `${thousandths / 1000} %`);
      expect(statusOf(amounts)).toBe(more > 0 ? "above" : "within");
    }),
  );
});

test("an ingredient that adds up to more than the product is refused", () => {
  expect(statusOf(["60 %", "40 %"])).toBe("above");
  expect(() => statusOf(["60 %", "40.1 %"])).toThrow(/100 % or less/);
});

test("limits are those of the type of product", () => {
  expect(statusOf(["0.5 %"])).toBe("within");
  expect(statusOf(["0.5 %"], "Lip Salve")).toBe("above");
  expect(statusOf(["0.5 %"], "shampoo")).toBe("no-row");
});

test("the order of the ingredients does not matter, and each has one answer", () => {
  const ingredients = ["B", "a", "C", "A"].map((name) => ({ name, amount: "1 %" }));
  const expected = ingredientLimits({ ingredients, productType: "body lotion", table });
  expect(expected.answers.map(({ name, share }) => [name, share])).toEqual([
    ["A", 0.02],
    ["B", 0.01],
    ["C", 0.01],
  ]);
  fc.assert(
    fc.property(fc.shuffledSubarray(ingredients, { minLength: 4 }), (others) => {
      expect(ingredientLimits({ ingredients: others, productType: "body lotion", table })).toEqual(expected);
    }),
  );
});

test("two rows for one ingredient and type of product are refused", () => {
  const rows = [...table.rows, { name: "essential  oil", productType: "Body lotion", max: "1 %" }];
  const ingredients = [{ name: "Oil", amount: "1 %" }];
  expect(() => ingredientLimits({ ingredients, productType: "body lotion", table: { ...table, rows } })).toThrow(
    CalculationError,
  );
});
