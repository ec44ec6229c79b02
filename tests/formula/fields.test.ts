import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { expect, test } from "vitest";

/** A material that states all that a material may. */
const whole = {
  ...{ name: "wax", listingName: "Wax", function: "gel former", strength: "80 %", propertiesOf: "fats and oils" },
  density: { value: "918 kg/m³", at: "20 °C", fallPerKelvin: "0.65 kg/m³" },
  ...{ specificHeat: "2000 J/(kg·K)", conductivity: "0.17 W/(m·K)" },
  melting: { at: "60 °C", latentHeat: "150 kJ/kg", over: "6 K" },
  refractiveIndex: { value: 1.47, at: "20 °C", perKelvin: -3.8e-4 },
  ...{ hlb: 5, requiredHlb: 7 },
  inductionTimes: [{ at: "110 °C", time: "2 h" }],
  ageingKinetics: { activationEnergy: "80 kJ/mol", reference: "20 °C" },
  volatile: {
    ...{ molarMass: "18 g/mol", diffusivity: "2.5e-5 m²/s" },
    antoine: { logarithm: "decimal", a: 10, b: 1500, c: -40, from: "0 °C", to: "100 °C" },
  },
  indices: { of: "active part", natural: 0.1, naturalOrigin: 0.5, organic: 0, organicOrigin: 1 },
  formulationWater: true,
  ingredients: [{ name: "a", share: "100 %" }],
  certified: { class: "chemically processed agro-ingredient", organic: "10 %", petrochemical: "5 %" },
  allergens: [{ name: "limonene", share: "10 ppm" }],
  fattyAcids: { "18:1": "30 %" },
  limits: { temperatureMax: "120 °C", flashPoint: "300 °C", shareMax: "100 %" },
  heatSensitive: true,
  particle: {
    ...{ diameter: "100 µm", density: "1.4 g/cm³", thickness: "1 µm", nature: "inorganic", oilAbsorption: "60 %" },
    sizes: [{ diameter: "100 µm", share: "100 %" }],
  },
  ...{ price: "12.50 EUR/kg", restrictions: ["r"], sources: { density: "s" }, notes: "n" },
};

/** The material with one field changed, by its path. */
function changed(path: string, value: unknown): object {
  const copy = structuredClone(whole) as object;
  const keys = path.split(".");
  const last = keys.pop() as string;
  const within = keys.reduce<object>((at, key) => Reflect.get(at, key) as object, copy);
  Reflect.set(within, last, value);
  return copy;
}

function faultsOf(material: object) {
  try {
    readFormula({
      ...{ version: 1, name: "trial", materials: { wax: material } },
      phases: [{ name: "A", lines: [{ material: "wax", amount: "100 %" }] }],
    });
    return [];
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return error.faults.map(({ path, rule }) => `${path.replace("materials.wax.", "")} ${rule}`);
  }
}

test("all that a material may state can stand in one", () => {
  expect(faultsOf(whole)).toEqual([]);
  const { materials } = readFormula({
    ...{ version: 1, name: "trial", materials: { wax: whole }, claims: { naturalOrigin: "95 %" } },
    phases: [{ name: "A", lines: [{ material: "wax", amount: "100 %" }] }],
  });
  expect(materials["wax"]).toMatchObject({
    ...{ hlb: 5, requiredHlb: 7, indices: whole.indices },
    certified: { class: "chemically processed agro-ingredient", organic: 0.1, petrochemical: 0.05 },
    particle: { thickness: expect.closeTo(1e-6, 15), nature: "inorganic", oilAbsorption: 0.6 },
  });
});

test("every word of a list is taken, and no other", () => {
  for (const [path, words] of [
    [
      "function",
      ["gel former", "oil", "antioxidant", "particle", "fragrance", "colourant", "water", "preservative", "other"],
    ],
    ["propertiesOf", ["fats and oils", "glycerin", "water"]],
    ["indices.of", ["material as supplied", "active part"]],
    [
      "certified.class",
      [
        ...["physically processed agro-ingredient", "chemically processed agro-ingredient"],
        ...["water", "mineral", "other"],
      ],
    ],
    ["particle.nature", ["synthetic polymer", "natural polymer", "degradable polymer", "soluble polymer", "inorganic"]],
    ["volatile.antoine.logarithm", ["decimal", "natural"]],
  ] as const) {
    for (const word of words) expect(faultsOf(changed(path, word))).toEqual([]);
    expect(faultsOf(changed(path, "unheard of"))).toEqual([`${path} not-one-of`]);
  }
});

// Each bound: the figure that is just taken, and one that is not.
test.each<[path: string, taken: unknown, refused: unknown]>([
  ["strength", "100 %", "101 %"],
  ["strength", "0.001 %", "0 %"],
  ["density.value", "1 kg/m³", "0 kg/m³"],
  ["density.fallPerKelvin", "0 kg/m³", "-0.1 kg/m³"],
  ["specificHeat", "1 J/(kg·K)", "0 J/(kg·K)"],
  ["conductivity", "0.001 W/(m·K)", "0 W/(m·K)"],
  ["melting.latentHeat", "1 J/kg", "0 J/kg"],
  ["melting.over", "0.1 K", "0 K"],
  ["refractiveIndex.value", 1, 0.99],
  ["refractiveIndex.value", 3, 3.01],
  ["hlb", 0, -0.1],
  ["requiredHlb", 0, -0.1],
  ["inductionTimes", [{ at: "110 °C", time: "1 s" }], []],
  ["ageingKinetics.activationEnergy", "0 J/mol", "-1 J/mol"],
  ["volatile.molarMass", "1 g/mol", "0 g/mol"],
  ["volatile.diffusivity", "1 mm²/s", "0 mm²/s"],
  ["indices.natural", 1, 1.01],
  ["indices.naturalOrigin", 0, -0.01],
  ["indices.organic", 1, 1.01],
  ["indices.organicOrigin", 0, -0.01],
  ["ingredients", [{ name: "a", share: "100 %" }], []],
  ["certified.organic", "100 %", "101 %"],
  ["certified.petrochemical", "0 %", "-1 %"],
  ["limits.shareMax", "0 %", "-1 %"],
  ["particle.diameter", "2 µm", "0 µm"],
  ["particle.density", "1 kg/m³", "0 kg/m³"],
  ["particle.thickness", "0.001 µm", "0 µm"],
  ["particle.oilAbsorption", "150 %", "0 %"],
  ["particle.sizes", [{ diameter: "2 µm", share: "100 %" }], []],
])("%s may be %j and not %j", (path, taken, refused) => {
  expect(faultsOf(changed(path, taken))).toEqual([]);
  expect(faultsOf(changed(path, refused))).toEqual([`${path} out-of-range`]);
});

test.each<[path: string, taken: string, refused: string]>([
  ["allergens.0.share", "100 %", "101 %"],
  ["allergens.0.share", "0 %", "-1 %"],
  ["fattyAcids.18:1", "100 %", "101 %"],
  ["inductionTimes.0.time", "1 s", "0 s"],
  ["particle.sizes.0.diameter", "1 µm", "0 µm"],
])("%s may be %s and not %s", (path, taken, refused) => {
  expect(faultsOf(changed(path, taken))).toEqual([]);
  const [fault = "", ...others] = faultsOf(changed(path, refused));
  expect(fault).toContain("out-of-range");
  expect(others).toEqual([]);
});

test("an empty list of phases, of lines or a claim beyond all of it is refused where it stands", () => {
  const lines = [{ material: "wax", amount: "100 %" }];
  const own = { ...{ version: 1, name: "trial", materials: { wax: whole } }, phases: [{ name: "A", lines }] };
  const paths = (of: object) => {
    try {
      readFormula({ ...own, ...of });
      return [];
    } catch (error) {
      return (error as CalculationError).faults.map(({ path, rule }) => `${path} ${rule}`);
    }
  };
  expect(paths({})).toEqual([]);
  expect(paths({ phases: [] })).toEqual(["phases out-of-range"]);
  expect(paths({ phases: [{ name: "A", lines: [] }] })).toEqual(["phases[0].lines out-of-range"]);
  expect(paths({ premixes: { stock: { name: "stock", lines: [] } } })).toEqual(["premixes.stock.lines out-of-range"]);
  expect(paths({ claims: { naturalOrigin: "100 %" } })).toEqual([]);
  expect(paths({ claims: { naturalOrigin: "101 %" } })).toEqual(["claims.naturalOrigin out-of-range"]);
  expect(paths({ claims: { natural: "50 %" } })).toEqual(["claims.natural unknown-field"]);
});
