import fc from "fast-check";
import { refractiveIndexOfMixture } from "gelwright/formula";
import {
  glycerinForIndexMatch,
  refractiveIndexGlycerinWater,
  scatteringEfficiency,
  temperatureForIndexMatch,
  transmittance,
  turbidity,
} from "gelwright/gel";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

test("more glycerin and less warmth always raise the index", () => {
  const at = (massFractionGlycerin: number, temperature: number) =>
    refractiveIndexGlycerinWater({ massFractionGlycerin, temperature });
  for (let w = 0; w < 0.985; w += 0.01) {
    expect(at(w + 0.01, 22)).toBeGreaterThan(at(w, 22));
    expect(at(w, 22)).toBeLessThan(at(w, 21));
  }
  expect(() => at(0.8, 40)).toThrow('beyond: "extend"');
});

test("a blend lies between its parts, and one part or equal parts are themselves", () => {
  const part = fc.record({
    mass: fc.double({ min: 1, max: 100, noNaN: true }),
    density: fc.double({ min: 700, max: 1300, noNaN: true }),
    refractiveIndex: fc.double({ min: 1.3, max: 1.6, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
      const blend = refractiveIndexOfMixture({ temperature: 20, parts });
      const all = parts.map((one) => one.refractiveIndex);
      expect(blend).toBeGreaterThan(Math.min(...all) - 1e-12);
      expect(blend).toBeLessThan(Math.max(...all) + 1e-12);
    }),
  );
  expect(
    refractiveIndexOfMixture({ temperature: 20, parts: [{ mass: 2, density: 900, refractiveIndex: 1.47 }] }),
  ).toBeCloseTo(1.47, 14);
});

test("the ratio that matches has the oil's index, and its tolerance moves the index by the mismatch", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1.36, max: 1.47, noNaN: true }),
      fc.double({ min: 20, max: 30, noNaN: true }),
      (refractiveIndex, temperature) => {
        const match = glycerinForIndexMatch({ oil: { refractiveIndex, temperature }, temperature, mismatch: 1e-4 });
        const at = (massFractionGlycerin: number) =>
          refractiveIndexGlycerinWater({ massFractionGlycerin, temperature });
        expect(at(match.massFractionGlycerin)).toBeCloseTo(refractiveIndex, 10);
        expect((at(match.massFractionGlycerin + match.tolerance) - refractiveIndex) / 1e-4).toBeCloseTo(1, 2);
      },
    ),
  );
});

test("above glycerin's own index there is no match, and the refusal says so", () => {
  const oil = { refractiveIndex: 1.479, temperature: 20 };
  expect(() => glycerinForIndexMatch({ oil, temperature: 20, mismatch: 0.001 })).toThrow("1.4740 (glycerin) at 20 °C");
});

test("an index has its temperature, and no other is guessed", () => {
  const oil = { refractiveIndex: 1.452, temperature: 20 };
  expect(() => glycerinForIndexMatch({ oil, temperature: 25, mismatch: 0.001 })).toThrow("oil.perKelvin");
});

test("solids of a higher index leave less glycerin to be found", () => {
  const oil = { refractiveIndex: 1.452, temperature: 25 };
  const match = (solids?: { volumeFraction: number; refractiveIndex: number }) =>
    glycerinForIndexMatch({ oil, temperature: 25, mismatch: 0.001, ...(solids && { solids }) }).massFractionGlycerin;
  expect(match({ volumeFraction: 0.1, refractiveIndex: 1.5 })).toBeLessThan(match());
  expect(match({ volumeFraction: 0, refractiveIndex: 1.5 })).toBe(match());
});

test("a match at a temperature is best at that temperature; an oil of a higher index is met when warmer", () => {
  const oil = { refractiveIndex: 1.452, temperature: 20, perKelvin: -3.8e-4 };
  const { massFractionGlycerin } = glycerinForIndexMatch({ oil, temperature: 26, mismatch: 0.001 });
  expect(temperatureForIndexMatch({ oil, massFractionGlycerin })).toBeCloseTo(26, 9);
  const higher = { ...oil, refractiveIndex: 1.4525 };
  expect(temperatureForIndexMatch({ oil: higher, massFractionGlycerin })).toBeGreaterThan(26);
  expect(() => temperatureForIndexMatch({ oil: { ...oil, refractiveIndex: 1.47 }, massFractionGlycerin })).toThrow(
    "passes through 0",
  );
});

const pair = { refractiveIndexDroplet: 1.4512, refractiveIndexOuter: 1.45 };

test("Mie becomes Rayleigh for the small and anomalous diffraction for the large and nearly matched", () => {
  const by = (diameter: number, theory: "rayleigh" | "mie" | "anomalous diffraction") =>
    scatteringEfficiency({ ...pair, diameter, theory });
  expect(by(2e-9, "mie") / by(2e-9, "rayleigh")).toBeCloseTo(1, 3);
  expect(by(2e-4, "mie") / by(2e-4, "anomalous diffraction")).toBeCloseTo(1, 2);
  // Where the choice changes hands there is no step to speak of.
  const at = (diameter: number) => scatteringEfficiency({ ...pair, diameter });
  const handOver = (1e4 * 589.3e-9) / (Math.PI * 1.45);
  expect(at(handOver * 1.0001) / at(handOver * 0.9999)).toBeCloseTo(1, 2);
});

test("light and droplet may be scaled together, and equal indices scatter nothing", () => {
  const one = scatteringEfficiency({ ...pair, diameter: 2e-6, wavelength: 500e-9 });
  expect(scatteringEfficiency({ ...pair, diameter: 4e-6, wavelength: 1000e-9 })).toBeCloseTo(one, 14);
  for (const diameter of [1e-10, 1e-6, 1e-3, 1])
    expect(scatteringEfficiency({ diameter, refractiveIndexDroplet: 1.45, refractiveIndexOuter: 1.45 })).toBe(0);
});

test("the haze of two phases rises and then falls with the oil, alike from both ends; each by itself only rises", () => {
  const at = (volumeFractionOil: number) => turbidity({ ...pair, diameter: 3e-6, volumeFractionOil });
  fc.assert(
    fc.property(between(0, 0.5), (oil) => {
      expect(Math.abs(at(oil).twoPhase - at(1 - oil).twoPhase)).toBeLessThanOrEqual(1e-12 * at(oil).twoPhase);
      expect(at(oil).twoPhase).toBeLessThanOrEqual(at(0.5).twoPhase * (1 + 1e-12));
    }),
  );
  expect(at(0.9).independent).toBeGreaterThan(at(0.8).independent);
  expect(at(0.9).twoPhase).toBeLessThan(at(0.8).twoPhase);
  expect(at(0).twoPhase).toBe(0);
});

test("for few, large, nearly matched droplets the two pictures are one", () => {
  const { independent, twoPhase } = turbidity({
    diameter: 2e-5,
    refractiveIndexDroplet: 1.4501,
    refractiveIndexOuter: 1.45,
    volumeFractionOil: 1e-6,
  });
  expect(twoPhase / independent).toBeCloseTo(1, 2);
});

test("the closed form of the two-phase light and its series meet where they change hands", () => {
  // b = 2 (k a)² is 0.05 at this diameter.
  const diameter = (Math.sqrt(0.025) * (8 / 3) * 589.3e-9) / (2 * Math.PI * 1.45);
  const at = (by: number) => turbidity({ ...pair, diameter: diameter * by, volumeFractionOil: 0.5 }).twoPhase;
  expect(at(1 + 1e-9) / at(1 - 1e-9)).toBeCloseTo(1, 7);
});

test("air is a term of its own, whatever the match", () => {
  const air = { volumeFraction: 0.01, diameter: 5e-5 };
  const matched = { refractiveIndexDroplet: 1.45, refractiveIndexOuter: 1.45, diameter: 3e-6, volumeFractionOil: 0.85 };
  const { independent, twoPhase, air: haze } = turbidity({ ...matched, air });
  expect([independent, twoPhase]).toEqual([0, 0]);
  expect(haze).toBeGreaterThan(100);
  expect(turbidity(matched).air).toBe(0);
});

test("what passes two depths is what passes each, multiplied", () => {
  const half = transmittance({ turbidity: 30, depth: 0.02 });
  expect(transmittance({ turbidity: 30, depth: 0.04 })).toBeCloseTo(half * half, 14);
  expect(transmittance({ turbidity: 0, depth: 1 })).toBe(1);
});
