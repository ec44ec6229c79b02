import { CalculationError } from "gelwright/error";
import { baseUnit, convert, formatQuantity, parseQuantity } from "gelwright/units";
import { expect, test } from "vitest";
import { exactQuantity, withinWhole } from "../../src/units/exact.js";
import { numberIn } from "../../src/units/parse.js";
import { commonDivisor, hundred, minus, nought, one, over, parseRational, times } from "../../src/units/rational.js";

test("a text that does not begin with a number has none, even if one stands further on", () => {
  const none = { matched: "", sign: "", digits: "", exponent: "0" };
  for (const text of ["5. kg", "1.2.3 kg", "1,2 kg"]) expect(numberIn(text)).toEqual(none);
  expect(numberIn("\u22121 000.5e+3 g")).toEqual({
    ...{ matched: "\u22121 000.5e+3", sign: "-", digits: "1000.5", exponent: "3" },
  });
  expect(() => parseQuantity("10x5 kg", "mass")).toThrow('whose unit is "x5 kg"');
});

test("a comma may part thousands only after one to three digits, and then both readings are offered", () => {
  const remedy = (text: string) => {
    try {
      parseQuantity(text, "mass");
    } catch (error) {
      return /such as (.*)$/.exec(String(error))?.[1];
    }
    return undefined;
  };
  expect(remedy("12,345 kg")).toBe('"12.345 kg" or "12345 kg"');
  expect(remedy("123,456 kg")).toBe('"123.456 kg" or "123456 kg"');
  expect(remedy("1234,567 kg")).toBe('"1234.567 kg"');
  expect(remedy("0,345 kg")).toBe('"0.345 kg"');
  expect(remedy("12,34 kg")).toBe('"12.34 kg"');
  expect(remedy("1.234,567 kg")).toBe('"1234.567 kg"');
});

function faultOf(text: string, dimension: "mass" | "volume") {
  try {
    parseQuantity(text, dimension);
  } catch (error) {
    if (error instanceof CalculationError) return error.faults[0];
  }
  throw new Error("this was read");
}

test("a unit that nobody knows is told by rule and name, with the nearest one; one of elsewhere has no nearest", () => {
  expect(faultOf("5 kgg", "mass")).toMatchObject({
    rule: "unknown-unit",
    expected: expect.stringContaining("did you mean kg?"),
    parameters: { name: "kgg", dimension: "mass", nearest: "kg" },
  });
  const elsewhere = faultOf("5 mL", "mass");
  expect(elsewhere).toMatchObject({ rule: "unknown-unit", parameters: { name: "mL", dimension: "mass" } });
  expect(elsewhere?.parameters).not.toHaveProperty("nearest");
  expect(elsewhere?.expected).not.toContain("did you mean");
  expect(faultOf("5 furlongs", "mass")?.parameters).not.toHaveProperty("nearest");
  expect(faultOf("five kg", "mass")?.rule).toBe("not-a-quantity");
});

test("a unit of several words is read with any space between them", () => {
  expect(parseQuantity("8 US  fl   oz", "volume")).toEqual({ value: 8, unit: "US fl oz" });
});

test("powers of ten are written from 1e20 on, and figures below it in full", () => {
  const written = (value: number) => formatQuantity(value, "kg", { significantDigits: 3 });
  expect([written(9.99e19), written(1e20), written(1e21), written(-1e20)]).toEqual([
    ...["99900000000000000000 kg", "1.00e+20 kg", "1.00e+21 kg", "-1.00e+20 kg"],
  ]);
});

test("a temperature whose product overflows on the way is converted all the same, down to absolute zero itself", () => {
  expect(convert(1.5e308, "°F", "°C") / (1.5e308 / 1.8)).toBeCloseTo(1, 14);
  expect(convert(-273.15, "°C", "K")).toBe(0);
  expect(convert(0, "K", "°F")).toBeCloseTo(-459.67, 10);
  expect(() => convert(-273.1500001, "°C", "K")).toThrow("absolute zero");
});

test("a dimension is a text, not a list of one", () => {
  expect(() => baseUnit(["mass"] as never)).toThrow("one of length");
});

test("fractions are in lowest terms over a denominator above zero, whatever they were made of", () => {
  const minusTwo = { numerator: -2n, denominator: 1n };
  expect(over(one, minusTwo)).toEqual({ numerator: -1n, denominator: 2n });
  expect(over(minusTwo, minusTwo)).toEqual(one);
  expect(times(hundred, over(minusTwo, hundred))).toEqual(minusTwo);
  expect(minus(nought, one)).toEqual({ numerator: -1n, denominator: 1n });
  expect([commonDivisor(-4n, 6n), commonDivisor(4n, -6n), commonDivisor(0n, 5n), commonDivisor(-7n, 0n)]).toEqual([
    ...[2n, 2n, 5n, 7n],
  ]);
  expect(parseRational("2.5e-12/60*3")).toEqual({ numerator: 1n, denominator: 8_000_000_000_000n });
  expect(parseRational("1e15")).toEqual({ numerator: 10n ** 15n, denominator: 1n });
});

test("shares of a whole add up to no more than it, exactly, and a negative amount keeps its sign", () => {
  expect(withinWhole(one, "sum")).toBe(one);
  expect(() => withinWhole(over(hundred, { numerator: 99n, denominator: 1n }), "sum")).toThrow("100 % or less");
  expect(exactQuantity("-0.5 %", "massFraction", "amount")).toEqual({ numerator: -1n, denominator: 200n });
  expect(exactQuantity("1e-10 %", "massFraction", "amount")).toEqual({ numerator: 1n, denominator: 10n ** 12n });
  expect(exactQuantity("0e999 %", "massFraction", "amount")).toEqual(nought);
});
