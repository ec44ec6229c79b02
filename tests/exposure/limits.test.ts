import { aggregateExposure, dailyExposure, ingredientLimits, massFractionForMargin } from "gelwright/exposure";
import { expect, test } from "vitest";

test("without a study there is a dose and no margin", () => {
  const lotion = { name: "lotion", exposurePerBodyWeight: 100, massFraction: 0.01, dermalAbsorption: 0.5 };
  const { dose, margin } = aggregateExposure({ products: [lotion] });
  expect(dose).toBeCloseTo(0.5, 12);
  expect(margin).toBeUndefined();
});

test("answers stand by name, whichever ingredient there is more of", () => {
  const table = { jurisdiction: "house rule", date: "2026-11-28", rows: [] };
  const ingredients = [
    { name: "Zinc Oxide", amount: "5 %" },
    { name: "Allantoin", amount: "0.2 %" },
    { name: "Menthol", amount: "1 %" },
  ];
  const { answers } = ingredientLimits({ ingredients, productType: "body lotion", table });
  expect(answers.map(({ name }) => name)).toEqual(["Allantoin", "Menthol", "Zinc Oxide"]);
});

test("a product that is all of the ingredient and just keeps the margin is limited by itself alone", () => {
  const asked = { pointOfDeparture: 100, bioavailability: 0.5, exposurePerBodyWeight: 1, dermalAbsorption: 0.5 };
  expect(massFractionForMargin({ ...asked, margin: 100 })).toMatchObject({
    massFractionMax: 1,
    limitedBy: "whole product",
  });
  expect(massFractionForMargin({ ...asked, margin: 200 })).toMatchObject({ massFractionMax: 0.5, limitedBy: "margin" });
});

test("a type of product is a text, not a list of one", () => {
  expect(() => dailyExposure({ productType: ["body lotion"] as never })).toThrow("one of shower gel");
});
