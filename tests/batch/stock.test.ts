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

/** Each search scales some ten batches, of some lots with five lines each. */
const searches = { numRuns: 30 };

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
      searches,
    );
    expect(limited).toBeGreaterThan(5);
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
      searches,
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
      searches,
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

  test("holds whole packs in each lot, in light packs as well", () => {
    for (const oil of [200, 226.74, 301.3]) {
      const batch = { ...batchOf({ oil }, { target: { packs: 2, fillMass: "50 mg" }, allowances: [] }), lots: 2 };
      const { scaled } = largestBatch({ formula, batch });
      expect(scaled.packs).toBe(2 * (scaled.packsOfLot ?? 0));
      expect(oil - taken(scaled, "oil")).toBeLessThan(2 * digit(scaled, "oil"));
    }
  });

  test("uses up the one material on the list, whatever is there of it", () => {
    fc.assert(
      fc.property(between(5, 35), (oil) => {
        const { scaled, limitedBy } = largestBatch({ formula, batch: batchOf({ oil }, { allowances: [] }) });
        expect(limitedBy).toEqual(["oil"]);
        const left = oil - taken(scaled, "oil");
        expect(left).toBeGreaterThanOrEqual(-1e-9);
        expect(left).toBeLessThan(2 * digit(scaled, "oil"));
      }),
      searches,
    );
  });

  test("comes in as many lots as are asked for, whether they fit or not, and none of an unused material is no limit", () => {
    const lost: BatchDocument["allowances"] = [{ kind: "mass", name: "hold-up", mass: "2 kg" }];
    const batch = { ...batchOf({ oil: 99, unused: 0 }, { allowances: lost }), lots: 1 };
    const { scaled, limitedBy } = largestBatch({ formula, batch, vessel });
    expect(scaled).toMatchObject({ lots: 1, massTarget: expect.closeTo(99 / 0.66 - 2, 1) });
    expect(limitedBy).toEqual(["oil"]);
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
    expect(of({ paste: 3 })).toThrow(
      expect.objectContaining({ faults: [expect.objectContaining({ rule: "unknown-name" })] }),
    );
    expect(of({ paste: 3 })).toThrow("the key of a material of the formula, not of a premix");
    expect(of({ unused: 3 })).toThrow("stock: found unused, expected a material that the batch takes");
    expect(of({})).toThrow("stock: found");
    const { stock, ...none } = batchOf({});
    expect(() => largestBatch({ formula, batch: none, vessel })).toThrow("stock: found");
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
      searches,
    );
  });

  test("is everything without a stock list, as it is weighed", () => {
    const { scaled, materials } = materialsToBuy({ formula, batch: readBatch(document), vessel });
    expect(materials.map(({ material }) => material)).toEqual(["former", "oil", "pigment", "ester"]);
    for (const { material, needed, toBuy, ...others } of materials) {
      expect(Object.keys(others)).toEqual([]);
      expect(toBuy).toBe(needed);
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

describe("the largest batch of a vessel that is filled", () => {
  const plenty = { oil: 10_000, former: 10_000, ester: 10_000 };
  const kilograms = 0.05 * 905;
  const chargeOf = (mass: number) =>
    scaleFormula({ formula, batch: { ...readBatch(document), target: { mass }, lots: 1 }, vessel }).charge;
  // What is charged rises in proportion to what is delivered.
  const [small, large] = [chargeOf(10), chargeOf(20)];
  const massOfFull = 10 + (10 * (kilograms - small.total)) / (large.total - small.total);
  const pigmentOf = ({ lines }: ReturnType<typeof chargeOf>) =>
    lines.reduce((sum, { name, mass }) => sum + (name.endsWith("pigment") ? mass : 0), 0);
  const pigmentOfFull = pigmentOf(chargeOf(massOfFull));
  const nearlyFull = { ...vessel, volumeMin: 0.048 };
  const largest = (lots: number, of = nearlyFull) =>
    largestBatch({ formula, batch: batchOf({ ...plenty, pigment: pigmentOfFull * lots }), vessel: of });

  test("is whole lots if it has to be nearly full: for less than another one it is the vessel that needs more", () => {
    for (const lots of [1, 2, 3])
      for (const more of [0.05, 0.5]) {
        const { scaled, limitedBy } = largest(lots + more);
        expect(scaled).toMatchObject({ lots, massTarget: expect.closeTo(lots * massOfFull, 6) });
        expect(limitedBy).toEqual([]);
      }
  });

  test("is one lot more if all of them are full enough, and the material then runs out", () => {
    const { scaled, limitedBy } = largest(30.5);
    expect(scaled.lots).toBe(31);
    expect(pigmentOf(scaled.charge) * 31).toBeCloseTo(pigmentOfFull * 30.5, 6);
    expect(limitedBy).toEqual(["pigment"]);
    // A vessel that takes less takes a half-full lot too.
    expect(largest(2.5, vessel)).toMatchObject({ scaled: { lots: 3 }, limitedBy: ["pigment"] });
  });

  test("leaves what would only make up for the losses of another lot", () => {
    for (const of of [vessel, nearlyFull]) {
      const { scaled, limitedBy } = largest(2.001, of);
      expect(scaled).toMatchObject({ lots: 2, massTarget: expect.closeTo(2 * massOfFull, 6) });
      expect(limitedBy).toEqual(["pigment"]);
    }
  });

  test("is refused where the stock does not make one lot, or less than the losses", () => {
    expect(() => largest(0.5)).toThrow(/a batch that fills 0\.048 m³ of the vessel/);
    expect(() => largest(1e-4)).toThrow(CalculationError);
    const lost = batchOf({ oil: 500 }, { allowances: [{ kind: "mass", name: "hold-up", mass: "46 kg" }] });
    expect(() => largestBatch({ formula, batch: lost, vessel })).toThrow(
      "allowances: found losses that fill the vessel, expected less than 0.05 m³",
    );
  });

  test("is what the stock makes where nothing is lost, and goes by the shares of the lines, whatever they add up to", () => {
    const batch = batchOf({ oil: 100 }, { allowances: [] });
    const { scaled } = largestBatch({ formula, batch, vessel });
    expect(scaled).toMatchObject({ lots: 4, massTarget: expect.closeTo(100 / 0.66, 1) });
    const lines = formula.lines.map((line) => ({ ...line, massFraction: 2 * line.massFraction }));
    const twice = largestBatch({ formula: { ...formula, lines }, batch, vessel });
    expect(twice.scaled.massTarget).toBeCloseTo(scaled.massTarget, 9);
  });
});
