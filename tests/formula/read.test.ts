import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { type FormulaDocument, type LineDocument, readFormula } from "gelwright/formula";
import { describe, expect, test } from "vitest";

const materials: FormulaDocument["materials"] = {
  former: { name: "gel former", function: "gel former" },
  oil: { name: "sunflower oil", function: "oil" },
  almond: { name: "almond oil", function: "oil", heatSensitive: true },
  tocopherol: { name: "tocopherol, 50 % in oil", function: "antioxidant", strength: "50 %" },
};

function formulaOf(lines: readonly LineDocument[], rest: Partial<FormulaDocument> = {}): FormulaDocument {
  return { version: 1, name: "trial", materials, phases: [{ name: "A", lines }], ...rest };
}

function sharesOf(document: unknown): Record<string, number> {
  return Object.fromEntries(readFormula(document).lines.map((line) => [line.material, line.massFraction]));
}

function faultsOf(document: unknown): CalculationError {
  try {
    readFormula(document);
  } catch (error) {
    if (error instanceof CalculationError) return error;
    throw error;
  }
  throw new Error("the document was accepted");
}

describe("amounts", () => {
  test("percent and ppm are shares of the product, and the q.s. line takes the rest", () => {
    const shares = sharesOf(
      formulaOf([
        { material: "former", amount: "9 %" },
        { material: "tocopherol", amount: "500 ppm" },
        { material: "oil", amount: "q.s." },
      ]),
    );
    expect(shares).toEqual({ former: 0.09, tocopherol: 0.0005, oil: 1 - (0.09 + 0.0005) });
  });

  test("parts divide what the shares leave", () => {
    const shares = sharesOf(
      formulaOf([
        { material: "former", amount: "10 %" },
        { material: "oil", amount: "2 parts" },
        { material: "almond", amount: "1 part" },
      ]),
    );
    expect(shares["oil"]).toBeCloseTo(0.6, 12);
    expect(shares["almond"]).toBeCloseTo(0.3, 12);
  });

  test("masses do the same, in any unit of mass", () => {
    const shares = sharesOf(
      formulaOf([
        { material: "former", amount: "20 g" },
        { material: "oil", amount: "0.18 kg" },
      ]),
    );
    expect(shares["former"]).toBeCloseTo(0.1, 12);
  });

  test("an amount of the active part is divided by the strength", () => {
    const shares = sharesOf(
      formulaOf([
        { material: "tocopherol", amount: "0.2 %", as: "active" },
        { material: "oil", amount: "q.s." },
      ]),
    );
    expect(shares["tocopherol"]).toBeCloseTo(0.004, 15);
  });

  test("shares sum to 1, whatever the parts", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 10_000 }), { minLength: 4, maxLength: 4 }), ([a, b, c, d]) => {
        const shares = sharesOf(
          formulaOf([
            { material: "former", amount: `${a} parts` },
            { material: "oil", amount: `${b} parts` },
            { material: "almond", amount: `${c} parts` },
            { material: "tocopherol", amount: `${d} parts`, as: "active" },
          ]),
        );
        expect(Object.values(shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      }),
      { numRuns: 50 },
    );
  });
});

describe("premixes", () => {
  const blend = {
    name: "blend",
    lines: [
      { material: "tocopherol", amount: "20 %" },
      { material: "oil", amount: "q.s." },
    ],
  } as const;

  test("are opened at any depth, and a part that stands in the phase already becomes one line", () => {
    const shares = sharesOf(
      formulaOf(
        [
          { material: "stock", amount: "10 %" },
          { material: "oil", amount: "q.s." },
        ],
        {
          premixes: {
            blend,
            stock: {
              name: "stock",
              lines: [
                { material: "blend", amount: "50 %" },
                { material: "almond", amount: "50 %" },
              ],
            },
          },
        },
      ),
    );
    expect(shares["tocopherol"]).toBeCloseTo(0.01, 12);
    expect(shares["almond"]).toBeCloseTo(0.05, 12);
    expect(shares["oil"]).toBeCloseTo(0.94, 12);
  });

  test("that contain themselves are named with the way round", () => {
    const error = faultsOf(
      formulaOf([{ material: "one", amount: "100 %" }], {
        premixes: {
          one: { name: "one", lines: [{ material: "two", amount: "100 %" }] },
          two: { name: "two", lines: [{ material: "one", amount: "100 %" }] },
        },
      }),
    );
    expect(error.message).toContain("one → two → one");
  });

  test("nested eighty deep, every other twice in the one around it, cost no more than their number", () => {
    const depth = 40;
    const premixes = Object.fromEntries(
      Array.from({ length: depth }, (_, i) => {
        const inner = i + 1 < depth ? `level${i + 1}` : "oil";
        const [left, right] = [`left${i}`, `right${i}`];
        const lines = [left, right].map((material) => ({ material, amount: "50 %" as const }));
        const half = { name: `half of level ${i}`, lines: [{ material: inner, amount: "100 %" as const }] };
        return Object.entries({ [`level${i}`]: { name: `level ${i}`, lines }, [left]: half, [right]: half });
      }).flat(),
    );
    expect(sharesOf(formulaOf([{ material: "level0", amount: "100 %" }], { premixes }))).toEqual({ oil: 1 });
  });
});

describe("faults", () => {
  test.each<[string, readonly LineDocument[], string]>([
    [
      "a sum below 100 %",
      [
        { material: "former", amount: "9 %" },
        { material: "oil", amount: "90 %" },
      ],
      "lines that sum to 99 %",
    ],
    [
      "a sum above 100 %",
      [
        { material: "former", amount: "9.5 %" },
        { material: "oil", amount: "91 %" },
      ],
      "lines that sum to 100.5 %",
    ],
    [
      "two q.s. lines",
      [
        { material: "former", amount: "q.s." },
        { material: "oil", amount: "q.s." },
      ],
      "one q.s. line only",
    ],
    [
      "a negative q.s.",
      [
        { material: "former", amount: "101 %" },
        { material: "oil", amount: "q.s." },
      ],
      "q.s. line below zero",
    ],
    [
      "an unknown material",
      [
        { material: "wax", amount: "9 %" },
        { material: "oil", amount: "q.s." },
      ],
      "material: found wax",
    ],
    [
      "a material written twice",
      [
        { material: "oil", amount: "9 %" },
        { material: "oil", amount: "q.s." },
      ],
      "oil a second time",
    ],
    [
      "masses beside parts",
      [
        { material: "former", amount: "9 g" },
        { material: "oil", amount: "2 parts" },
      ],
      "what a part weighs",
    ],
    [
      "masses beside a q.s. line",
      [
        { material: "former", amount: "9 g" },
        { material: "oil", amount: "q.s." },
      ],
      "beside a q.s. line",
    ],
    [
      "shares that leave nothing",
      [
        { material: "former", amount: "100 %" },
        { material: "oil", amount: "2 parts" },
      ],
      "leave nothing",
    ],
    [
      "a decimal comma",
      [
        { material: "former", amount: "9,5 %" },
        { material: "oil", amount: "q.s." },
      ],
      "decimal point, no comma",
    ],
    [
      "an amount of nothing",
      [
        { material: "former", amount: "0 %" },
        { material: "oil", amount: "q.s." },
      ],
      "an amount above zero",
    ],
  ])("%s is named", (_what, lines, message) => {
    const error = faultsOf(formulaOf(lines));
    expect(error.code).toBe("document");
    expect(error.message).toContain(message);
  });

  test("one document with ten faults yields one error that names all ten", () => {
    const error = faultsOf({
      version: 2,
      name: "ten faults",
      materials: {
        former: { name: "gel former", function: "thickener" },
        oil: { name: "oil", function: "oil", density: { value: "918 g", at: "20 °C" }, colour: "pale", smell: "none" },
        half: { name: "half", function: "other", strength: "0 %", price: "cheap" },
      },
      phases: [
        {
          name: "A",
          lines: [
            { material: "former", amount: "9,5 %" },
            { material: "wax", amount: "5 %" },
          ],
        },
        {
          name: "B",
          lines: [
            { material: "oil", amount: "q.s." },
            { material: "half", amount: "q.s." },
          ],
        },
      ],
    });
    expect(error.faults.map((fault) => fault.path).sort()).toEqual([
      "materials.former.function",
      "materials.half.price",
      "materials.half.strength",
      "materials.oil.colour",
      "materials.oil.density.value",
      "materials.oil.smell",
      "phases[0].lines[0].amount",
      "phases[0].lines[1].material",
      "phases[1].lines[1].amount",
      "version",
    ]);
    for (const fault of error.faults) expect(error.message).toContain(fault.path);
  });

  test("a fault says for programs what is wrong, and what was probably meant", () => {
    const { faults } = faultsOf({
      version: 1,
      name: "slips",
      materials: {
        oil: { name: "oil", function: "oill", densty: "918 kg/m³", specificHeat: "2000 J/kgK", strength: "120 %" },
        wax: {
          name: "wax",
          function: "other",
          price: "3 EUR",
          heatSensitive: "yes",
          sources: "none",
          conductivity: "0.2",
        },
      },
      phases: [{ name: "A", lines: [{ material: "oils", amount: "q.s." }, { amount: "ten" }] }],
    });
    const brief = faults.map(({ path, rule, parameters }) => [path, rule, parameters?.nearest]);
    expect(brief.sort()).toEqual([
      ["materials.oil.densty", "unknown-field", "density"],
      ["materials.oil.function", "not-one-of", "oil"],
      ["materials.oil.specificHeat", "unknown-unit", "J/(kg·K)"],
      ["materials.oil.strength", "out-of-range", undefined],
      ["materials.wax.conductivity", "not-a-quantity", undefined],
      ["materials.wax.heatSensitive", "wrong-type", undefined],
      ["materials.wax.price", "not-a-price", undefined],
      ["materials.wax.sources", "wrong-type", undefined],
      ["phases[0].lines[0].material", "unknown-name", "oil"],
      ["phases[0].lines[1].amount", "not-an-amount", undefined],
      ["phases[0].lines[1].material", "missing", undefined],
    ]);
    const strength = faults.find(({ path }) => path.endsWith("strength"));
    expect(strength?.parameters).toEqual({ value: 1.2, min: 0, max: 1 });
    for (const { expected, parameters } of faults)
      if (parameters?.nearest) expect(expected).toContain(`did you mean ${parameters.nearest}?`);
  });

  test("the address of a schema may stand in a document", () => {
    const lines = [{ material: "oil", amount: "q.s." }];
    expect(readFormula(formulaOf(lines, { $schema: "./formula.json" }))).toEqual(readFormula(formulaOf(lines)));
  });

  test("anything that is no document at all is refused as one", () => {
    fc.assert(
      fc.property(fc.anything(), (anything) => {
        expect(() => readFormula(anything)).toThrow(CalculationError);
      }),
      { numRuns: 100 },
    );
  });
});
