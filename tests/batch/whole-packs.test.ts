import fc from "fast-check";
import { type BatchDocument, readBatch, scaleFormula } from "gelwright/batch";
import { readFormula } from "gelwright/formula";
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

function scaled(packs: number, fill: number, more: Partial<BatchDocument> = {}) {
  const batch = readBatch({
    version: 1,
    target: { packs, fillMass: `${fill} g` },
    density: "900 kg/m³",
    balances: [{ name: "scale", increment: "1 g", capacity: "60 kg", minimumWeight: "10 g" }],
    ...more,
  });
  return scaleFormula({ formula, batch, vessel });
}

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
  });

  test("are as many as were asked for, and no more than there are packs", () => {
    expect(scaled(100, 300, { lots: 3 })).toMatchObject({ lots: 3, packsOfLot: 34 });
    expect(scaled(100, 300)).toMatchObject({ lots: 1, packsOfLot: 100 });
    // Whether one lot fits, the plan answers.
    expect(scaled(200, 300, { lots: 1 })).toMatchObject({ lots: 1, packsOfLot: 200 });
    expect(scaled(4, 300, { lots: 4 })).toMatchObject({ lots: 4, packsOfLot: 1 });
    expect(() => scaled(4, 300, { lots: 5 })).toThrow(/lots: found 5, expected no more lots than packs, 4/);
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
  });
});
