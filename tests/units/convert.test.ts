import fc from "fast-check";
import Fraction from "fraction.js";
import { baseUnit, convert, converter, type Unit } from "gelwright/units";
import { describe, expect, test } from "vitest";
import { pairOf } from "../../src/units/pair.js";
import { anyPair, dimensions, spellingsOf, unitsOf } from "./all-units.js";
import { correctlyRounded, exactly, ulpsOff } from "./exact.js";

const reading = fc.double({ min: 1e-200, max: 1e200, noNaN: true });

describe("whole numbers stay whole", () => {
  // 1 lb = 16 oz and the like: definitions (NIST SP 811, Appendix B; NIST Handbook 44, Appendix C, from memory).
  test.each([
    ["ft", "in", 12],
    ["yd", "ft", 3],
    ["in", "mil", 1000],
    ["lb", "oz", 16],
    ["US ton", "lb", 2000],
    ["imp ton", "lb", 2240],
    ["g", "mg", 1000],
    ["t", "g", 1_000_000],
    ["US gal", "US fl oz", 128],
    ["US gal", "in³", 231],
    ["imp gal", "imp fl oz", 160],
    ["ft³", "in³", 1728],
    ["h", "s", 3600],
    ["week", "h", 168],
    ["Pa·s", "cP", 1000],
    ["kWh", "kJ", 3600],
  ] as const)("%s to %s is times %d", (from, to, times) => {
    fc.assert(
      fc.property(fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }), (count) => {
        expect(convert(count, from as Unit, to as Unit)).toBe(count * times);
        expect(convert(count * times, to as Unit, from as Unit)).toBe(count);
      }),
    );
  });

  test("and come back as they were", () => {
    for (let count = 0; count <= 10_000; count++) {
      expect(convert(convert(count, "lb", "oz"), "oz", "lb")).toBe(count);
      expect(convert(convert(count, "ft", "in"), "in", "ft")).toBe(count);
    }
  });
});

test("a conversion is correctly rounded while its numbers are exact, and else within 2 ulp", () => {
  let [correct, near] = [0, 0];
  fc.assert(
    fc.property(anyPair, reading, ([dimension, from, to], value) => {
      fc.pre(dimension !== "temperature");
      const { numerator, denominator } = pairOf(dimension, from, to);
      const truth = exactly(value).mul(new Fraction(numerator, denominator));
      const converted = convert(value, from, to);
      const [times, over] = [Number(numerator), Number(denominator)];
      const exactPair = BigInt(times) === numerator && BigInt(over) === denominator;
      if (
        exactPair &&
        exactly(value)
          .mul(numerator)
          .equals(exactly(value * times))
      ) {
        correct++;
        expect(correctlyRounded(converted, truth)).toBe(true);
      } else {
        near++;
        expect(ulpsOff(converted, truth)).toBeLessThanOrEqual(2);
      }
    }),
    { numRuns: 2000 },
  );
  expect(Math.min(correct, near)).toBeGreaterThan(100);
});

test("every whole number of any unit is correctly rounded in any other, if the pair is exact in doubles", () => {
  fc.assert(
    fc.property(anyPair, fc.integer({ min: 1, max: 10_000 }), ([dimension, from, to], count) => {
      const { numerator, shift, denominator } = pairOf(dimension, from, to);
      fc.pre(BigInt(count) * numerator + shift < 2n ** 53n && denominator < 2n ** 53n);
      const truth = new Fraction(BigInt(count) * numerator + shift, denominator);
      expect(correctlyRounded(convert(count, from, to), truth)).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test("a temperature is within 2⁻⁵² of the size of reading and result together", () => {
  const temperature = fc.constantFrom(...unitsOf("temperature"));
  fc.assert(
    fc.property(temperature, temperature, fc.double({ min: 1e-9, max: 1e6, noNaN: true }), (from, to, above) => {
      const value = convert(above, "K", from as "K");
      const { numerator, shift, denominator } = pairOf("temperature", from, to);
      const truth = exactly(value).mul(numerator).add(shift).div(denominator);
      const bound =
        2 ** -52 * (Math.abs((value * Number(numerator)) / Number(denominator)) + Math.abs(truth.valueOf()));
      const off = exactly(convert(value, from as "K", to as "K"))
        .sub(truth)
        .abs();
      expect(off.compare(exactly(bound))).toBeLessThanOrEqual(0);
    }),
    { numRuns: 1000 },
  );
});

test("the same unit gives the value itself, to the last bit", () => {
  fc.assert(
    fc.property(anyPair, fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }), ([, unit], value) => {
      expect(convert(value, unit, unit)).toBe(value);
    }),
  );
});

test("both spellings of a unit mean the same", () => {
  for (const dimension of dimensions)
    for (const unit of spellingsOf(dimension))
      expect(convert(7, unit, baseUnit(dimension))).toBe(converter(unit, baseUnit(dimension))(7));
  expect(convert(1, "kg/m3", "kg/m³")).toBe(1);
  expect(convert(1, "Btu/(lb*degF)", "J/(kg*K)")).toBe(4186.8);
});

test("a kelvin against another unit of difference is a difference, against one of temperature a temperature", () => {
  expect(convert(5, "K", "Δ°F")).toBe(9);
  expect(convert(5, "K", "°C")).toBe(-268.15);
  expect(convert(-5, "K", "K")).toBe(-5);
});

describe("nothing lies below absolute zero", () => {
  test.each([
    ["°C", -273.15],
    ["K", 0],
    ["°F", -459.67],
    ["°R", 0],
  ] as const)("%s", (unit, zero) => {
    expect(Math.abs(convert(zero, unit, "K"))).toBeLessThan(1e-12);
    expect(() => convert(zero - 0.01, unit, "°C")).toThrow(/^value: found .*, expected absolute zero \(/);
    expect(() => converter(unit, "°F")(-1e308)).toThrow("absolute zero");
  });
});

describe("what the engine alone would let through is refused", () => {
  test.each([Number.NaN, undefined, null, "", "5", Number.POSITIVE_INFINITY, {}, [1], true])(
    "a value of %s",
    (value) => {
      expect(() => convert(value as number, "kg", "lb")).toThrow(/^value: found .*, expected a finite number$/);
      expect(() => convert(value as number, "kg", "kg")).toThrow(/^value: found .*, expected a finite number$/);
      expect(() => converter("°F", "°C")(value as number)).toThrow(/^value: found .*, expected a finite number$/);
    },
  );

  test.each(["stone", "Kg", "", "constructor", "__proto__", "toString", "kg "])("a unit of the name %j", (unit) => {
    expect(() => convert(1, unit as "kg", "lb")).toThrow(
      `from: found ${JSON.stringify(unit)}, expected a unit of mass`,
    );
    expect(() => convert(1, "lb", unit as "kg")).toThrow(`to: found ${JSON.stringify(unit)}, expected a unit of mass`);
  });

  test("units of two dimensions, each said to which it belongs", () => {
    expect(() => convert(1, "kg", "L" as "kg")).toThrow("to: found L (volume), expected a unit of mass: kg, g, mg");
    expect(() => convert(1, "%", "% v/v" as "%")).toThrow("to: found % v/v (volumeFraction), expected a unit of mass");
    expect(() => convert(1, "Δ°C", "°F" as "Δ°F")).toThrow(
      "to: found °F (temperature), expected a unit of temperatureD",
    );
  });

  test("a result that no double can hold, but not one that only overflows on the way", () => {
    expect(() => convert(1e308, "kg", "mg")).toThrow("a double can hold");
    expect(ulpsOff(convert(1e305, "lb", "kg"), exactly(1e305).mul("0.45359237"))).toBeLessThanOrEqual(2);
    expect(convert(1e308, "°F", "K")).toBeCloseTo(1e308 / 1.8, -295);
  });
});

test("t is the tonne", () => {
  expect(convert(1, "t", "kg")).toBe(1000);
});
