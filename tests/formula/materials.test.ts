import { CalculationError } from "gelwright/error";
import { readFormula, replaceMaterial } from "gelwright/formula";
import { choiOkosFat, liquidGlycerin, liquidWater } from "gelwright/laws";
import { describe, expect, test } from "vitest";

const plain = { name: "oil", function: "oil" };
const document = (materials: object, more: object = {}) => ({
  ...{ version: 1, name: "trial", materials },
  phases: [{ name: "A", lines: [{ material: Object.keys(materials)[0], amount: "100 %" }] }],
  ...more,
});
const read = (material: object) => readFormula(document({ oil: { ...plain, ...material } })).materials["oil"];

function faultsOf(of: unknown) {
  try {
    readFormula(of);
    return [];
  } catch (error) {
    if (error instanceof CalculationError) return error.faults;
    throw error;
  }
}
const faults = (material: object) =>
  faultsOf(document({ oil: { ...plain, ...material } })).map(({ path, rule }) => [
    path.replace("materials.oil.", ""),
    rule,
  ]);

const glitter = { name: "glitter", function: "particle" };
const particle = (of: object) => faults({ ...glitter, particle: { density: "1.4 g/cm³", ...of } });

describe("what is stated of a material is read into the units of the kernels", () => {
  test("laws from figures", () => {
    const found = read({
      density: { value: "0.918 g/cm³", at: "20 °C", fallPerKelvin: "0.65 kg/m³" },
      specificHeat: "2 kJ/(kg·K)",
      conductivity: "0.17 W/(m·K)",
      refractiveIndex: { value: 1.47, at: "293.15 K", perKelvin: -3.8e-4 },
      melting: { at: "60 °C", latentHeat: "150 kJ/kg", over: "6 K" },
    });
    expect(found).toMatchObject({
      density: { law: "linear", density: 918, temperatureReference: 20, slope: 0.65 },
      specificHeat: { law: "constant", specificHeat: 2000 },
      conductivity: { law: "constant", conductivity: 0.17 },
      refractiveIndex: { refractiveIndex: 1.47, temperature: 20, perKelvin: -3.8e-4 },
      melting: { temperatureOnset: 57, temperatureEnd: 63, latentHeat: 150_000 },
    });
    expect(read({ density: { value: "918 kg/m³", at: "20 °C" } })?.density).toMatchObject({ slope: 0 });
    expect(read({ refractiveIndex: { value: 1.47, at: "20 °C" } })?.refractiveIndex).toStrictEqual({
      ...{ refractiveIndex: 1.47, temperature: 20 },
    });
    // Where no range is stated a material melts over 4 K.
    expect(read({ melting: { at: "60 °C", latentHeat: "150 kJ/kg" } })?.melting).toMatchObject({
      ...{ temperatureOnset: 58, temperatureEnd: 62 },
    });
  });

  test("a class gives what is not stated, and what is stated goes before it", () => {
    for (const [propertiesOf, law] of [
      ["fats and oils", choiOkosFat],
      ["glycerin", liquidGlycerin],
      ["water", liquidWater],
    ] as const) {
      const { density, specificHeat, conductivity } = law;
      expect(read({ propertiesOf })).toMatchObject({ density, specificHeat, conductivity, propertiesOf });
      const stated = read({ propertiesOf, specificHeat: "2000 J/(kg·K)" });
      expect(stated).toMatchObject({ density, conductivity, specificHeat: { law: "constant", specificHeat: 2000 } });
    }
    expect(read({})).toMatchObject({ density: undefined, specificHeat: undefined, conductivity: undefined });
  });

  test("ageing by one law, what evaporates, and what is known of heat", () => {
    expect(read({ ageingKinetics: { activationEnergy: "80 kJ/mol", reference: "20 °C" } })?.ageingKinetics).toEqual({
      ...{ law: "arrhenius", activationEnergy: 80_000, temperatureReference: 20 },
    });
    expect(read({ ageingKinetics: { q10: 2, reference: "20 °C" } })?.ageingKinetics).toEqual({
      ...{ law: "q10", q10: 2, temperatureReference: 20 },
    });
    const antoine = { logarithm: "decimal", a: 10, b: 1500, c: -40, from: "0 °C", to: "100 °C" };
    const volatile = { molarMass: "18 g/mol", diffusivity: "2.5e-5 m²/s", antoine };
    expect(read({ volatile })?.volatile).toEqual({
      molarMass: expect.closeTo(0.018, 15),
      diffusivity: 2.5e-5,
      vapourPressure: {
        ...{ law: "antoine", logarithm: "decimal", constantA: 10, constantB: 1500, constantC: -40 },
        ...{ temperatureMin: 0, temperatureMax: 100 },
      },
    });
    expect(read({ inductionTimes: [{ at: "110 °C", time: "2 h" }] })?.inductionTimes).toEqual([
      { temperature: 110, duration: 7200 },
    ]);
    const limits = { temperatureMax: "120 °C", flashPoint: "300 °C", shareMax: "5 %" };
    expect(read({ limits })).toMatchObject({ temperatureMax: 120, temperatureFlash: 300, massFractionMax: 0.05 });
    expect([read({ heatSensitive: true })?.heatSensitive, read({})?.heatSensitive]).toEqual([true, false]);
  });

  test("what a label and a price ask, and what is taken where nothing is stated", () => {
    const found = read({
      ...{ strength: "50 %", price: "12.50 EUR/kg", listingName: "Oil", formulationWater: true, notes: "n" },
      allergens: [{ name: "limonene", share: "10 ppm" }],
      ingredients: [
        { name: "a", share: "40 %" },
        { name: "b", share: "60 %" },
      ],
      ...{ fattyAcids: { "18:1": "30 %" }, restrictions: ["r"], sources: { density: "s" } },
    });
    expect(found).toMatchObject({
      ...{ key: "oil", strength: 0.5, price: { perKilogram: 12.5, currency: "EUR" }, listingName: "Oil" },
      ...{ formulationWater: true, notes: "n", allergensStated: true, restrictions: ["r"], sources: { density: "s" } },
      allergens: [{ name: "limonene", massFraction: 1e-5 }],
      ingredients: [
        { name: "a", massFraction: 0.4 },
        { name: "b", massFraction: 0.6 },
      ],
      fattyAcids: { "18:1": 0.3 },
    });
    expect(read({})).toMatchObject({
      ...{ strength: 1, formulationWater: false, allergensStated: false, allergens: [], fattyAcids: {} },
      ...{ restrictions: [], sources: {}, particle: undefined, price: undefined },
    });
    expect(read({ allergens: [] })).toMatchObject({ allergensStated: true, allergens: [] });
  });

  test("a price is per mass, in any unit of mass and never in another currency", () => {
    const price = (text: string) => read({ price: text })?.price;
    expect(price("3 USD/g")).toEqual({ perKilogram: expect.closeTo(3000, 9), currency: "USD" });
    expect(price("5000 EUR / t")).toEqual({ perKilogram: 5, currency: "EUR" });
    expect(price("5EUR/kg")).toEqual({ perKilogram: 5, currency: "EUR" });
    for (const wrong of ["12,50 EUR/kg", "12.50 €/kg", "12.50 EUR", "12.50 eur/kg", "EUR 5/kg", "5 EUR/L"])
      expect(faults({ price: wrong })).toHaveLength(1);
  });

  test("a flake is the ball of its volume, a grain has its diameter", () => {
    const of = (figures: object) => read({ ...glitter, particle: { density: "1.4 g/cm³", ...figures } })?.particle;
    expect(of({ diameter: "100 µm" })).toMatchObject({ diameter: expect.closeTo(1e-4, 18), density: 1400 });
    // (3/2 · 200² · 20)^(1/3) µm.
    expect(of({ width: "200 µm", thickness: "20 µm" })?.diameter).toBeCloseTo(Math.cbrt(1.5 * 4e-8 * 2e-5), 12);
    const sizes = [
      { diameter: "50 µm", share: "40 %" },
      { diameter: "90 µm", share: "60 %" },
    ];
    expect(of({ diameter: "100 µm", sizes })?.sizes).toEqual([
      { diameter: expect.closeTo(5e-5, 15), massFraction: 0.4 },
      { diameter: expect.closeTo(9e-5, 15), massFraction: 0.6 },
    ]);
    expect(of({ diameter: "100 µm" })).not.toHaveProperty("sizes");
  });
});

describe("figures that do not fit one another are told where they stand", () => {
  test("of a particle", () => {
    expect(particle({})).toEqual([["particle", "missing"]]);
    expect(particle({ diameter: "1 mm", width: "1 mm", thickness: "0.1 mm" })).toEqual([["particle", "contradiction"]]);
    expect(particle({ width: "1 mm" })).toEqual([["particle.thickness", "missing"]]);
    const found = (of: object) =>
      faultsOf(document({ oil: { ...plain, particle: { density: "1.4 g/cm³", ...of } } })).map((fault) => fault.found);
    expect(found({})).toEqual(["neither diameter nor width"]);
    expect(found({ diameter: "1 mm", width: "1 mm", thickness: "0.1 mm" })).toEqual(["diameter and width"]);
    expect(particle({ width: "1 mm", thickness: "1 mm" })).toEqual([]);
    expect(particle({ width: "1 mm", thickness: "1.01 mm" })).toEqual([["particle.thickness", "contradiction"]]);
    // As thick as wide, a disc is 0.8736 of the diameter of its ball.
    expect(particle({ diameter: "1 mm", thickness: "0.873 mm" })).toEqual([]);
    expect(particle({ diameter: "1 mm", thickness: "0.874 mm" })).toEqual([["particle.thickness", "contradiction"]]);
    expect(particle({ diameter: "1 mm", thickness: "0.1 mm", sphericity: 0.5 })).toEqual([
      ["particle.sphericity", "contradiction"],
    ]);
    expect(particle({ diameter: "1 mm", sphericity: 0.09 })).toEqual([]);
    expect(particle({ diameter: "1 mm", sphericity: 0.089 })).toEqual([["particle.sphericity", "out-of-range"]]);
    const sizes = (...shares: readonly string[]) =>
      particle({ diameter: "1 mm", sizes: shares.map((share) => ({ diameter: "1 mm", share })) });
    expect(sizes("50 %", "50.09 %")).toEqual([]);
    expect(sizes("50 %", "50.2 %")).toEqual([["particle.sizes", "contradiction"]]);
    expect(sizes()).toEqual([["particle.sizes", "out-of-range"]]);
    expect(sizes("110 %", "-10 %")).toEqual([["particle.sizes[1].share", "out-of-range"]]);
    // One fault breeds no other.
    expect(particle({ diameter: "wide" })).toHaveLength(1);
  });

  test("of ageing, of evaporation, of indices and of parts", () => {
    expect(faults({ ageingKinetics: { reference: "20 °C" } })).toEqual([["ageingKinetics", "missing"]]);
    expect(faults({ ageingKinetics: { reference: "20 °C", q10: 2, activationEnergy: "80 kJ/mol" } })).toEqual([
      ["ageingKinetics", "contradiction"],
    ]);
    expect(faults({ ageingKinetics: { reference: "20 °C", q10: 0 } })).toEqual([
      ["ageingKinetics.q10", "out-of-range"],
    ]);
    const antoine = (from: string, to: string) =>
      faults({
        volatile: {
          ...{ molarMass: "18 g/mol", diffusivity: "2.5e-5 m²/s" },
          antoine: { logarithm: "decimal", a: 10, b: 1500, c: -40, from, to },
        },
      });
    expect(antoine("0 °C", "0.1 °C")).toEqual([]);
    expect(antoine("5 °C", "5 °C")).toEqual([["volatile.antoine.to", "contradiction"]]);
    expect(antoine("warm", "5 °C")).toEqual([["volatile.antoine.from", "not-a-quantity"]]);
    expect(antoine("5 °C", "warm")).toEqual([["volatile.antoine.to", "not-a-quantity"]]);
    expect(faults({ indices: { of: "active part" } })).toEqual([["indices", "missing"]]);
    expect(faults({ indices: { of: "active part", organic: 0 } })).toEqual([]);
    expect(faults({ indices: { of: "active part", organic: 1.1 } })).toEqual([["indices.organic", "out-of-range"]]);
    expect(faults({ ingredients: [{ name: "a", share: "99 %" }] })).toEqual([["ingredients", "contradiction"]]);
    expect(faults({ strength: "0 %" })).toHaveLength(1);
    expect(faults({ strength: "100 %" })).toEqual([]);
    expect(faults({ strength: "100.1 %" })).toHaveLength(1);
    expect(faults({ density: { value: "918 kg/m³", at: "20 °C", fallPerKelvin: "0 kg/m³" } })).toEqual([]);
    expect(faults({ density: { value: "918 kg/m³", at: "20 °C", fallPerKelvin: "-1 kg/m³" } })).toHaveLength(1);
    expect(faults({ density: { value: "0 kg/m³", at: "20 °C" } })).toHaveLength(1);
    expect(faults({ hlb: 0 })).toEqual([]);
    expect(faults({ hlb: -1 })[0]).toEqual(["hlb", "out-of-range"]);
    expect(faults({ hlb: "5" })[0]).toEqual(["hlb", "wrong-type"]);
  });

  test("names that the language keeps for itself are refused wherever they stand", () => {
    for (const name of ["__proto__", "constructor", "prototype"]) {
      const found = faultsOf(JSON.parse(`{"version":1,"name":"t","materials":{"${name}":{}},"phases":[]}`));
      expect(found[0]).toMatchObject({ rule: "unknown-field", parameters: { name } });
    }
  });
});

describe("premixes", () => {
  const materials = { oil: plain, wax: { ...plain, name: "wax" }, scent: { ...plain, name: "scent" } };
  const line = (material: string, amount: string) => ({ material, amount });
  const of = (premixes: object, ...lines: readonly object[]) =>
    document(materials, { premixes, phases: [{ name: "A", lines }] });
  const stock = { name: "stock solution", lines: [line("wax", "1 part"), line("scent", "3 parts")] };
  const blend = { name: "blend", lines: [line("stock", "40 %"), line("oil", "60 %")] };

  test("are opened, and each says what it brings of a line and what it holds", () => {
    const { lines, premixes } = readFormula(
      of({ blend, stock }, line("blend", "50 %"), line("stock", "10 %"), line("oil", "q.s.")),
    );
    // Wax: 0.5·0.4/4 + 0.1/4; scent three times that; oil: 0.4 + 0.5·0.6.
    expect(Object.fromEntries(lines.map(({ material, massFraction }) => [material, massFraction]))).toEqual({
      ...{ wax: expect.closeTo(0.075, 12), scent: expect.closeTo(0.225, 12), oil: expect.closeTo(0.7, 12) },
    });
    expect(lines.filter(({ carrier }) => carrier).map(({ material }) => material)).toEqual(["oil"]);
    expect(premixes).toEqual([
      {
        ...{ key: "stock", name: "stock solution", phase: "A", premixes: [] },
        lines: [
          { material: "wax", shareOfLine: expect.closeTo(1, 12) },
          { material: "scent", shareOfLine: expect.closeTo(1, 12) },
        ],
      },
      {
        ...{ key: "blend", name: "blend", phase: "A" },
        lines: [{ material: "oil", shareOfLine: expect.closeTo(0.3 / 0.7, 12) }],
        premixes: [{ premix: "stock", shareOfPremix: expect.closeTo(2 / 3, 12) }],
      },
    ]);
  });

  test("in premixes in premixes bring what each level passes on", () => {
    const outer = { name: "outer", lines: [line("blend", "50 %"), line("stock", "10 %"), line("oil", "q.s.")] };
    const { premixes } = readFormula(of({ outer, blend, stock }, line("outer", "50 %"), line("oil", "q.s.")));
    // Of stock 0.5·0.5·0.4 comes by the blend and 0.5·0.1 by the outer one itself; of oil 0.5·0.5·0.6 and 0.5·0.4 of 0.85.
    expect(premixes).toMatchObject([
      { key: "stock", lines: [{ shareOfLine: expect.closeTo(1, 12) }, { shareOfLine: expect.closeTo(1, 12) }] },
      {
        key: "blend",
        lines: [{ material: "oil", shareOfLine: expect.closeTo(0.15 / 0.85, 12) }],
        premixes: [{ premix: "stock", shareOfPremix: expect.closeTo(2 / 3, 12) }],
      },
      {
        key: "outer",
        lines: [{ material: "oil", shareOfLine: expect.closeTo(0.2 / 0.85, 12) }],
        premixes: [
          { premix: "blend", shareOfPremix: expect.closeTo(1, 12) },
          { premix: "stock", shareOfPremix: expect.closeTo(1 / 3, 12) },
        ],
      },
    ]);
  });

  test("that nobody uses, or of which nothing goes in, are not among those of a phase", () => {
    expect(readFormula(of({ blend, stock }, line("oil", "100 %"))).premixes).toEqual([]);
    expect(readFormula(document({ oil: plain }))).not.toHaveProperty("premixes");
    const two = document(materials, {
      premixes: { stock },
      phases: [
        { name: "A", lines: [line("stock", "20 %")] },
        { name: "B", lines: [line("stock", "30 %"), line("oil", "q.s.")] },
      ],
    });
    const { lines, premixes } = readFormula(two);
    expect(premixes?.map(({ phase }) => phase)).toEqual(["A", "B"]);
    expect(readFormula(two)).toMatchObject({ name: "trial", phases: ["A", "B"] });
    expect(lines.map(({ phase, material }) => `${phase} ${material}`)).toEqual([
      "A wax",
      "A scent",
      "B wax",
      "B scent",
      "B oil",
    ]);
  });

  test("that hold themselves, or go too deep, are told with the way round", () => {
    const round = { name: "round", lines: [line("blend", "100 %")] };
    const found = faultsOf(of({ blend: { ...blend, lines: [line("round", "100 %")] }, round }, line("blend", "100 %")));
    expect(found[0]).toMatchObject({ path: "premixes", found: "blend → round → blend" });
    const nested = (deep: number) =>
      Object.fromEntries(
        Array.from({ length: deep }, (_, i) => [
          `p${i}`,
          { name: "p", lines: [line(i === deep - 1 ? "oil" : `p${i + 1}`, "100 %")] },
        ]),
      );
    expect(faultsOf(of(nested(100), line("p0", "100 %")))).toEqual([]);
    expect(faultsOf(of(nested(101), line("p0", "100 %")))[0]).toMatchObject({
      path: "premixes",
      expected: "premixes at most 100 deep",
    });
  });

  test("have names of their own, and a line of a material stands once in each", () => {
    expect(faultsOf(of({ oil: stock }, line("oil", "100 %")))[0]).toMatchObject({
      path: "premixes.oil",
      rule: "duplicate",
    });
    const twice = { name: "twice", lines: [line("oil", "50 %"), line("oil", "50 %")] };
    expect(faultsOf(of({ twice }, line("twice", "100 %")))[0]).toMatchObject({
      path: "premixes.twice.lines[1]",
      rule: "duplicate",
    });
    const phases = [
      { name: "A", lines: [line("oil", "50 %")] },
      { name: "A", lines: [line("wax", "50 %")] },
    ];
    expect(faultsOf(document(materials, { phases }))[0]).toMatchObject({ path: "phases[1].name", rule: "duplicate" });
  });

  test("that take the rest bring no carrier, since none of their materials is one", () => {
    const { lines } = readFormula(of({ stock }, line("oil", "30 %"), line("stock", "q.s.")));
    expect(lines.map(({ material, carrier }) => [material, carrier])).toEqual([
      ["oil", false],
      ["wax", false],
      ["scent", false],
    ]);
  });

  test("of which nothing is left, or less than a double can hold of their lines, bring none", () => {
    expect(readFormula(of({ stock }, line("oil", "100 %"), line("stock", "q.s."))).premixes).toEqual([]);
    const inner = { name: "inner", lines: [line("wax", "1e-250 %"), line("scent", "q.s.")] };
    const outer = { name: "outer", lines: [line("inner", "1e-250 %"), line("wax", "1e-250 %"), line("oil", "q.s.")] };
    const { premixes } = readFormula(of({ inner, outer }, line("oil", "q.s."), line("outer", "1e-100 %")));
    const shares = premixes?.flatMap((one) => [
      ...one.lines.map(({ shareOfLine }) => shareOfLine),
      ...one.premixes.map(({ shareOfPremix }) => shareOfPremix),
    ]);
    expect(premixes?.map(({ key }) => key)).toEqual(["outer"]);
    for (const share of shares ?? []) expect(share).toBeGreaterThanOrEqual(0);
  });

  test("without a q.s. line the largest line is the carrier", () => {
    const { lines } = readFormula(of({}, line("oil", "30 %"), line("wax", "45 %"), line("scent", "25 %")));
    expect(lines.map(({ carrier }) => carrier)).toEqual([false, true, false]);
    const first = readFormula(of({}, line("oil", "q.s."), line("wax", "90 %")));
    expect(first.lines.map(({ carrier }) => carrier)).toEqual([true, false]);
  });
});

describe("faults say what was found and what the ends are, also as numbers", () => {
  const fault = (material: object) => faultsOf(document({ oil: { ...plain, ...material } }))[0];
  test("of a figure out of its range", () => {
    expect(fault({ hlb: -1 })).toMatchObject({ rule: "out-of-range", found: "-1", parameters: { value: -1, min: 0 } });
    expect(fault({ indices: { of: "active part", natural: 1.1 } })?.parameters).toEqual({ value: 1.1, max: 1 });
    expect(fault({ refractiveIndex: { value: 0.9, at: "20 °C" } })?.parameters).toEqual({ value: 0.9, min: 1 });
    expect(fault({ refractiveIndex: { value: 3.1, at: "20 °C" } })?.parameters).toEqual({ value: 3.1, max: 3 });
    expect(fault({ inductionTimes: [] })?.parameters).toEqual({ value: 0, min: 1 });
    const antoine = { logarithm: "decimal", a: 10, b: 1500, c: -40, from: "50 °C", to: "20 °C" };
    expect(fault({ volatile: { molarMass: "18 g/mol", diffusivity: "2.5e-5 m²/s", antoine } })).toMatchObject({
      ...{ found: "20 °C", expected: "above 50 °C", parameters: { value: 20, min: 50 } },
    });
    expect(fault({ ageingKinetics: { reference: "20 °C", q10: 0 } })?.parameters).toEqual({ value: 0, min: 0 });
  });

  test("of a word that is none of a list, with the nearest", () => {
    expect(fault({ function: "oill" })).toMatchObject({
      ...{ rule: "not-one-of", found: '"oill"', expected: expect.stringContaining("did you mean oil?") },
      parameters: { nearest: "oil", allowed: expect.arrayContaining(["oil", "gel former", "other"]) },
    });
    expect(fault({ function: "something else" })?.parameters).not.toHaveProperty("nearest");
    expect(fault({ function: 5 })).toMatchObject({ path: "materials.oil.function", found: "5" });
    expect(fault({ functoin: "oil" })).toMatchObject({ found: "the field functoin" });
  });

  test("of parts that make no whole, in per cent", () => {
    expect(fault({ ingredients: [{ name: "a", share: "50 %" }] })?.found).toBe("shares of 50 % in all");
  });

  test("of a price with something behind or before it", () => {
    expect(read({ price: " 5 EUR/kg " })?.price).toEqual({ perKilogram: 5, currency: "EUR" });
    for (const price of ["5 EUR/kg net", "about 5 EUR/kg", "5. EUR/kg", "5 EURO/kg"])
      expect(fault({ price })?.path).toContain("price");
  });
});

test("of a premix a line that takes what is left of nothing brings nothing", () => {
  const materials = { oil: plain, wax: { ...plain, name: "wax" } };
  const whole = {
    name: "whole",
    lines: [
      { material: "wax", amount: "100 %" },
      { material: "oil", amount: "q.s." },
    ],
  };
  const phases = [
    {
      name: "A",
      lines: [
        { material: "whole", amount: "50 %" },
        { material: "oil", amount: "q.s." },
      ],
    },
  ];
  const { premixes } = readFormula(document(materials, { premixes: { whole }, phases }));
  expect(premixes?.[0]?.lines).toEqual([{ material: "wax", shareOfLine: 1 }]);
});

test("lines that are none are no lines to replace a material in", () => {
  const formula = readFormula(document({ oil: plain, wax: { ...plain, name: "wax" } }));
  const swap = (line: object) => () =>
    replaceMaterial({ formula: { ...formula, lines: [line] } as never, material: "oil", by: "wax", at: "equal share" });
  const line = { material: "oil", phase: "A", massFraction: 1, carrier: true };
  expect(swap(line)()).toEqual([{ ...line, material: "wax" }]);
  for (const wrong of [{ material: 5 }, { phase: 5 }, { carrier: 1 }, { massFraction: 1.1 }])
    expect(swap({ ...line, ...wrong })).toThrow("formula.lines[0]");
  expect(() => replaceMaterial({ formula, material: "wax", by: "oil", at: "equal share" })).toThrow("stands in a line");
  expect(() => replaceMaterial({ formula, material: "oil", by: "wax", at: "same" as never })).toThrow('"equal active"');
});

describe("one fault breeds no other", () => {
  const materials = { oil: plain, wax: { ...plain, name: "wax" } };
  const lines = [
    { material: "wax", amount: "20 %" },
    { material: "oil", amount: "q.s." },
  ];
  const only = (of: unknown, path: string) => expect(faultsOf(of).map((fault) => fault.path)).toEqual([path]);

  test("of a material or a premix that is at fault, of which a line speaks", () => {
    const phases = [{ name: "A", lines }];
    only(document({ ...materials, wax: { ...plain, name: 5 } }, { phases }), "materials.wax.name");
    only(document({ ...materials, wax: "wax" }, { phases }), "materials.wax");
    only(
      document({ ...materials, wax: { ...plain, name: "wax", ingredients: [] } }, { phases }),
      "materials.wax.ingredients",
    );
    only(document({ oil: plain }, { phases, premixes: { wax: 5 } }), "premixes.wax");
    only(document({ oil: plain }, { phases, premixes: 5 }), "premixes");
    only({ ...document(materials, { phases }), materials: 5 }, "materials");
    only(5, "document");
    // Its strength still counts where its density is at fault, so that the sum comes out.
    const weak = { ...plain, name: "wax", strength: "50 %", density: { value: "light", at: "20 °C" } };
    const active = [
      { material: "wax", amount: "10 %", as: "active" },
      { material: "oil", amount: "80 %" },
    ];
    only(
      document({ ...materials, wax: weak }, { phases: [{ name: "A", lines: active }] }),
      "materials.wax.density.value",
    );
    only(document({ oil: plain }, { phases }), "phases[0].lines[0].material");
  });

  test("of a line, a list of lines or a phase that is at fault, of which a sum would be judged", () => {
    const of = (own: unknown, name: unknown = "A") => document(materials, { phases: [{ name, lines: own }] });
    only(of([lines[0], 5]), "phases[0].lines[1]");
    only(of(5), "phases[0].lines");
    only(of([{ material: "wax", amount: 20 }, lines[1]]), "phases[0].lines[0].amount");
    only(of([{ amount: "20 %" }, lines[1]]), "phases[0].lines[0].material");
    only(of(lines, 5), "phases[0].name");
    only(document(materials, { phases: 5 }), "phases");
    const nameless = { name: 5, lines };
    expect(
      faultsOf(
        document(materials, {
          phases: [
            { ...nameless, lines: [lines[0]] },
            { name: 5, lines: [lines[1]] },
          ],
        }),
      ).map((fault) => fault.path),
    ).toEqual(["phases[0].name", "phases[1].name"]);
    // A phase without a name has all of its lines, of which the sum is judged.
    expect(faultsOf(of([{ material: "oil", amount: "99 %" }], 5)).map((fault) => fault.path)).toEqual([
      "phases[0].name",
      "phases",
    ]);
    only(document(materials, { phases: [5] }), "phases[0]");
    only(of([{ material: "wax", amount: "20 %", as: "dry" }, lines[1]]), "phases[0].lines[0].as");
  });

  test("of names that the language keeps, which are told with all of their way", () => {
    const own = document({ ...materials, wax: { ...plain, sources: JSON.parse('{"constructor":"a book"}') } });
    expect(faultsOf(own)[0]?.path).toBe("materials.wax.sources.constructor");
    // What else is wrong is told beside it.
    expect(faultsOf({ ...own, name: 5 }).map((fault) => fault.path)).toEqual([
      "materials.wax.sources.constructor",
      "name",
    ]);
  });

  test("of premixes that go round, of which the way in is no part", () => {
    const one = (material: string) => ({ name: "p", lines: [{ material, amount: "100 %" }] });
    const premixes = { p: one("a"), a: one("b"), b: one("a") };
    const found = faultsOf(
      document(materials, { premixes, phases: [{ name: "A", lines: [{ material: "p", amount: "100 %" }] }] }),
    );
    expect(found.map((fault) => fault.found)).toEqual(["a → b → a"]);
  });
});

test("a q.s. line may give all that it has to a weaker material, and no more", () => {
  const materials = {
    strong: { ...plain, strength: "50 %" },
    weak: { ...plain, strength: "25 %" },
    oil: plain,
  };
  const formula = (amount: string) =>
    readFormula(
      document(materials, {
        phases: [
          {
            name: "A",
            lines: [
              { material: "strong", amount },
              { material: "oil", amount: "q.s." },
            ],
          },
        ],
      }),
    );
  const swap = (amount: string) =>
    replaceMaterial({ formula: formula(amount), material: "strong", by: "weak", at: "equal active" }).map(
      ({ massFraction }) => massFraction,
    );
  expect(swap("30 %")).toEqual([0.6, expect.closeTo(0.4, 12)]);
  expect(swap("50 %")).toEqual([1, 0]);
  expect(() => swap("50.1 %")).toThrow(expect.objectContaining({ code: "unreachable" }));
});
