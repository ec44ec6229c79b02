import fc from "fast-check";
import {
  fillerVolume,
  fillLimits,
  fillMass,
  headSpace,
  overfillCost,
  packsFromBatch,
  spreadOfFill,
  topUp,
  volumeExpansion,
} from "gelwright/packing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { normals } from "./normals.js";

const density = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;

test("a filler set for the temperature of filling delivers the mass of the nominal volume", () => {
  fc.assert(
    fc.property(between(1e-6, 1e-3), between(10, 95), (volume, temperatureFill) => {
      const mass = fillMass({ volume, density });
      const setting = fillerVolume({ mass, density, temperatureFill });
      const expansion = volumeExpansion({ density, temperatureStart: 20, temperatureEnd: temperatureFill });
      expect(setting / volume - 1).toBeCloseTo(expansion, 10);
      expect(fillMass({ volume: setting, density, temperature: temperatureFill }) / mass).toBeCloseTo(1, 12);
    }),
  );
});

test("the tare's spread is taken out: simulated packs give back the spread that they were filled with", () => {
  const next = normals(3);
  const tares = () => 0.02 + 0.0004 * next();
  const gross = Array.from({ length: 4000 }, () => tares() + 0.0504 + 0.0006 * next());
  const fill = spreadOfFill({ gross, tare: Array.from({ length: 4000 }, tares) });
  expect(fill.mean).toBeCloseTo(0.0504, 4);
  expect(Math.abs(fill.spread / 0.0006 - 1)).toBeLessThan(0.05);
  expect(fill.spreadGross ** 2).toBeCloseTo(fill.spread ** 2 + fill.spreadTare ** 2, 15);
  expect(() => spreadOfFill({ gross: [0.07, 0.0701], tare: [0.02, 0.03] })).toThrow("tares that vary less");
});

test("packs, what is kept and what is left make up the batch, and what is left fills no pack", () => {
  fc.assert(
    fc.property(
      between(1, 1000),
      between(0.005, 0.5),
      between(0, 1),
      between(0, 0.1),
      (massBatch, massFill, kept, lost) => {
        const { packs, packsForSale, massLeft } = packsFromBatch({
          massBatch,
          massFill,
          massKept: kept,
          shareRejected: lost,
        });
        expect(packs * massFill + massLeft + kept).toBeCloseTo(massBatch, 6);
        expect(massLeft).toBeLessThan(massFill * (1 + 1e-9));
        expect(packsForSale).toBeLessThanOrEqual(packs);
        expect(packsForSale).toBeGreaterThan(packs * (1 - lost) - 1);
      },
    ),
  );
});

test("a batch that holds a whole number of packs yields that number, whatever the last bit says", () => {
  for (let packs = 1; packs <= 2000; packs += 1)
    expect(packsFromBatch({ massBatch: packs * 0.0504, massFill: 0.0504 }).packs).toBe(packs);
});

test("overfill of no gram costs nothing, and of a gram what a gram costs in each pack", () => {
  expect(overfillCost({ massFill: 0.05, nominal: 0.05, price: 30, packs: 100 }).cost).toBe(0);
  expect(overfillCost({ massFill: 0.051, nominal: 0.05, price: 30, packs: 100 }).cost).toBeCloseTo(3, 9);
  expect(() => overfillCost({ massFill: 0.049, nominal: 0.05, price: 30, packs: 100 })).toThrow("not below nominal");
});

test("limits of a mean are those of single packs, drawn in by the root of their number", () => {
  const { single, mean } = fillLimits({
    massFill: 0.05,
    spread: 0.0006,
    sampleSize: 9,
    massTare: 0.02,
    spreadTare: 0.0008,
  });
  expect(single.max - single.min).toBeCloseTo(6 * 0.001, 12);
  expect((single.max - single.min) / (mean.max - mean.min)).toBeCloseTo(3, 9);
  expect((single.max + single.min) / 2).toBeCloseTo(0.07, 12);
});

test("a hotter storage leaves less room and more pressure, until the product fills the pack", () => {
  const jar = { volumePack: 56e-6, density, temperatureClosing: 20 };
  fc.assert(
    fc.property(between(0.03, 0.05), between(20, 70), between(20, 70), (mass, one, other) => {
      const at = (temperatureMax: number) => headSpace({ ...jar, mass, temperatureMax });
      const [cool, hot] = [at(Math.min(one, other)), at(Math.max(one, other))];
      expect(hot.volumeHot).toBeLessThanOrEqual(cool.volumeHot);
      if (hot.pressureHot === null) {
        expect(hot.volumeHot).toBeLessThanOrEqual(0);
        expect(hot.temperatureFull).toBeGreaterThan(20);
        // At that temperature the density of the product is that of a full pack.
        expect(915 - 0.64 * ((hot.temperatureFull ?? 0) - 20)).toBeCloseTo(mass / 56e-6, 6);
      } else expect(hot.pressureHot).toBeGreaterThanOrEqual(cool.pressureHot ?? Number.POSITIVE_INFINITY);
    }),
  );
});

test("a head space that keeps its size warms at constant volume, and the vapour of the product comes on top", () => {
  const constant = { law: "constant", density: 900 } as const;
  const jar = { volumePack: 60e-6, mass: 0.045, density: constant, temperatureClosing: 20, temperatureMax: 50 };
  expect(headSpace(jar).pressureHot).toBeCloseTo((101325 * 323.15) / 293.15, 6);
  const moist = headSpace({ ...jar, vapourPressureClosing: 2339, vapourPressureMax: 12352 });
  expect(moist.pressureHot).toBeCloseTo(((101325 - 2339) * 323.15) / 293.15 + 12352, 6);
  expect(() => headSpace({ ...jar, mass: 0.06 })).toThrow("a fill that fits the pack");
});

test("two pours add up to the content, and the second one fits what the first has sunk", () => {
  fc.assert(
    fc.property(
      between(0.04, 0.047),
      between(50, 90),
      between(20, 45),
      (massFill, temperatureFill, temperatureTopUp) => {
        const pours = { massFill, volumeMark: 51.5e-6, density, temperatureFill, temperatureTopUp };
        try {
          const { massFirst, massTopUp, volumeLeft, volumeSunk } = topUp(pours);
          expect(massFirst + massTopUp).toBeCloseTo(massFill, 12);
          expect(massTopUp).toBeGreaterThanOrEqual(0);
          expect(volumeLeft).toBeGreaterThanOrEqual(massTopUp > 0 ? 0 : -1e-12);
          if (massTopUp > 0) expect(volumeSunk).toBeGreaterThan(volumeLeft - 1e-15);
        } catch (error) {
          // Refused only where two pours hold less than the content.
          const hot = 915 - 0.64 * (temperatureFill - 20);
          const cold = 915 - 0.64 * (temperatureTopUp - 20);
          const first = hot * 51.5e-6;
          expect(first + (51.5e-6 - first / cold) * hot).toBeLessThan(massFill);
          expect(String(error)).toContain("two pours");
        }
      },
    ),
  );
});

test("a content that stands at the mark after one pour is no overflow, whatever the last bit says", () => {
  fc.assert(
    fc.property(between(1e-6, 1e-3), between(20, 90), (volumeMark, temperatureFill) => {
      const massFill = fillMass({ volume: volumeMark, density, temperature: temperatureFill });
      const pours = topUp({ massFill, volumeMark, density, temperatureFill, temperatureTopUp: temperatureFill });
      expect(pours.massTopUp).toBe(0);
      expect(Math.abs(pours.volumeLeft) / volumeMark).toBeLessThan(1e-15);
    }),
  );
});
