import fc from "fast-check";
import {
  type CoolingPack,
  packCoolingCurve,
  packCoolingTime,
  packTemperature,
  relativeTemperature,
  shrinkage,
} from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { without } from "../support/without.js";

const gel = { conductivity: 0.17, density: 910, specificHeat: 2050, temperatureStart: 60, temperatureAmbient: 20 };
const diffusivity = gel.conductivity / (gel.density * gel.specificHeat);
const jar: CoolingPack = {
  ...gel,
  pack: { shape: "cylinder", diameter: 0.07, height: 0.06 },
  heatTransferCoefficient: 10,
};

const pack = fc.oneof(
  between(0.005, 0.5).map((thickness) => ({ shape: "slab", thickness }) as const),
  between(0.005, 0.5).map((diameter) => ({ shape: "cylinder", diameter }) as const),
  between(0.005, 0.5).map((diameter) => ({ shape: "sphere", diameter }) as const),
  fc.tuple(between(0.005, 0.6), between(0.005, 1)).map(([diameter, height]) => {
    return { shape: "cylinder", diameter, height } as const;
  }),
);
const cooling = fc.record({
  pack,
  heatTransferCoefficient: fc.oneof(between(1, 200), fc.constant("infinite" as const)),
  where: fc.constantFrom("centre" as const, "mean" as const),
  temperatureStart: fc.oneof(between(30, 95), between(-20, 10)),
});

test("time and temperature are inverse to one another, to 1e-9 of the start's distance from the room", () => {
  fc.assert(
    fc.property(cooling, between(0.0001, 0.9999), (some, share) => {
      const input = { ...gel, ...some };
      const temperatureEnd = 20 + share * (input.temperatureStart - 20);
      const duration = packCoolingTime({ ...input, temperatureEnd });
      expect(Math.abs(packTemperature({ ...input, duration }) - temperatureEnd)).toBeLessThan(
        1e-9 * Math.abs(input.temperatureStart - 20),
      );
    }),
  );
});

test("at any place in a jar, too", () => {
  fc.assert(
    fc.property(between(0, 0.035), between(0, 0.03), between(0.001, 0.999), (radial, axial, share) => {
      const input = { ...jar, where: { radial, axial }, temperatureEnd: 20 + 40 * share };
      const duration = packCoolingTime(input);
      expect(
        Math.abs(packTemperature(without({ ...input, duration }, "temperatureEnd")) - input.temperatureEnd),
      ).toBeLessThan(4e-8);
    }),
  );
});

test("the way back, from time to temperature to time, holds to 1e-9 while the centre is cooling", () => {
  fc.assert(
    fc.property(cooling, between(0.3, 5), (some, fourier) => {
      const input = { ...gel, ...some };
      const across = "thickness" in input.pack ? input.pack.thickness : input.pack.diameter;
      const duration = (fourier * (across / 2) ** 2) / diffusivity;
      const temperatureEnd = packTemperature({ ...input, duration });
      // Near the room the temperature's own rounding is all that is left of the time.
      fc.pre(Math.abs(temperatureEnd - 20) >= 0.5 && Math.abs(temperatureEnd - input.temperatureStart) >= 0.5);
      expect(Math.abs(packCoolingTime({ ...input, temperatureEnd }) / duration - 1)).toBeLessThan(1e-9);
    }),
  );
});

test("a very tall jar is a long cylinder, and a very flat one a slab", () => {
  fc.assert(
    fc.property(between(0.01, 0.2), between(5, 50), between(600, 20000), (size, heatTransferCoefficient, duration) => {
      const at = (pack: CoolingPack["pack"]) =>
        packTemperature({ ...gel, heatTransferCoefficient, pack, duration, temperatureAmbient: 0 });
      const long = at({ shape: "cylinder", diameter: size });
      const flat = at({ shape: "slab", thickness: size });
      expect(Math.abs(at({ shape: "cylinder", diameter: size, height: 100 }) - long)).toBeLessThan(1e-10);
      expect(Math.abs(at({ shape: "cylinder", diameter: 100, height: size }) - flat)).toBeLessThan(1e-10);
    }),
  );
});

test("a jar is the product of its cylinder and its slab, in the mean as in the middle", () => {
  const at = (pack: CoolingPack["pack"], where: "centre" | "mean") =>
    (packTemperature({ ...jar, pack, where, duration: 3000 }) - 20) / 40;
  for (const where of ["centre", "mean"] as const)
    expect(at(jar.pack, where)).toBeCloseTo(
      at({ shape: "cylinder", diameter: 0.07 }, where) * at({ shape: "slab", thickness: 0.06 }, where),
      13,
    );
});

test("it is the dimensionless solution with the pack's own numbers", () => {
  const left = relativeTemperature({
    shape: "sphere",
    biot: (10 * 0.02) / 0.17,
    fourier: (diffusivity * 900) / 0.02 ** 2,
    position: 0.25,
  });
  const input = { ...jar, pack: { shape: "sphere", diameter: 0.04 }, where: { radial: 0.005 }, duration: 900 } as const;
  expect(packTemperature(input)).toBeCloseTo(20 + 40 * left, 12);
});

test("eight times the volume takes four times as long, if the coefficient falls with the length", () => {
  const large = {
    ...jar,
    pack: { shape: "cylinder", diameter: 0.14, height: 0.12 },
    heatTransferCoefficient: 5,
  } as const;
  const ratio = packCoolingTime({ ...large, temperatureEnd: 40 }) / packCoolingTime({ ...jar, temperatureEnd: 40 });
  expect(Math.abs(ratio - 4)).toBeLessThan(1e-12);
});

test("a cooling curve ends where it was told to, never turns back, and lies on the pack's temperatures", () => {
  fc.assert(
    fc.property(cooling, between(0.05, 0.999), (some, share) => {
      const input = { ...gel, ...some };
      const temperatureEnd = 20 + share * (input.temperatureStart - 20);
      const { times, temperatures } = packCoolingCurve({ ...input, temperatureEnd, segments: 20 });
      expect([times.length, times[0], temperatures[20]]).toEqual([21, 0, temperatureEnd]);
      const sense = Math.sign(20 - input.temperatureStart);
      for (const [k, duration] of times.entries()) {
        const here = temperatures[k] ?? Number.NaN;
        expect((here - (temperatures[k - 1] ?? here)) * sense).toBeGreaterThanOrEqual(0);
        expect(Math.abs(here - packTemperature({ ...input, duration }))).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 50 },
  );
  expect(packCoolingCurve({ ...jar, duration: 900, segments: 3 }).times).toEqual([0, 100, 400, 900]);
});

test("what cannot be reached, a place outside the pack and a place that a shape does not have are refused", () => {
  for (const temperatureEnd of [20, 15, 61])
    expect(() => packCoolingTime({ ...jar, temperatureEnd })).toThrow(
      expect.objectContaining({
        code: "unreachable",
        message: `temperatureEnd: found ${temperatureEnd}, expected between start (60 °C) and ambient (20 °C), ambient left out`,
      }),
    );
  const ask = (input: Partial<CoolingPack>) => () => packTemperature({ ...jar, ...input, duration: 1 });
  expect(ask({ where: { radial: 0.036 } })).toThrow("where.radial: found 0.036, expected at most 0.035 m, the surface");
  expect(ask({ pack: { shape: "slab", thickness: 0.1 }, where: { radial: 0 } })).toThrow("a slab has no radius");
  expect(ask({ pack: { shape: "sphere", diameter: 0.1 }, where: { axial: 0 } })).toThrow("a sphere has no axis");
  expect(ask({ pack: { shape: "cylinder", diameter: 0.1 }, where: { axial: 0 } })).toThrow("or a height");
  expect(ask({ pack: { shape: "cube" } as never })).toThrow('"slab", "cylinder" or "sphere"');
  expect(() => packCoolingCurve({ ...jar, duration: 1, temperatureEnd: 30 } as never)).toThrow("either a duration");
});

test("at once: no fall takes no time, nor does a surface that is held", () => {
  expect(packCoolingTime({ ...jar, temperatureEnd: 60 })).toBe(0);
  const held = { ...jar, heatTransferCoefficient: "infinite", where: { radial: 0.035 } } as const;
  expect(packCoolingTime({ ...held, temperatureEnd: 30 })).toBe(0);
  expect(packTemperature({ ...held, duration: 1e-6 })).toBe(20);
});

const oil = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
const filled = { density: oil, volume: 2e-4, areaCrossSection: 0.0038, temperatureFill: 70, temperatureEnd: 20 };

test("shrinkage keeps the mass: what is left, at its new density, weighs what was filled", () => {
  fc.assert(
    fc.property(between(25, 95), between(-10, 24), (temperatureFill, temperatureEnd) => {
      const { volumeLost, topUpMass, sinkDepth } = shrinkage({ ...filled, temperatureFill, temperatureEnd });
      const at = (warmth: number) => 915 - 0.64 * (warmth - 20);
      expect((2e-4 - volumeLost) * at(temperatureEnd)).toBeCloseTo(2e-4 * at(temperatureFill), 14);
      expect(topUpMass).toBeCloseTo(volumeLost * at(temperatureEnd), 14);
      expect(sinkDepth).toBeCloseTo(volumeLost / 0.0038, 14);
    }),
  );
});

test("shrinkage: 200 ml filled at 70 °C sink by 7 ml, nothing happens without cooling, and what warms swells", () => {
  // By hand: 1 − 883/915 = 3.497 % of 200 ml.
  expect(shrinkage(filled).volumeLost).toBeCloseTo(6.9945e-6, 9);
  expect(shrinkage({ ...filled, temperatureEnd: 70 })).toEqual({
    volumeLost: 0,
    volumeFractionLost: 0,
    sinkDepth: 0,
    topUpMass: 0,
  });
  expect(shrinkage({ ...filled, temperatureFill: 20, temperatureEnd: 40 }).volumeLost).toBeLessThan(0);
});
