import fc from "fast-check";
import { type BatchDocument, deliveredFrom, readBatch, roundToBalances, scaleFormula } from "gelwright/batch";
import { type FormulaDocument, type Material, readFormula } from "gelwright/formula";
import { expect, test } from "vitest";
import { allowances, balances } from "./workshop.js";

const formulaDocument: FormulaDocument = {
  version: 1,
  name: "invented trial gel",
  materials: {
    former: { name: "gel former", function: "gel former", price: "32 EUR/kg" },
    oil: { name: "sunflower oil", function: "oil", price: "4 EUR/kg" },
    ester: { name: "light ester", function: "oil", price: "9 EUR/kg" },
    tocopherol: { name: "tocopherol", function: "antioxidant", price: "60 EUR/kg" },
    fragrance: { name: "fragrance", function: "fragrance", price: "85 EUR/kg", limits: { shareMax: "0.5 %" } },
  },
  phases: [
    {
      name: "melt",
      lines: [
        { material: "former", amount: "9 %" },
        { material: "oil", amount: "q.s." },
        { material: "tocopherol", amount: "0.2 %" },
      ],
    },
    {
      name: "late",
      lines: [
        { material: "ester", amount: "20 %" },
        { material: "fragrance", amount: "0.5 %" },
      ],
    },
  ],
};
const formula = readFormula(formulaDocument);

const batchDocument: BatchDocument = {
  version: 1,
  target: { packs: 2500, fillVolume: "15 mL" },
  density: "905 kg/m³",
  allowances,
  balances,
};
const batch = readBatch(batchDocument);
const kettle = { name: "kettle", volumeMin: 0.015, volumeMax: 0.05, diameter: 0.38 };

const sumInTenths = (masses: readonly number[]) => masses.reduce((sum, mass) => sum + Math.round(mass * 1e4), 0) / 1e4;

test("the packs asked for are reached after all allowances, and not by much more", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1100, max: 2900 }),
      fc.double({ min: 2, max: 40, noNaN: true }),
      (packs, yieldStress) => {
        const { target } = readBatch({ ...batchDocument, target: { packs, fillVolume: "15 mL" } });
        const scaled = scaleFormula({ formula, batch: { ...batch, target, packs }, vessel: kettle, yieldStress });
        const asked = (packs * 15e-6 * 905) / scaled.lots;
        expect(scaled.lot.delivered).toBeGreaterThanOrEqual(asked * (1 - 1e-12));
        expect(scaled.lot.delivered).toBeLessThan(asked + 0.04);
        expect(scaled.lot.total).toBe(sumInTenths(scaled.lot.lines.map(({ mass }) => mass)));
      },
    ),
    { numRuns: 60 },
  );
});

test("every line stands on the finest balance that carries it, in portions that add up, inside its tolerance", () => {
  const { lot } = scaleFormula({ formula, batch, vessel: kettle, yieldStress: 12 });
  expect(lot.lines.map(({ material, balance }) => [material, balance])).toEqual([
    ["former", "bench"],
    ["oil", "floor"],
    ["tocopherol", "fine"],
    ["ester", "bench"],
    ["fragrance", "fine"],
  ]);
  for (const line of lot.lines) {
    expect(sumInTenths(line.portions)).toBe(line.mass);
    expect(line.tolerance.min).toBeLessThan(line.mass);
    expect(line.tolerance.max).toBeGreaterThanOrEqual(line.mass);
  }
});

test("a mass above every capacity comes in portions that the balance can carry and show", () => {
  const small = readBatch({
    ...batchDocument,
    target: { mass: "100 kg" },
    balances: [...balances.slice(0, 2), { name: "floor", increment: "20 g", capacity: "30 kg", minimumWeight: "5 kg" }],
    tare: "500 g",
    allowances: [],
  });
  const oil = scaleFormula({ formula, batch: small }).lot.lines.find(({ material }) => material === "oil");
  expect(oil?.portions).toEqual([23.42, 23.44, 23.44]);
  expect(oil?.mass).toBe(70.3);
});

test("an ingredient at its limit is not lifted over it, by rounding or by tolerance", () => {
  const { lot, charge } = scaleFormula({ formula, batch, vessel: kettle, yieldStress: 12 });
  const fragrance = lot.lines.find(({ material }) => material === "fragrance");
  const exact = charge.lines.find(({ name }) => name === "late: fragrance");
  expect(fragrance?.mass).toBeLessThanOrEqual((exact?.mass ?? 0) * (1 + 1e-12));
  expect(fragrance?.tolerance.max).toBeLessThanOrEqual((exact?.mass ?? 0) * (1 + 1e-12));
});

test("a batch too large for the vessel is split, and each lot has its own fixed losses", () => {
  const large = readBatch({ ...batchDocument, target: { mass: "100 kg" } });
  const { lots, charge, massTarget } = scaleFormula({ formula, batch: large, vessel: kettle, yieldStress: 12 });
  expect(lots).toBe(3);
  expect(charge.total / 905).toBeLessThanOrEqual(kettle.volumeMax);
  expect(deliveredFrom({ charge: charge.lines, allowances: [] }).mass).toBe(charge.total);
  expect(charge.allowances.find(({ name }) => name.startsWith("hold-up"))?.mass).toBe(0.35);
  expect(massTarget).toBe(100);
});

test("the cost counts every lot and is spread over what arrives; an unknown price leaves it unknown", () => {
  const { cost, lot } = scaleFormula({ formula, batch, vessel: kettle, yieldStress: 12 });
  const prices = [32, 4, 60, 9, 85];
  const expected = lot.lines.reduce((sum, line, i) => sum + line.mass * (prices[i] ?? 0), 0);
  expect(cost).toMatchObject({ currency: "EUR" });
  expect("batch" in cost && cost.batch).toBeCloseTo(expected, 9);
  expect("perPack" in cost && cost.perPack).toBeCloseTo(expected / 2500, 9);
  const unpriced = readFormula({
    ...formulaDocument,
    materials: { ...formulaDocument.materials, oil: { name: "sunflower oil", function: "oil" } },
  });
  expect(scaleFormula({ formula: unpriced, batch, vessel: kettle, yieldStress: 12 }).cost).toEqual({
    notKnown: "no price: sunflower oil",
  });
});

test("prices of two currencies are not added up, and a material without an entry has no price", () => {
  const of = (materials: object) =>
    scaleFormula({
      formula: { ...formula, materials: { ...formula.materials, ...materials } as typeof formula.materials },
      batch,
      vessel: kettle,
      yieldStress: 12,
    }).cost;
  const price = { perKilogram: 9, currency: "USD" };
  expect(of({ ester: { ...formula.materials["ester"], price } })).toEqual({ notKnown: "prices in EUR and USD" });
  expect(of({ ester: undefined })).toEqual({ notKnown: "no price: ester" });
});

/** Weighed in 18.05 kg: 10.108 kg of oil on the floor scale in steps of 20 g, two esters on the bench scale in grams. */
const threeLines = (more: object = {}) =>
  scaleFormula({
    formula: {
      ...formula,
      lines: [
        { material: "light", phase: "A", massFraction: 0.17, carrier: true },
        { material: "heavy", phase: "A", massFraction: 0.27, carrier: true },
        { material: "oil", phase: "A", massFraction: 0.56, carrier: false },
      ],
      materials: Object.fromEntries(
        ["light", "heavy", "oil"].map((key) => [key, { ...(formula.materials["oil"] as Material), key, ...more }]),
      ),
    },
    batch: readBatch({
      version: 1,
      target: { mass: "18.05 kg" },
      balances: [
        { name: "bench", increment: "1 g", capacity: "8 kg", minimumWeight: "2 g" },
        { name: "floor", increment: "20 g", capacity: "150 kg", minimumWeight: "2 kg" },
      ],
    }),
  }).lot;

test("of two lines that take the rest the larger one makes up the total", () => {
  const { lines, total } = threeLines();
  expect(total).toBe(18.05);
  const off = lines.map(({ mass, massExact }) => Math.abs(mass - massExact));
  expect(lines[2]?.mass).toBe(10.1);
  expect(off[1]).toBeGreaterThan(0.007);
  expect(off[0]).toBeLessThan(0.001);
});

test("a material above its limit is weighed as the formula says: whether it may be there is another question", () => {
  const { lines } = threeLines({ massFractionMax: 0.25 });
  expect(lines.map(({ mass }) => mass)).toEqual(threeLines().lines.map(({ mass }) => mass));
  // Of the line below its limit no more is accepted than the limit.
  expect(lines[0]?.tolerance.max).toBe(3.084);
  expect(threeLines({ massFractionMax: 0.1701 }).lines[0]?.tolerance.max).toBe(3.07);
});

test("what is weighed is the smallest total that brings what was asked for: with a step less it would not", () => {
  let more = 0;
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 15, noNaN: true }),
      fc.double({ min: 0.1, max: 0.5, noNaN: true }),
      (target, volatile) => {
        const allowances = [{ kind: "share" as const, name: "evaporation", fraction: 0.6, materials: ["water"] }];
        const lines = [
          { material: "water", phase: "A", massFraction: volatile, carrier: false },
          { material: "oil", phase: "A", massFraction: 1 - volatile, carrier: false },
        ];
        const balance = { name: "scale", increment: 0.1, capacity: 60, minimumWeight: 0.2 };
        const { lot, charge, massOfLot } = scaleFormula({
          formula: { ...formula, lines, materials: {} },
          batch: { target: { mass: target }, allowances, balances: [balance], tare: 0, tolerance: 0.1 },
        });
        expect(lot.delivered).toBeGreaterThanOrEqual(massOfLot * (1 - 1e-12));
        const exact = charge.lines.map(({ name, mass }) => ({ name, mass, increment: 0.1 }));
        const smaller = roundToBalances({ lines: exact, totalMin: lot.total - 0.1 }).lines;
        if (lot.onGrid || lot.total - 0.1 < charge.total) return;
        more += 1;
        const lost = [{ kind: "proportional" as const, name: "evaporation", fraction: 0.6, lines: ["A: water"] }];
        expect(deliveredFrom({ charge: smaller, allowances: lost }).mass).toBeLessThan(massOfLot);
      },
    ),
  );
  expect(more).toBeGreaterThan(5);
});

test("every line that no balance can weigh is named at once", () => {
  const small = readBatch({ ...batchDocument, target: { mass: "100 g" }, allowances: [] });
  const scale = () => scaleFormula({ formula, batch: small });
  expect(scale).toThrow("melt: tocopherol: found 0.0002 kg");
  expect(scale).toThrow("late: fragrance: found 0.0005 kg");
});

test("what is missing is asked for", () => {
  expect(() => scaleFormula({ formula, batch })).toThrow("allowances[2]: found no vessel");
  expect(() => scaleFormula({ formula, batch, vessel: kettle })).toThrow("allowances[2].thickness: found nothing");
  expect(() => scaleFormula({ formula, batch: { ...batch, density: undefined } })).toThrow("density: found nothing");
  const stranger = readBatch({
    ...batchDocument,
    allowances: [{ kind: "share", name: "evaporation", share: "1 %", materials: ["water"] }],
  });
  expect(() => scaleFormula({ formula, batch: stranger })).toThrow("allowances[0]: found water");
});
