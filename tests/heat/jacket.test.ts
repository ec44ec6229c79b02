import fc from "fast-check";
import {
  batchMassForDuration,
  capacityFlowForDuration,
  coolingTime,
  jacketConductance,
  jacketTime,
  mediumTemperatureForDuration,
} from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { without } from "../support/without.js";

const near = (actual: number, expected: number, within = 1e-9) =>
  expect(Math.abs(actual / expected - 1)).toBeLessThanOrEqual(within);
const unreachable = (message: string) =>
  expect.objectContaining({ code: "unreachable", message: expect.stringContaining(message) });

/** A batch that is cooled or warmed some part of the way to the inlet. */
const jacketed = fc
  .record({
    heatCapacity: between(100, 1e7),
    conductance: between(0.1, 1e4),
    capacityFlow: between(0.1, 1e5),
    inlet: between(-20, 120),
    apart: fc.oneof(between(1, 150), between(-100, -1)),
    way: between(0.001, 0.999),
  })
  .map(({ inlet, apart, way, ...rest }) => ({
    ...rest,
    temperatureInlet: inlet,
    temperatureStart: inlet + apart,
    temperatureEnd: inlet + apart * (1 - way),
  }));

test("a medium of one temperature is Newton's law, and much flow comes to the same", () => {
  fc.assert(
    fc.property(jacketed, ({ capacityFlow: _, temperatureInlet, ...batch }) => {
      const { duration } = jacketTime({ ...batch, temperatureInlet });
      near(duration, coolingTime({ ...batch, temperatureAmbient: temperatureInlet }), 1e-14);
      near(jacketTime({ ...batch, temperatureInlet, capacityFlow: batch.conductance * 1e8 }).duration, duration, 1e-8);
    }),
  );
});

test("what the medium carries away is what the batch gives, and the wall conducts at the logarithmic mean", () => {
  fc.assert(
    fc.property(jacketed, (input) => {
      const time = jacketTime(input);
      const { temperatureInlet: inlet, temperatureStart: start, conductance, capacityFlow } = input;
      const outlet = time.temperatureOutletStart;
      const taken = capacityFlow * (outlet - inlet);
      expect(Math.abs(taken + time.heatFlowStart)).toBeLessThanOrEqual(
        1e-12 * capacityFlow * (Math.abs(inlet) + Math.abs(outlet)),
      );
      near(conductance * time.meanDifferenceStart, Math.abs(time.heatFlowStart), 1e-12);
      fc.pre(Math.abs(conductance / capacityFlow) > 0.01 && conductance / capacityFlow < 10);
      const [a, b] = [start - inlet, start - outlet];
      near((a - b) / Math.log(a / b), Math.sign(a) * time.meanDifferenceStart, 1e-8);
    }),
  );
});

test("no jacket conducts more than its wall or its medium", () => {
  fc.assert(
    fc.property(between(1e-6, 1e6), between(1e-6, 1e6), (conductance, capacityFlow) => {
      expect(jacketConductance({ conductance, capacityFlow })).toBeLessThanOrEqual(Math.min(conductance, capacityFlow));
    }),
  );
});

test("which medium, which mass, which flow: each gives its time back", () => {
  fc.assert(
    fc.property(jacketed, between(0, 0.9), (input, vesselShare) => {
      const { temperatureInlet, ...batch } = input;
      const through = {
        ...batch,
        conductance: jacketConductance(
          without(input, "temperatureInlet", "temperatureStart", "temperatureEnd", "heatCapacity"),
        ),
      };
      const { duration } = jacketTime(input);
      const medium = mediumTemperatureForDuration(without({ ...through, duration }, "capacityFlow"));
      expect(Math.abs(medium - temperatureInlet)).toBeLessThanOrEqual(1e-9 * (Math.abs(temperatureInlet) + 200));
      const mass = batchMassForDuration(
        without(
          {
            ...through,
            duration,
            temperatureMedium: temperatureInlet,
            specificHeat: 2000,
            heatCapacityVessel: vesselShare * batch.heatCapacity,
          },
          "heatCapacity",
          "capacityFlow",
        ),
      );
      near(mass, ((1 - vesselShare) * batch.heatCapacity) / 2000, 1e-11);
      // More flow than a hundred times the wall's conductance does nothing more: there the time says little of it.
      fc.pre(batch.capacityFlow < 100 * batch.conductance);
      near(
        capacityFlowForDuration(without({ ...batch, temperatureInlet, duration }, "capacityFlow")),
        batch.capacityFlow,
      );
    }),
  );
});

test("where no medium, mass or flow does it, the refusal names the time that can be had", () => {
  const batch = { heatCapacity: 1050000, temperatureStart: 85, temperatureEnd: 45 };
  // C/UA = 2916.7 s, times ln(75/35) with water of 10 °C.
  const tooSoon = { ...batch, conductance: 360, duration: 2000, temperatureMin: 10 };
  expect(() => mediumTemperatureForDuration(tooSoon)).toThrow(unreachable("2222.908"));
  expect(mediumTemperatureForDuration({ ...tooSoon, duration: 2223 })).toBeCloseTo(10, 2);
  expect(() => mediumTemperatureForDuration({ ...tooSoon, temperatureMin: 50 })).toThrow(
    unreachable("a temperatureEnd that a medium of 50 °C comes to"),
  );
  expect(() => mediumTemperatureForDuration({ ...tooSoon, temperatureEnd: -200, duration: 1 })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
  const vessel = { ...batch, conductance: 360, duration: 60, temperatureMedium: 15, specificHeat: 2100 };
  expect(() => batchMassForDuration(without({ ...vessel, heatCapacityVessel: 50000 }, "heatCapacity"))).toThrow(
    unreachable("the time of the empty vessel"),
  );
  expect(() => batchMassForDuration(without({ ...vessel, temperatureMedium: 45 }, "heatCapacity"))).toThrow(
    unreachable("between start (85 °C)"),
  );
  const flow = { ...batch, conductance: 360, temperatureInlet: 15 };
  expect(() => capacityFlowForDuration({ ...flow, duration: 2471 })).toThrow(unreachable("above 2471.285"));
  expect(capacityFlowForDuration({ ...flow, duration: 2472 })).toBeGreaterThan(1e5);
  expect(() => jacketTime({ ...flow, temperatureEnd: 15 })).toThrow(unreachable("inlet left out"));
  expect(jacketTime({ ...flow, temperatureEnd: 85 }).duration).toBe(0);
});
