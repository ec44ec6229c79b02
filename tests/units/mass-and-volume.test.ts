import fc from "fast-check";
import { massOfVolume, readQuantity, volumeOfMass } from "gelwright/units";
import { expect, test } from "vitest";

const positive = fc.double({ min: 1e-9, max: 1e9, noNaN: true });

test("a mass takes the room that it was weighed out of", () => {
  fc.assert(
    fc.property(positive, positive, (volume, density) => {
      const back = volumeOfMass({ mass: massOfVolume({ volume, density }), density });
      expect(Math.abs(back - volume)).toBeLessThanOrEqual(4e-16 * volume);
    }),
  );
});

test("a US gallon of oil at 0.92 kg/L weighs 3.4825787 kg", () => {
  const volume = readQuantity("1 US gal", "volume");
  // 3.785411784 L × 0.92 kg/L, worked by hand
  expect(massOfVolume({ volume, density: readQuantity("0.92 kg/L", "density") })).toBeCloseTo(3.48257884128, 12);
});

test("a density of nothing is refused by name", () => {
  expect(() => volumeOfMass({ mass: 1, density: 0 })).toThrow("density: found 0, expected a finite number above 0");
  expect(() => massOfVolume({ volume: -1, density: 900 })).toThrow("volume: found -1");
  expect(massOfVolume({ volume: 0, density: 900 })).toBe(0);
});
