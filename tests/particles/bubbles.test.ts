import fc from "fast-check";
import { densityFunction, viscosityAt, viscosityFunction } from "gelwright/laws";
import {
  boilingPressure,
  boilingTemperature,
  bubbleRise,
  clearingOverCooling,
  clearingTime,
  dropVelocity,
  foamHead,
  pressureForFoamHead,
  pressureToClear,
  riseOverCooling,
  stokesVelocity,
  temperatureToClear,
  viscosityToClear,
} from "gelwright/particles";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

const layer = fc.record({
  diameter: between(2e-5, 5e-4),
  densityFluid: between(850, 1300),
  viscosity: between(0.02, 50),
  depth: between(0.01, 3),
  surface: fc.constantFrom("immobile", "mobile"),
  beyond: fc.constant("extend" as const),
});

test("a stiff bubble is a sphere without weight, a clean one half as fast again", () => {
  fc.assert(
    fc.property(layer, (of) => {
      const { velocity } = bubbleRise(without({ ...of, surface: "immobile", densityGas: 1.2 }, "depth"));
      expect(
        off(-stokesVelocity(without({ ...of, densityParticle: 1.2 }, "depth", "surface")).velocity, velocity),
      ).toBeLessThan(1e-14);
      expect(
        off(bubbleRise(without({ ...of, surface: "mobile", densityGas: 1.2 }, "depth")).velocity, 1.5 * velocity),
      ).toBeLessThan(1e-14);
    }),
  );
  expect(() => bubbleRise({ diameter: 1e-4, densityFluid: 1, densityGas: 1.2, viscosity: 1 })).toThrow("densityGas");
  expect(() => bubbleRise({ diameter: 3e-3, densityFluid: 900, viscosity: 0.02 })).toThrow("Stokes' law");
});

test("a drop goes from a clean bubble to a hard sphere as it thickens", () => {
  const of = (viscosityDrop: number) =>
    dropVelocity({ diameter: 1e-4, densityDrop: 1250, densityFluid: 915, viscosity: 1, viscosityDrop }).velocity;
  const sphere = stokesVelocity({ diameter: 1e-4, densityParticle: 1250, densityFluid: 915, viscosity: 1 }).velocity;
  expect(off(of(1e-12), 1.5 * sphere)).toBeLessThan(1e-11);
  expect(off(of(1e12), sphere)).toBeLessThan(1e-11);
  expect(of(1)).toBeGreaterThan(of(2));
});

test("a drop has the Reynolds number of its velocity, width and the liquid around it", () => {
  fc.assert(
    fc.property(between(2e-5, 2e-4), between(0.05, 20), between(0.05, 20), (diameter, viscosity, viscosityDrop) => {
      const drop = { diameter, densityDrop: 1250, densityFluid: 915, viscosity, viscosityDrop };
      const { velocity, reynolds } = dropVelocity({ ...drop, beyond: "extend" });
      expect(off(reynolds, (915 * velocity * diameter) / viscosity)).toBeLessThan(1e-14);
    }),
  );
});

test("a bubble that creeps at the air's pressure is refused where a vacuum makes it too fast", () => {
  const wide = { diameter: 2e-3, densityFluid: 910, viscosity: 0.5, depth: 0.3 };
  expect(clearingTime(wide)).toBeGreaterThan(0);
  expect(clearingTime({ ...wide, pressure: 80_000 })).toBeGreaterThan(0);
  expect(() => clearingTime({ ...wide, pressure: 5000 })).toThrow("Stokes' law");
});

test("the vacuum found clears in the time wanted, and a weaker one does not", () => {
  fc.assert(
    fc.property(layer, between(200, 2e5), (of, pressure) => {
      const duration = clearingTime({ ...of, pressure });
      expect(off(clearingTime({ ...of, pressure: pressureToClear({ ...of, duration }) }), duration)).toBeLessThan(
        1e-12,
      );
      expect(clearingTime({ ...of, pressure: pressure * 1.1 })).toBeGreaterThan(duration);
    }),
  );
});

test("in a shallow layer the time goes as the pressure to two thirds: the diameter as its third root", () => {
  const shallow = { diameter: 1e-4, densityFluid: 900, viscosity: 1, depth: 1e-6 };
  expect(off(clearingTime({ ...shallow, pressure: 101325 }), clearingTime(shallow))).toBeLessThan(1e-7);
  const ratio = clearingTime({ ...shallow, pressure: 101325 }) / clearingTime({ ...shallow, pressure: 101325 / 8 });
  expect(off(ratio, 4)).toBeLessThan(1e-6);
});

test("the liquid's own weight sets a bound that no vacuum passes", () => {
  const deep = { diameter: 1e-4, densityFluid: 900, viscosity: 1, depth: 2 };
  const bound = clearingTime({ ...deep, pressure: 1e-6, beyond: "extend" });
  expect(() => pressureToClear({ ...deep, duration: bound * 0.999 })).toThrow("an empty space");
  expect(pressureToClear({ ...deep, duration: bound * 1.5, beyond: "extend" })).toBeGreaterThan(0);
});

const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;

test("at the temperature found, and at the viscosity found, the layer clears in the time wanted", () => {
  fc.assert(
    fc.property(layer, between(60, 1e6), ({ viscosity: _, ...of }, duration) => {
      const viscosity = viscosityToClear({ ...of, duration });
      expect(off(clearingTime({ ...of, viscosity }), duration)).toBeLessThan(1e-13);
      fc.pre(viscosity > 1e-3 && viscosity < 1e6);
      const temperature = temperatureToClear({ ...of, duration, viscosity: melt });
      expect(off(viscosityAt({ law: melt, temperature }), viscosity)).toBeLessThan(1e-10);
    }),
  );
});

const vessel = {
  densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
  viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
  heatCapacity: 90000,
  heatLoss: { law: "newton", conductance: 12 },
  temperatureAmbient: 20,
  temperatureStart: 85,
} as const;

test("odex, marching in time, finds the same rise (1e-9)", () => {
  fc.assert(
    fc.property(between(2e-5, 1e-4), between(22, 50), (diameter, temperatureEnd) => {
      const { distance, duration } = riseOverCooling({ ...vessel, diameter, temperatureEnd, beyond: "extend" });
      const viscosity = viscosityFunction(vessel.viscosity);
      const density = densityFunction(vessel.densityFluid);
      const at = (time: number) => 20 + 65 * Math.exp((-12 * time) / 90000);
      const velocity = (time: number) => {
        const width = diameter * ((at(time) + 273.15) / 358.15) ** (1 / 3);
        return (9.80665 * width ** 2 * density(at(time))) / (18 * viscosity(at(time)));
      };
      const sets = (90000 / 12) * Math.log(65 / 42);
      let share = 0;
      for (const [from, to] of [
        [0, sets],
        [sets, duration],
      ] as const)
        [share = Number.NaN] = march(
          (part) => [(velocity(from + part * (to - from)) * (to - from)) / distance],
          [share],
          1,
          1e-12,
        );
      expect(Math.abs(share - 1)).toBeLessThan(1e-9);
    }),
    { numRuns: 25 },
  );
});

test("the layer that clears by a temperature is as deep as the rise until then", () => {
  fc.assert(
    fc.property(between(2e-5, 1e-4), between(0.01, 0.99), (diameter, share) => {
      const bubble = { ...vessel, diameter, temperatureEnd: 30, beyond: "extend" } as const;
      const depth = share * riseOverCooling(bubble).distance;
      const { duration, temperature } = clearingOverCooling({ ...bubble, depth });
      const until = riseOverCooling({ ...bubble, temperatureEnd: temperature });
      expect(off(until.distance, depth)).toBeLessThan(1e-10);
      expect(off(until.duration, duration)).toBeLessThan(1e-12);
    }),
    { numRuns: 40 },
  );
  const sealed = { ...vessel, diameter: 2e-5, temperatureEnd: 30, depth: 1 };
  expect(() => clearingOverCooling(sealed)).toThrow("from which bubbles rise before the end");
});

test("foam comes up to the rim at the pressure found, and no gas makes no foam", () => {
  fc.assert(
    fc.property(between(0.05, 2), between(0.001, 0.6), between(500, 1e5), (level, volumeFractionGas, pressure) => {
      const foam = { level, volumeFractionGas };
      const levelMax = foamHead({ ...foam, pressure });
      expect(off(pressureForFoamHead({ ...foam, levelMax }), pressure)).toBeLessThan(1e-9);
      expect(foamHead({ ...foam, pressure: pressure / 2 })).toBeGreaterThan(levelMax);
      const liquid = level * (1 - volumeFractionGas);
      expect(() => pressureForFoamHead({ ...foam, levelMax: liquid * 0.999 })).toThrow(`more than ${liquid} m`);
    }),
  );
  expect(pressureForFoamHead({ level: 1, volumeFractionGas: 0, levelMax: 1.2 })).toBe(0);
  expect(() => pressureForFoamHead({ level: 1, volumeFractionGas: 0.1, levelMax: 0.8 })).toThrow("by itself");
});

const water = {
  law: "antoine",
  logarithm: "decimal",
  constantA: 10.11564,
  constantB: 1687.537,
  constantC: -42.98,
  temperatureMin: 0.05,
  temperatureMax: 200.05,
} as const;

test("boiling temperature and boiling pressure are inverse, and a small share boils later", () => {
  fc.assert(
    fc.property(between(1, 199), between(0.01, 1), (temperature, moleFraction) => {
      const part = { vapourPressure: water, moleFraction };
      const pressure = boilingPressure({ ...part, temperature });
      expect(off(boilingTemperature({ ...part, pressure }), temperature)).toBeLessThan(1e-11);
      expect(off(pressure, moleFraction * boilingPressure({ vapourPressure: water, temperature }))).toBeLessThan(1e-14);
    }),
  );
  const natural = {
    ...water,
    logarithm: "natural",
    constantA: 10.11564 * Math.LN10,
    constantB: 1687.537 * Math.LN10,
  } as const;
  const of = { temperature: 60 };
  expect(
    off(boilingPressure({ ...of, vapourPressure: natural }), boilingPressure({ ...of, vapourPressure: water })),
  ).toBeLessThan(1e-13);
  expect(() => boilingPressure({ vapourPressure: water, temperature: 250 })).toThrow("as fitted");
});
