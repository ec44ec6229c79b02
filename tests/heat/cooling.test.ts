import fc from "fast-check";
import { coolingTime, coolingTimeAtScale, temperatureAfterCooling } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";
import { without } from "../support/without.js";

const cooling = fc
  .record({
    heatCapacity: between(1, 1e7),
    conductance: between(1e-3, 1e3),
    temperatureAmbient: between(-20, 60),
    excess: fc.oneof(between(1, 200), between(-80, -1)),
    way: between(0.001, 0.999),
  })
  .map(({ excess, way, ...rest }) => ({
    ...rest,
    temperatureStart: rest.temperatureAmbient + excess,
    temperatureEnd: rest.temperatureAmbient + excess * (1 - way),
  }));

test("time and temperature are inverse to one another, to 1e-12 of the start's distance from the room", () => {
  fc.assert(
    fc.property(cooling, (input) => {
      const after = temperatureAfterCooling(without({ ...input, duration: coolingTime(input) }, "temperatureEnd"));
      const size = Math.abs(input.temperatureStart) + Math.abs(input.temperatureAmbient);
      expect(Math.abs(after - input.temperatureEnd)).toBeLessThanOrEqual(1e-12 * size);
    }),
  );
});

test("a fall of a thousandth of a kelvin is as exact as a long one", () => {
  const input = {
    heatCapacity: 2000,
    conductance: 1,
    temperatureAmbient: 0,
    temperatureStart: 64,
    temperatureEnd: 64 - 2 ** -10,
  };
  // ln(1/(1 - x)) = x + x²/2 + x³/3 + …
  const share = 2 ** -16;
  const series = 2000 * (share + share ** 2 / 2 + share ** 3 / 3 + share ** 4 / 4);
  expect(Math.abs(coolingTime(input) / series - 1)).toBeLessThanOrEqual(1e-15);
});

test("two segments take as long as the whole, and a faster loss is faster", () => {
  fc.assert(
    fc.property(cooling, between(0.01, 0.99), (input, part) => {
      const halt = input.temperatureStart + part * (input.temperatureEnd - input.temperatureStart);
      const whole = coolingTime(input);
      const segments =
        coolingTime({ ...input, temperatureEnd: halt }) + coolingTime({ ...input, temperatureStart: halt });
      expect(Math.abs(segments / whole - 1)).toBeLessThanOrEqual(1e-9);
      expect(coolingTime({ ...input, conductance: input.conductance * 2 })).toBeLessThan(whole);
    }),
  );
});

test("what lies beyond the room or behind the start is never reached", () => {
  const input = { heatCapacity: 2000, conductance: 1, temperatureAmbient: 20, temperatureStart: 80 };
  for (const temperatureEnd of [20, 15, 90])
    expect(() => coolingTime({ ...input, temperatureEnd })).toThrow(
      expect.objectContaining({
        code: "unreachable",
        message: `temperatureEnd: found ${temperatureEnd}, expected between start (80 °C) and ambient (20 °C), ambient left out`,
      }),
    );
  expect(coolingTime({ ...input, temperatureEnd: 80 })).toBe(0);
  expect(coolingTime({ ...input, temperatureStart: 20, temperatureEnd: 20 })).toBe(0);
});

test("no loss, no cooling; long enough, and the room's temperature is there", () => {
  const input = { heatCapacity: 2000, temperatureAmbient: 20, temperatureStart: 80 };
  expect(temperatureAfterCooling({ ...input, conductance: 0, duration: 1e9 })).toBe(80);
  expect(temperatureAfterCooling({ ...input, conductance: 1, duration: 1e9 })).toBe(20);
});

test("eight times the volume takes twice as long by its surface, four times as long by conduction, and back again", () => {
  const input = { duration: 600, volume: 0.001, volumeAtScale: 0.008 };
  expect(coolingTimeAtScale({ ...input, limitedBy: "surface" })).toBeCloseTo(1200, 9);
  expect(coolingTimeAtScale({ ...input, limitedBy: "conduction" })).toBeCloseTo(2400, 9);
  for (const limitedBy of ["surface", "conduction"] as const) {
    const duration = coolingTimeAtScale({ ...input, limitedBy });
    expect(coolingTimeAtScale({ duration, volume: 0.008, volumeAtScale: 0.001, limitedBy })).toBeCloseTo(600, 9);
  }
  expect(() => coolingTimeAtScale({ ...input, limitedBy: "radiation" as never })).toThrow('"surface" or "conduction"');
});
