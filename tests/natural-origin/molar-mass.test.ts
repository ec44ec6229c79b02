import fc from "fast-check";
import { molarMassOf } from "gelwright/natural-origin";
import { describe, expect, test } from "vitest";

const symbols = "H Li B C N O F Na Mg Al Si P S Cl K Ca Ti Cr Mn Fe Cu Zn Br Sn I Ba Bi".split(" ");
const formula = fc
  .array(fc.tuple(fc.constantFrom(...symbols), fc.integer({ min: 1, max: 60 })), { minLength: 1, maxLength: 5 })
  .map((atoms) => atoms.map(([symbol, count]) => `${symbol}${count}`).join(""));

describe("the molar mass of a formula", () => {
  test("is that of its parts together, in any order and in brackets or not", () => {
    fc.assert(
      fc.property(formula, formula, fc.integer({ min: 2, max: 9 }), (one, other, count) => {
        const sum = molarMassOf(one) + count * molarMassOf(other);
        expect(molarMassOf(`${one}(${other})${count}`)).toBeCloseTo(sum, 9);
        expect(molarMassOf(`(${other})${count}${one}`)).toBeCloseTo(sum, 9);
        expect(molarMassOf(`((${other}))${count}(${one})`)).toBeCloseTo(sum, 9);
      }),
    );
  });

  test("takes a mean count, as for ethoxylates", () => {
    expect(molarMassOf("C12H25(OC2H4)7.5OH")).toBeCloseTo(
      (molarMassOf("C12H25(OC2H4)7OH") + molarMassOf("C12H25(OC2H4)8OH")) / 2,
      12,
    );
  });

  test("keeps the carbonyl CO and cobalt apart, and knows no cobalt", () => {
    expect(molarMassOf("CO")).toBeCloseTo(0.02801, 12);
    expect(() => molarMassOf("Co")).toThrow("formula: found Co, expected one of H Li B C");
  });
});

test.each([
  "",
  "()",
  "(C",
  "C)",
  "C(H",
  "(2C)",
  "2C",
  "C 2",
  "c2",
  "C0",
  "C1.2.3",
  "C.",
  "C()2",
  "CH3–OH",
  "C²",
  "Na+",
  "C17H34O2 ",
])("%j is no formula", (text) => {
  expect(() => molarMassOf(text)).toThrow(/^formula: found .*, expected a formula such as C17H34O2/s);
});

test("a count that no double holds is refused", () => {
  expect(() => molarMassOf(`C${"9".repeat(400)}`)).toThrow("molar mass: found Infinity");
});
