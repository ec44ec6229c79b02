import fc from "fast-check";
import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";
import { exactQuantity, exactShare } from "../../src/units/exact.js";
import {
  compare,
  hundred,
  minus,
  nearestDouble,
  nought,
  one,
  over,
  plus,
  roundedDown,
  times,
  total,
} from "../../src/units/rational.js";

const hundredths = fc.integer({ min: 1, max: 10_000 }).map((count) => `${count / 100} %`);

test("a share comes back as the double that its text prints as", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1e9 }), (count) => {
      const text = (count / 1e7).toFixed(7);
      expect(nearestDouble(exactShare(`${text} %`, "share"))).toBe(Number(`${text}e-2`));
    }),
  );
});

test("a sum of shares is what a person adds up on paper", () => {
  const parts = ["0.00064 %", "0.00032 %", "0.00004 %"].map((text) => exactShare(text, "share"));
  expect(0.00064 + 0.00032 + 0.00004).toBeGreaterThan(0.001);
  expect(compare(total(parts), exactShare("0.001 %", "share"))).toBe(0);
});

test("every way to write a share is the same share", () => {
  const percent = exactShare("0.125 %", "share");
  for (const text of ["1250 ppm", "1 250 ppm", "1.25e-1 %", "1.25E+3 mg/kg", ".125 %", "1.25 ‰", " 0.1250 % "])
    expect(compare(exactShare(text, "share"), percent)).toBe(0);
});

test("digits that no double holds still count", () => {
  const above = exactShare("0.00100000000000000000001 %", "share");
  expect(compare(above, exactShare("0.001 %", "share"))).toBe(1);
});

test("masses of different units are exact", () => {
  expect(compare(exactQuantity("1 lb", "mass", "mass"), exactQuantity("453.59237 g", "mass", "mass"))).toBe(0);
  expect(compare(exactQuantity("−1 kg", "mass", "mass"), nought)).toBe(-1);
  expect(compare(exactQuantity("+1 kg", "mass", "mass"), one)).toBe(0);
});

test("sums, differences, products and quotients undo one another", () => {
  fc.assert(
    fc.property(hundredths, hundredths, (left, right) => {
      const [a, b] = [exactShare(left, "left"), exactShare(right, "right")];
      expect(minus(plus(a, b), b)).toEqual(a);
      expect(over(times(a, b), b)).toEqual(a);
      expect(compare(a, b)).toBe(-compare(b, a) + 0);
    }),
  );
});

test("rounding down never exceeds, and keeps what is whole", () => {
  expect(0.29 * 100).toBeLessThan(29);
  expect(roundedDown(times(exactShare("29 %", "share"), hundred), 0)).toBe(29);
  expect(roundedDown(exactShare("28.99 %", "share"), 2)).toBe(0.28);
  expect(roundedDown(nought, 3)).toBe(0);
});

test("what is no share is refused, and a nought with a huge exponent is a nought", () => {
  for (const text of ["101 %", "-1 %", "5", "5 g", "0,5 %", ""])
    expect(() => exactShare(text, "share")).toThrow(CalculationError);
  expect(exactShare("0e99999999 %", "share")).toEqual(nought);
});
