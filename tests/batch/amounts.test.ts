import fc from "fast-check";
import { costOf, deliveredMass, reconcile, splitIntoLots, weighingTolerance } from "gelwright/batch";
import { expect, test } from "vitest";

test("a target is one amount: two are refused, and so is half of one", () => {
  expect(() => deliveredMass({ mass: 1, volume: 2, density: 900 } as never)).toThrow("one of mass, volume");
  expect(() => deliveredMass({ packs: 3, mass: 2 } as never)).toThrow("packs with a fill of each, or neither");
  expect(() => deliveredMass({ fillMass: 2 } as never)).toThrow("packs with a fill of each, or neither");
  expect(() => deliveredMass({ packs: 2.5, fillMass: 2 })).toThrow("a whole number of 1 or more");
  expect(() => deliveredMass({ mass: 2, density: 900 } as never)).toThrow("no density beside a mass");
});

test("packs are worth their fill, by mass or by volume, and a fill by mass takes no density", () => {
  expect(deliveredMass({ packs: 4, fillMass: 0.0125 })).toBe(0.05);
  expect(deliveredMass({ packs: 4, fillVolume: 2e-5, density: 900 })).toBeCloseTo(0.072, 15);
  expect(() => deliveredMass({ packs: 4, fillMass: 0.0125, density: 900 } as never)).toThrow("target.density");
  expect(() => deliveredMass({ packs: 4, fillVolume: 2e-5 } as never)).toThrow("target.density");
});

test("a weighing tolerance holds the mass, is never tighter than the balance, and can be read off it", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 100_000 }),
      fc.constantFrom(0.0001, 0.001, 0.02, 0.5),
      fc.double({ min: 1e-6, max: 0.4, noNaN: true }),
      (steps, increment, relative) => {
        const mass = Number((steps * increment).toFixed(4));
        const { min, max } = weighingTolerance({ mass, increment, relative });
        expect(mass - min).toBeGreaterThanOrEqual(increment * (1 - 1e-9));
        expect(max - mass).toBeGreaterThanOrEqual(increment * (1 - 1e-9));
        expect(Math.max(mass - min, max - mass)).toBeLessThanOrEqual(Math.max(relative * mass, increment) * (1 + 1e-9));
        for (const reading of [min, max])
          expect(Math.abs(reading / increment - Math.round(reading / increment))).toBeLessThan(1e-7);
      },
    ),
  );
});

test("the limit of an ingredient bounds the reading above, never the one below", () => {
  expect(weighingTolerance({ mass: 0.2, increment: 0.001, relative: 0.02, massMax: 0.2015 })).toEqual({
    min: 0.196,
    max: 0.201,
  });
  expect(() => weighingTolerance({ mass: 0.2, increment: 0.001, relative: 0.02, massMax: 0.1 })).toThrow(
    "massMax: found 0.1",
  );
});

test("lots are equal, within the working volume, as few as will do", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.02, max: 2, noNaN: true }), (volume) => {
      const { lots, volume: each } = splitIntoLots({ volume, volumeMin: 0.02, volumeMax: 0.05 });
      expect(lots * each).toBeCloseTo(volume, 12);
      expect(each).toBeGreaterThanOrEqual(0.02 * (1 - 1e-9));
      expect(each).toBeLessThanOrEqual(0.05 * (1 + 1e-9));
      expect((lots - 1) * 0.05).toBeLessThan(volume);
    }),
  );
});

test("a volume that is a whole number of lots takes no lot more for the noise of doubles", () => {
  expect(splitIntoLots({ volume: 0.1 + 0.2, volumeMin: 0.05, volumeMax: 0.1 }).lots).toBe(3);
});

test("a batch that no number of equal lots fits is refused with the volumes that would", () => {
  expect(() => splitIntoLots({ volume: 0.05, volumeMin: 0.035, volumeMax: 0.04 })).toThrow(
    "volume: found 0.05 m³, expected up to 0.04 m³ in 1, or from 0.07 m³ in lots of equal size: 2",
  );
  expect(() => splitIntoLots({ volume: 0.01, volumeMin: 0.03, volumeMax: 0.04 })).toThrow("expected from 0.03 m³");
});

test("losses are paid for: a kilogram delivered costs more than a kilogram charged", () => {
  const lines = [
    { name: "oil", mass: 36, pricePerKilogram: 7.5 },
    { name: "gel former", mass: 4, pricePerKilogram: 32.5 },
  ];
  const cost = costOf({ lines, delivered: 32, packs: 3200 });
  expect(cost).toEqual({
    lines: [
      { name: "oil", cost: 270 },
      { name: "gel former", cost: 130 },
    ],
    batch: 400,
    perKilogram: 12.5,
    perPack: 0.125,
  });
  const { perPack, ...others } = cost;
  expect(costOf({ lines, delivered: 32 })).toEqual(others);
});

test("a reconciliation closes: delivered, accounted for and unaccounted for make up the charge", () => {
  const mass = fc.double({ min: 0.001, max: 100, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(mass, mass), { minLength: 1, maxLength: 6 }),
      mass,
      mass,
      (weighed, delivered, lost) => {
        const lines = weighed.map(([planned, actual], i) => ({ name: `line ${i}`, planned, actual }));
        const after = reconcile({ lines, delivered, accounted: [{ name: "samples", mass: lost }] });
        expect(delivered + lost + after.unaccounted).toBeCloseTo(after.charge, 9);
        expect(after.lines.reduce((sum, { massFraction }) => sum + massFraction, 0)).toBeCloseTo(1, 12);
        expect(after.yield * after.charge).toBeCloseTo(delivered, 9);
      },
    ),
  );
});

test("each line is compared with its plan, and the batch with what came of it", () => {
  const { lines, ...all } = reconcile({
    lines: [
      { name: "oil", planned: 36, actual: 35 },
      { name: "wax", planned: 4, actual: 5 },
    ],
    delivered: 38,
    accounted: [{ name: "samples", mass: 1.5 }],
  });
  expect(lines).toEqual([
    { name: "oil", massFractionPlanned: 0.9, massFraction: 0.875, deviation: -1, deviationRelative: -1 / 36 },
    { name: "wax", massFractionPlanned: 0.1, massFraction: 0.125, deviation: 1, deviationRelative: 0.25 },
  ]);
  expect(all).toEqual({ charge: 40, yield: 0.95, unaccounted: 0.5, unaccountedFraction: 0.0125 });
});

test("a reading at an end of its tolerance is within it, and the ends may be one", () => {
  const within = (actual: number, min: number, max: number) =>
    reconcile({
      lines: [{ name: "oil", planned: 36, actual, tolerance: { min, max } }],
      delivered: 30,
      accounted: [],
    }).lines[0]?.withinTolerance;
  expect([35.7, 35.8, 36.1, 36.2].map((actual) => within(actual, 35.8, 36.1))).toEqual([false, true, true, false]);
  expect(within(36, 36, 36)).toBe(true);
  expect(() => within(36, 36.1, 36)).toThrow("lines[0].tolerance: found 36.1 to 36, expected min not above max");
});

test("a reading is within its tolerance or outside it; without a tolerance nothing is claimed", () => {
  const { lines } = reconcile({
    lines: [
      { name: "oil", planned: 36, actual: 36.2, tolerance: { min: 35.8, max: 36.1 } },
      { name: "wax", planned: 4, actual: 4, tolerance: { min: 3.99, max: 4 } },
      { name: "dye", planned: 0.1, actual: 0.1 },
    ],
    delivered: 39,
    accounted: [],
  });
  expect(lines.map(({ withinTolerance }) => withinTolerance)).toEqual([false, true, undefined]);
});
