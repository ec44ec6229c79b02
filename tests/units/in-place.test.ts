import fc from "fast-check";
import { convert, convertInPlace } from "gelwright/units";
import { expect, test } from "vitest";
import { anyPair } from "./all-units.js";

test("an array converts value for value as the single values do, where it stands", () => {
  fc.assert(
    fc.property(anyPair, fc.array(fc.double({ min: 0, max: 1e100, noNaN: true })), ([, from, to], readings) => {
      const values = new Float64Array(readings);
      expect(convertInPlace(values, from, to)).toBe(values);
      expect([...values]).toEqual(readings.map((reading) => convert(reading, from, to)));
    }),
  );
});

test("one bad value is named, and no other is touched", () => {
  const values = new Float64Array([20, Number.NaN, 85]);
  expect(() => convertInPlace(values, "°C", "°F")).toThrow("values[1]: found NaN, expected a finite number");
  expect([...values]).toEqual([20, Number.NaN, 85]);
  const cold = new Float64Array([20, -300]);
  expect(() => convertInPlace(cold, "°C", "K")).toThrow("values[1]: found -300 °C, expected absolute zero");
  expect([...cold]).toEqual([20, -300]);
});

test("single precision is rounded once more, and refused where it overflows", () => {
  expect([...convertInPlace(new Float32Array([1, 3]), "lb", "kg")]).toEqual([
    Math.fround(0.45359237),
    Math.fround(1.36077711),
  ]);
  expect(() => convertInPlace(new Float32Array([1, 1e35]), "t", "mg")).toThrow(
    "values[1]: found 1.0000000409184788e+35, expected a value whose result a Float32Array can hold",
  );
});

test("arrays that could not hold a fraction are refused", () => {
  for (const values of [new Int32Array(2), [1, 2], new DataView(new ArrayBuffer(8)), "12", null])
    expect(() => convertInPlace(values as unknown as Float64Array, "lb", "kg")).toThrow(
      "expected a Float64Array or a Float32",
    );
});

test("a value whose way there overflows has its result all the same, where a double holds it", () => {
  const values = [1.7e308, 1e308];
  const converted = convertInPlace(new Float64Array(values), "°F", "°C");
  expect([...converted]).toEqual(values.map((value) => convert(value, "°F", "°C")));
  expect(converted[0]).toBeCloseTo(1.7e308 / 1.8, -295);
});

test("a pair of units of which there is neither is refused with what a unit is", () => {
  expect(() => convert(1, "furlong per fortnight" as never, "smoot" as never)).toThrow("a unit such as kg or Pa·s");
});
