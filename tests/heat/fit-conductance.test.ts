import fc from "fast-check";
import { coolingTime, fitConductance, temperatureAfterCooling } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const off = (actual: number, expected: number) => Math.abs(actual / expected - 1);

const vessel = fc.record({
  heatCapacity: between(500, 1e6),
  temperatureAmbient: between(-10, 40),
  excess: fc.oneof(between(20, 100), between(-60, -20)),
  timeConstants: between(0.05, 3),
  duration: between(60, 1e5),
  places: fc.uniqueArray(fc.integer({ min: 0, max: 200 }), { minLength: 2, maxLength: 12 }),
  began: between(-1e5, 1e5),
});

test("readings of an exact cooling curve give its conductance back, whatever the clock and the order", () => {
  fc.assert(
    fc.property(vessel, ({ heatCapacity, temperatureAmbient, excess, timeConstants, duration, places, began }) => {
      const conductance = (timeConstants * heatCapacity) / duration;
      const widest = (Math.max(...places) - Math.min(...places)) / 200;
      fc.pre(widest > 0.2);
      const readings = places.map((place) => {
        const after = (place / 200) * duration;
        const temperature = temperatureAfterCooling({
          heatCapacity,
          conductance,
          temperatureAmbient,
          temperatureStart: temperatureAmbient + excess,
          duration: after,
        });
        return { time: began + after, temperature };
      });
      const fit = fitConductance({ readings, temperatureAmbient, heatCapacity });
      expect(off(fit.conductance, conductance)).toBeLessThan(1e-9);
      expect(Math.max(...fit.residuals.map(Math.abs))).toBeLessThan(1e-9);
      expect(fit.degreesOfFreedom).toBe(places.length - 2);
      if (places.length === 2) expect(fit).not.toHaveProperty("interval");
      else expect((fit.interval?.max ?? 0) - (fit.interval?.min ?? 0)).toBeLessThan(1e-6 * conductance);
    }),
  );
});

test("no other conductance and start leave less to be explained", () => {
  const readings = [85, 78.1, 72.2, 66.3, 61.4, 56.6].map((temperature, i) => ({ time: 600 * i, temperature }));
  const about = { readings, temperatureAmbient: 20, heatCapacity: 2000 };
  const { conductance, temperatureStart, residuals } = fitConductance(about);
  const squares = (loss: number, start: number) =>
    readings.reduce((sum, { time, temperature }) => {
      const curve = 20 + (start - 20) * Math.exp((-loss * time) / 2000);
      return sum + (temperature - curve) ** 2;
    }, 0);
  const min = residuals.reduce((sum, residual) => sum + residual ** 2, 0);
  expect(off(squares(conductance, temperatureStart), min)).toBeLessThan(1e-12);
  for (const loss of [0.99, 0.999, 1.001, 1.01])
    for (const start of [-0.3, -0.03, 0, 0.03, 0.3])
      expect(squares(conductance * loss, temperatureStart + start)).toBeGreaterThan(min);
});

test("the interval holds the truth about as often as it says", () => {
  // A generator of our own, so that the count is the same on every machine: sums of twelve uniforms are nearly normal.
  let state = 12345;
  const uniform = () => {
    state = (state * 1103515245 + 12345) % 2 ** 31;
    return state / 2 ** 31;
  };
  const normal = () => Array.from({ length: 12 }, uniform).reduce((sum, one) => sum + one, -6);
  const runs = 1000;
  let held = 0;
  for (let run = 0; run < runs; run += 1) {
    const readings = Array.from({ length: 7 }, (_, i) => ({
      time: 600 * i,
      temperature: 20 + 60 * Math.exp(-0.25 * i) + 0.4 * normal(),
    }));
    const { interval } = fitConductance({ readings, temperatureAmbient: 20, heatCapacity: 2400, confidence: 0.9 });
    if (interval && interval.min <= 1 && interval.max >= 1) held += 1;
  }
  // Four standard deviations of a count of 1000 at 0.9 are 38.
  expect(Math.abs(held - 900)).toBeLessThan(38);
});

test("two readings give the same as the cooling time read backwards", () => {
  const about = { temperatureAmbient: 22, heatCapacity: 2050 };
  const readings = [
    { time: 0, temperature: 80 },
    { time: 1500, temperature: 61.5 },
  ];
  const { conductance } = fitConductance({ ...about, readings });
  const duration = coolingTime({ ...about, conductance, temperatureStart: 80, temperatureEnd: 61.5 });
  expect(off(duration, 1500)).toBeLessThan(1e-12);
});

const fit = (...pairs: readonly (readonly [number, number])[]) =>
  fitConductance({
    readings: pairs.map(([time, temperature]) => ({ time, temperature })),
    temperatureAmbient: 20,
    heatCapacity: 2000,
  });

test.each([
  ["one reading", () => fit([0, 80]), "a list of at least 2"],
  ["readings at one time", () => fit([60, 80], [60, 79]), "readings at two different times"],
  ["a first reading at the room's temperature", () => fit([0, 20], [60, 19]), "a first reading off the room"],
  ["a vessel on the heat", () => fit([0, 60], [600, 70]), "a vessel that cools or warms to it"],
  ["a vessel that holds its temperature", () => fit([0, 60], [600, 60]), "a vessel that cools or warms to it"],
  ["a vessel that has long been cold", () => fit([0, 60], [600, 20], [1200, 20]), "while there is a difference"],
  ["a second reading beyond the room", () => fit([0, 60], [600, 18]), "while there is a difference"],
])("%s says what is missing", (_what, make, missing) => {
  expect(make).toThrow(missing);
});

test("a last reading that errs beyond the room's temperature does no harm", () => {
  const { conductance } = fit([0, 80], [1000, 42.1], [2000, 28.1], [3000, 23], [9000, 19.8]);
  expect(off(conductance, 2)).toBeLessThan(0.01);
});

test("readings on both sides of the room have no interval that is upside down: they are refused", () => {
  const readings = [
    { time: 0, temperature: 37.1 },
    { time: 18, temperature: -4.1 },
    { time: 360, temperature: 28.2 },
    { time: 1767, temperature: 0.3 },
  ];
  expect(() => fitConductance({ readings, temperatureAmbient: 20, heatCapacity: 1e5 })).toThrow(
    "a fit that begins beyond the room's temperature",
  );
});
