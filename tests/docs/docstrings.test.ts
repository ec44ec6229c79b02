import { expect, test } from "vitest";
import { rangeIn } from "../../docs/docstring-range.js";
import { docstrings } from "../../docs/docstrings.js";

test("a range is read as docstrings state it, and a unit, a default or a thousand is none", () => {
  for (const [said, range] of [
    ["Heat capacity [J/K], above 0.", { min: 0, minExcluded: true }],
    ["Shear rate [1/s], 0 or more; 5 unless given.", { min: 0 }],
    ["Mass fraction of oil, 0 to 1.", { min: 0, max: 1 }],
    ["Part that the skin takes up [0 to 1].", { min: 0, max: 1 }],
    ["Confidence, above 0 and below 1; 0.95 unless given.", { min: 0, minExcluded: true, max: 1, maxExcluded: true }],
    ["λ, 3e-4 to below 4.08.", { min: 3e-4, max: 4.08, maxExcluded: true }],
    ["Norrish's K, -10 to 0; -1.16 for glycerin unless given.", { min: -10, max: 0 }],
    ["Temperature of the room [°C].", {}],
    ["Which term, up to 1,000,000.", {}],
  ] as const)
    expect(rangeIn(said), said).toEqual(range);
});

const found = docstrings([
  "heat.additionTemperatureMin",
  "heat.largestAddition",
  "mixing.motorMargin",
  "particles.clearingTime",
]);
const one = (name: string) => found.get(name) ?? expect.fail(name);

test("every number of a call is described down to its unit, whether the docstring or a type says it", () => {
  const melt = [{ mass: 26, specificHeat: 2060, temperature: 66 }];
  const call = { melt, addition: { mass: 8, specificHeat: 2055 }, temperatureMin: 57 };
  const inputs = one("heat.additionTemperatureMin").inputs([call]);
  expect(inputs.map(({ path, unit }) => [path, unit])).toEqual([
    ["melt[0].mass", "kg"],
    ["melt[0].specificHeat", "J/(kg·K)"],
    ["melt[0].temperature", "°C"],
    ["addition.mass", "kg"],
    ["addition.specificHeat", "J/(kg·K)"],
    ["temperatureMin", "°C"],
  ]);
  expect(inputs[0]?.range).toEqual({ min: 0, minExcluded: true });
});

test("an argument has its unit, whether the docstring names it before or after", () => {
  // "The mix may not fall below this [°C]: the setting temperature with a margin."
  const min = one("heat.largestAddition").arguments.find(({ path }) => path === "temperatureMin");
  expect(min?.unit).toBe("°C");
});

test("what may be left out says what it is then, a word says which are allowed", () => {
  const efficiency = one("mixing.motorMargin").arguments.find(({ path }) => path === "efficiency");
  expect(efficiency).toMatchObject({ optional: true, default: "1", range: { min: 0, max: 1 } });
  const surface = one("particles.clearingTime").arguments.find(({ path }) => path === "surface");
  expect(surface).toMatchObject({ kind: "choice", default: "immobile", choices: ["immobile", "mobile"] });
});

test("a result is described by its docstring or by the type that it has", () => {
  expect(one("particles.clearingTime").results(756)).toMatchObject([{ path: "", unit: "s" }]);
  const margin = one("mixing.motorMargin").results({ margin: 2, torque: 5 });
  expect(margin.map(({ path, unit }) => [path, unit])).toEqual([
    ["margin", undefined],
    ["torque", "N·m"],
  ]);
});

test("a function or a field that has no docstring stops the build", () => {
  expect(() => docstrings(["heat.noSuchFunction"])).toThrow("noSuchFunction");
  expect(() => one("heat.additionTemperatureMin").inputs([{ melt: [], colour: 1 }])).toThrow("colour");
});
