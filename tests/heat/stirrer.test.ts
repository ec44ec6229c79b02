import fc from "fast-check";
import { steadyTemperature, vesselSegment } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);
const kettle = { heatCapacity: 60_000, heatLoss: { law: "newton", conductance: 4 }, temperatureAmbient: 20 } as const;

test("a stirrer by itself warms like a heater of its power", () => {
  fc.assert(
    fc.property(between(50, 500), between(600, 7200), (power, duration) => {
      const from = { ...kettle, temperatureStart: 20, duration };
      const stirred = vesselSegment({ ...from, heatSource: { kind: "stirrer", power } });
      const heated = vesselSegment({ ...from, heatSource: { kind: "power", power } });
      expect(stirred.temperatureEnd).toBe(heated.temperatureEnd);
    }),
  );
});

test("beside a jacket it holds the cooling up, by as much as a solver that knows nothing of panels finds", () => {
  fc.assert(
    fc.property(between(1, 40), between(5, 60), between(0.02, 0.1), (power, conductance, steepness) => {
      // A gel that thickens as it cools takes more and more of the motor.
      const stirs = (at: number): number => power * Math.exp(steepness * (80 - at));
      const jacket = { kind: "medium", temperature: 10, conductance } as const;
      const heatSource = { kind: "stirrer", power: stirs, beside: jacket } as const;
      const duration = 900;
      const { temperatureEnd, totals } = vesselSegment({ ...kettle, temperatureStart: 80, heatSource, duration });
      const slope = (_: number, [at = 0]: readonly number[]) => [
        (stirs(at) + conductance * (10 - at) - 4 * (at - 20)) / 60_000,
      ];
      const [marched = Number.NaN] = march(slope, [80], duration);
      expect(off(temperatureEnd, marched)).toBeLessThan(1e-8);
      expect(off(60_000 * (80 - temperatureEnd), totals.energyLost - totals.energySupplied)).toBeLessThan(1e-8);
      expect(temperatureEnd).toBeGreaterThan(
        vesselSegment({ ...kettle, temperatureStart: 80, heatSource: jacket, duration }).temperatureEnd,
      );
    }),
  );
});

test("it warms a charge beyond both jacket and room, to where they take all that it gives", () => {
  const jacket = { kind: "medium", temperature: 25, conductance: 6 } as const;
  const heatSource = { kind: "stirrer", power: 100, beside: jacket } as const;
  // 100 = 6 (T − 25) + 4 (T − 20)
  const steady = steadyTemperature(without({ ...kettle, heatSource }, "heatCapacity"));
  expect(off(steady, 33)).toBeLessThan(1e-12);
  const { temperatureEnd } = vesselSegment({ ...kettle, temperatureStart: 24, heatSource, duration: 200_000 });
  expect(off(temperatureEnd, 33)).toBeLessThan(1e-9);
  expect(vesselSegment({ ...kettle, temperatureStart: 24, heatSource, temperatureEnd: 30 }).duration).toBeGreaterThan(
    0,
  );
  expect(() => vesselSegment({ ...kettle, temperatureStart: 24, heatSource, temperatureEnd: 34 })).toThrow("33");
});

test("one stirrer is enough, and none gives cold", () => {
  const inner = { kind: "stirrer", power: 1 } as const;
  const at = { ...kettle, temperatureStart: 20, duration: 60 };
  expect(() => vesselSegment({ ...at, heatSource: { kind: "stirrer", power: 1, beside: inner } })).toThrow(
    "one stirrer",
  );
  expect(() => vesselSegment({ ...at, heatSource: { kind: "stirrer", power: -1 } })).toThrow("heatSource.power");
});
