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

test("squalane meets its measured densities and the handbook's, and its index goes with them by Lorentz and Lorenz", () => {
  const { density, refractiveIndex } = oils.squalane;
  const at = (temperature: number) => density.value + (density.perKelvin ?? 0) * (temperature - density.temperature);
  // Dubey and Sharma at 25, 30 and 35 °C; the CRC Handbook at 15 °C.
  for (const [temperature, measured] of [
    [25, 805.122],
    [30, 801.912],
    [35, 798.709],
    [15, 811.515],
  ] as const)
    expect(Math.abs(at(temperature) - measured)).toBeLessThan(2 * density.standardUncertainty);
  const refractivity = (refractiveIndex.value ** 2 - 1) / (refractiveIndex.value ** 2 + 2);
  const there = (refractivity * at(25)) / at(15);
  const index = Math.sqrt((1 + 2 * there) / (1 - there));
  expect(refractiveIndex.value + 10 * (refractiveIndex.perKelvin ?? 0)).toBeCloseTo(index, 4);
  // The same for an oil: index 1.473, density 915 kg/m³, refractivity unchanged, is the steeper end.
  const n = 1.473;
  const slope = ((n * n - 1) * (n * n + 2) * oils.oilDensityPerKelvin.min) / (6 * n * 915);
  expect(oils.oilDensityPerKelvin.value).toBe(-0.67);
  expect(oils.oilRefractiveIndexPerKelvin.min).toBeCloseTo(slope, 5);
});

test("acids whose range was had otherwise than the rest of a row are acids of that row", () => {
  for (const oil of standard)
    for (const [acid, read] of Object.entries(oil.read.acids ?? {})) {
      expect(oil.profile, oil.name).toHaveProperty([acid]);
      expect(read, oil.name).not.toBe(oil.read.profile);
    }
});
