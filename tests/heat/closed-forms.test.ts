import fc from "fast-check";
import { coolingTime, heatingTime } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { march } from "../support/ode.js";
import { without } from "../support/without.js";

/** dT/dt and what is lost to the room, stepped through time by an ODE solver that knows neither closed form. */
function step(
  {
    power,
    conductance,
    temperatureAmbient,
    heatCapacity,
  }: Record<"power" | "conductance" | "temperatureAmbient" | "heatCapacity", number>,
  temperatureStart: number,
  duration: number,
): readonly [temperature: number, lost: number] {
  const [temperature = Number.NaN, lost = Number.NaN] = march(
    (_time, [now = Number.NaN]) => {
      const loss = conductance * (now - temperatureAmbient);
      return [(power - loss) / heatCapacity, loss / heatCapacity];
    },
    [temperatureStart, 0],
    duration,
  );
  return [temperature, lost * heatCapacity];
}

// odex 2.0.4 is asked for 1e-11 a step; over these few time constants it stays within 1e-8.
const tolerance = 1e-8;

test("heating: time and loss agree with an ODE solver to 1e-8", () => {
  fc.assert(
    fc.property(
      between(0.01, 0.95),
      between(0, 60),
      between(10, 120),
      between(100, 1e5),
      (share, from, rise, capacity) => {
        const temperatureEnd = from + rise;
        const conductance = (share * 1000) / (temperatureEnd + 5);
        const input = { power: 1000, conductance, temperatureAmbient: -5, heatCapacity: capacity };
        const { duration, energyLost } = heatingTime({ ...input, temperatureStart: from, temperatureEnd });
        const [temperature, lost] = step(input, from, duration);
        expect(Math.abs(temperature - temperatureEnd)).toBeLessThanOrEqual(tolerance * temperatureEnd);
        expect(Math.abs(lost - energyLost)).toBeLessThanOrEqual(tolerance * 1000 * duration);
      },
    ),
    { numRuns: 50 },
  );
});

test("cooling: the time agrees with an ODE solver to 1e-8", () => {
  fc.assert(
    fc.property(between(0.01, 0.99), between(40, 120), between(100, 1e5), (way, from, capacity) => {
      const input = { power: 0, conductance: 2, temperatureAmbient: 20, heatCapacity: capacity };
      const temperatureEnd = from - way * (from - 20);
      const duration = coolingTime(without({ ...input, temperatureStart: from, temperatureEnd }, "power"));
      expect(Math.abs(step(input, from, duration)[0] - temperatureEnd)).toBeLessThanOrEqual(tolerance * from);
    }),
    { numRuns: 50 },
  );
});
