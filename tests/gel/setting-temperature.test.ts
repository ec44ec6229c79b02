import fc from "fast-check";
import { temperatureAtDose } from "gelwright/gel";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const points = fc
  .array(
    fc.record({
      dose: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
      temperature: fc.double({ min: 30, max: 90, noNaN: true }),
    }),
    {
      minLength: 2,
      maxLength: 6,
    },
  )
  .filter((list) => new Set(list.map((point) => point.dose)).size === list.length);

test("at a measured dose it is the measured temperature, to the last bit", () => {
  fc.assert(
    fc.property(points, (points) => {
      for (const { dose, temperature } of points) expect(temperatureAtDose({ dose, points })).toBe(temperature);
    }),
  );
});

test("between two doses it lies between their temperatures, whatever the order of the readings", () => {
  fc.assert(
    fc.property(points, between(0, 1), (points, along) => {
      const [low, high] = [...points].sort((one, other) => one.dose - other.dose);
      if (!low || !high) throw new Error("two points at least");
      const dose = low.dose + along * (high.dose - low.dose);
      const between = temperatureAtDose({ dose, points });
      expect(between).toBeGreaterThanOrEqual(Math.min(low.temperature, high.temperature) - 1e-9);
      expect(between).toBeLessThanOrEqual(Math.max(low.temperature, high.temperature) + 1e-9);
      expect(temperatureAtDose({ dose, points: [...points].reverse() })).toBe(between);
    }),
  );
});

test("ln dose is linear in 1/T: a line through two points is met by a third on it", () => {
  const kelvin = 273.15;
  const onLine = (dose: number): number => 1 / (1 / (55 + kelvin) - 2e-4 * Math.log(dose / 0.08)) - kelvin;
  const points = [0.08, 0.2].map((dose) => ({ dose, temperature: onLine(dose) }));
  expect(temperatureAtDose({ dose: 0.12, points })).toBeCloseTo(onLine(0.12), 9);
});

test("beyond the measured doses it is refused", () => {
  const points = [
    { dose: 0.08, temperature: 55 },
    { dose: 0.16, temperature: 65 },
  ];
  expect(() => temperatureAtDose({ dose: 0.2, points })).toThrow("a dose from 0.08 to 0.16");
  expect(() => temperatureAtDose({ dose: 0.1, points: points.slice(0, 1) })).toThrow("a dose from 0.08 to 0.08");
});

test("doses that differ in the last digit are still two, with a temperature between theirs", () => {
  const points = [
    { dose: 0.010000000000000004, temperature: 31 },
    { dose: 0.01, temperature: 30 },
  ];
  expect(temperatureAtDose({ dose: 0.010000000000000002, points })).toBeCloseTo(30.5, 2);
});
