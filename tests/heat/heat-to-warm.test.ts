import fc from "fast-check";
import { heatToWarm, type MeltingPart } from "gelwright/heat";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

const celsius = between(-50, 250);
const mass = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const specificHeat = fc.double({ min: 500, max: 5000, noNaN: true });
const melting = fc.record({
  temperature: celsius,
  latentHeat: fc.double({ min: 1e4, max: 4e5, noNaN: true }),
  specificHeatMelt: specificHeat,
});
const parts: fc.Arbitrary<MeltingPart[]> = fc.array(
  fc.oneof(fc.record({ mass, specificHeat }), fc.record({ mass, specificHeat, melting })),
  { minLength: 1, maxLength: 5 },
);

/** The size of the terms that add up to a heat, against which rounding is measured. */
const scaleOf = (list: readonly MeltingPart[]): number => list.reduce((sum, part) => sum + part.mass * 2e6, 0);

test("cooling gives back what warming took, and segments add up", () => {
  fc.assert(
    fc.property(parts, celsius, celsius, celsius, (list, cold, between, hot) => {
      const segment = (temperatureStart: number, temperatureEnd: number) =>
        heatToWarm({ parts: list, temperatureStart, temperatureEnd });
      const whole = segment(cold, hot);
      const rounding = 1e-13 * scaleOf(list);
      expect(Math.abs(segment(hot, cold).heat + whole.heat)).toBeLessThanOrEqual(rounding);
      expect(Math.abs(segment(cold, between).heat + segment(between, hot).heat - whole.heat)).toBeLessThanOrEqual(
        rounding,
      );
      expect(Math.abs(whole.sensible + whole.latent - whole.heat)).toBeLessThanOrEqual(rounding);
    }),
  );
});

test("warming always takes heat, and the parts of a charge can be reckoned one by one", () => {
  fc.assert(
    fc.property(parts, celsius, between(0, 100), (list, temperatureStart, rise) => {
      const temperatureEnd = temperatureStart + rise;
      const { heat } = heatToWarm({ parts: list, temperatureStart, temperatureEnd });
      const alone = list.map((part) => heatToWarm({ parts: [part], temperatureStart, temperatureEnd }).heat);
      expect(heat).toBeGreaterThanOrEqual(0);
      expect(Math.abs(alone.reduce((sum, one) => sum + one, 0) - heat)).toBeLessThanOrEqual(1e-13 * scaleOf(list));
    }),
  );
});

test("what comes to its melting temperature melts, and what cools to it stays molten", () => {
  const wax = { mass: 2, specificHeat: 2000, melting: { temperature: 60, latentHeat: 1e5, specificHeatMelt: 2300 } };
  const latent = (temperatureStart: number, temperatureEnd: number) =>
    heatToWarm({ parts: [wax], temperatureStart, temperatureEnd }).latent;
  expect(latent(20, 59.999)).toBe(0);
  expect(latent(20, 60)).toBe(2e5);
  expect(latent(80, 60)).toBe(0);
  expect(latent(80, 59.999)).toBe(-2e5);
});

// W. Moebs, S. J. Ling, J. Sanny, University Physics Volume 2, OpenStax 2016, section 1.5, example 'Calculating
// Final Temperature from Phase Change': three ice cubes of 6.0 g in 0.25 kg of soda at 20 °C end at 13 °C.
test("three ice cubes chill a soda to the 13 °C of the book", () => {
  const ice = {
    mass: 0.018,
    specificHeat: 2090,
    melting: { temperature: 0, latentHeat: 334000, specificHeatMelt: 4186 },
  };
  const soda = { mass: 0.25, specificHeat: 4186 };
  const heatLeftOver = (temperatureEnd: number) =>
    heatToWarm({ parts: [ice], temperatureStart: -1e-9, temperatureEnd }).heat +
    heatToWarm({ parts: [soda], temperatureStart: 20, temperatureEnd }).heat;
  expect(heatLeftOver(12.5)).toBeLessThan(0);
  expect(heatLeftOver(13.5)).toBeGreaterThan(0);
});

test("a fault is named down to the melting of the part", () => {
  const wax = { mass: 2, specificHeat: 2000, melting: { temperature: 60, latentHeat: -1, specificHeatMelt: 2300 } };
  expect(() => heatToWarm({ parts: [wax], temperatureStart: 20, temperatureEnd: 80 })).toThrow(
    "parts[0].melting.latentHeat: found -1, expected a finite number above 0",
  );
  expect(() => heatToWarm({ parts: [], temperatureStart: 20, temperatureEnd: 80 })).toThrow("parts");
});
