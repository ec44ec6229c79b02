import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { type IndexName, type Ingredient, largestShare, productContent } from "gelwright/natural-origin";
import { describe, expect, test } from "vitest";
import { indexNames, product } from "./arbitraries.js";

interface Question {
  readonly ingredients: readonly Ingredient[];
  readonly ingredient: string;
  readonly replacing?: string;
  readonly claim: number;
  readonly content: IndexName;
}

/** The least figure of the product with the ingredient at some share, remade line by line. */
function figureAt({ ingredients, ingredient, replacing, content }: Question, share: number): number {
  const total = ingredients.reduce((sum, line) => sum + line.mass, 0);
  const massOf = (name: string | undefined) => ingredients.find((line) => line.name === name)?.mass ?? 0;
  const mass = (line: Ingredient): number => {
    if (line.name === ingredient) return share * total;
    if (replacing === undefined) return (line.mass * (1 - share) * total) / (total - massOf(ingredient));
    if (line.name !== replacing) return line.mass;
    return Math.max(massOf(ingredient) + massOf(replacing) - share * total, 0);
  };
  const remade = ingredients.map((line) => ({ ...line, mass: mass(line) }));
  return productContent({ ingredients: remade })[content].withFormulationWater.min;
}

function roomOf({ ingredients, ingredient, replacing }: Question): number {
  if (replacing === undefined) return 1;
  const share = (names: readonly (string | undefined)[]) =>
    ingredients.reduce((sum, line) => sum + (names.includes(line.name) ? line.mass : 0), 0);
  return share([ingredient, replacing]) / share(ingredients.map((line) => line.name));
}

/** A question whose claim lies near what the product can reach: below it, inside it or above it. */
const question: fc.Arbitrary<Question> = fc
  .record({
    made: product.filter(({ told }) => told.length > 1),
    between: fc.integer({ min: -50, max: 150 }).map((percent) => percent / 100),
    content: fc.constantFrom(...indexNames),
    swap: fc.boolean(),
  })
  .map(({ made: { told }, between, content, swap }) => {
    const asked = {
      ingredients: told,
      ingredient: "ingredient 0",
      ...(swap && { replacing: "ingredient 1" }),
      content,
      claim: 0,
    };
    const none = figureAt(asked, 0);
    return { ...asked, claim: none + between * (figureAt(asked, roomOf(asked)) - none) };
  })
  .filter(({ claim }) => claim >= 0 && claim <= 1);

describe("the most of an ingredient", () => {
  test("keeps the claim, and a bit more of it does not", () => {
    let limited = 0;
    let free = 0;
    let unreachable = 0;
    fc.assert(
      fc.property(question, (asked) => {
        const room = roomOf(asked);
        try {
          const { share, limitedBy } = largestShare(asked);
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(room + 1e-15);
          expect(figureAt(asked, share)).toBeGreaterThanOrEqual(asked.claim - 1e-9);
          if (limitedBy === "claim") {
            limited += 1;
            const more = share + (room - share) / 2;
            expect(figureAt(asked, share)).toBeLessThanOrEqual(asked.claim + 1e-9);
            if (more - share > 1e-6) expect(figureAt(asked, more)).toBeLessThan(asked.claim);
          } else {
            free += 1;
            expect(share).toBeCloseTo(room, 12);
          }
        } catch (error) {
          if (!(error instanceof CalculationError)) throw error;
          unreachable += 1;
          expect(error.code).toBe("unreachable");
          for (const part of [0, 0.25, 0.5, 0.75, 1]) expect(figureAt(asked, part * room)).toBeLessThan(asked.claim);
        }
      }),
    );
    expect(Math.min(limited, free, unreachable)).toBeGreaterThan(20);
  });

  test("is told for a half synthetic gel former that may take the place of one oil only", () => {
    const ingredients = [
      { name: "almond oil", mass: 60, naturalOrigin: 1 },
      { name: "ester", mass: 30, naturalOrigin: 0.84 },
      { name: "gel former", mass: 10, naturalOrigin: 0.6 },
    ];
    const asked = { ingredients, ingredient: "gel former", replacing: "ester", claim: 0.88 };
    // 0.6 + 0.84 (0.4 - x) + 0.6 x = 0.88, so x = 0.056 / 0.24
    expect(largestShare(asked).share).toBeCloseTo(0.056 / 0.24, 12);
    expect(largestShare({ ...asked, claim: 0.8 })).toEqual({ share: 0.4, limitedBy: "nothing left to replace" });
  });

  test("has no limit where the ingredient itself meets the claim", () => {
    const ingredients = [
      { name: "mineral oil", mass: 50, naturalOrigin: 0 },
      { name: "almond oil", mass: 50, naturalOrigin: 1 },
    ];
    expect(largestShare({ ingredients, ingredient: "almond oil", claim: 0.95 })).toEqual({
      share: 1,
      limitedBy: "nothing left to replace",
    });
  });

  test("is reckoned by the least that an unknown index can be", () => {
    const ingredients = [
      { name: "almond oil", mass: 99, naturalOrigin: 1 },
      { name: "fragrance", mass: 1 },
    ];
    expect(largestShare({ ingredients, ingredient: "fragrance", claim: 0.95 }).share).toBeCloseTo(0.05, 12);
  });

  test("may be asked of an ingredient that is not in the product yet", () => {
    const ingredients = [
      { name: "almond oil", mass: 1, naturalOrigin: 1 },
      { name: "polymer", mass: 0, naturalOrigin: 0 },
    ];
    expect(largestShare({ ingredients, ingredient: "polymer", claim: 0.75 })).toEqual({
      share: 0.25,
      limitedBy: "claim",
    });
  });

  test("is none where the claim is the figure without it, though doubles make that figure fall short", () => {
    const ingredients = [
      { name: "one", mass: 1, naturalOrigin: 0.1 },
      { name: "two", mass: 1, naturalOrigin: 0.2 },
      { name: "three", mass: 1, naturalOrigin: 0.6 },
      { name: "polymer", mass: 1, naturalOrigin: 0 },
    ];
    const { share } = largestShare({ ingredients, ingredient: "polymer", claim: 0.3 });
    expect(share).toBeGreaterThanOrEqual(0);
    expect(share).toBeLessThan(1e-12);
  });
});

describe("what is refused", () => {
  const ingredients = [
    { name: "almond oil", mass: 50, naturalOrigin: 0.9 },
    { name: "polymer", mass: 50, naturalOrigin: 0.5 },
    { name: "wax", mass: 0, naturalOrigin: 1 },
    { name: "wax", mass: 0, naturalOrigin: 0 },
    { mass: 0 },
  ];
  test.each([
    [{ ingredient: "polymer", claim: 0.95 }, "unreachable", "claim: found 0.95, expected at most 0.9"],
    [
      { ingredient: "polymer", replacing: "almond oil", claim: 0.95 },
      "unreachable",
      "claim: found 0.95, expected at most 0.9",
    ],
    [{ ingredient: "resin", claim: 0.5 }, "input", "ingredient: found resin, expected one ingredient's name"],
    [{ ingredient: "wax", claim: 0.5 }, "input", "ingredient: found wax, expected one ingredient's name"],
    [{ ingredient: "polymer", replacing: "polymer", claim: 0.5 }, "input", "replacing: found polymer, expected one"],
    [{ ingredient: undefined as never, claim: 0.5 }, "input", "ingredient: found undefined, expected one"],
    [{ ingredient: "polymer", claim: 95 }, "input", "claim: found 95, expected a fraction from 0 to 1"],
  ])("%o", (asked, code, message) => {
    expect(() => largestShare({ ingredients, ...asked })).toThrow(
      expect.objectContaining({ code, message: expect.stringContaining(message) }),
    );
  });

  test("an ingredient that has nothing beside it", () => {
    expect(() => largestShare({ ingredients: ingredients.slice(1, 3), ingredient: "polymer", claim: 0.5 })).toThrow(
      "others: found 0, expected a mass above 0",
    );
  });
});
