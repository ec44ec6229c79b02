import fc from "fast-check";
import {
  baseUnit,
  convert,
  type Dimension,
  formatQuantity,
  parseQuantity,
  readQuantity,
  type Unit,
} from "gelwright/units";
import { describe, expect, test } from "vitest";
import { plainSpelling } from "../../src/units/spelling.js";
import { ascii } from "../../src/units/unit.js";
import { anyPair, dimensions, spellingsOf, unitsOf } from "./all-units.js";

test("what the formatter writes, the parser reads back as the same number", () => {
  fc.assert(
    fc.property(anyPair, fc.double({ min: 1e-250, max: 1e250, noNaN: true }), ([dimension, unit], value) => {
      expect(parseQuantity(formatQuantity(value, unit), dimension)).toEqual({ value, unit });
    }),
  );
});

test("a quantity has at most 200 letters", () => {
  expect(parseQuantity(`${"0".repeat(197)}1 g`, "mass")).toEqual({ value: 1, unit: "g" });
  expect(() => parseQuantity(`${"0".repeat(198)}1 g`, "mass")).toThrow("expected at most 200 letters");
});

test("what is written to so many digits reads back within half of the last", () => {
  const digits = fc.integer({ min: 1, max: 17 });
  fc.assert(
    fc.property(
      anyPair,
      fc.double({ min: 1e-30, max: 1e30, noNaN: true }),
      digits,
      ([dimension, unit], value, count) => {
        const { value: read } = parseQuantity(formatQuantity(value, unit, { significantDigits: count }), dimension);
        expect(Math.abs(read - value)).toBeLessThanOrEqual(
          0.5000001 * 10 ** (Math.floor(Math.log10(value)) + 1 - count),
        );
      },
    ),
  );
});

test("every unit reads in both spellings, into the SI one", () => {
  for (const dimension of dimensions) {
    for (const unit of unitsOf(dimension)) {
      expect(plainSpelling(unit)).toBe(ascii(unit));
      for (const spelling of [unit, ascii(unit)])
        expect(parseQuantity(`3 ${spelling}`, dimension)).toEqual({ value: 3, unit });
    }
    expect(readQuantity(`3 ${baseUnit(dimension)}`, dimension)).toBe(3);
  }
});

test("no spelling stands for two units of one dimension, and the types list at most sixteen", () => {
  for (const dimension of dimensions) {
    const all = unitsOf(dimension).flatMap((unit) => (ascii(unit) === unit ? [unit] : [unit, ascii(unit)]));
    expect(new Set(all).size).toBe(all.length);
    expect(spellingsOf(dimension).length).toBeLessThanOrEqual(16);
  }
});

describe("spellings of the trade", () => {
  test.each<[string, Dimension, number, string]>([
    ["60kg", "mass", 60, "kg"],
    ["60\u202fkg", "mass", 60, "kg"],
    ["60\u2009kg", "mass", 60, "kg"],
    ["60\u00a0kg", "mass", 60, "kg"],
    ["  60   kg ", "mass", 60, "kg"],
    ["12 500 g", "mass", 12500, "g"],
    ["1\u202f234\u202f567.5 g", "mass", 1234567.5, "g"],
    [".5 oz", "mass", 0.5, "oz"],
    ["+1.5E-3 t", "mass", 0.0015, "t"],
    ["1e\u22123 t", "mass", 0.001, "t"],
    ["\u22125 °C", "temperature", -5, "°C"],
    ["-5 K", "temperatureDifference", -5, "K"],
    ["85℃", "temperature", 85, "°C"],
    ["185 ℉", "temperature", 185, "°F"],
    ["85 ºC", "temperature", 85, "°C"],
    ["3 \u03bcm", "length", 3, "µm"],
    ["3 \u00b5m", "length", 3, "µm"],
    ["250 ml", "volume", 250, "mL"],
    ["2 l", "volume", 2, "L"],
    ["4 g/l", "density", 4, "g/L"],
    ["8 US\u00a0fl\u00a0oz", "volume", 8, "US fl oz"],
    ["0.92 g/cm^3", "density", 0.92, "g/cm³"],
    ["1.2 Pa.s", "dynamicViscosity", 1.2, "Pa·s"],
    ["1.2 Pa⋅s", "dynamicViscosity", 1.2, "Pa·s"],
    ["1200 mPa s", "dynamicViscosity", 1200, "mPa·s"],
    ["2.15 kJ/kg/K", "specificHeat", 2.15, "kJ/(kg·K)"],
    ["2150 J/(kg·°C)", "specificHeat", 2150, "J/(kg·K)"],
    ["2150 J/(kg K)", "specificHeat", 2150, "J/(kg·K)"],
    ["12 W/m²K", "heatTransferCoefficient", 12, "refused"],
    ["12 W/m^2/K", "heatTransferCoefficient", 12, "W/(m²·K)"],
    ["9%", "massFraction", 9, "%"],
    ["9 % w/w", "massFraction", 9, "% w/w"],
    ["9 ‰", "massFraction", 9, "‰"],
    ["5 ∆°F", "temperatureDifference", 5, "Δ°F"],
  ])("%j", (text, dimension, value, unit) => {
    if (unit === "refused") expect(() => parseQuantity(text, dimension)).toThrow("expected a unit of");
    else expect(parseQuantity(text, dimension)).toEqual({ value, unit });
  });
});

describe("what could be misread is refused, with the remedy", () => {
  test.each<[string, Dimension, string]>([
    ["12,5 kg", "mass", 'a decimal point and no comma, such as "12.5 kg"'],
    ["0,125 kg", "mass", 'such as "0.125 kg"'],
    ["1,000 kg", "mass", 'such as "1.000 kg" or "1000 kg"'],
    ["1,234,567 g", "mass", 'such as "1234567 g"'],
    ["1,234.5 g", "mass", 'such as "1234.5 g"'],
    ["1.234,5 g", "mass", 'such as "1234.5 g"'],
    ["1,2 Pa.s", "dynamicViscosity", 'such as "1.2 Pa.s"'],
    ["12", "mass", 'a decimal number and its unit, such as "12.5 kg"'],
    ["kg", "mass", 'a decimal number and its unit, such as "12.5 kg"'],
    ["", "mass", 'a decimal number and its unit, such as "12.5 kg"'],
    ["0x10 kg", "mass", "a decimal number"],
    ["0b11 kg", "mass", "a decimal number"],
    ["NaN kg", "mass", "a decimal number"],
    ["Infinity kg", "mass", "a decimal number"],
    ["5. kg", "mass", "a decimal number"],
    ["½ kg", "mass", "a decimal number"],
    ["--5 kg", "mass", "a decimal number"],
    ["q.s.", "mass", "a decimal number"],
    ["1 2 kg", "mass", "a unit of mass"],
    ["10² kg", "mass", "a unit of mass"],
    ["5 stone", "mass", 'whose unit is "stone", expected a unit of mass: kg, g, mg, µg, t, lb, oz, US ton, imp ton'],
    ["5 gal", "volume", "US gal, US fl oz, imp gal, imp fl oz"],
    ["5 cal", "energy", "cal_th, kcal_th, cal_IT, kcal_IT"],
    ["5 mL", "mass", "whose unit is mL (volume), expected a unit of mass"],
    ["5 % v/v", "massFraction", "whose unit is % v/v (volumeFraction), expected a unit of massFraction"],
    ["5 %", "volumeFraction", "whose unit is % (massFraction), expected a unit of volumeFraction"],
    ["5 °C", "temperatureDifference", "whose unit is °C (temperature), expected a unit of temperatureDifference: K"],
    ["-300 °C", "temperature", "absolute zero (-273.15 °C) or more"],
    ["-1 K", "temperature", "absolute zero (0 K) or more"],
    ["1e999 kg", "mass", "a number that a double can hold"],
    ["1e-999 kg", "mass", "a number that a double can hold"],
    ["1e308 t", "mass", "a double can hold"],
  ])("%j as %s", (text, dimension, expected) => {
    expect(() => readQuantity(text, dimension)).toThrow(expected);
    expect(() => parseQuantity(text, dimension, "lines[2].amount")).toThrow(/^lines\[2\]\.amount: found /);
  });

  test("and so is what is no text, or a dimension that does not exist", () => {
    expect(() => parseQuantity(12 as unknown as string, "mass")).toThrow(
      "quantity: found 12, expected a decimal number",
    );
    expect(() => parseQuantity("1 kg", "toString" as Dimension)).toThrow(
      'dimension: found "toString", expected one of ',
    );
  });
});

test("reading is parsing and converting", () => {
  fc.assert(
    fc.property(anyPair, fc.double({ min: 0, max: 1e200, noNaN: true }), ([dimension, unit], value) => {
      expect(readQuantity(`${value} ${unit}`, dimension)).toBe(convert(value, unit, baseUnit(dimension) as Unit));
    }),
  );
});

test("formats: digits that count, no power of ten where a sheet would want none", () => {
  expect(formatQuantity(60, "kg")).toBe("60 kg");
  expect(formatQuantity(60, "kg", { significantDigits: 3 })).toBe("60.0 kg");
  expect(formatQuantity(0.00012345, "m²/s", { significantDigits: 2 })).toBe("0.00012 m²/s");
  expect(formatQuantity(1.5e-9, "m²/s", { significantDigits: 3 })).toBe("1.50e-9 m²/s");
  expect(formatQuantity(1234567, "Pa·s", { significantDigits: 2 })).toBe("1200000 Pa·s");
  expect(formatQuantity(-5, "°C", { significantDigits: 2 })).toBe("-5.0 °C");
  expect(() => formatQuantity(Number.NaN, "kg")).toThrow("value: found NaN");
  expect(() => formatQuantity(1, "stone" as "kg")).toThrow('unit: found "stone", expected a unit such as kg');
  expect(() => formatQuantity(-300, "°C")).toThrow("absolute zero");
  expect(() => formatQuantity(-459.67, "°F", { significantDigits: 4 })).toThrow("absolute zero");
  expect(() => formatQuantity(Number.MAX_VALUE, "kg", { significantDigits: 2 })).toThrow("value: found Infinity");
  for (const significantDigits of [0, 18, 1.5, Number.NaN])
    expect(() => formatQuantity(1, "kg", { significantDigits })).toThrow("a whole number from 1 to 17");
});
