import fc from "fast-check";
import { type DragLaw, dragCoefficient, hinderedFactor, stokesVelocity, terminalVelocity } from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

const spheres: readonly DragLaw[] = [
  { law: "stokes" },
  { law: "schiller-naumann" },
  { law: "cheng" },
  { law: "haider-levenspiel" },
  { law: "haider-levenspiel", sphericity: 1 },
  { law: "ganser", sphericity: 1 },
];
const beyondStokes = fc.constantFrom<DragLaw>(
  ...spheres.slice(1),
  { law: "haider-levenspiel", sphericity: 0.7 },
  { law: "ganser", sphericity: 0.45 },
);
const grain = fc.record({
  diameter: between(1e-5, 2e-3),
  densityParticle: between(1, 4000).filter((density) => Math.abs(density - 900) > 20),
  densityFluid: fc.constant(900),
  viscosity: between(0.005, 50),
  beyond: fc.constant("extend" as const),
});

test.each(spheres)("in creeping flow a sphere by %j is Stokes' sphere", (drag) => {
  const bead = { diameter: 1e-6, densityParticle: 1400, densityFluid: 910, viscosity: 10 };
  expect(off(terminalVelocity({ ...bead, drag }).velocity, stokesVelocity(bead).velocity)).toBeLessThan(1e-5);
  expect(off(dragCoefficient({ reynolds: 1e-9, drag }), 24 / 1e-9)).toBeLessThan(1e-4);
});

test("weight less buoyancy is the drag, at any velocity", () => {
  fc.assert(
    fc.property(grain, beyondStokes, (of, drag) => {
      const { velocity, reynolds } = terminalVelocity({ ...of, drag });
      const coefficient = dragCoefficient({ reynolds, drag, beyond: "extend" });
      const force = ((coefficient * Math.PI) / 8) * of.densityFluid * velocity ** 2 * of.diameter ** 2;
      const weight = (Math.PI / 6) * of.diameter ** 3 * Math.abs(of.densityParticle - of.densityFluid) * 9.80665;
      expect(off(force, weight)).toBeLessThan(1e-12);
      expect(off(reynolds, (of.densityFluid * Math.abs(velocity) * of.diameter) / of.viscosity)).toBeLessThan(1e-13);
      expect(Math.sign(velocity)).toBe(Math.sign(of.densityParticle - of.densityFluid));
    }),
  );
});

test("inertia slows: no law of a sphere is faster than Stokes' law", () => {
  fc.assert(
    fc.property(grain, beyondStokes, (of, drag) => {
      const { velocity } = terminalVelocity({ ...of, drag });
      expect(Math.abs(velocity)).toBeLessThanOrEqual(Math.abs(stokesVelocity(of).velocity) * (1 + 1e-14));
    }),
  );
});

test("a coarser or heavier grain is faster, a thicker oil slows it", () => {
  fc.assert(
    fc.property(grain, beyondStokes, between(1.01, 3), (of, drag, times) => {
      const speed = (change: object) => Math.abs(terminalVelocity({ ...of, ...change, drag }).velocity);
      const heavy = 900 + (Math.max(of.densityParticle, 1000) - 900) * times;
      expect(speed({ diameter: of.diameter * times })).toBeGreaterThan(speed({}));
      expect(speed({ densityParticle: heavy })).toBeGreaterThan(
        speed({ densityParticle: Math.max(of.densityParticle, 1000) }),
      );
      expect(speed({ viscosity: of.viscosity * times })).toBeLessThan(speed({}));
    }),
  );
});

test("only dimensionless numbers count: in other units of length, mass and time the velocity is the same", () => {
  // Gravity is fixed, so length scales as time squared.
  fc.assert(
    fc.property(grain, beyondStokes, between(0.5, 2), between(0.5, 2), (of, drag, time, mass) => {
      const length = time ** 2;
      const scaled = terminalVelocity({
        diameter: of.diameter * length,
        densityParticle: (of.densityParticle * mass) / length ** 3,
        densityFluid: (of.densityFluid * mass) / length ** 3,
        viscosity: (of.viscosity * mass) / (length * time),
        drag,
        beyond: "extend",
      });
      const plain = terminalVelocity({ ...of, drag });
      expect(off(scaled.velocity, (plain.velocity * length) / time)).toBeLessThan(1e-11);
      expect(off(scaled.reynolds, plain.reynolds)).toBeLessThan(1e-11);
    }),
  );
});

test("good correlations of a sphere differ by less than 8 % up to Re 1000", () => {
  for (const reynolds of [0.1, 1, 10, 100, 999]) {
    const cheng = dragCoefficient({ reynolds, drag: { law: "cheng" } });
    expect(off(dragCoefficient({ reynolds, drag: { law: "schiller-naumann" } }), cheng)).toBeLessThan(0.08);
    expect(off(dragCoefficient({ reynolds, drag: { law: "haider-levenspiel" } }), cheng)).toBeLessThan(0.08);
  }
});

test("beyond creeping flow the hindrance weakens, in Richardson and Zaki's steps", () => {
  const exponent = (reynolds: number) => Math.log(hinderedFactor({ volumeFraction: 0.1, reynolds })) / Math.log(0.9);
  expect([0, 0.01, 0.5, 40, 500, 1e4].map((reynolds) => exponent(reynolds).toFixed(4))).toEqual([
    "4.6500",
    "4.6500",
    "4.4414",
    "3.0772",
    "2.3900",
    "2.3900",
  ]);
  fc.assert(
    fc.property(between(0, 0.5), between(0, 1e5), (volumeFraction, reynolds) => {
      const factor = hinderedFactor({ volumeFraction, reynolds });
      expect(factor).toBeLessThanOrEqual(1);
      expect(factor).toBeGreaterThanOrEqual(hinderedFactor({ volumeFraction }) * (1 - 1e-15));
    }),
  );
});

test.each([
  [
    "a sphere too fast for Schiller and Naumann",
    { drag: { law: "schiller-naumann" } },
    'the drag law "schiller-naumann"',
  ],
  ["a law that is none", { drag: { law: "newton" } }, "a drag law"],
  ["a grain rounder than a sphere", { drag: { law: "ganser", sphericity: 1.1 } }, "at most 1"],
  ["a grain that nobody measured", { drag: { law: "ganser", sphericity: 0.05 } }, "0.09 to 1"],
  [
    "a disc too fast for creeping flow",
    { drag: { law: "disc", aspectRatio: 0.1, orientation: "edgewise" } },
    "less than 0.1",
  ],
])("%s is refused", (_name, change, message) => {
  const stone = { diameter: 5e-3, densityParticle: 2650, densityFluid: 998, viscosity: 0.001 };
  expect(() => terminalVelocity({ ...stone, ...change } as never)).toThrow(message);
});

test("Ganser's logarithm is decimal: only so does his law meet Haider and Levenspiel's where inertia rules", () => {
  for (const sphericity of [0.67, 0.75, 0.846, 0.906, 0.95]) {
    const at = (drag: DragLaw) => dragCoefficient({ reynolds: 1e4, drag });
    const ganser = at({ law: "ganser", sphericity });
    expect(off(ganser, at({ law: "haider-levenspiel", sphericity }))).toBeLessThan(0.2);
    // With the natural one the part of inertia alone would be this much more.
    const factor = (log: (of: number) => number) => 10 ** (1.8148 * (-log(sphericity)) ** 0.5743);
    const tail = (0.4305 * factor(Math.log)) / (1 + 3305 / (1e4 * factor(Math.log)));
    expect(tail / at({ law: "haider-levenspiel", sphericity })).toBeGreaterThan(1.2);
  }
});
