import fc from "fast-check";
import { coolingTime, relativeRateFunction, type Segment, thermalExposure } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";

const near = (actual: number, expected: number, within = 1e-10) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const ramp = (temperatureStart: number, temperatureEnd: number, duration: number): Segment => ({
  kind: "ramp",
  temperatureStart,
  temperatureEnd,
  duration,
});
const arrhenius = { law: "arrhenius", activationEnergy: 83144, temperatureReference: 25 } as const;
const doubling = { law: "q10", q10: 2, temperatureReference: 25 } as const;
const pot = {
  temperatureStart: 85,
  heatCapacity: 210000,
  heatSource: { kind: "power", power: 0 },
  heatLoss: { law: "newton", conductance: 15 },
  temperatureAmbient: 20,
} as const;

test("at the reference temperature an hour is an hour, and ten kelvins above it two", () => {
  for (const ageingKinetics of [arrhenius, doubling])
    expect(thermalExposure({ segments: [ramp(25, 25, 3600)], ageingKinetics }).equivalentTime).toBe(3600);
  near(thermalExposure({ segments: [ramp(35, 35, 3600)], ageingKinetics: doubling }).equivalentTime, 7200, 1e-15);
});

test("an even ramp under a factor of 10 K has a closed form", () => {
  fc.assert(
    fc.property(between(0, 60), between(1, 80), between(1, 1e5), between(1.1, 4), (start, rise, duration, q10) => {
      const slope = Math.log(q10) / 10;
      const closed = (duration * Math.exp(slope * (start - 25)) * Math.expm1(slope * rise)) / (slope * rise);
      const ageingKinetics = { law: "q10", q10, temperatureReference: 25 } as const;
      near(thermalExposure({ segments: [ramp(start, start + rise, duration)], ageingKinetics }).equivalentTime, closed);
      near(thermalExposure({ segments: [ramp(start + rise, start, duration)], ageingKinetics }).equivalentTime, closed);
    }),
  );
});

test("no activation energy and no factor leave plain time; a split changes nothing", () => {
  const segments = [ramp(20, 90, 1200), ramp(90, 90, 600)];
  for (const ageingKinetics of [
    { ...arrhenius, activationEnergy: 0 },
    { ...doubling, q10: 1 },
  ])
    near(thermalExposure({ segments, ageingKinetics }).equivalentTime, 1800, 1e-14);
  const split = [ramp(20, 55, 600), ramp(55, 90, 600), ramp(90, 90, 600)];
  near(
    thermalExposure({ segments: split, ageingKinetics: arrhenius }).equivalentTime,
    thermalExposure({ segments, ageingKinetics: arrhenius }).equivalentTime,
    1e-12,
  );
});

test("over a cooling vessel the dose is what a solver finds that steps in time", () => {
  const { equivalentTime } = thermalExposure({
    segments: [{ kind: "vessel", ...pot, duration: 14000 }],
    ageingKinetics: arrhenius,
  });
  const rate = (at: number) => Math.exp((-83144 / 8.31446261815324) * (1 / (at + 273.15) - 1 / 298.15));
  const stepped = march((_t, y) => [-(y[0] as number) / 14000, rate(20 + (y[0] as number))], [65, 0], 14000, 1e-12);
  near(equivalentTime, stepped[1] as number, 1e-9);
});

test("the time above a temperature is exact in ramps and in segments", () => {
  const above = (segments: readonly Segment[], temperatureAbove: number) =>
    thermalExposure({ segments, ageingKinetics: doubling, temperatureAbove }).durationAbove;
  near(above([ramp(20, 80, 600), ramp(80, 20, 1200)], 65) ?? 0, 450, 1e-12);
  expect(above([ramp(60, 60, 600)], 60)).toBe(0);
  expect(above([ramp(60, 60, 600)], 59.9)).toBe(600);
  const segment: Segment = { kind: "vessel", ...pot, temperatureEnd: 40 };
  const time = coolingTime({
    heatCapacity: 210000,
    conductance: 15,
    temperatureAmbient: 20,
    temperatureStart: 85,
    temperatureEnd: 60,
  });
  near(above([segment], 60) ?? 0, time);
  expect(thermalExposure({ segments: [segment], ageingKinetics: doubling })).not.toHaveProperty("durationAbove");
});

test("of two orders of work, the one that lets the oil wait until the melt has cooled spares it", () => {
  const melting: Segment[] = [ramp(20, 85, 2700), ramp(85, 85, 1200)];
  const cooling: Segment = { kind: "vessel", ...pot, temperatureEnd: 60 };
  const after: Segment = { kind: "vessel", ...pot, temperatureStart: 60, temperatureEnd: 30 };
  const first = thermalExposure({ segments: [...melting, cooling, after], ageingKinetics: arrhenius });
  const last = thermalExposure({ segments: [after], ageingKinetics: arrhenius });
  expect(last.equivalentTime).toBeLessThan(first.equivalentTime / 8);
  expect(first.temperatureMax).toBe(85);
  expect(last.temperatureMax).toBe(60);
});

test("a rate that no double holds is refused, and so is a law that is none", () => {
  expect(() => relativeRateFunction({ law: "q10", q10: 1e300, temperatureReference: 0 })(1000)).toThrow(
    "relative rate",
  );
  expect(() => relativeRateFunction({ law: "eyring" } as never)).toThrow(
    "ageingKinetics.temperatureReference: found undefined",
  );
  expect(() => relativeRateFunction({ law: "eyring", temperatureReference: 20 } as never)).toThrow(
    '"arrhenius" or "q10"',
  );
});
