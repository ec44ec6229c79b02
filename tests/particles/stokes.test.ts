import fc from "fast-check";
import { hinderedFactor, stokesVelocity } from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const particle = fc.record({
  diameter: between(1e-6, 3e-4),
  densityParticle: between(1, 4000),
  densityFluid: between(850, 1300),
  viscosity: between(0.05, 500),
});

test("twice the size sinks four times as fast, twice the viscosity half as fast", () => {
  fc.assert(
    fc.property(particle, between(1, 3), (of, factor) => {
      const { velocity } = stokesVelocity({ ...of, beyond: "extend" });
      fc.pre(velocity !== 0);
      const wider = stokesVelocity({ ...of, diameter: of.diameter * factor, beyond: "extend" });
      const thicker = stokesVelocity({ ...of, viscosity: of.viscosity * factor, beyond: "extend" });
      expect(off(wider.velocity, velocity * factor ** 2)).toBeLessThan(1e-14);
      expect(off(thicker.velocity, velocity / factor)).toBeLessThan(1e-14);
      expect(off(thicker.reynolds, wider.reynolds / factor ** 5)).toBeLessThan(1e-13);
    }),
  );
});

test("what is heavier than the liquid sinks, what is lighter rises, what is as heavy stays", () => {
  fc.assert(
    fc.property(particle, (of) => {
      const { velocity, reynolds } = stokesVelocity({ ...of, beyond: "extend" });
      expect(Math.sign(velocity)).toBe(Math.sign(of.densityParticle - of.densityFluid));
      expect(reynolds).toBeGreaterThanOrEqual(0);
    }),
  );
  const even = { diameter: 1e-4, densityParticle: 910, densityFluid: 910, viscosity: 1 };
  expect(stokesVelocity(even)).toEqual({ velocity: 0, reynolds: 0 });
});

test("from a Reynolds number of 0.1 on, Stokes' law answers only when it is told to", () => {
  const grain = { diameter: 1e-4, densityParticle: 2600, densityFluid: 1000, viscosity: 0.001 };
  expect(() => stokesVelocity(grain)).toThrow("less than 0.1 for Stokes' law (5 % off near 0.3)");
  expect(() => stokesVelocity({ ...grain, beyond: "throw" })).toThrow("reynolds");
  expect(() => stokesVelocity({ ...grain, beyond: "yes" as never })).toThrow('"throw" or "extend"');
  expect(stokesVelocity({ ...grain, beyond: "extend" }).reynolds).toBeGreaterThan(0.1);
});

test("one particle is not hindered, and more hinder more", () => {
  expect(hinderedFactor({ volumeFraction: 0 })).toBe(1);
  fc.assert(
    fc.property(between(0, 0.49), between(0.001, 0.01), (share, more) => {
      expect(hinderedFactor({ volumeFraction: share + more })).toBeLessThan(hinderedFactor({ volumeFraction: share }));
    }),
  );
});

test("coarse spheres were measured at 4.48 ± 0.04, so the factor is within 4 % of theirs up to a fifth by volume", () => {
  // Brzinski and Durian 2018, abstract: (1 − φ)^4.48 for non-Brownian spheres, from 27 sets of data.
  for (const volumeFraction of [0.01, 0.05, 0.1, 0.2])
    expect(off(hinderedFactor({ volumeFraction }), (1 - volumeFraction) ** 4.48)).toBeLessThan(0.04);
});

test("particles that already touch are refused", () => {
  expect(() => hinderedFactor({ volumeFraction: 0.51 })).toThrow("at most 0.5");
});
