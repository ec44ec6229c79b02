import { CalculationError } from "gelwright/error";
import { normalise, readFormula, replaceMaterial } from "gelwright/formula";
import { expect, test } from "vitest";

const formula = (amount: string) =>
  readFormula({
    version: 1,
    name: "trial",
    materials: {
      oil: { name: "oil", function: "oil" },
      ester: { name: "ester", function: "oil", strength: "50 %" },
      wax: { name: "wax", function: "gel former" },
    },
    phases: [
      {
        name: "A",
        lines: [
          { material: "oil", amount },
          { material: "wax", amount },
        ],
      },
    ],
  });

test("amounts that are all 0 have no shares", () => {
  expect(() => normalise({ amounts: [0, 0] })).toThrow("at least one is above 0");
});

test("a material that stands in no line cannot be replaced", () => {
  expect(() => replaceMaterial({ formula: formula("50 %"), material: "ester", by: "wax", at: "equal share" })).toThrow(
    "stands in a line",
  );
});

test("twice as much of an oil of half the strength needs a q.s. line to make room for it", () => {
  expect(() => replaceMaterial({ formula: formula("50 %"), material: "oil", by: "ester", at: "equal active" })).toThrow(
    "a q.s. line",
  );
});

/** Paths and expectations of the faults of a material with some fields. */
function faultsOf(oil: object, more: object = {}): readonly string[] {
  try {
    readFormula({
      version: 1,
      name: "trial",
      materials: { oil: { name: "oil", function: "oil", ...oil } },
      phases: [{ name: "A", lines: [{ material: "oil", amount: "100 %" }] }],
      ...more,
    });
    return [];
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return error.faults.map(({ path, expected }) => `${path}: ${expected}`);
  }
}

test.each([
  ["shareMax", "-1 %", "a quantity that is not negative"],
  ["shareMax", "101 %", "a share of 100 % at most"],
  ["strength", "0 %", "a quantity above zero"],
  ["strength", "101 %", "a share of 100 % at most"],
])("%s of %s is refused, and one of 100 % is not", (field, value, expected) => {
  const path = field === "strength" ? `materials.oil.${field}` : `materials.oil.limits.${field}`;
  const written = (text: string) => (field === "strength" ? { [field]: text } : { limits: { [field]: text } });
  expect(faultsOf(written(value))).toEqual([`${path}: ${expected}`]);
  expect(faultsOf(written("100 %"))).toEqual([]);
});

test("what a material states twice, or of nothing, is told at its place", () => {
  const kinetics = { activationEnergy: "90 kJ/mol", q10: 2, reference: "20 °C" };
  expect(faultsOf({ ageingKinetics: kinetics })).toEqual(["materials.oil.ageingKinetics: one of the two"]);
  expect(faultsOf({ ageingKinetics: { reference: "20 °C" } })).toEqual([
    "materials.oil.ageingKinetics: one of the two",
  ]);
  expect(faultsOf({ indices: { of: "material as supplied" } })).toEqual([
    "materials.oil.indices: at least one index; leave the field out where none is known",
  ]);
  const antoine = { logarithm: "natural", a: 22.4, b: 4697, c: -19.6, from: "177 °C", to: "17 °C" };
  const volatile = { molarMass: "74 g/mol", diffusivity: "8 mm²/s", antoine };
  expect(faultsOf({ volatile })).toEqual(["materials.oil.volatile.antoine.to: above 177 °C"]);
});

test("a premix may not have the name of a material", () => {
  const premix = { name: "oil again", lines: [{ material: "oil", amount: "100 %" }] };
  expect(faultsOf({}, { premixes: { oil: premix } })).toContain("premixes.oil: a name that no material has");
});
