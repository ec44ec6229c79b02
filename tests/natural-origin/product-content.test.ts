import fc from "fast-check";
import { type Content, type Ingredient, productContent } from "gelwright/natural-origin";
import { describe, expect, test } from "vitest";
import { indexNames, product } from "./arbitraries.js";

const figures = (ingredients: readonly Ingredient[]): Content[] => Object.values(productContent({ ingredients }));

/** Every bound of every figure in one list, to compare two products by. */
const numbers = (ingredients: readonly Ingredient[]): number[] =>
  figures(ingredients).flatMap(({ withFormulationWater, withoutFormulationWater = { min: -1, max: -1 } }) => [
    withFormulationWater.min,
    withFormulationWater.max,
    withoutFormulationWater.min,
    withoutFormulationWater.max,
  ]);

function expectSame(one: readonly Ingredient[], other: readonly Ingredient[]): void {
  const expected = numbers(other);
  for (const [i, number] of numbers(one).entries()) expect(number).toBeCloseTo(expected[i] ?? Number.NaN, 12);
}

describe("what a supplier has not said", () => {
  test("makes bounds that hold the figure, whatever the answer turns out to be", () => {
    fc.assert(
      fc.property(product, ({ truth, told }) => {
        const actual = productContent({ ingredients: truth });
        const known = productContent({ ingredients: told });
        for (const name of indexNames)
          for (const water of ["withFormulationWater", "withoutFormulationWater"] as const) {
            const figure = actual[name][water];
            const bounds = known[name][water];
            expect(bounds === undefined).toBe(figure === undefined);
            if (!figure || !bounds) continue;
            expect(figure.min).toBe(figure.max);
            expect(figure.min).toBeGreaterThanOrEqual(bounds.min - 1e-12);
            expect(figure.min).toBeLessThanOrEqual(bounds.max + 1e-12);
          }
      }),
    );
  });

  test("leaves no room beyond what could still be true: either bound may be the answer", () => {
    fc.assert(
      fc.property(product, ({ told: [line] }) => {
        fc.pre(line !== undefined && !line.formulationWater);
        const ingredient = { ...line, mass: 1 };
        for (const name of indexNames) {
          const bounds = productContent({ ingredients: [ingredient] })[name].withFormulationWater;
          for (const answer of [bounds.min, bounds.max]) {
            const answered = productContent({ ingredients: [{ ...ingredient, [name]: answer }] });
            expect(answered[name].withFormulationWater).toEqual({ min: answer, max: answer });
          }
        }
      }),
    );
  });

  test("is bounded by what was said: a natural origin of 0.7 leaves at most 0.7 natural", () => {
    const { natural, organic } = productContent({ ingredients: [{ mass: 2, naturalOrigin: 0.7 }] });
    expect(natural.withFormulationWater).toEqual({ min: 0, max: 0.7 });
    expect(organic.withFormulationWater).toEqual({ min: 0, max: 0.7 });
  });

  test("is bounded from below too: what is organic is natural, of natural and of organic origin", () => {
    const content = productContent({ ingredients: [{ mass: 2, organic: 0.4 }] });
    for (const name of ["natural", "naturalOrigin", "organicOrigin"] as const)
      expect(content[name].withFormulationWater).toEqual({ min: 0.4, max: 1 });
  });
});

describe("a content", () => {
  test("does not ask in which order or on which scale the lines were written", () => {
    fc.assert(
      fc.property(product, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), ({ told }, factor) => {
        expectSame(told.slice().reverse(), told);
        expectSame(
          told.map((line) => ({ ...line, mass: line.mass * factor })),
          told,
        );
      }),
    );
  });

  test("is the same whether two materials are charged one by one or as a blend of both", () => {
    fc.assert(
      fc.property(product, ({ truth }) => {
        const dry = truth.filter((line) => !line.formulationWater);
        fc.pre(dry.length > 0);
        const blend = productContent({ ingredients: dry });
        const mass = dry.reduce((sum, line) => sum + line.mass, 0);
        const index = (name: (typeof indexNames)[number]) => blend[name].withFormulationWater.min;
        const premix = {
          mass,
          natural: index("natural"),
          naturalOrigin: index("naturalOrigin"),
          organic: index("organic"),
          organicOrigin: index("organicOrigin"),
        };
        expectSame([premix, ...truth.filter((line) => line.formulationWater)], truth);
      }),
    );
  });

  test("without formulation water is that of the product from which the water was struck out", () => {
    fc.assert(
      fc.property(product, ({ told }) => {
        const dry = told.filter((line) => !line.formulationWater);
        const content = productContent({ ingredients: told });
        for (const name of indexNames)
          expect(content[name].withoutFormulationWater).toEqual(
            dry.length ? productContent({ ingredients: dry })[name].withFormulationWater : undefined,
          );
      }),
    );
  });

  test("without formulation water does not exist where there is nothing but that water", () => {
    const { natural } = productContent({ ingredients: [{ mass: 5, formulationWater: true }, { mass: 0 }] });
    expect(natural).toEqual({ withFormulationWater: { min: 1, max: 1 } });
  });

  test("counts water that came with a raw material as part of that material", () => {
    const { naturalOrigin } = productContent({
      ingredients: [
        { name: "surfactant in water", mass: 50, naturalOrigin: 0.8 },
        { name: "water", mass: 50, formulationWater: true },
      ],
    });
    expect(naturalOrigin.withoutFormulationWater?.min).toBe(0.8);
  });
});

describe("what is refused", () => {
  test.each([
    [
      { mass: 1, natural: 0.9, naturalOrigin: 0.8 },
      "ingredients[0].natural: found 0.9, expected at most naturalOrigin, 0.8",
    ],
    [{ mass: 1, organic: 0.5, natural: 0 }, "ingredients[0].organic: found 0.5, expected at most natural, 0"],
    [
      { mass: 1, organic: 0.5, organicOrigin: 0.4 },
      "ingredients[0].organic: found 0.5, expected at most organicOrigin",
    ],
    [{ mass: 1, organicOrigin: 0.6, naturalOrigin: 0.5 }, "ingredients[0].organicOrigin: found 0.6, expected at most"],
    [
      { mass: 1, organic: 0.6, naturalOrigin: 0.5 },
      "ingredients[0].organic: found 0.6, expected at most naturalOrigin",
    ],
    [
      { mass: 1, formulationWater: true, organic: 1 },
      "ingredients[0].organic: found 1, expected 0 for formulation water",
    ],
    [{ mass: 1, naturalOrigin: 95 }, "ingredients[0].naturalOrigin: found 95, expected a fraction from 0 to 1"],
    [{ mass: 0, naturalOrigin: 1 }, "ingredients: found 0, expected a mass above 0"],
    [{ mass: -1, naturalOrigin: 1 }, "ingredients[0].mass: found -1, expected a finite number of 0 or more"],
  ])("%o", (ingredient, message) => {
    expect(() => productContent({ ingredients: [ingredient] })).toThrow(message);
  });

  test("a product without ingredients", () => {
    expect(() => productContent({ ingredients: [] })).toThrow("ingredients: found 0, expected a mass above 0");
  });
});
