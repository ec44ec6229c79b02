import configureMeasurements, { type Unit as EngineUnit, type Wrapper } from "convert-units";
import fc from "fast-check";
import Fraction from "fraction.js";
import { baseUnit } from "gelwright/units";
import { expect, test } from "vitest";
import { pairOf } from "../../src/units/pair.js";
import { factorsOf } from "../../src/units/unit.js";
import { anyPair, dimensions } from "./all-units.js";

/** The engine's arithmetic by another hand: fraction.js in the place of our rationals. */
const fractions: Wrapper<Fraction> = {
  create: (value) => product(String(value)),
  add: (left, right) => of(left).add(of(right)),
  sub: (left, right) => of(left).sub(of(right)),
  mul: (left, right) => of(left).mul(of(right)),
  div: (left, right) => of(left).div(of(right)),
  lt: (left, right) => of(left).compare(of(right)) < 0,
  lte: (left, right) => of(left).compare(of(right)) <= 0,
  gt: (left, right) => of(left).compare(of(right)) > 0,
  gte: (left, right) => of(left).compare(of(right)) >= 0,
};

const of = (value: string | number | Fraction): Fraction => (value instanceof Fraction ? value : new Fraction(value));

function product(text: string): Fraction {
  return text
    .split(/(?=[*/])/)
    .map((part) => {
      const [digits = "", power = "0"] = part.replace(/[*/]/, "").split("e");
      const factor = new Fraction(digits).mul(new Fraction(10).pow(Number(power)) ?? 1);
      return part.startsWith("/") ? factor.inverse() : factor;
    })
    .reduce((left, right) => left.mul(right));
}

const engines = Object.fromEntries(
  dimensions.map((dimension) => {
    const units = Object.entries(factorsOf(dimension)).map(([unit, factor]): [string, EngineUnit] => {
      const [slope = "", zero = "0"] = factor.split(" - ");
      return [unit, { name: { singular: unit, plural: unit }, to_anchor: slope, anchor_shift: zero }];
    });
    const measures = { [dimension]: { systems: { exact: Object.fromEntries(units) } } };
    return [dimension, configureMeasurements<string, string, string, Fraction>(measures, fractions)];
  }),
);

test("the pair of two units is what the engine computes, as a fraction in lowest terms", () => {
  fc.assert(
    fc.property(anyPair, fc.integer(), ([dimension, from, to], count) => {
      const { numerator, shift, denominator } = pairOf(dimension, from, to);
      const asked = engines[dimension]?.(count).from(from).to(to);
      expect(new Fraction(BigInt(count) * numerator + shift, denominator).equals(asked ?? Number.NaN)).toBe(true);
      const common = new Fraction(numerator).gcd(new Fraction(denominator)).gcd(new Fraction(shift));
      expect(common.equals(1)).toBe(true);
      expect(denominator > 0n).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test("the first unit of each table is the base unit, of factor 1", () => {
  for (const dimension of dimensions) expect(factorsOf(dimension)[baseUnit(dimension)]).toBe("1");
});
