/**
 * Quantities as exact fractions, for thresholds that are compared to the last digit of the text. Internal.
 *
 * Doubles do not serve there: 0.00064 % + 0.00032 % + 0.00004 % comes out as 0.0010000000000000002 %, above 0.001 %.
 */
import { refuse } from "../guards.js";
import { parseQuantity } from "./parse.js";
import { parseRational, type Rational, rational } from "./rational.js";
import { factorsOf } from "./unit.js";

export type { Rational } from "./rational.js";

export const nought: Rational = { numerator: 0n, denominator: 1n };
export const one: Rational = { numerator: 1n, denominator: 1n };

/** The quantity that a text states, in the base unit of its dimension, digit by digit: `"0.001 %"` is 1/100000. */
export function exactQuantity(text: string, dimension: "massFraction" | "mass", path: string): Rational {
  const { value, unit } = parseQuantity(text, dimension, path);
  // A nought may carry an exponent of any size, which must not be written out.
  if (value === 0) return nought;
  const [, sign = "", digits = "", exponent = "0"] =
    /^([+\-\u2212]?)([\d\s]*\.?\d*)(?:e([+\-\u2212]?\d+))?/i.exec(text.trim()) ?? [];
  const power = exponent.replace("\u2212", "-").replace("+", "");
  const size = times(
    parseRational(`${digits.replace(/\s/g, "").replace(/^\./, "0.")}e${power}`),
    parseRational(factorsOf(dimension)[unit] ?? "1"),
  );
  return sign === "" || sign === "+" ? size : minus(nought, size);
}

/** The mass fraction that a text states, from 0 to 1, exactly. */
export function exactShare(text: string, path: string): Rational {
  const share = exactQuantity(text, "massFraction", path);
  if (compare(share, nought) >= 0 && compare(share, one) <= 0) return share;
  return refuse("input", path, text, 'a share from 0 to 100 %, such as "0.5 %"');
}

export function plus(left: Rational, right: Rational): Rational {
  return rational(
    left.numerator * right.denominator + right.numerator * left.denominator,
    left.denominator * right.denominator,
  );
}

export function minus(left: Rational, right: Rational): Rational {
  return plus(left, { numerator: -right.numerator, denominator: right.denominator });
}

export function times(left: Rational, right: Rational): Rational {
  return rational(left.numerator * right.numerator, left.denominator * right.denominator);
}

/** The quotient, whose divisor is not nought. */
export function over(left: Rational, right: Rational): Rational {
  return rational(left.numerator * right.denominator, left.denominator * right.numerator);
}

export function total(parts: readonly Rational[]): Rational {
  return parts.reduce(plus, nought);
}

/** Below 0 where the left one is smaller, above 0 where it is larger, and 0 where both are equal. */
export function compare(left: Rational, right: Rational): number {
  const [a, b] = [left.numerator * right.denominator, right.numerator * left.denominator];
  return a < b ? -1 : a > b ? 1 : 0;
}

/** The multiples of 10^-decimals that fit into a value of 0 or more, as a number: 0.2899 to two decimals is 0.28. */
export function roundedDown({ numerator, denominator }: Rational, decimals: number): number {
  return Number(`${(numerator * 10n ** BigInt(decimals)) / denominator}e-${decimals}`);
}

/** The double nearest to a value of 0 or more. */
export function nearest(value: Rational): number {
  // 25 digits before the last rounding: a decimal of the text comes back as the double that prints as that decimal.
  const { numerator, denominator } = value;
  return roundedDown(value, Math.max(0, 25 + denominator.toString().length - numerator.toString().length));
}
