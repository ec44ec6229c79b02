import fc from "fast-check";
import { additionTemperatureLeast, largestAddition, meltTemperatureLeast, mixingTemperature } from "gelwright/heat";
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
        const temperatureLeast = 60;
        const most = { ...addition, mass: largestAddition({ melt, addition, temperatureLeast }) };
        expect(mixingTemperature({ charges: [melt, most] })).toBeCloseTo(60, 9);
        const hotter = { ...melt, temperature: meltTemperatureLeast({ melt, addition, temperatureLeast }) };
        fc.pre(hotter.temperature < 1e4);
        expect(mixingTemperature({ charges: [hotter, addition] })).toBeCloseTo(60, 9);
        const warmed = { ...addition, temperature: additionTemperatureLeast({ melt, addition, temperatureLeast }) };
        fc.pre(warmed.temperature > -273);
        expect(mixingTemperature({ charges: [melt, warmed] })).toBeCloseTo(60, 9);
      },
    ),
  );
});

test("a warmer addition or a hotter melt allows more of it", () => {
  const melt = { mass: 10, specificHeat: 2100, temperature: 80 };
  const most = (warmth: number, hot: number) =>
    largestAddition({
      melt: { ...melt, temperature: hot },
      addition: { specificHeat: 2000, temperature: warmth },
      temperatureLeast: 60,
    });
  expect(most(30, 80)).toBeGreaterThan(most(20, 80));
  expect(most(20, 85)).toBeGreaterThan(most(20, 80));
  expect(most(20, 60)).toBe(0);
});

test("a bound may lie below any temperature: a pinch of oil is never too cold", () => {
  const melt = { mass: 100, specificHeat: 2100, temperature: 80 };
  const addition = { mass: 0.01, specificHeat: 2000 };
  expect(additionTemperatureLeast({ melt, addition, temperatureLeast: 60 })).toBeLessThan(-273.15);
});

test("a melt that is already too cool, and an addition of which any amount may go in, are refused as such", () => {
  const melt = { mass: 10, specificHeat: 2100, temperature: 55 };
  const addition = { specificHeat: 2000, temperature: 20 };
  const unreachable = (message: string) =>
    expect.objectContaining({ code: "unreachable", message: expect.stringContaining(message) });
  expect(() => largestAddition({ melt, addition, temperatureLeast: 60 })).toThrow(
    unreachable("melt.temperature: found 55"),
  );
  expect(() => largestAddition({ melt, addition: { ...addition, temperature: 52 }, temperatureLeast: 50 })).toThrow(
    unreachable("any amount of it may go in"),
  );
});
