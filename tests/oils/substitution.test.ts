import { type OilProperties, type OilProperty, substitute } from "gelwright/oils";
import { expect, test } from "vitest";

const almond: OilProperties = {
  name: "almond oil",
  density: 915,
  viscosity: 0.07,
  refractiveIndex: 1.471,
  oxidisability: 3.2,
  naturalOrigin: 1,
  price: 14,
  allergens: [],
};
const orange: OilProperties = {
  name: "orange oil",
  density: 845,
  naturalOrigin: 1,
  price: 20,
  allergens: ["limonene"],
};
const squalane: OilProperties = { ...almond, name: "squalane", density: 810, oxidisability: 0, price: 30 };
const parts = [
  { mass: 3, oil: almond },
  { mass: 1, oil: squalane },
];
const row = (quantity: OilProperty, by: OilProperties) =>
  substitute({ parts, replaced: "almond oil", by, temperature: 20 }).rows.find((each) => each.quantity === quantity);

test("an oil in place of itself changes nothing", () => {
  const { rows, allergensGained, allergensLost } = substitute({
    parts,
    replaced: "almond oil",
    by: almond,
    temperature: 20,
  });
  const changes = rows.map(({ change }) => change).filter((change) => change !== undefined);
  expect(changes).toEqual(Array(6).fill(0));
  expect(allergensGained).toEqual([]);
  expect(allergensLost).toEqual([]);
});

test("the whole phase of one oil has the values of that oil", () => {
  expect(row("density", squalane)?.after).toBeCloseTo(810, 10);
  expect(row("oxidisability", squalane)?.after).toBe(0);
  expect(row("price", squalane)?.change).toBeCloseTo(12, 12);
});

test("what the new oil does not state has no figure after, and no change", () => {
  const viscosity = row("viscosity", orange);
  expect(viscosity?.before).toBeGreaterThan(0);
  expect(viscosity && "after" in viscosity).toBe(false);
  expect(viscosity && "change" in viscosity).toBe(false);
  expect(row("iodineValue", orange)).toMatchObject({ unit: "g/100 g" });
});

test("allergens that come in are named, and are not known where an oil does not state its own", () => {
  const table = substitute({ parts, replaced: "almond oil", by: orange, temperature: 20 });
  expect(table.allergensGained).toEqual(["limonene"]);
  const { allergens: _, ...silent } = orange;
  expect("allergensGained" in substitute({ parts, replaced: "almond oil", by: silent, temperature: 20 })).toBe(false);
});

test("the oil that goes must be there, once", () => {
  expect(() => substitute({ parts, replaced: "olive oil", by: orange, temperature: 20 })).toThrow(
    "an oil of the phase",
  );
  const twice = [...parts, { mass: 1, oil: almond }];
  expect(() => substitute({ parts: twice, replaced: "almond oil", by: orange, temperature: 20 })).toThrow(
    "each oil once",
  );
});
