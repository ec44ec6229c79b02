import fc from "fast-check";
import {
  densityAt,
  densityFunction,
  heatLossAt,
  heatLossFunction,
  specificHeatAt,
  specificHeatFunction,
} from "gelwright/laws";
import { expect, test } from "vitest";
import { between } from "../support/between.js";

test("a linear density falls by its slope a kelvin, and is what it is at its reference", () => {
  fc.assert(
    fc.property(
      between(800, 1300),
      between(0, 40),
      between(0.1, 1),
      between(-20, 100),
      (density, reference, slope, rise) => {
        const law = { law: "linear", density, temperatureReference: reference, slope } as const;
        expect(densityAt({ law, temperature: reference })).toBe(density);
        expect(densityAt({ law, temperature: reference + rise })).toBeCloseTo(density - slope * rise, 9);
        expect(densityAt({ law: { law: "constant", density }, temperature: reference })).toBe(density);
      },
    ),
  );
});

test("a density that has fallen to nothing is refused", () => {
  const density = densityFunction({ law: "linear", density: 900, temperatureReference: 20, slope: 10 });
  expect(density(100)).toBe(100);
  expect(() => density(110)).toThrow("a density above 0 at 110 °C");
});

test("heat flows from warm to cold, in proportion to the difference", () => {
  fc.assert(
    fc.property(
      between(0, 100),
      between(-20, 120),
      between(-20, 120),
      (conductance, temperature, temperatureAmbient) => {
        const law = { law: "newton", conductance } as const;
        const loss = heatLossAt({ law, temperature, temperatureAmbient });
        expect(loss * (temperature - temperatureAmbient)).toBeGreaterThanOrEqual(0);
        expect(heatLossAt({ law, temperature: temperatureAmbient, temperatureAmbient: temperature }) + loss).toBe(0);
      },
    ),
  );
  expect(heatLossFunction({ law: "newton", conductance: 2 }, 20)(70)).toBe(100);
});

test("a polynomial of one coefficient is a constant, of more is summed in powers of °C", () => {
  fc.assert(
    fc.property(
      between(1500, 4200),
      between(-2, 5),
      between(-0.005, 0.005),
      between(0, 120),
      (c0, c1, c2, temperature) => {
        const constant = specificHeatAt({ law: { law: "constant", specificHeat: c0 }, temperature });
        expect(specificHeatAt({ law: { law: "polynomial", coefficients: [c0] }, temperature })).toBe(constant);
        expect(specificHeatAt({ law: { law: "polynomial", coefficients: [c0, c1, c2] }, temperature })).toBeCloseTo(
          c0 + c1 * temperature + c2 * temperature ** 2,
          8,
        );
      },
    ),
  );
});

test("a specific heat below zero is refused, at 0 °C there is one", () => {
  const specificHeat = specificHeatFunction({ law: "polynomial", coefficients: [2000, -30] });
  expect(specificHeat(0)).toBe(2000);
  expect(specificHeatFunction({ law: "constant", specificHeat: 2000 })(0)).toBe(2000);
  expect(() => specificHeat(70)).toThrow("a specific heat above 0 at 70 °C");
});

test.each([
  ["density", () => densityFunction({ law: "newton" } as never), "a density law"],
  ["heat loss", () => heatLossFunction({ law: "linear" } as never, 20), "a heat-loss law"],
  ["specific heat", () => specificHeatFunction({ law: "linear" } as never), "a specific-heat law"],
])("a %s of an unknown kind is refused", (_name, make, message) => {
  expect(make).toThrow(message);
});
