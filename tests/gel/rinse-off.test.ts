import fc from "fast-check";
import {
  densityGlycerinWater,
  gelWithWater,
  refractiveIndexGlycerinWater,
  transmittance,
  turbidity,
  waterUntilFlowing,
  waterUntilMilky,
  yieldStressOfDroplets,
} from "gelwright/gel";
import { describe, expect, test } from "vitest";
import { between } from "../support/between.js";

const oil = { refractiveIndex: 1.4509, temperature: 20 };
/** A kilogram that is matched to 0.00005. */
const phases = { massOil: 0.82, densityOil: 915, massGlycerin: 0.153, massWater: 0.027, temperature: 20 };
const gel = { ...phases, oil, diameter: 4e-6 };
const droplets = { diameter: 4e-6, interfacialTension: 0.005 };
const film = { depth: 200e-6, transmittanceMin: 0.5 };
const solids = { mass: 0.012, density: 1080, refractiveIndex: 1.47 };

/** Gels as formulators make them, with and without solids, matched to within 0.01 of the index. */
const anyGel = fc
  .record({
    massOil: between(0.6, 0.9),
    densityOil: between(850, 960),
    glycerin: between(0.6, 0.95),
    apart: between(-0.01, 0.01),
    diameter: between(1e-6, 8e-6),
    temperature: between(20, 30),
    solids: fc.option(fc.constant(solids), { nil: undefined }),
  })
  .map(({ massOil, densityOil, glycerin, apart, diameter, temperature, solids: own }) => {
    const massGlycerin = (1 - massOil) * glycerin;
    const rest = { massOil, densityOil, massGlycerin, massWater: 1 - massOil - massGlycerin, diameter, temperature };
    const { refractiveIndexOuter: outer } = gelWithWater({ ...rest, oil, temperature: 20, massWaterAdded: 0 });
    const index = { refractiveIndex: outer + apart, temperature: 20, perKelvin: -3.8e-4 };
    return { ...rest, oil: index, ...(own && { solids: own }) };
  });

describe("water in a gel of the cold route", () => {
  test("adds no more than itself: masses, volumes and the index are those of the mixture made at once", () => {
    fc.assert(
      fc.property(anyGel, between(0, 2), between(0, 2), (one, first, second) => {
        const inSteps = gelWithWater({ ...one, massWater: one.massWater + first, massWaterAdded: second });
        const atOnce = gelWithWater({ ...one, massWaterAdded: first + second });
        for (const key of ["massFractionGlycerin", "refractiveIndexOuter", "volumeFractionOil"] as const)
          expect(inSteps[key]).toBeCloseTo(atOnce[key], 12);
      }),
    );
  });

  test("lowers index and oil fraction with every drop, down to water's own index and to no oil", () => {
    fc.assert(
      fc.property(anyGel, between(0, 1), between(1e-4, 1), (one, water, more) => {
        const before = gelWithWater({ ...one, massWaterAdded: water });
        const after = gelWithWater({ ...one, massWaterAdded: water + more });
        expect(after.refractiveIndexOuter).toBeLessThan(before.refractiveIndexOuter);
        expect(after.volumeFractionOil).toBeLessThan(before.volumeFractionOil);
        expect(after.mismatch).toBeGreaterThan(before.mismatch);
      }),
    );
    const drowned = gelWithWater({ ...gel, massWaterAdded: 1e7 });
    expect(drowned.refractiveIndexOuter).toBeCloseTo(1.33303, 6);
    expect(drowned.volumeFractionOil).toBeCloseTo(0, 5);
    expect(drowned.turbidity.max).toBeLessThan(1);
  });

  test("gives the index and the packing that the table and the density of the outer phase give", () => {
    const {
      massFractionGlycerin: share,
      refractiveIndexOuter,
      volumeFractionOil,
    } = gelWithWater({
      ...gel,
      massWaterAdded: 0.05,
    });
    expect(share).toBeCloseTo(0.153 / 0.23, 14);
    expect(refractiveIndexOuter).toBe(refractiveIndexGlycerinWater({ massFractionGlycerin: share, temperature: 20 }));
    const outer = 0.23 / densityGlycerinWater({ massFractionGlycerin: share, temperature: 20 });
    expect(volumeFractionOil).toBeCloseTo(0.82 / 915 / (0.82 / 915 + outer), 14);
  });

  test("has a haze between both pictures of the droplets, wider where the mismatch is less certain", () => {
    fc.assert(
      fc.property(anyGel, between(0, 1), between(0, 0.002), (one, massWaterAdded, mismatchUncertainty) => {
        const sure = gelWithWater({ ...one, massWaterAdded, mismatchUncertainty: 0 });
        const { independent, twoPhase } = turbidity({
          volumeFractionOil: sure.volumeFractionOil,
          diameter: one.diameter,
          refractiveIndexDroplet: sure.refractiveIndexOuter + sure.mismatch,
          refractiveIndexOuter: sure.refractiveIndexOuter,
        });
        expect(sure.turbidity.min / Math.min(independent, twoPhase)).toBeCloseTo(1, 6);
        expect(sure.turbidity.max / Math.max(independent, twoPhase)).toBeCloseTo(1, 6);
        // Beyond the first maximum of the droplets' light it no longer grows with the mismatch.
        fc.pre(Math.abs(sure.mismatch) < 0.03);
        const doubted = gelWithWater({ ...one, massWaterAdded, mismatchUncertainty });
        expect(doubted.turbidity.min).toBeLessThanOrEqual(sure.turbidity.min * (1 + 1e-9));
        expect(doubted.turbidity.max).toBeGreaterThanOrEqual(sure.turbidity.max * (1 - 1e-9));
      }),
    );
  });

  test("leaves the law's strength down to 0.83 of oil, two ends of it down to 0.64, and nothing below", () => {
    const at = (massWaterAdded: number) => gelWithWater({ ...gel, ...droplets, massWaterAdded });
    const { min: toLaw, max: toTouch } = waterUntilFlowing({ ...phases, ...droplets, stress: 1 });
    const lawful = at(toLaw * (1 - 1e-9));
    const { volumeFractionOil } = lawful;
    expect(lawful.yieldStress?.value).toBe(yieldStressOfDroplets({ ...droplets, volumeFractionOil }));
    const floor = yieldStressOfDroplets({ ...droplets, volumeFractionOil: 0.83 });
    expect(at(toLaw * (1 + 1e-9)).yieldStress).toEqual({ min: 0, max: floor });
    expect(at(toTouch * (1 - 1e-9)).yieldStress).toEqual({ min: 0, max: floor });
    expect(at(toTouch * (1 + 1e-9)).yieldStress).toEqual({ min: 0, value: 0, max: 0 });
    expect("yieldStress" in gelWithWater({ ...gel, massWaterAdded: 0 })).toBe(false);
  });

  test("is followed from 20 to 30 °C, and farther where that is asked for", () => {
    const warm = { ...gel, oil: { ...oil, perKelvin: -3.8e-4 }, temperature: 38, massWaterAdded: 0.05 };
    expect(() => gelWithWater(warm)).toThrow("temperature: found 38");
    expect(gelWithWater({ ...warm, beyond: "extend" }).volumeFractionOil).toBeCloseTo(0.82, 2);
    expect(() => gelWithWater({ ...warm, beyond: "extend", temperature: 61 })).toThrow("temperature: found 61");
    expect(() => gelWithWater({ ...gel, temperature: 25, massWaterAdded: 0 })).toThrow("oil.perKelvin");
  });
});

describe("a gel that is rinsed", () => {
  const clear = (massWaterAdded: number, side: "min" | "max", one = gel, depth = film.depth) =>
    transmittance({ turbidity: gelWithWater({ ...one, massWaterAdded }).turbidity[side], depth });

  test("lets more light through just below the water that turns it than just above, by either picture", () => {
    fc.assert(
      fc.property(anyGel, between(1e-4, 1e-3), between(0.2, 0.8), (one, depth, transmittanceMin) => {
        const { min, max } = waterUntilMilky({ ...one, depth, transmittanceMin });
        for (const [water, side] of [
          [min, "max"],
          [max, "min"],
        ] as const) {
          if (water === null) continue;
          expect(clear(water * 1.0001 + 1e-12, side, one, depth)).toBeLessThanOrEqual(transmittanceMin * 1.0001);
          if (water > 0)
            expect(clear(water * 0.9999, side, one, depth)).toBeGreaterThanOrEqual(transmittanceMin * 0.9999);
        }
        expect(min).toBeLessThanOrEqual(max ?? Number.POSITIVE_INFINITY);
      }),
      { numRuns: 60 },
    );
  });

  test("turns sooner in a thicker film, and the sooner the less certain its match is", () => {
    const at = (more: object) => waterUntilMilky({ ...gel, ...film, ...more });
    expect(at({ depth: 1e-3 }).min).toBeLessThan(at({}).min);
    expect(at({ depth: 1e-3 }).max).toBeLessThan(at({}).max ?? 0);
    expect(at({ mismatchUncertainty: 0 }).min).toBeGreaterThan(at({}).min);
    expect(at({ mismatchUncertainty: 0 }).max).toBeLessThan(at({}).max ?? 0);
  });

  test("whose outer phase lies above the oil clears first, so that more water passes before it turns", () => {
    const rich = { ...gel, massGlycerin: 0.156, massWater: 0.024 };
    expect(gelWithWater({ ...rich, massWaterAdded: 0 }).mismatch).toBeLessThan(-0.002);
    const { max } = waterUntilMilky({ ...rich, ...film });
    expect(max).toBeGreaterThan(waterUntilMilky({ ...gel, ...film }).max ?? 1);
    expect(clear(0.004, "max", rich)).toBeGreaterThan(clear(0, "max", rich));
  });

  test("that is milk already needs no water; a film too thin to be milk is refused with what passes it", () => {
    const far = { ...gel, oil: { refractiveIndex: 1.47, temperature: 20 } };
    expect(waterUntilMilky({ ...far, depth: 0.01, transmittanceMin: 0.5 })).toEqual({ min: 0, max: 0 });
    const thin = { depth: 3e-7, transmittanceMin: 0.5 };
    expect(() => waterUntilMilky({ ...gel, ...thin })).toThrow(
      /transmittanceMin: found 0.5, expected above 0\.[67]\d+: so much/,
    );
  });

  test("may be milk by one picture and not by the other: then the most has no end", () => {
    const { min, max } = waterUntilMilky({ ...gel, depth: 1e-6, transmittanceMin: 0.45 });
    expect(min).toBeGreaterThan(0);
    expect(max).toBeNull();
  });

  test("flows off where its strength falls to the stress: just below it stands, just above it does not", () => {
    fc.assert(
      fc.property(between(19, 40), (stress) => {
        const { value = Number.NaN } = waterUntilFlowing({ ...phases, ...droplets, stress });
        const strength = (massWaterAdded: number) =>
          gelWithWater({ ...gel, ...droplets, massWaterAdded }).yieldStress?.value ?? Number.NaN;
        expect(strength(value * 0.999)).toBeGreaterThan(stress);
        expect(strength(value * 1.001)).toBeLessThan(stress);
      }),
    );
  });

  test("flows off between two ends where the law has ended, at no water where the stress moves it as it is", () => {
    const at = (stress: number) => waterUntilFlowing({ ...phases, ...droplets, stress });
    const weak = at(18);
    expect(weak).not.toHaveProperty("value");
    expect(at(1)).toEqual(weak);
    expect(at(18.16).value).toBeCloseTo(weak.min, 3);
    expect(at(40.3)).toEqual({ min: 0, value: 0, max: 0 });
    // Looser than the law and tighter than touching: it flows off at once or after some water.
    const loose = { ...phases, massGlycerin: 0.3, massWater: 0.05 };
    expect(waterUntilFlowing({ ...loose, ...droplets, stress: 1 }).min).toBe(0);
    expect(waterUntilFlowing({ ...loose, ...droplets, stress: 1 }).max).toBeGreaterThan(0);
    const thin = { ...phases, massGlycerin: 0.8, massWater: 0.1 };
    expect(waterUntilFlowing({ ...thin, ...droplets, stress: 1 })).toEqual({ min: 0, value: 0, max: 0 });
  });

  test("with more oil than the law was measured with has no strength that is known", () => {
    const tight = { ...phases, massGlycerin: 0.015, massWater: 0.003 };
    expect(() => waterUntilFlowing({ ...tight, ...droplets, stress: 10 })).toThrow("0.83 to 0.98 by volume");
  });

  test("needs no index to flow off, and no tension to turn milky", () => {
    expect(waterUntilFlowing({ ...phases, ...droplets, stress: 30 }).value).toBeGreaterThan(0);
    expect(waterUntilMilky({ ...phases, oil, diameter: 4e-6, ...film }).min).toBeGreaterThan(0);
  });

  test("that is none is refused by what is wrong with it", () => {
    const none = { ...gel, ...film };
    expect(() => waterUntilMilky({ ...none, massGlycerin: 0, massWater: 0 })).toThrow("massGlycerin plus massWater");
    expect(() => waterUntilMilky({ ...none, transmittanceMin: 1 })).toThrow("transmittanceMin: found 1");
    expect(() => waterUntilMilky({ ...none, transmittanceMin: 0 })).toThrow("transmittanceMin: found 0");
    expect(() => waterUntilMilky({ ...none, solids: { ...solids, density: 0 } })).toThrow("solids.density");
    expect(() => waterUntilMilky({ ...none, solids: { ...solids, refractiveIndex: 0.9 } })).toThrow(
      "solids.refractiveIndex",
    );
    expect(() => gelWithWater({ ...gel, massWaterAdded: -0.001 })).toThrow("massWaterAdded");
    expect(() => waterUntilFlowing({ ...phases, ...droplets, stress: 0 })).toThrow("stress");
  });
});
