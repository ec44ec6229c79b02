import fc from "fast-check";
import { type BatchDocument, largestBatch, readBatch, scaleFormula } from "gelwright/batch";
import { readFormula } from "gelwright/formula";
import type { Quantity } from "gelwright/units";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const formula = readFormula({
  version: 1,
  name: "gel",
  materials: {
    former: { name: "gel former", function: "gel former" },
    oil: { name: "oil", function: "oil" },
  },
  phases: [
    {
      name: "A",
      lines: [
        { material: "former", amount: "9 %" },
        { material: "oil", amount: "q.s." },
      ],
    },
  ],
});

const vessel = { name: "kettle", volumeMin: 0.01, volumeMax: 0.04, diameter: 0.4 };

function read(packs: number, fill: number, more: Partial<BatchDocument> = {}) {
  return readBatch({
    version: 1,
    target: { packs, fillMass: `${fill} g` },
    density: "900 kg/m³",
    balances: [{ name: "scale", increment: "1 g", capacity: "60 kg", minimumWeight: "10 g" }],
    ...more,
  });
}

function scaled(packs: number, fill: number, more: Partial<BatchDocument> = {}) {
  return scaleFormula({ formula, batch: read(packs, fill, more), vessel });
}

describe("lots of a mass", () => {
  const ofMass = (kilograms: number, lost: Quantity<"mass">, of = vessel) =>
    scaleFormula({
      formula,
      batch: read(1, 1, {
        target: { mass: `${kilograms} kg` },
        allowances: [{ kind: "mass", name: "hold-up", mass: lost }],
      }),
      vessel: of,
    });

  test("have room for what is left beside the fixed losses of each", () => {
    // The vessel takes 36 kg, of which every lot loses 6 kg.
    expect(ofMass(30, "6 kg")).toMatchObject({ lots: 1, charge: { total: 36 } });
    expect(ofMass(30.1, "6 kg").lots).toBe(2);
    expect(ofMass(60, "6 kg").lots).toBe(2);
    expect(ofMass(60.1, "6 kg").lots).toBe(3);
    expect(() => ofMass(1, "36 kg")).toThrow("allowances: found 0.04 m³ of losses, expected less than 0.04 m³");
  });

  test("are filled enough with what they lose counted", () => {
    // From 9 kg on a lot can be stirred.
    expect(ofMass(8, "1 kg").lots).toBe(1);
    expect(() => ofMass(7.9, "1 kg")).toThrow("volume");
    expect(ofMass(1, "20 kg").lots).toBe(1);
  });

  test("ask for a vessel that is one", () => {
    for (const of of ["kettle", 5, null]) expect(() => ofMass(30, "1 kg", of as never)).toThrow("vessel: found");
  });
});

describe("lots of packs", () => {
  test("hold whole packs, which are enough, and fit the vessel", () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 2000 }), between(100, 400), (packs, fill) => {
        const { lots, packsOfLot = 0, massOfLot, lot } = scaled(packs, fill);
        expect(Number.isInteger(packsOfLot)).toBe(true);
        expect(lots * packsOfLot).toBeGreaterThanOrEqual(packs);
        expect((lots - 1) * packsOfLot).toBeLessThan(packs);
        expect(massOfLot * 1000).toBeCloseTo(packsOfLot * fill, 6);
        expect(lot.delivered).toBeGreaterThanOrEqual(massOfLot * (1 - 1e-12));
        expect(lot.total / 900).toBeLessThanOrEqual(0.04 * (1 + 1e-3));
      }),
    );
  });

  test("take one lot more where whole packs do not fit the fewest", () => {
    // 72 kg just fill two lots of 36 kg, in packs of 8 kg of which 36 kg are no whole number.
    expect(scaled(9, 8000)).toMatchObject({ lots: 3, packsOfLot: 3, massOfLot: 24 });
    expect(scaled(8, 8000)).toMatchObject({ lots: 2, packsOfLot: 4, massOfLot: 32 });
    // Four packs of 9 kg fill the vessel to the last gram.
    expect(scaled(8, 9000)).toMatchObject({ lots: 2, packsOfLot: 4, massOfLot: 36 });
    // A pack fills it: as many lots as packs.
    expect(scaled(3, 36_000)).toMatchObject({ lots: 3, packsOfLot: 1 });
  });

  test("are as many as were asked for, and no more than there are packs", () => {
    expect(scaled(100, 300, { lots: 3 })).toMatchObject({ lots: 3, packsOfLot: 34 });
    expect(scaled(100, 300)).toMatchObject({ lots: 1, packsOfLot: 100 });
    // Whether one lot fits, the plan answers.
    expect(scaled(200, 300, { lots: 1 })).toMatchObject({ lots: 1, packsOfLot: 200 });
    expect(scaled(4, 300, { lots: 4 })).toMatchObject({ lots: 4, packsOfLot: 1 });
    expect(() => scaled(4, 300, { lots: 5 })).toThrow(/lots: found 5, expected no more lots than packs, 4/);
    const batch = (more: object) => ({ ...read(4, 300), allowances: [], ...more });
    expect(() => scaleFormula({ formula, batch: batch({ lots: 5 }), vessel })).toThrow("no more lots than packs, 4");
    for (const lots of [0, 1.5]) {
      expect(() => scaleFormula({ formula, batch: batch({ lots }), vessel })).toThrow("lots: found");
      const stock = [{ material: "oil", mass: 10 }];
      expect(() => largestBatch({ formula, batch: batch({ lots, stock }), vessel })).toThrow("lots: found");
    }
    // A batch by mass has no packs to count.
    const byMass = batch({ packs: undefined, target: { mass: 20 }, lots: 5 });
    expect(scaleFormula({ formula, batch: byMass, vessel })).toMatchObject({ lots: 5, massOfLot: 4 });
  });

  test("are refused where no lot takes a whole pack", () => {
    expect(() => scaled(2, 37000)).toThrow(/a pack of 37 kg/);
  });

  test("cost what all packs cost", () => {
    const priced = readFormula({
      version: 1,
      name: "gel",
      materials: { oil: { name: "oil", function: "oil", price: "10 EUR/kg" } },
      phases: [{ name: "A", lines: [{ material: "oil", amount: "100 %" }] }],
    });
    const batch = readBatch({
      version: 1,
      target: { packs: 100, fillMass: "300 g" },
      density: "900 kg/m³",
      lots: 3,
      balances: [{ name: "scale", increment: "1 g", capacity: "60 kg", minimumWeight: "10 g" }],
    });
    const { cost } = scaleFormula({ formula: priced, batch, vessel });
    if ("notKnown" in cost) throw new Error(cost.notKnown);
    expect(cost.batch).toBeCloseTo(102 * 3, 9);
    expect(cost.perPack).toBeCloseTo(3, 9);
    expect(cost.perKilogram).toBeCloseTo(10, 9);
  });
});
