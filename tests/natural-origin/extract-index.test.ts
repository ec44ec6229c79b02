import fc from "fast-check";
import { extractIndex, productContent } from "gelwright/natural-origin";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const mass = fc.oneof(fc.constant(0), fc.double({ min: 1e-3, max: 1e3, noNaN: true }));
const extraction = fc.record({
  plant: fc.record({
    mass: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
    organicShare: between(0, 1),
    freshPerDried: fc.double({ min: 1, max: 10, noNaN: true }),
  }),
  solvents: fc.record({ water: mass, natural: mass, organic: mass, derivedNatural: mass, derivedOrganic: mass }),
});

describe("an extract", () => {
  test("has indices that a product takes, and its water is either the plant's or solvent", () => {
    fc.assert(
      fc.property(extraction, ({ plant, solvents }) => {
        const { waterOfPlant, waterAsSolvent, ...indices } = extractIndex({ plant, solvents });
        expect(productContent({ ingredients: [{ mass: 1, ...indices }] }).organic.withFormulationWater.min).toBe(
          indices.organic,
        );
        expect(waterOfPlant + waterAsSolvent).toBeCloseTo(solvents.water, 9);
        expect(waterOfPlant).toBeLessThanOrEqual((plant.freshPerDried - 1) * plant.mass + 1e-9);
      }),
    );
  });

  test("of a wholly organic plant has the organic index that the standard's equation gives", () => {
    fc.assert(
      fc.property(extraction, ({ plant, solvents }) => {
        const extract = extractIndex({ plant: { ...plant, organicShare: 1 }, solvents });
        const { natural, organic, derivedNatural, derivedOrganic, water } = solvents;
        const total = plant.mass + water + natural + organic + derivedNatural + derivedOrganic;
        const notOrganic = extract.waterAsSolvent + natural + derivedNatural + derivedOrganic;
        expect(extract.organic).toBeCloseTo(1 - notOrganic / total, 12);
      }),
    );
  });

  test("does not ask on which scale it was made", () => {
    fc.assert(
      fc.property(extraction, ({ plant, solvents }) => {
        const doubled = Object.fromEntries(Object.entries(solvents).map(([key, value]) => [key, value * 2]));
        const one = extractIndex({ plant, solvents });
        const two = extractIndex({ plant: { ...plant, mass: plant.mass * 2 }, solvents: doubled });
        expect(two.organic).toBeCloseTo(one.organic, 12);
        expect(two.waterOfPlant).toBeCloseTo(2 * one.waterOfPlant, 9);
      }),
    );
  });

  test("of fresh organic plant in natural oil is natural throughout and organic by the plant", () => {
    const extract = extractIndex({ plant: { mass: 20, organicShare: 1 }, solvents: { natural: 80 } });
    expect(extract).toMatchObject({ natural: 1, naturalOrigin: 1, organic: 0.2, organicOrigin: 0.2, waterOfPlant: 0 });
  });

  test("of dried plant in too little water takes all of it back into the plant", () => {
    const extract = extractIndex({ plant: { mass: 10, organicShare: 1, freshPerDried: 4.5 }, solvents: { water: 20 } });
    expect(extract).toMatchObject({ organic: 1, waterOfPlant: 20, waterAsSolvent: 0 });
  });

  test("in derived solvents is of natural origin throughout and natural by the rest", () => {
    const extract = extractIndex({
      plant: { mass: 10, organicShare: 0.5 },
      solvents: { derivedNatural: 60, derivedOrganic: 30 },
    });
    expect(extract).toMatchObject({ natural: 0.1, naturalOrigin: 1, organic: 0.05, organicOrigin: 0.35 });
  });
});

test("dried plant that outweighs the fresh is refused", () => {
  expect(() => extractIndex({ plant: { mass: 1, organicShare: 1, freshPerDried: 0.2 }, solvents: {} })).toThrow(
    "plant.freshPerDried: found 0.2, expected 1 or more",
  );
});
