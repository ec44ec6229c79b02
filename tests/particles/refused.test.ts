import { vapourPressures } from "gelwright/laws";
import { boilingPressure, boilingTemperature, foamHead } from "gelwright/particles";
import { expect, test } from "vitest";

const dippr = {
  law: "dippr-101",
  coefficients: [73.649, -7258.2, -7.3037, 4.1653e-6, 2],
  ...{ temperatureMin: 0.01, temperatureMax: 373.946 },
};

test("a boiling temperature is found by Antoine's law alone, which can be solved for it", () => {
  expect(() => boilingTemperature({ vapourPressure: dippr as never, pressure: 5000 })).toThrow('"antoine"');
});

test("a law in natural logarithms boils where the same law in decimal ones does", () => {
  const decimal = vapourPressures.water;
  const natural = {
    ...decimal,
    logarithm: "natural" as const,
    constantA: decimal.constantA * Math.LN10,
    constantB: decimal.constantB * Math.LN10,
  };
  const at = (vapourPressure: typeof decimal) => boilingTemperature({ vapourPressure, pressure: 5000 });
  expect(at(natural)).toBeCloseTo(at(decimal), 9);
  expect(boilingPressure({ vapourPressure: natural, temperature: at(natural) })).toBeCloseTo(5000, 6);
});

test("gas without liquid is no foam", () => {
  expect(() => foamHead({ level: 0.4, volumeFractionGas: 1, pressure: 5000 })).toThrow("below 1");
});
