import fc from "fast-check";
import { capillaryReach, flowThroughNozzle, thickestFilm, yieldStressForReach } from "gelwright/rheology";
import { expect, test } from "vitest";
import { between, logarithmic, relative } from "./arbitraries.js";

const gravity = 9.80665;

test("a bore of any width holds the gel where the pressure of its meniscus no longer moves it", () => {
  fc.assert(
    fc.property(logarithmic(1, 200), logarithmic(1e-5, 1e-3), between(0, 80), (yieldStress, diameter, contactAngle) => {
      const surfaceTension = 0.03;
      const reach = capillaryReach({ surfaceTension, yieldStress, contactAngle });
      // 4σ cos θ/d drives, over the length that is filled; the flow curve says whether that moves it.
      const flowAt = (length: number) =>
        flowThroughNozzle({
          curve: { law: "bingham", yieldStress, plasticViscosity: 0.5 },
          diameter,
          pressureGradient: (4 * surfaceTension * Math.cos((contactAngle * Math.PI) / 180)) / diameter / length,
        });
      expect(flowAt(0.99 * reach)).toBeGreaterThan(0);
      expect(flowAt(1.01 * reach)).toBe(0);
    }),
  );
});

test("twice as strong a gel goes half as far, and the strength for a distance leads back to it", () => {
  const groove = fc.option(fc.record({ width: logarithmic(1e-5, 1e-3), depth: logarithmic(1e-5, 1e-3) }));
  fc.assert(
    fc.property(logarithmic(1, 200), between(0, 40), groove, (yieldStress, contactAngle, line) => {
      const pull = { surfaceTension: 0.028, contactAngle, ...(line && { groove: line }) };
      const distance = capillaryReach({ ...pull, yieldStress });
      fc.pre(distance > 0);
      expect(relative(capillaryReach({ ...pull, yieldStress: 2 * yieldStress }), distance / 2)).toBeLessThan(1e-12);
      expect(relative(yieldStressForReach({ ...pull, distance }), yieldStress)).toBeLessThan(1e-12);
    }),
  );
});

test("the deeper an open groove is, the nearer it comes to a closed slit, and never draws farther", () => {
  fc.assert(
    fc.property(logarithmic(1e-5, 1e-3), logarithmic(0.6, 1e3), between(0, 20), (width, times, contactAngle) => {
      const gel = { surfaceTension: 0.03, yieldStress: 12, contactAngle };
      const open = (depth: number) => capillaryReach({ ...gel, groove: { width, depth } });
      expect(open(2 * times * width)).toBeGreaterThan(open(times * width));
      expect(open(times * width)).toBeLessThan(capillaryReach(gel));
      expect(relative(open(1e7 * width), capillaryReach(gel))).toBeLessThan(1e-6);
    }),
  );
});

// The reach of a groove is what the surface energy that is freed by a small step does against the wall's hold.
test("at its reach, the energy that a step frees is the work against the walls", () => {
  const [surfaceTension, yieldStress, contactAngle, width, depth, step] = [0.03, 15, 35, 2e-4, 3e-4, 1e-9];
  const reach = capillaryReach({ surfaceTension, yieldStress, contactAngle, groove: { width, depth } });
  const wetted = (width + 2 * depth) * step;
  const freed = surfaceTension * (wetted * Math.cos((contactAngle * Math.PI) / 180) - width * step);
  expect(relative(freed, yieldStress * (width + 2 * depth) * reach * step)).toBeLessThan(1e-12);
});

// Two captions of the animations: at 60° a free surface of 8/24 of the wetted one lets the liquid go on; where a channel
// of 57° widens, the ratio of free to wetted surface grows until the liquid stops.
test("a groove is entered where the cosine exceeds the free surface over the wetted one, and only there", () => {
  const gel = { surfaceTension: 0.03, yieldStress: 12 };
  const at = (contactAngle: number, width: number) =>
    capillaryReach({ ...gel, contactAngle, groove: { width, depth: 1e-4 } });
  expect(at(60, 1e-4)).toBeGreaterThan(0);
  expect(relative(at(60, 1e-4), (0.03 / 12) * (1 / 2 - 8 / 24))).toBeLessThan(1e-12);
  // cos 57° is 0.5446, which a channel reaches where it is 2.392 times as wide as deep.
  expect(at(57, 2.39e-4)).toBeGreaterThan(0);
  expect(at(57, 2.4e-4)).toBe(0);
  expect(at(90, 1e-6)).toBe(0);
  expect(capillaryReach({ ...gel, contactAngle: 120 })).toBe(0);
  expect(yieldStressForReach({ surfaceTension: 0.03, distance: 1e-3, contactAngle: 120 })).toBe(0);
});

test("beside the film that does not run, the reach is longer by σ ρ g over the square of the strength", () => {
  fc.assert(
    fc.property(logarithmic(1, 200), between(850, 1250), (yieldStress, density) => {
      const reach = capillaryReach({ surfaceTension: 0.03, yieldStress });
      const film = thickestFilm({ yieldStress, density });
      expect(relative(reach / film, (0.03 * density * gravity) / yieldStress ** 2)).toBeLessThan(1e-12);
    }),
  );
});

test("what is no line is refused by its name", () => {
  const gel = { surfaceTension: 0.03, yieldStress: 12 };
  expect(() => capillaryReach({ ...gel, contactAngle: 181 })).toThrow("contactAngle: found 181");
  expect(() => capillaryReach({ ...gel, contactAngle: -1 })).toThrow("contactAngle: found -1");
  expect(() => capillaryReach({ ...gel, groove: { width: 0, depth: 1e-4 } })).toThrow("groove.width");
  expect(() => capillaryReach({ ...gel, groove: { width: 1e-4 } as never })).toThrow("groove.depth: found undefined");
  expect(() => capillaryReach({ ...gel, yieldStress: 0 })).toThrow("yieldStress");
  expect(() => yieldStressForReach({ surfaceTension: 0.03, distance: 0 })).toThrow("distance");
});
