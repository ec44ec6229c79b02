import fc from "fast-check";
import { molarMassOf } from "gelwright/natural-origin";
import { fattyAcid, readProfile } from "gelwright/oils";
import { expect, test } from "vitest";

test("one acid is the same under each of its usual spellings", () => {
  for (const text of ["18:2 n-6", "C18:2 n-6", "18:2n-6", "c18:2 (n-6)", "18:2 ω-6", "linoleic acid", "Linoleic"])
    expect(fattyAcid(text).shorthand).toBe("18:2 n-6");
});

test("an acid whose family is not stated has no places in its name, and no name in daily use", () => {
  const acid = fattyAcid("18:1");
  expect(acid.systematicName).toBe("octadecenoic acid");
  expect(acid.positions).toEqual([]);
  expect(acid.trivialName).toBeUndefined();
});

test("what cannot be a fatty acid is refused", () => {
  for (const text of [
    "18",
    "18:1 n-0",
    "18:1 n-17",
    "18:3 n-11",
    "18:0 n-9",
    "3:0",
    "31:0",
    "18:7",
    "06:0",
    "6:2",
    "x",
    "",
  ])
    expect(() => fattyAcid(text), text).toThrow("fatty acid");
});

test("the formula weighs what the molar mass says", () => {
  const acids = fc
    .tuple(fc.integer({ min: 20, max: 30 }), fc.integer({ min: 0, max: 6 }), fc.boolean())
    .map(([carbons, doubleBonds, hydroxyl]) => `${carbons}:${doubleBonds}${hydroxyl ? "-OH" : ""}`);
  fc.assert(
    fc.property(acids, (text) => {
      const acid = fattyAcid(text);
      expect(acid.molarMass).toBeCloseTo(molarMassOf(acid.formula), 12);
    }),
  );
});

test("double bonds stand three carbons apart and end where the family says", () => {
  const acids = fc
    .record({
      carbons: fc.integer({ min: 18, max: 30 }),
      bonds: fc.integer({ min: 1, max: 4 }),
      family: fc.integer({ min: 1, max: 6 }),
    })
    .map((acid) => ({ ...acid, text: `${acid.carbons}:${acid.bonds} n-${acid.family}` }));
  fc.assert(
    fc.property(acids, ({ text, carbons, bonds, family }) => {
      const { positions } = fattyAcid(text);
      expect(positions).toHaveLength(bonds);
      expect(positions.at(-1)).toBe(carbons - family);
      expect(positions.slice(1).map((position, i) => position - (positions[i] ?? 0))).toEqual(Array(bonds - 1).fill(3));
    }),
  );
});

test("a profile is read under any usual name, and everything that is wrong with it is said at once", () => {
  expect(readProfile({ percentages: { "Oleic acid": 60, "C18:2": 39.5 } })).toEqual({
    profile: { "18:1 n-9": 60, "18:2": 39.5 },
    sum: 99.5,
  });
  const wrong = { "oleic acid": 60, "18:1 n-9": 20, phytosterol: 3, "18:2": -1 };
  expect(() => readProfile({ percentages: wrong })).toThrow(/phytosterol[\s\S]*18:2: found -1[\s\S]*18:1 n-9 twice/);
  expect(() => readProfile({ percentages: { "18:1": 95 } })).toThrow("a sum of 95 %");
  expect(readProfile({ percentages: { "18:1": 95 }, sumTolerance: 5 }).sum).toBe(95);
});
