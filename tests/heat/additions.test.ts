import fc from "fast-check";
import { additionTemperatureMin, largestAddition, meltTemperatureMin, mixingTemperature } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const mass = between(1e-3, 1e3);
const specificHeat = between(500, 5000);

test("each answer, mixed again, meets the least temperature", () => {
  fc.assert(
    fc.property(
      fc.record({ mass, specificHeat, temperature: between(61, 120) }),
      fc.record({ mass, specificHeat, temperature: between(-10, 59) }),
      (melt, addition) => {
        const temperatureMin = 60;
        const max = { ...addition, mass: largestAddition({ melt: [melt], addition, temperatureMin }) };
        expect(mixingTemperature({ charges: [melt, max] })).toBeCloseTo(60, 9);
        const hotter = { ...melt, temperature: meltTemperatureMin({ melt: [melt], addition, temperatureMin }) };
        fc.pre(hotter.temperature < 1e4);
        expect(mixingTemperature({ charges: [hotter, addition] })).toBeCloseTo(60, 9);
        const warmed = {
          ...addition,
          temperature: additionTemperatureMin({ melt: [melt], addition, temperatureMin }),
        };
        fc.pre(warmed.temperature > -273);
        expect(mixingTemperature({ charges: [melt, warmed] })).toBeCloseTo(60, 9);
      },
    ),
  );
});

test("a warmer addition or a hotter melt allows more of it", () => {
  const melt = { mass: 10, specificHeat: 2100, temperature: 80 };
  const max = (warmth: number, hot: number) =>
    largestAddition({
      melt: [{ ...melt, temperature: hot }],
      addition: { specificHeat: 2000, temperature: warmth },
      temperatureMin: 60,
    });
  expect(max(30, 80)).toBeGreaterThan(max(20, 80));
  expect(max(20, 85)).toBeGreaterThan(max(20, 80));
  expect(max(20, 60)).toBe(0);
});

test("a bound may lie below any temperature: a pinch of oil is never too cold", () => {
  const melt = [{ mass: 100, specificHeat: 2100, temperature: 80 }];
  const addition = { mass: 0.01, specificHeat: 2000 };
  expect(additionTemperatureMin({ melt, addition, temperatureMin: 60 })).toBeLessThan(-273.15);
  // With the temperature of its store it goes in as it is.
  expect(additionTemperatureMin({ melt, addition, temperatureStored: 21, temperatureMin: 60 })).toBe(21);
});

test("a melt of several parts answers as one of their whole heat capacity does", () => {
  fc.assert(
    fc.property(mass, mass, specificHeat, between(61, 120), between(-10, 59), (one, other, c, hot, cold) => {
      const parts = [
        { mass: one, specificHeat: c },
        { mass: other, specificHeat: 2 * c },
      ];
      const whole = [{ mass: one + 2 * other, specificHeat: c }];
      const warm = (melt: typeof whole) => melt.map((part) => ({ ...part, temperature: hot }));
      const addition = { mass: 1, specificHeat: 2000, temperature: cold };
      const near = (actual: number, expected: number) => expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-10);
      const above = { addition, temperatureMin: 60 };
      near(largestAddition({ ...above, melt: warm(parts) }), largestAddition({ ...above, melt: warm(whole) }));
      near(meltTemperatureMin({ ...above, melt: parts }), meltTemperatureMin({ ...above, melt: whole }));
      near(
        60 - additionTemperatureMin({ ...above, melt: warm(parts) }),
        60 - additionTemperatureMin({ ...above, melt: warm(whole) }),
      );
    }),
  );
});

test("a melt that is already too cool, and an addition of which any amount may go in, are refused as such", () => {
  const melt = [{ mass: 10, specificHeat: 2100, temperature: 55 }];
  const addition = { specificHeat: 2000, temperature: 20 };
  const unreachable = (message: string) =>
    expect.objectContaining({ code: "unreachable", message: expect.stringContaining(message) });
  expect(() => largestAddition({ melt, addition, temperatureMin: 60 })).toThrow(
    unreachable("melt: found 105000 J short"),
  );
  expect(() => largestAddition({ melt, addition: { ...addition, temperature: 52 }, temperatureMin: 50 })).toThrow(
    unreachable("any amount of it may go in"),
  );
});
