import fc from "fast-check";
import { coolingTime, heatingTime, heatToWarm, steadyTemperature } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

/** Heaters that get there: the loss at the end takes a share of the power below one. */
const heating = fc
  .record({
    power: between(1, 1e5),
    share: fc.oneof(between(1e-9, 0.999), between(1e-290, 1e-9), fc.constant(0)),
    temperatureAmbient: between(-20, 60),
    temperatureStart: between(-20, 100),
    rise: between(0.1, 150),
    heatCapacity: between(1, 1e7),
    meltsAt: between(-0.2, 1.2),
    meltingEnergy: between(1, 1e8),
    heatCapacityMelt: between(1, 1e7),
  })
  .map(({ share, rise, meltsAt, meltingEnergy, heatCapacityMelt, ...rest }) => {
    const temperatureEnd = rest.temperatureStart + rise;
    const above = temperatureEnd - rest.temperatureAmbient;
    const temperature = rest.temperatureStart + meltsAt * rise;
    return {
      ...rest,
      temperatureEnd,
      conductance: above > 1 ? (share * rest.power) / above : share,
      melting: { temperature, meltingEnergy, heatCapacityMelt },
    };
  });

test("what the heater supplies is in the charge or in the room, to 1e-12", () => {
  fc.assert(
    fc.property(heating, (input) => {
      const { energySupplied, energyStored, energyLost } = heatingTime(input);
      const size = Math.max(energySupplied, energyStored, Math.abs(energyLost));
      expect(Math.abs(energySupplied - energyStored - energyLost)).toBeLessThanOrEqual(1e-12 * size);
    }),
    { numRuns: 2000 },
  );
});

test("what is stored is the heat that warms and melts the charge", () => {
  fc.assert(
    fc.property(heating, (input) => {
      const { melting, temperatureStart, temperatureEnd, heatCapacity } = input;
      const { temperature, meltingEnergy, heatCapacityMelt } = melting;
      const part = {
        mass: 1,
        specificHeat: heatCapacity,
        melting: { temperature, latentHeat: meltingEnergy, specificHeatMelt: heatCapacityMelt },
      };
      const { heat } = heatToWarm({ parts: [part], temperatureStart, temperatureEnd });
      expect(Math.abs(heatingTime(input).energyStored - heat)).toBeLessThanOrEqual(1e-11 * heat);
    }),
  );
});

test("a loss that goes to nothing leaves the time of a charge without loss, and the loss itself stays exact", () => {
  const input = {
    power: 300,
    temperatureAmbient: 20,
    temperatureStart: 20,
    temperatureEnd: 80,
    heatCapacity: 2000,
  };
  const none = heatingTime({ ...input, conductance: 0 });
  expect(none).toEqual({
    duration: 400,
    durationToMelt: 400,
    durationMelting: 0,
    durationAfter: 0,
    energySupplied: 120000,
    energyStored: 120000,
    energyLost: 0,
  });
  for (const conductance of [1e-6, 1e-12, 1e-60, 1e-290]) {
    const { duration, energyLost } = heatingTime({ ...input, conductance });
    // From a start at the temperature of the room the mean excess is half the rise, in the first order of the loss.
    const shareLost = (conductance * 60) / 300;
    expect(Math.abs(duration / 400 - 1)).toBeLessThanOrEqual(shareLost + 1e-15);
    expect(Math.abs(energyLost / (conductance * 30 * 400) - 1)).toBeLessThanOrEqual(shareLost + 1e-14);
  }
});

test("a heater that is off lets a warmer room do the work, and that is Newton's law", () => {
  fc.assert(
    fc.property(between(0.1, 100), between(1, 1e6), between(0.001, 0.999), (conductance, heatCapacity, way) => {
      const input = {
        conductance,
        heatCapacity,
        temperatureAmbient: 90,
        temperatureStart: 10,
        temperatureEnd: 10 + 80 * way,
      };
      const duration = coolingTime(input);
      expect(Math.abs(heatingTime({ ...input, power: 0 }).duration / duration - 1)).toBeLessThanOrEqual(1e-12);
    }),
  );
});

test("more power is never slower, and more loss never faster", () => {
  fc.assert(
    fc.property(heating, between(1, 2), (input, times) => {
      const { duration } = heatingTime(input);
      expect(heatingTime({ ...input, power: input.power * times }).duration).toBeLessThanOrEqual(
        duration * (1 + 1e-12),
      );
      if (input.temperatureStart >= input.temperatureAmbient)
        expect(heatingTime({ ...input, conductance: input.conductance / times }).duration).toBeLessThanOrEqual(
          duration * (1 + 1e-12),
        );
    }),
  );
});

test("a heater that cannot get there is refused, with the temperature that it holds", () => {
  const input = {
    power: 300,
    conductance: 5,
    temperatureAmbient: 20,
    temperatureStart: 20,
    temperatureEnd: 85,
    heatCapacity: 2000,
  };
  expect(steadyTemperature({ heatSource: input.power, heatLoss: input.conductance, temperatureAmbient: 20 })).toBe(80);
  expect(() => heatingTime(input)).toThrow(
    expect.objectContaining({
      code: "unreachable",
      message: expect.stringContaining("less than 80 °C, the steady temperature"),
    }),
  );
  expect(() => heatingTime({ ...input, temperatureEnd: 80 })).toThrow("steady temperature");
  expect(() => heatingTime({ ...input, power: 0, conductance: 0 })).toThrow(
    expect.objectContaining({ code: "unreachable" }),
  );
  expect(() => heatingTime({ ...input, temperatureEnd: 10 })).toThrow("temperatureStart (20 °C) or more");
});

test("a charge that starts at the end takes no time, even without a heater", () => {
  const input = { temperatureAmbient: 20, temperatureStart: 60, temperatureEnd: 60, heatCapacity: 2000 };
  expect(heatingTime({ ...input, power: 0, conductance: 1 }).duration).toBe(0);
});
