import fc from "fast-check";
import {
  brownianDiffusivity,
  coatedSphereDensity,
  compositeDensity,
  largestSuspendedDensityDifference,
  largestSuspendedDiameter,
  pecletNumber,
  sedimentationLength,
  stokesVelocity,
  yieldStressToSuspend,
} from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { without } from "../support/without.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const stresses = between(1e-3, 200);
const densities = between(1, 8000).filter((density) => Math.abs(density - 910) > 1e-3);

test("a larger yield stress never lets a smaller particle sink", () => {
  fc.assert(
    fc.property(stresses, between(1, 10), densities, (yieldStress, times, densityParticle) => {
      const gel = { densityParticle, densityFluid: 910 };
      const weak = largestSuspendedDiameter({ ...gel, yieldStress });
      const strong = largestSuspendedDiameter({ ...gel, yieldStress: yieldStress * times });
      for (const by of ["min", "value", "max"] as const) expect(strong[by]).toBeGreaterThanOrEqual(weak[by]);
      expect(weak.min).toBeLessThan(weak.value);
      expect(weak.value).toBeLessThan(weak.max);
    }),
  );
});

test("the largest particle held needs this yield stress, and so does the density at the edge", () => {
  fc.assert(
    fc.property(stresses, densities, (yieldStress, densityParticle) => {
      const gel = { densityParticle, densityFluid: 910 };
      const { min, value, max } = largestSuspendedDiameter({ ...gel, yieldStress });
      expect(off(yieldStressToSuspend({ ...gel, diameter: min }).max, yieldStress)).toBeLessThan(1e-14);
      expect(off(yieldStressToSuspend({ ...gel, diameter: value }).value, yieldStress)).toBeLessThan(1e-14);
      expect(off(yieldStressToSuspend({ ...gel, diameter: max }).min, yieldStress)).toBeLessThan(1e-14);
      const difference = largestSuspendedDensityDifference({ yieldStress, diameter: min }).min;
      expect(off(difference, Math.abs(densityParticle - 910))).toBeLessThan(1e-11);
    }),
  );
});

test("without a yield stress nothing is held for ever, and what is as dense as the gel is held without one", () => {
  const liquid = largestSuspendedDiameter({ yieldStress: 0, densityParticle: 1400, densityFluid: 910 });
  expect(liquid).toEqual({ min: 0, value: 0, max: 0 });
  expect(() => largestSuspendedDiameter({ yieldStress: 1, densityParticle: 910, densityFluid: 910 })).toThrow(
    "holds all sizes",
  );
});

test("the Péclet number is settling over diffusion, radius by radius, at any viscosity", () => {
  fc.assert(
    fc.property(between(1e-8, 1e-4), densities, between(0.01, 100), between(-20, 120), (d, density, viscosity, at) => {
      const particle = { diameter: d, densityParticle: density, densityFluid: 910, temperature: at };
      const { velocity } = stokesVelocity(without({ ...particle, viscosity, beyond: "extend" }, "temperature"));
      const spread = brownianDiffusivity({ diameter: d, viscosity, temperature: at });
      expect(off(pecletNumber(particle), (Math.abs(velocity) * d) / 2 / spread)).toBeLessThan(1e-12);
      expect(off(sedimentationLength(particle), spread / Math.abs(velocity))).toBeLessThan(1e-12);
    }),
  );
  const even = { diameter: 1e-6, densityParticle: 910, densityFluid: 910, temperature: 25 };
  expect(pecletNumber(even)).toBe(0);
  expect(() => sedimentationLength(even)).toThrow("a density other than the liquid's");
});

test("a composite lies between its parts, and a coated sphere is the composite of core and coat", () => {
  fc.assert(
    fc.property(
      between(1e-6, 1e-3),
      between(1e-8, 1e-4),
      between(500, 8000),
      between(500, 8000),
      (d, coat, core, skin) => {
        const density = coatedSphereDensity({
          diameterCore: d,
          thicknessCoat: coat,
          densityCore: core,
          densityCoat: skin,
        });
        expect(density).toBeGreaterThanOrEqual(Math.min(core, skin) * (1 - 1e-14));
        expect(density).toBeLessThanOrEqual(Math.max(core, skin) * (1 + 1e-14));
        const [inner, whole] = [d ** 3 * core, (d + 2 * coat) ** 3 * density];
        const parts = [
          { massFraction: inner / whole, density: core },
          { massFraction: 1 - inner / whole, density: skin },
        ];
        fc.pre(inner <= whole);
        expect(off(compositeDensity({ parts }), density)).toBeLessThan(1e-12);
      },
    ),
  );
  expect(() => compositeDensity({ parts: [{ massFraction: 0.9, density: 2800 }] })).toThrow("a sum of 1");
});
