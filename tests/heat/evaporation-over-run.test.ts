import fc from "fast-check";
import {
  evaporationCoefficient,
  evaporationFlux,
  evaporationFluxMax,
  evaporationOverRun,
  moleFraction,
  type Segment,
} from "gelwright/heat";
import { vapourPressureAt, vapourPressures } from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";

const near = (actual: number, expected: number, within = 1e-10) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const hold = (temperature: number, duration: number): Segment => ({
  kind: "ramp",
  temperatureStart: temperature,
  temperatureEnd: temperature,
  duration,
});
const molarMass = 0.136234;
const law = vapourPressures.limonene;
const run = {
  volatile: { mass: 0.4, molarMass, vapourPressure: law },
  rest: { mass: 39.6, molarMass: 0.88 },
  area: 0.2,
  coefficient: 0.001,
  segments: [hold(65, 1800)],
};

test("a light part counts for more by moles than by mass, and for the same if it is as heavy as the rest", () => {
  expect(moleFraction({ massFraction: 0.02, molarMass, molarMassRest: 0.88 })).toBeGreaterThan(0.1);
  near(moleFraction({ massFraction: 0.02, molarMass: 0.5, molarMassRest: 0.5 }), 0.02, 1e-15);
  expect(moleFraction({ massFraction: 0, molarMass, molarMassRest: 0.88 })).toBe(0);
  expect(moleFraction({ massFraction: 1, molarMass, molarMassRest: 0.88 })).toBe(1);
});

test("a vapour pressure rises with temperature, and ends where its constants do", () => {
  for (const one of Object.values(vapourPressures)) {
    const at = (share: number) =>
      vapourPressureAt({
        law: one,
        temperature: one.temperatureMin + share * (one.temperatureMax - one.temperatureMin),
      });
    for (let share = 0.05; share < 1; share += 0.05) expect(at(share)).toBeGreaterThan(at(share - 0.05));
    const outside = { law: one, temperature: one.temperatureMax + 1 };
    expect(() => vapourPressureAt(outside)).toThrow(expect.objectContaining({ code: "range" }));
    expect(vapourPressureAt({ ...outside, beyond: "extend" })).toBeGreaterThan(at(1));
  }
  expect(() => vapourPressureAt({ law, temperature: -255, beyond: "extend" })).toThrow("the law's pole");
});

test("the film of air ends where it turns turbulent, or where the vapour spreads faster than momentum", () => {
  const air = { airVelocity: 0.2, length: 0.5, kinematicViscosity: 1.9e-5, diffusivity: 7.5e-6 };
  expect(() => evaporationCoefficient({ ...air, airVelocity: 19 })).toThrow("Reynolds number");
  expect(() => evaporationCoefficient({ ...air, diffusivity: 3.2e-5 })).toThrow("Schmidt number");
  const { coefficient } = evaporationCoefficient(air);
  near(evaporationCoefficient({ ...air, airVelocity: 0.8 }).coefficient, 2 * coefficient, 1e-14);
});

test("air in the way leaves a thousandth or less of what a vacuum takes, and vapour in the room holds both back", () => {
  const surface = { temperature: 65, vapourPressure: 30, molarMass };
  const flux = evaporationFlux({ ...surface, coefficient: 0.001 });
  expect(flux).toBeLessThan(evaporationFluxMax(surface) / 1000);
  expect(evaporationFlux({ ...surface, coefficient: 0.001, vapourPressureRoom: 30 })).toBe(0);
  near(evaporationFlux({ ...surface, coefficient: 0.001, vapourPressureRoom: 45 }), -flux / 2, 1e-14);
  near(evaporationFluxMax({ ...surface, accommodation: 0.1 }), evaporationFluxMax(surface) / 10, 1e-14);
});

test("a loss so small that the mix stays as it is, is flux times area times time", () => {
  const small = evaporationOverRun({ ...run, segments: [hold(65, 1)] }).predicted;
  const x = moleFraction({ massFraction: 0.01, molarMass, molarMassRest: 0.88 });
  const vapourPressure = x * vapourPressureAt({ law, temperature: 65 });
  near(small.mass, 0.2 * evaporationFlux({ temperature: 65, vapourPressure, molarMass, coefficient: 0.001 }), 1e-5);
  near(small.fraction, small.mass / 0.4, 1e-14);
});

test("a large loss, over a changing temperature, is what a solver finds that steps in time", () => {
  const segments: Segment[] = [
    { kind: "ramp", temperatureStart: 25, temperatureEnd: 85, duration: 40000 },
    hold(85, 100000),
  ];
  const { predicted, duration } = evaporationOverRun({ ...run, area: 2, segments });
  const restMoles = 39.6 / 0.88;
  const slope = (t: number, y: readonly number[]) => {
    const temperature = t < 40000 ? 25 + (60 * t) / 40000 : 85;
    const moles = (y[0] as number) / molarMass;
    const pressure = (moles / (moles + restMoles)) * vapourPressureAt({ law, temperature });
    return [-2 * evaporationFlux({ temperature, vapourPressure: pressure, molarMass, coefficient: 0.001 })];
  };
  const halfway = march(slope, [0.4], 40000, 1e-12);
  const left = march((t, y) => slope(t + 40000, y), halfway, 100000, 1e-12)[0] as number;
  expect(predicted.fraction).toBeGreaterThan(0.2);
  near(0.4 - predicted.mass, left, 1e-9);
  expect(duration).toBe(140000);
});

test("nothing loses more than is there, more time never loses less, and a vacuum takes the most", () => {
  fc.assert(
    fc.property(between(20, 150), between(0, 1e7), between(1, 3), between(1e-6, 50), (warm, time, more, mass) => {
      const at = (duration: number) =>
        evaporationOverRun({ ...run, volatile: { ...run.volatile, mass }, segments: [hold(warm, duration)] });
      const { predicted, max } = at(time);
      expect(predicted.mass).toBeLessThanOrEqual(mass);
      expect(predicted.fraction).toBeLessThanOrEqual(max.fraction);
      expect(at(time * more).predicted.fraction).toBeGreaterThanOrEqual(predicted.fraction);
    }),
  );
});

test("the measured share stands beside the prediction, and each says what it rests on", () => {
  const { predicted, measured, max } = evaporationOverRun({ ...run, lossMeasured: 0.05 });
  expect(measured).toEqual({ mass: 0.4 * 0.05, fraction: 0.05, basis: "a weighing before and after" });
  expect(predicted.basis).toContain("film of air");
  expect(max.basis).toContain("kinetic theory");
  expect(evaporationOverRun(run)).not.toHaveProperty("measured");
});
