import fc from "fast-check";
import {
  brownianDiffusivity,
  coatedSphereDensity,
  compositeDensity,
  densityDifferenceHeld,
  largestHeld,
  pecletNumber,
  sedimentationLength,
  stokesVelocity,
  yieldStressToHold,
} from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const stresses = between(1e-3, 200);
const densities = between(1, 8000).filter((density) => Math.abs(density - 910) > 1e-3);

test("a larger yield stress never lets a smaller particle sink", () => {
  fc.assert(
    fc.property(stresses, between(1, 10), densities, (yieldStress, times, densityParticle) => {
      const gel = { densityParticle, densityFluid: 910 };
      const weak = largestHeld({ ...gel, yieldStress });
      const strong = largestHeld({ ...gel, yieldStress: yieldStress * times });
      for (const by of ["certain", "computed", "possible"] as const)
        expect(strong[by]).toBeGreaterThanOrEqual(weak[by]);
      expect(weak.certain).toBeLessThan(weak.computed);
      expect(weak.computed).toBeLessThan(weak.possible);
    }),
  );
});

test("the largest particle held needs this yield stress, and so does the density at the edge", () => {
  fc.assert(
    fc.property(stresses, densities, (yieldStress, densityParticle) => {
      const gel = { densityParticle, densityFluid: 910 };
      const { certain, computed, possible } = largestHeld({ ...gel, yieldStress });
      expect(off(yieldStressToHold({ ...gel, diameter: certain }).greatest, yieldStress)).toBeLessThan(1e-14);
      expect(off(yieldStressToHold({ ...gel, diameter: computed }).computed, yieldStress)).toBeLessThan(1e-14);
      expect(off(yieldStressToHold({ ...gel, diameter: possible }).least, yieldStress)).toBeLessThan(1e-14);
      const difference = densityDifferenceHeld({ yieldStress, diameter: certain }).certain;
      expect(off(difference, Math.abs(densityParticle - 910))).toBeLessThan(1e-11);
    }),
  );
});

test("without a yield stress nothing is held for ever, and what is as dense as the gel is held without one", () => {
  const liquid = largestHeld({ yieldStress: 0, densityParticle: 1400, densityFluid: 910 });
  expect(liquid).toEqual({ certain: 0, computed: 0, possible: 0 });
  expect(() => largestHeld({ yieldStress: 1, densityParticle: 910, densityFluid: 910 })).toThrow("holds all sizes");
});

test("the Péclet number is settling over diffusion, radius by radius, at any viscosity", () => {
  fc.assert(
    fc.property(between(1e-8, 1e-4), densities, between(0.01, 100), between(-20, 120), (d, density, viscosity, at) => {
      const particle = { diameter: d, densityParticle: density, densityFluid: 910, temperature: at };
      const { velocity } = stokesVelocity({ ...particle, viscosity, beyond: "extend" });
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
