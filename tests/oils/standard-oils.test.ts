import * as oils from "gelwright/oils";
import { expect, test } from "vitest";

const standard = Object.values(oils).filter(
  (member): member is oils.StandardOil => typeof member === "object" && "saponificationValue" in member,
);

test("every range of the reference set runs from its least to its greatest", () => {
  expect(standard.length).toBeGreaterThan(15);
  for (const oil of standard) {
    const dependent = [...oil.relativeDensity, ...oil.refractiveIndex].map((each) => each.range);
    for (const [min, max] of [
      ...Object.values(oil.profile),
      oil.iodineValue,
      oil.saponificationValue,
      ...(oil.tocols ? [oil.tocols] : []),
      ...dependent,
    ])
      expect(min, oil.name).toBeLessThanOrEqual(max);
  }
});

test("every oil of the reference set has a name of its own, a standard, and a mark of trust for every figure", () => {
  expect(new Set(standard.map((oil) => oil.name)).size).toBe(standard.length);
  for (const oil of standard) {
    expect(oil.standard).not.toBe("");
    expect("tocols" in oil).toBe("tocols" in oil.read);
  }
});

test("the ranges calculated from each profile overlap the standard's own iodine and saponification values", () => {
  for (const oil of standard) {
    const calculated = oils.profileValueRanges({ ranges: oil.profile });
    expect(calculated.iodineValue[0], oil.name).toBeLessThanOrEqual(oil.iodineValue[1]);
    expect(calculated.iodineValue[1], oil.name).toBeGreaterThanOrEqual(oil.iodineValue[0]);
    expect(calculated.saponificationValue[0], oil.name).toBeLessThanOrEqual(oil.saponificationValue[1]);
    expect(calculated.saponificationValue[1], oil.name).toBeGreaterThanOrEqual(oil.saponificationValue[0]);
  }
});

test("a defined compound weighs what its formula says", () => {
  for (const compound of [oils.squalane, oils.glycerin]) {
    const [, carbons, hydrogens, oxygens = 0] = /^C(\d+)H(\d+)(?:O(\d+))?$/.exec(compound.formula) ?? [];
    const grams = 12.011 * Number(carbons) + 1.008 * Number(hydrogens) + 15.999 * Number(oxygens);
    expect(compound.molarMass * 1000, compound.name).toBeCloseTo(grams, 2);
  }
});
