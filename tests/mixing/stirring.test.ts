import fc from "fast-check";
import { impellerReynolds, tipSpeed } from "gelwright/mixing";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const speeds = between(0.1, 100);
const diameters = between(0.01, 3);
const viscosities = between(1e-3, 1000);

test("the Reynolds number is the tip speed times diameter over π times the kinematic viscosity", () => {
  fc.assert(
    fc.property(speeds, diameters, viscosities, (speed, diameter, viscosity) => {
      const density = 910;
      const tip = tipSpeed({ speed, impeller: { diameter } });
      const expected = (tip * diameter * density) / (Math.PI * viscosity);
      expect(off(impellerReynolds({ speed, impeller: { diameter }, density, viscosity }), expected)).toBeLessThan(
        1e-14,
      );
    }),
  );
});

test("an impeller that stands still has no tip speed, and what has no viscosity no Reynolds number", () => {
  expect(() => tipSpeed({ speed: 0, impeller: { diameter: 0.1 } })).toThrow(
    "speed: found 0, expected a finite number above",
  );
  expect(() => impellerReynolds({ speed: 1, impeller: { diameter: 0.1 }, density: 910, viscosity: 0 })).toThrow(
    "viscosity",
  );
});
