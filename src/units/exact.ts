/**
 * Quantities as exact fractions, for thresholds that are compared to the last digit of the text. Internal.
 *
 * Doubles do not serve there: 0.00064 % + 0.00032 % + 0.00004 % comes out as 0.0010000000000000002 %, above 0.001 %.
 */
import { refuse } from "../guards.js";
import { numberIn, parseQuantity } from "./parse.js";
import {
  compare,
  hundred,
  minus,
  nearestDouble,
  nought,
  one,
  parseRational,
  type Rational,
  times,
} from "./rational.js";
import { factorsOf } from "./unit.js";

/** The quantity that a text states, in the base unit of its dimension, digit by digit: `"0.001 %"` is 1/100000. */
export function exactQuantity(text: string, dimension: "massFraction" | "mass", path: string): Rational {
  const { value, unit } = parseQuantity(text, dimension, path);
  // A nought may carry an exponent of any size, which must not be written out.
  if (value === 0) return nought;
  const { sign, digits, exponent } = numberIn(text.trim());
  const size = times(
    parseRational(`${digits.replace(/^\./, "0.")}e${exponent}`),
    parseRational(factorsOf(dimension)[unit] as string),
  );
  return sign === "-" ? minus(nought, size) : size;
}

/** The mass fraction that a text states, from 0 to 1, exactly. */
export function exactShare(text: string, path: string): Rational {
  const share = exactQuantity(text, "massFraction", path);
  if (compare(share, nought) >= 0 && compare(share, one) <= 0) return share;
  return refuse("input", path, text, 'a share from 0 to 100 %, such as "0.5 %"');
}

/** A share for a message: `"12.5 %"`. */
export function asPercent(share: Rational): string {
  return `${nearestDouble(times(share, hundred))} %`;
}

/** A sum of shares of one product, if the product can hold it. */
export function withinWhole(sum: Rational, path: string): Rational {
  if (compare(sum, one) <= 0) return sum;
  return refuse("input", path, asPercent(sum), "shares that add up to 100 % or less");
}
