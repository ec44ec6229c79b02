import fc from "fast-check";
import { productContent, shortfalls } from "gelwright/natural-origin";
import { expect, test } from "vitest";
import { indexNames, product } from "./arbitraries.js";

test("the shortfalls are what the figure lacks, at either bound", () => {
  fc.assert(
    fc.property(product, fc.constantFrom(...indexNames), ({ told }, content) => {
      const { min, max } = productContent({ ingredients: told })[content].withFormulationWater;
      const costs = shortfalls({ ingredients: told, content });
      expect(costs.reduce((sum, one) => sum + one.max, 0)).toBeCloseTo(1 - min, 12);
      expect(costs.reduce((sum, one) => sum + one.min, 0)).toBeCloseTo(1 - max, 12);
    }),
  );
});

test("the dearest ingredient stands first, with its name and its place in the formula", () => {
  const costs = shortfalls({
    ingredients: [
      { name: "almond oil", mass: 80, naturalOrigin: 1 },
      { name: "gel former", mass: 15, naturalOrigin: 0.8 },
      { mass: 4, naturalOrigin: 0 },
      { name: "fragrance", mass: 1 },
    ],
  });
  expect(costs.map(({ position }) => position)).toEqual([2, 1, 3]);
  expect(costs.map(({ name }) => name)).toEqual([undefined, "gel former", "fragrance"]);
  expect("name" in (costs[0] ?? {})).toBe(false);
  expect(costs[2]).toEqual({ position: 3, name: "fragrance", min: 0, max: 0.01 });
});

test("of two ingredients that may cost the same, the one that does so for certain stands first", () => {
  const costs = shortfalls({
    ingredients: [
      { name: "unknown", mass: 5 },
      { name: "mineral oil", mass: 5, naturalOrigin: 0 },
      { name: "almond oil", mass: 90, naturalOrigin: 1 },
    ],
  });
  expect(costs.map(({ name }) => name)).toEqual(["mineral oil", "unknown"]);
});

test("a figure of 1 has no shortfalls, and formulation water costs the organic figure", () => {
  const ingredients = [
    { name: "glycerin", mass: 3, naturalOrigin: 1, organic: 1 },
    { name: "water", mass: 1, formulationWater: true },
  ];
  expect(shortfalls({ ingredients })).toEqual([]);
  expect(shortfalls({ ingredients, content: "organic" })).toEqual([
    { position: 1, name: "water", min: 0.25, max: 0.25 },
  ]);
});

test("a figure that there is not is refused", () => {
  expect(() => shortfalls({ ingredients: [{ mass: 1 }], content: "vegan" as never })).toThrow(
    "content: found vegan, expected one of natural,naturalOrigin,organic,organicOrigin",
  );
});
