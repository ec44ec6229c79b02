import fc from "fast-check";
import {
  type DragLaw,
  dragCoefficient,
  flakeOfVolume,
  flakeShape,
  stokesVelocity,
  terminalVelocity,
  thickestSuspendedFlake,
  yieldStressToSuspend,
  yieldStressToSuspendFlake,
} from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const ratios = between(1e-4, 1);

/** The drag in creeping flow over that of the sphere of equal volume. */
const factor = (drag: DragLaw) => dragCoefficient({ reynolds: 0.024, drag, beyond: "extend" }) / 1000;

test("face on is slowest, edge on fastest, tumbling between them", () => {
  fc.assert(
    fc.property(ratios, (aspectRatio) => {
      const [face, tumbling, edge] = (["broadside", "random", "edgewise"] as const).map((orientation) =>
        factor({ law: "spheroid", aspectRatio, orientation }),
      ) as [number, number, number];
      expect(face).toBeGreaterThanOrEqual(tumbling * (1 - 1e-13));
      expect(tumbling).toBeGreaterThanOrEqual(edge * (1 - 1e-13));
      // A ball that is flattened a little slips through edge on, up to 2 % faster than as a ball.
      expect(edge).toBeGreaterThan(aspectRatio < 0.49 ? 1 : 0.98);
    }),
  );
});

test("flatter is slower, without a seam where the series takes over near a sphere", () => {
  const of = (aspectRatio: number) => factor({ law: "spheroid", aspectRatio, orientation: "broadside" });
  fc.assert(
    fc.property(between(0.01, 0.99), (aspectRatio) => {
      expect(of(aspectRatio)).toBeGreaterThan(of(aspectRatio + 0.005));
    }),
  );
  const seam = Math.sqrt(0.9);
  for (const orientation of ["broadside", "edgewise"] as const) {
    const [below, above] = [seam - 1e-12, seam + 1e-12].map((aspectRatio) =>
      factor({ law: "spheroid", aspectRatio, orientation }),
    ) as [number, number];
    expect(off(below, above)).toBeLessThan(3e-12);
  }
});

test("a flake as thin as a leaf is the disc, and a ball is Stokes' sphere", () => {
  for (const orientation of ["broadside", "edgewise", "random"] as const) {
    const disc = factor({ law: "disc", aspectRatio: 1e-9, orientation });
    const spheroid = factor({ law: "spheroid", aspectRatio: 1.5e-9, orientation });
    expect(off(spheroid, disc)).toBeLessThan(3e-9);
    expect(off(factor({ law: "spheroid", aspectRatio: 1, orientation }), 1)).toBeLessThan(1e-15);
  }
});

test("in thick oil Haider and Levenspiel's flake is a sphere, and the disc says what that costs", () => {
  const { diameter, sphericity, aspectRatio } = flakeShape({ diameter: 200e-6, thickness: 10e-6 });
  const glitter = { diameter, densityParticle: 1400, densityFluid: 910, viscosity: 5 };
  const sphere = stokesVelocity(glitter).velocity;
  const by = (drag: DragLaw) => terminalVelocity({ ...glitter, drag }).velocity / sphere;
  expect(by({ law: "haider-levenspiel", sphericity })).toBeGreaterThan(0.99);
  expect(by({ law: "disc", aspectRatio, orientation: "broadside" })).toBeLessThan(0.55);
  const ganser = by({ law: "ganser", sphericity });
  expect(ganser).toBeLessThan(by({ law: "spheroid", aspectRatio: 1.5 * aspectRatio, orientation: "edgewise" }));
});

test("a disc's shape is within its own size, and roundest near as thick as it is wide", () => {
  fc.assert(
    fc.property(between(1e-6, 1e-3), between(1e-3, 1), (width, ratio) => {
      const { diameter, sphericity, aspectRatio } = flakeShape({ diameter: width, thickness: ratio * width });
      expect(diameter).toBeLessThan(1.15 * width);
      expect(sphericity).toBeLessThan(0.874);
      expect(off(aspectRatio, ratio)).toBeLessThan(1e-15);
      expect(off((Math.PI / 6) * diameter ** 3, (Math.PI / 4) * width ** 2 * ratio * width)).toBeLessThan(1e-14);
    }),
  );
  expect(() => flakeShape({ diameter: 1e-5, thickness: 2e-5 })).toThrow("at most the diameter");
});

test("the thickest flake held is the one that needs this yield stress", () => {
  fc.assert(
    fc.property(between(1e-3, 100), between(1, 8000), (yieldStress, densityParticle) => {
      fc.pre(Math.abs(densityParticle - 910) > 1e-6);
      const thickness = thickestSuspendedFlake({ yieldStress, densityParticle, densityFluid: 910 });
      expect(
        off(yieldStressToSuspendFlake({ thickness, densityParticle, densityFluid: 910 }), yieldStress),
      ).toBeLessThan(1e-14);
    }),
  );
  expect(() => thickestSuspendedFlake({ yieldStress: 1, densityParticle: 910, densityFluid: 910 })).toThrow(
    "holds all flakes",
  );
});

test("edge on, a flake needs more than the sphere of its volume once it is thick, and less once it is thin", () => {
  const of = (thickness: number) => {
    const gel = { densityParticle: 1400, densityFluid: 910 };
    const { diameter } = flakeShape({ diameter: 200e-6, thickness });
    return yieldStressToSuspendFlake({ thickness, ...gel }) / yieldStressToSuspend({ diameter, ...gel }).max;
  };
  expect(of(200e-6)).toBeGreaterThan(1);
  expect(of(5e-6)).toBeLessThan(1);
});

test("a flake known by its sphere and thickness is the flake that gave them", () => {
  fc.assert(
    fc.property(between(1e-6, 1e-3), between(1e-3, 1), (width, ratio) => {
      const shape = flakeShape({ diameter: width, thickness: ratio * width });
      const back = flakeOfVolume({ diameter: shape.diameter, thickness: ratio * width });
      expect(off(back.width, width)).toBeLessThan(1e-12);
      expect(off(back.aspectRatio, ratio)).toBeLessThan(1e-12);
    }),
  );
  expect(() => flakeOfVolume({ diameter: 1e-5, thickness: 2e-5 })).toThrow("a disc as thick as wide");
});
