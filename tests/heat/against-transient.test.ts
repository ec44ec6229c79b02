import fc from "fast-check";
import { coolingTime, heatingTime, steadyTemperature } from "gelwright/heat";
import { coolingSegment, transientSegment } from "gelwright/transient";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const near = (actual: number | undefined, expected: number) =>
  expect(Math.abs((actual ?? Number.NaN) / expected - 1)).toBeLessThanOrEqual(1e-10);

test("heating: the closed form is what quadrature over temperature gives, in time and in loss", () => {
  fc.assert(
    fc.property(
      between(0.01, 0.99),
      between(0, 60),
      between(10, 120),
      between(100, 1e6),
      (share, from, rise, heatCapacity) => {
        const temperatureEnd = from + rise;
        const plant = { power: 1000, conductance: (share * 1000) / (temperatureEnd + 5), temperatureAmbient: -5 };
        const lossAt = (temperature: number) => plant.conductance * (temperature + 5);
        const way = { temperatureStart: from, temperatureEnd, heatCapacity };
        const closed = heatingTime({ ...plant, ...way });
        const { duration, totals } = transientSegment({
          ...way,
          temperatureLimit: steadyTemperature({
            heatSource: plant.power,
            heatLoss: plant.conductance,
            temperatureAmbient: -5,
          }),
          heatFlow: (temperature) => 1000 - lossAt(temperature),
          rates: { lost: lossAt },
        });
        near(duration, closed.duration);
        near(totals.lost, closed.energyLost);
      },
    ),
  );
});

test("cooling: the closed form is what quadrature over temperature gives", () => {
  fc.assert(
    fc.property(between(0.01, 0.99), between(30, 120), between(100, 1e6), (way, from, heatCapacity) => {
      const room = { heatCapacity, temperatureAmbient: 20, temperatureStart: from };
      const temperatureEnd = from - way * (from - 20);
      near(
        coolingSegment({ ...room, temperatureEnd, heatLoss: { law: "newton", conductance: 2 } }).duration,
        coolingTime({ ...room, temperatureEnd, conductance: 2 }),
      );
    }),
  );
});
