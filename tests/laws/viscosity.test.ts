import fc from "fast-check";
import {
  temperatureAtViscosity,
  type ViscosityLaw,
  viscosityAt,
  viscosityBreakpoints,
  viscosityFunction,
  viscosityRange,
} from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

/** Readings of an oil-like melt, in any order: 5 to 25 K apart, each 5 to 60 % thinner than the one before. */
const points = fc
  .tuple(between(0.01, 10), fc.array(fc.tuple(between(5, 25), between(0.4, 0.95)), { minLength: 1, maxLength: 5 }))
  .chain(([thickest, steps]) => {
    let temperature = 15;
    let viscosity = thickest;
    const readings = [{ temperature, viscosity }];
    for (const [warmer, thinner] of steps) {
      temperature += warmer;
      viscosity *= thinner;
      readings.push({ temperature, viscosity });
    }
    return fc.shuffledSubarray(readings, { minLength: readings.length });
  });
const melt = fc.oneof(
  fc.record({ law: fc.constant("andrade" as const), factor: between(1e-8, 1e-4), activationEnergy: between(5e3, 6e4) }),
  fc.record({
    law: fc.constant("vogel-fulcher-tammann" as const),
    lnFactor: between(-12, -6),
    coefficient: between(200, 1500),
    temperatureVogel: between(-200, -60),
  }),
  points.map((readings) => ({ law: "readings" as const, points: readings })),
);
const setting = fc.record({
  law: fc.constant("setting" as const),
  melt,
  temperatureSetting: between(30, 80),
  steepness: between(0.01, 0.5),
});
const law: fc.Arbitrary<ViscosityLaw> = fc.oneof(melt, setting);

test("a melt thins as it warms, under every law, between its readings and beyond", () => {
  fc.assert(
    fc.property(law, between(0, 150), between(0.01, 60), (of, temperature, warmer) => {
      const viscosity = viscosityFunction(of, { beyond: "extend" });
      expect(viscosity(temperature + warmer)).toBeLessThan(viscosity(temperature));
    }),
  );
});

test("the temperature at which a law has a viscosity leads back to the viscosity", () => {
  fc.assert(
    fc.property(law, between(5, 120), (of, temperature) => {
      const viscosity = viscosityAt({ law: of, temperature, beyond: "extend" });
      expect(Math.abs(temperatureAtViscosity({ law: of, viscosity, beyond: "extend" }) - temperature)).toBeLessThan(
        1e-9,
      );
    }),
  );
});

test("a curve passes through all its readings, whatever their order, and finds them again without extending", () => {
  fc.assert(
    fc.property(points, (readings) => {
      const of = { law: "readings", points: readings } as const;
      for (const { temperature, viscosity } of readings) {
        expect(Math.abs(viscosityAt({ law: of, temperature }) / viscosity - 1)).toBeLessThan(2e-15);
        expect(Math.abs(temperatureAtViscosity({ law: of, viscosity }) - temperature)).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 50 },
  );
});

test("readings of an Andrade liquid are joined and continued by Andrade's law", () => {
  const of = { law: "andrade", factor: 1.3e-6, activationEnergy: 26400 } as const;
  const truth = viscosityFunction(of);
  const readings = [20, 40, 55, 85].map((temperature) => ({ temperature, viscosity: truth(temperature) }));
  const curve = viscosityFunction({ law: "readings", points: readings }, { beyond: "extend" });
  for (const temperature of [-10, 25, 48, 70, 140])
    expect(Math.abs(curve(temperature) / truth(temperature) - 1)).toBeLessThan(1e-13);
});

test("a setting law is its melt above the setting temperature, and steepens below it", () => {
  fc.assert(
    fc.property(setting, between(0.1, 20), (of, away) => {
      const whole = viscosityFunction(of, { beyond: "extend" });
      const alone = viscosityFunction(of.melt, { beyond: "extend" });
      expect(whole(of.temperatureSetting + away)).toBe(alone(of.temperatureSetting + away));
      expect(whole(of.temperatureSetting)).toBe(alone(of.temperatureSetting));
      const cooler = of.temperatureSetting - away;
      const ratio = whole(cooler) / alone(cooler);
      expect(Math.abs(Math.log(ratio) / (of.steepness * away) - 1)).toBeLessThan(1e-11);
    }),
  );
});

test("nothing is said outside the readings unless it is asked for", () => {
  const of = {
    law: "readings",
    points: [
      { temperature: 80, viscosity: 0.0105 },
      { temperature: 25, viscosity: 0.055 },
    ],
  } as const;
  expect(() => viscosityAt({ law: of, temperature: 24.9 })).toThrow(
    'expected 25 to 80 °C as read, or beyond: "extend"',
  );
  expect(() => temperatureAtViscosity({ law: of, viscosity: 0.06 })).toThrow("within the readings");
  expect(() => temperatureAtViscosity({ law: of, viscosity: 0.01 })).toThrow("within the readings");
  expect(viscosityRange({ law: "setting", melt: of, temperatureSetting: 60, steepness: 0.2 })).toEqual({
    temperatureMin: 25,
    temperatureMax: 80,
  });
  expect(viscosityRange({ law: "constant", viscosity: 1 })).toEqual({});
  expect(viscosityBreakpoints({ law: "setting", melt: of, temperatureSetting: 60, steepness: 0.2 })).toEqual([
    25, 60, 80,
  ]);
});

test("a gel that sets may reach a viscosity within its readings that its melt alone would not", () => {
  const readings = [
    { temperature: 25, viscosity: 0.055 },
    { temperature: 80, viscosity: 0.0105 },
  ];
  const of = {
    law: "setting",
    melt: { law: "readings", points: readings },
    temperatureSetting: 60,
    steepness: 0.2,
  } as const;
  const temperature = temperatureAtViscosity({ law: of, viscosity: 5 });
  expect(viscosityAt({ law: of, temperature })).toBeCloseTo(5, 12);
  expect(() => temperatureAtViscosity({ law: of, viscosity: 500 })).toThrow("within the readings, which end at 60");
});

test("a melt of constant viscosity sets by its steepness alone", () => {
  const melted = { law: "constant", viscosity: 0.02 } as const;
  const of = { law: "setting", melt: melted, temperatureSetting: 60, steepness: 0.5 } as const;
  expect(temperatureAtViscosity({ law: of, viscosity: 0.02 * Math.exp(5) })).toBeCloseTo(50, 12);
  expect(() => temperatureAtViscosity({ law: melted, viscosity: 1 })).toThrow("whose viscosity changes");
  expect(() => temperatureAtViscosity({ law: of, viscosity: 0.01 })).toThrow("whose viscosity changes");
});

test.each([
  ["Andrade", { law: "andrade", factor: 1e-3, activationEnergy: 2e4 }],
  ["Vogel", { law: "vogel-fulcher-tammann", lnFactor: Math.log(1e-3), coefficient: 900, temperatureVogel: -110 }],
] as const)("no heat thins a melt below the factor of %s", (_name, of) => {
  expect(() => temperatureAtViscosity({ law: of, viscosity: 0.9e-3 })).toThrow("which no heat brings it below");
});

test("two readings that contradict a falling viscosity are named", () => {
  const rising = [
    { temperature: 20, viscosity: 0.05 },
    { temperature: 40, viscosity: 0.06 },
  ];
  expect(() => viscosityFunction({ law: "readings", points: rising })).toThrow(
    "law.points[0].viscosity: found 0.05, expected more than 0.06 as read at 40 °C: viscosity falls as it warms",
  );
  const twice = [...rising, { temperature: 40, viscosity: 0.02 }];
  expect(() => viscosityFunction({ law: "readings", points: twice })).toThrow("one reading at each temperature");
  expect(() => viscosityFunction({ law: "readings", points: rising.slice(1) })).toThrow("a list of at least 2");
});

test("Vogel's law ends at its pole, and a wrong name of a law is shown", () => {
  const of = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
  expect(() => viscosityAt({ law: of, temperature: -110 })).toThrow("above the law's pole at -110 °C");
  expect(() => viscosityFunction({ law: "arrhenius" } as never)).toThrow('law.law: found "arrhenius"');
});
