import fc from "fast-check";
import { type FlowCurve, shearRateAt, shearStressAt, yieldStressOf } from "gelwright/laws";
import { drainedFilm, filmFlow, thickestFilm, yieldStressForFilm } from "gelwright/rheology";
import { expect, test } from "vitest";
import { march } from "../support/ode.js";
import { anyCurve, between, logarithmic, relative, rescaled } from "./arbitraries.js";

const gravity = 9.80665;
const density = 915;

test("a film at its thickest does not run, and one a little thicker does", () => {
  fc.assert(
    fc.property(
      between(0.5, 200),
      between(5, 90),
      logarithmic(0.01, 10),
      (yieldStress, inclination, plasticViscosity) => {
        const curve = { law: "bingham", yieldStress, plasticViscosity } as const;
        const thickness = thickestFilm({ yieldStress, density, inclination });
        const flow = (share: number) => filmFlow({ curve, density, inclination, thickness: share * thickness });
        expect(flow(1 - 1e-9).velocitySurface).toBe(0);
        expect(flow(1 - 1e-9).flowPerWidth).toBe(0);
        expect(flow(1.01).velocitySurface).toBeGreaterThan(0);
        expect(relative(yieldStressForFilm({ thickness, density, inclination }), yieldStress)).toBeLessThan(1e-14);
      },
    ),
  );
});

test("the gentler the slope, the thicker a film may be, and a level one has no limit to be named", () => {
  const film = (inclination: number) => thickestFilm({ yieldStress: 10, density, inclination });
  expect(film(30)).toBeCloseTo(2 * film(90), 12);
  expect(() => film(0)).toThrow("inclination: found 0, expected degrees above 0, up to 90 for a wall");
  expect(() => film(91)).toThrow("inclination");
});

test("Newton's film on a wall runs as textbooks say", () => {
  const curve = { law: "newton", viscosity: 2 } as const;
  const { velocitySurface, flowPerWidth } = filmFlow({ curve, density, thickness: 0.002 });
  expect(relative(velocitySurface, (density * gravity * 0.002 ** 2) / (2 * 2))).toBeLessThan(1e-14);
  expect(relative(flowPerWidth, (density * gravity * 0.002 ** 3) / (3 * 2))).toBeLessThan(1e-14);
});

// Velocity and flow by stepping from the wall outwards with an ODE solver, which knows neither closed form nor quadrature.
test("velocity and flow of any film agree with an ODE solver to 1e-8", () => {
  fc.assert(
    fc.property(anyCurve, between(1.2, 10), (curve, excess) => {
      const stressWall = excess * Math.max(5, yieldStressOf(curve));
      const thickness = stressWall / (density * gravity);
      const { velocitySurface, flowPerWidth, shearRateWall } = filmFlow({ curve, density, thickness });
      // In parts of thickness and wall shear rate: u' = rate, q' = u, over the part that is not carried as a plug.
      const still = yieldStressOf(curve) / stressWall;
      const [velocity = 0, flow = 0] = march(
        (y, [u = 0]) => [shearRateAt({ curve, stress: Math.max(0, stressWall * (1 - y)) }) / shearRateWall, u],
        [0, 0],
        1 - still,
      );
      expect(relative(velocitySurface, velocity * thickness * shearRateWall)).toBeLessThan(1e-8);
      const whole = flow + velocity * still;
      expect(relative(flowPerWidth, whole * thickness ** 2 * shearRateWall)).toBeLessThan(1e-8);
    }),
    { numRuns: 60 },
  );
});

test("Newton's and the power-law film drain as their closed forms say", () => {
  const film = { density, distance: 0.4, duration: 120 };
  const newton = drainedFilm({ ...film, curve: { law: "newton", viscosity: 3 } });
  expect(relative(newton.thickness, Math.sqrt((3 * 0.4) / (density * gravity * 120)))).toBeLessThan(1e-13);
  expect(relative(newton.thicknessMean, (2 / 3) * newton.thickness)).toBeLessThan(1e-13);
  const [n, k] = [0.4, 15];
  const thinning = drainedFilm({ ...film, curve: { law: "power-law", consistency: k, flowIndex: n } });
  const expected = (k / (density * gravity)) ** (1 / (n + 1)) * (0.4 / 120) ** (n / (n + 1));
  expect(relative(thinning.thickness, expected)).toBeLessThan(1e-13);
  expect(relative(thinning.thicknessMean, (expected * (n + 1)) / (2 * n + 1))).toBeLessThan(1e-13);
});

test("what has left a draining wall is what flows over its lower edge: volumes balance over time", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(10, 1e5), (curve, duration) => {
      const at = (time: number) => drainedFilm({ curve, density, distance: 0.3, duration: time });
      const step = duration * 1e-4;
      const lost = 0.3 * (at(duration - step).thicknessMean - at(duration + step).thicknessMean);
      const { flowPerWidth } = filmFlow({ curve, density, thickness: at(duration).thickness });
      // Central difference: off by the square of the step, and by the rounding of what hardly changes.
      expect(Math.abs(lost - 2 * step * flowPerWidth)).toBeLessThan(1e-5 * lost + 1e-13 * at(duration).thicknessMean);
    }),
    { numRuns: 100 },
  );
});

test("a film never drains below what its yield stress holds, and ends there", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(1, 1e6), (curve, duration) => {
      const yieldStress = yieldStressOf(curve);
      fc.pre(yieldStress > 0);
      const held = thickestFilm({ yieldStress, density });
      const film = (time: number) => drainedFilm({ curve, density, distance: 0.3, duration: time });
      expect(film(duration).thickness).toBeGreaterThanOrEqual(held);
      expect(film(10 * duration).thickness).toBeLessThan(film(duration).thickness * (1 + 1e-14));
      expect(film(duration).thicknessMean).toBeLessThanOrEqual(film(duration).thickness * (1 + 1e-14));
      expect(relative(film(1e60).thickness, held)).toBeLessThan(1e-6);
    }),
  );
});

test("the same film in rescaled units is the same film", () => {
  fc.assert(
    fc.property(anyCurve, logarithmic(1e-3, 1e3), logarithmic(1e-3, 1e3), (curve, stresses, faster) => {
      // Heavier by `stresses` at one thickness: all stresses grow alike; time is counted in units `faster` times longer.
      const other: FlowCurve = rescaled(curve, stresses, faster);
      const film = drainedFilm({ curve, density, distance: 0.3, duration: 500 });
      const same = drainedFilm({ curve: other, density: density * stresses, distance: 0.3, duration: 500 / faster });
      expect(relative(same.thickness, film.thickness)).toBeLessThan(1e-11);
      expect(relative(same.thicknessMean, film.thicknessMean)).toBeLessThan(1e-9);
      const shearRate = 2;
      expect(
        relative(
          shearStressAt({ curve: other, shearRate: shearRate * faster }),
          stresses * shearStressAt({ curve, shearRate }),
        ),
      ).toBeLessThan(1e-12);
    }),
  );
});
