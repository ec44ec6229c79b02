/** An exact fraction: reduced, its denominator above zero. */
export interface Rational {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/** The reduced fraction. */
export function rational(numerator: bigint, denominator: bigint): Rational {
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

export function commonDivisor(left: bigint, right: bigint): bigint {
  let [a, b] = [left < 0n ? -left : left, right < 0n ? -right : right];
  while (b) [a, b] = [b, a % b];
  return a;
}
