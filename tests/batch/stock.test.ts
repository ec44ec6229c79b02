import fc from "fast-check";
import {
  type BatchDocument,
  largestBatch,
  materialsToBuy,
  readBatch,
  type ScaledBatch,
  scaleFormula,
} from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { readFormula } from "gelwright/formula";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";
import { allowances, balances } from "./workshop.js";

/** Pigment stands in a paste that two phases use, so that its stock goes three ways. */
const formula = readFormula({
  version: 1,
  name: "invented tinted gel",
  materials: {
    former: { name: "gel former", function: "gel former" },
    oil: { name: "sunflower oil", function: "oil" },
    ester: { name: "light ester", function: "oil" },
    pigment: { name: "red pigment", function: "colourant" },
    unused: { name: "another oil", function: "oil" },
  },
  premixes: {
    paste: {
      name: "pigment paste",
      lines: [
        { material: "pigment", amount: "40 %" },
        { material: "ester", amount: "60 %" },
      ],
    },
  },
  phases: [
    {
      name: "melt",
      lines: [
        { material: "former", amount: "9 %" },
        { material: "oil", amount: "q.s." },
        { material: "paste", amount: "2 %" },
      ],
    },
    {
      name: "late",
      lines: [
        { material: "ester", amount: "20 %" },
        { material: "paste", amount: "3 %" },
      ],
    },
  ],
});

const document: BatchDocument = {
  version: 1,
  target: { mass: "10 kg" },
  density: "905 kg/m³",
  allowances: allowances.map((one) => (one.kind === "film" ? { ...one, thickness: "1 mm" } : one)),
  balances,
};
const vessel = { name: "kettle", volumeMin: 0.005, volumeMax: 0.05, diameter: 0.38 };

const stocks = fc.record({
  oil: between(4, 400),
  former: between(0.6, 40),
  ester: between(1.5, 90),
  pigment: between(0.15, 9),
});

/** A batch with a stock of each material [kg]. */
function batchOf(stock: Readonly<Record<string, number>>, more: Partial<BatchDocument> = {}) {
  const batch = readBatch({ ...document, ...more });
  return { ...batch, stock: Object.entries(stock).map(([material, mass]) => ({ material, mass })) };
}

/** What all lots take of a material [kg]. */
function taken({ lot, lots }: ScaledBatch, key: string): number {
  return lot.lines.reduce((sum, { material, mass }) => sum + (material === key ? lots * mass : 0), 0);
}

/** By how much the weighings of a material can be off, all lots together [kg]. */
function digit({ lot, lots }: ScaledBatch, key: string): number {
  return lot.lines.reduce((sum, { material, increment }) => sum + (material === key ? lots * increment : 0), 0);
}

const hair = 1 + 1e-12;

describe("the largest batch", () => {
  test("takes no more of a material than there is, and all of the one that limits it, to the digit of its balances", () => {
    let limited = 0;
    fc.assert(
      fc.property(stocks, (stock) => {
        const { scaled, limitedBy, materials } = largestBatch({ formula, batch: batchOf(stock), vessel });
        for (const [key, mass] of Object.entries(stock)) expect(taken(scaled, key)).toBeLessThanOrEqual(mass * hair);
        for (const { material, needed, toBuy } of materials) {
          expect(needed).toBeCloseTo(taken(scaled, material), 9);
          expect(toBuy).toBe(0);
        }
        // A full vessel stops the batch between two materials' ends; all else uses something up.
        const isFull = scaled.charge.total > vessel.volumeMax * 905 * (1 - 1e-6);
        if (isFull) return;
        limited += 1;
        expect(limitedBy.length).toBeGreaterThan(0);
        for (const key of limitedBy) {
          const left = (stock as Record<string, number>)[key] as number;
          expect(left - taken(scaled, key)).toBeLessThanOrEqual(2 * digit(scaled, key));
        }
      }),
    );
    expect(limited).toBeGreaterThan(20);
  });

  test("is what scaling gives of its size, and a larger one takes more of something than there is", () => {
    fc.assert(
      fc.property(stocks, between(1.002, 1.5), (stock, factor) => {
        const batch = batchOf(stock);
        const { scaled } = largestBatch({ formula, batch, vessel });
        expect(scaleFormula({ formula, batch: { ...batch, target: { mass: scaled.massTarget } }, vessel })).toEqual(
          scaled,
        );
        const steps = Object.keys(stock).map((key) => digit(scaled, key) / taken(scaled, key));
        const larger = { mass: scaled.massTarget * (factor + 4 * Math.max(...steps)) };
        const other = scaleFormula({ formula, batch: { ...batch, target: larger }, vessel });
        expect(Object.entries(stock).some(([key, mass]) => taken(other, key) > mass)).toBe(true);
      }),
    );
  });

  test("is in whole packs, where packs are asked for, and one pack more is too many", () => {
    fc.assert(
      fc.property(stocks, fc.integer({ min: 4, max: 200 }), (stock, fill) => {
        const batch = batchOf(stock, { target: { packs: 1, fillMass: `${fill} g` } });
        const { scaled, limitedBy } = largestBatch({ formula, batch, vessel });
        const { packs = 0, packsOfLot = 0, lots } = scaled;
        expect(packsOfLot * lots).toBe(packs);
        expect(scaled.massTarget).toBeCloseTo((packs * fill) / 1000, 9);
        for (const [key, mass] of Object.entries(stock)) expect(taken(scaled, key)).toBeLessThanOrEqual(mass * hair);
        const more = { target: { mass: ((packs + 1) * fill) / 1000 }, packs: packs + 1 };
        const other = scaleFormula({ formula, batch: { ...batch, ...more }, vessel });
        const beyond = (by: number): readonly string[] =>
          Object.entries(stock).flatMap(([key, mass]) => (taken(other, key) > mass * by ? [key] : []));
        expect(limitedBy.length).toBeGreaterThan(0);
        expect(limitedBy).toEqual(expect.arrayContaining(beyond(1 + 1e-9) as string[]));
        expect(beyond(1 - 1e-9)).toEqual(expect.arrayContaining(limitedBy as string[]));
      }),
    );
  });

  test("is as large, one pack more being too many, in packs that are far lighter than a step of the balance", () => {
    const batch = batchOf({ oil: 300 }, { target: { packs: 1, fillMass: "10 mg" } });
    const { scaled, limitedBy } = largestBatch({ formula, batch, vessel });
    expect(taken(scaled, "oil")).toBeLessThanOrEqual(300 * hair);
    expect(limitedBy).toEqual(["oil"]);
    const packs = (scaled.packs ?? 0) + 1;
    const other = scaleFormula({ formula, batch: { ...batch, target: { mass: packs * 1e-5 }, packs }, vessel });
    expect(taken(other, "oil")).toBeGreaterThan(300);
  });

  test("counts the losses of every lot anew", () => {
    const batch = batchOf({ oil: 17 }, { allowances: [{ kind: "mass", name: "samples", mass: "500 g" }] });
    const one = largestBatch({ formula, batch: { ...batch, lots: 1 } });
    const three = largestBatch({ formula, batch: { ...batch, lots: 3 } });
    // Oil is 66 % of what is charged, be it sold or lost.
    expect(one.scaled.massTarget).toBeCloseTo(17 / 0.66 - 0.5, 9);
    expect(three.scaled.massTarget).toBeCloseTo(17 / 0.66 - 1.5, 1);
    expect(taken(one.scaled, "oil")).toBe(17);
    expect(one.limitedBy).toEqual(["oil"]);
  });

  test("adds up the entries of one material, and is not limited by one that has none", () => {
    const allowances: BatchDocument["allowances"] = [];
    const stock: BatchDocument["stock"] = [
      { material: "oil", mass: "10 kg" },
      { material: "oil", mass: "7 kg" },
    ];
    const { scaled, materials } = largestBatch({ formula, batch: readBatch({ ...document, allowances, stock }) });
    expect(scaled.massTarget).toBeCloseTo(17 / 0.66, 9);
    expect(materials.find(({ material }) => material === "oil")).toEqual({
      material: "oil",
      needed: 17,
      inStock: 17,
      toBuy: 0,
    });
    const former = materials.find(({ material }) => material === "former");
    expect(former).toEqual({ material: "former", needed: former?.needed, toBuy: former?.needed });
    expect(former?.needed).toBeCloseTo((17 / 0.66) * 0.09, 2);
  });

  test("is refused where the stock makes none, and says why", () => {
    const of = (stock: Readonly<Record<string, number>>, more: Partial<BatchDocument> = {}) => {
      const batch = batchOf(stock, more);
      return () => largestBatch({ formula, batch, vessel });
    };
    expect(of({ oil: 0 })).toThrow("more than the losses of the lots take");
    expect(of({ oil: 0.2 })).toThrow("more than the losses of the lots take");
    expect(of({ oil: 2 })).toThrow("a batch that fills 0.005 m³ of the vessel");
    expect(of({ oil: 3.3 }, { target: { packs: 1, fillMass: "20 kg" } })).toThrow("packs of 20 kg");
    expect(of({ oil: 8 }, { target: { packs: 200, fillMass: "100 g" }, lots: 150 })).toThrow("stock");
    expect(of({ paste: 3 })).toThrow("the key of a material of the formula, not of a premix");
    expect(of({ unused: 3 })).toThrow("a material that the batch takes");
    expect(of({})).toThrow("stock");
  });
});

describe("what to buy", () => {
  test("makes the batch possible, and a digit less of anything does not", () => {
    fc.assert(
      fc.property(stocks, between(6, 300), fc.boolean(), (stock, kilograms, inPacks) => {
        const fill = 0.03;
        const packs = Math.ceil(kilograms / fill);
        const target = inPacks ? { packs, fillMass: "30 g" } : { mass: `${kilograms} kg` };
        const batch = batchOf(stock, { target: target as BatchDocument["target"] });
        const { scaled, materials } = materialsToBuy({ formula, batch, vessel });
        const bought = Object.fromEntries(
          materials.map(({ material, inStock = 0, toBuy }) => [material, inStock + toBuy]),
        );
        const { scaled: largest } = largestBatch({
          formula,
          batch: batchOf(bought, { target: batch.packs ? { packs: 1, fillMass: "30 g" } : document.target }),
          vessel,
        });
        if (inPacks) expect(largest.packs).toBeGreaterThanOrEqual(packs);
        const steps = Object.keys(bought).map((key) => digit(scaled, key) / taken(scaled, key));
        expect(largest.massTarget).toBeGreaterThan(scaled.massTarget * (1 - 2 * Math.max(...steps)));
        for (const { material, needed, inStock = 0, toBuy } of materials) {
          expect(needed).toBeLessThanOrEqual((inStock + toBuy) * hair);
          if (toBuy > 0) expect(inStock + toBuy - needed).toBeLessThan(digit(scaled, material));
        }
      }),
    );
  });

  test("is everything without a stock list, as it is weighed", () => {
    const { scaled, materials } = materialsToBuy({ formula, batch: readBatch(document), vessel });
    expect(materials.map(({ material }) => material)).toEqual(["former", "oil", "pigment", "ester"]);
    for (const { material, needed, toBuy, inStock } of materials) {
      expect(toBuy).toBe(needed);
      expect(inStock).toBeUndefined();
      expect(needed).toBeCloseTo(taken(scaled, material), 9);
    }
  });

  test("is rounded up to the digit of the balance, which what there is need not stand on", () => {
    const batch = batchOf({ former: 0.5004 });
    const former = materialsToBuy({ formula, batch, vessel }).materials.find(({ material }) => material === "former");
    // 9 % of 10 kg with hold-up and film, and what the sample of the melt takes: 0.95308 kg.
    expect(former?.needed).toBe(0.953);
    expect(former?.toBuy).toBe(0.453);
  });
});

describe("the largest batch of a vessel that has to be nearly full", () => {
  const narrow = { ...vessel, volumeMin: 0.048 };
  const plenty = { oil: 1000, former: 1000, ester: 1000 };
  const massOfLot = largestBatch({ formula, batch: batchOf({ ...plenty, pigment: 0.9 }, { lots: 1 }), vessel: narrow });
  const oneLot = taken(massOfLot.scaled, "pigment");

  test("is whole lots: what is left over for less than another one stays, and then the vessel is the limit", () => {
    for (const lots of [1, 2, 3])
      for (const more of [0.02, 0.5]) {
        const full = 0.05 / 0.048;
        const batch = batchOf({ ...plenty, pigment: oneLot * (lots + more) });
        const { scaled, limitedBy } = largestBatch({ formula, batch, vessel: narrow });
        expect(scaled.lots).toBeGreaterThanOrEqual(1);
        expect(scaled.charge.total / 905).toBeGreaterThanOrEqual(0.048 * (1 - 1e-9));
        expect(scaled.charge.total / 905).toBeLessThanOrEqual(0.05 * (1 + 1e-3));
        expect(taken(scaled, "pigment")).toBeLessThanOrEqual(oneLot * (lots + more) * hair);
        // Nothing runs out if the rest would fill a smaller lot, yet none that the vessel takes.
        const isUsedUp = oneLot * (lots + more) - taken(scaled, "pigment") < 2 * digit(scaled, "pigment");
        expect(limitedBy.length > 0 || !isUsedUp || full < 1).toBe(true);
      }
  });

  test("is refused where the stock does not make one lot, or less than the losses", () => {
    const batch = batchOf({ ...plenty, pigment: oneLot * 0.5 });
    expect(() => largestBatch({ formula, batch, vessel: narrow })).toThrow(
      /a batch that fills 0\.048 m³ of the vessel/,
    );
    expect(() => largestBatch({ formula, batch: batchOf({ ...plenty, pigment: 1e-4 }), vessel: narrow })).toThrow(
      CalculationError,
    );
  });
});
