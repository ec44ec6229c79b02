/** An exact fraction: reduced, its denominator above zero. */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/** The reduced fraction. */
function rational(numerator: bigint, denominator: bigint): Rational {
  const divisor = commonDivisor(numerator, denominator) * (denominator < 0n ? -1n : 1n);
  return { numerator: numerator / divisor, denominator: denominator / divisor };
}

/** The product of decimals and their reciprocals, from left to right: `"0.3048*0.3048"`, `"5/9"`, `"1e-3/60"`. */
export function parseRational(product: string): Rational {
  let [numerator, denominator] = [1n, 1n];
  for (const [, sign, whole = "", decimals = "", exponent = "0"] of product.matchAll(
    /([*/]?)(\d+)\.?(\d*)(?:e(-?\d+))?/g,
  )) {
    const digits = BigInt(whole + decimals);
    const shift = Number(exponent) - decimals.length;
    const [over, under] = shift < 0 ? [digits, 10n ** BigInt(-shift)] : [digits * 10n ** BigInt(shift), 1n];
    numerator *= sign === "/" ? under : over;
    denominator *= sign === "/" ? over : under;
  }
  return rational(numerator, denominator);
}

export const nought: Rational = { numerator: 0n, denominator: 1n };
export const one: Rational = { numerator: 1n, denominator: 1n };
export const hundred: Rational = { numerator: 100n, denominator: 1n };

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

/** A value of 0 or more cut off after so many decimals: 0.2899 to two decimals is 0.28. */
export function roundedDown({ numerator, denominator }: Rational, decimals: number): number {
  return Number(`${(numerator * 10n ** BigInt(decimals)) / denominator}e-${decimals}`);
}

/** The double nearest to a value of 0 or more. */
export function nearestDouble(value: Rational): number {
  // 25 digits before the last rounding: a decimal of the text comes back as the double that prints as that decimal.
  const { numerator, denominator } = value;
  return roundedDown(value, Math.max(0, 25 + denominator.toString().length - numerator.toString().length));
}

export function commonDivisor(left: bigint, right: bigint): bigint {
  let [a, b] = [left < 0n ? -left : left, right < 0n ? -right : right];
  while (b) [a, b] = [b, a % b];
  return a;
}
