import Fraction from "fraction.js";

const bits = new DataView(new ArrayBuffer(8));

/** The double one step further from zero (or nearer to it, for -1). */
function neighbour(value: number, step: 1 | -1): number {
  bits.setFloat64(0, value);
  bits.setBigInt64(0, bits.getBigInt64(0) + BigInt(step));
  return bits.getFloat64(0);
}

/** A double as the fraction that it is. */
export function exactly(value: number): Fraction {
  bits.setFloat64(0, value);
  const word = bits.getBigUint64(0);
  const exponent = Number((word >> 52n) & 0x7ffn);
  const mantissa = (word & ((1n << 52n) - 1n)) | (exponent > 0 ? 1n << 52n : 0n);
  const power = BigInt(Math.max(exponent, 1) - 1075);
  const size = power >= 0n ? new Fraction(mantissa << power, 1n) : new Fraction(mantissa, 1n << -power);
  return value < 0 ? size.neg() : size;
}

/** How far a double lies from the true value, in units of its last place. */
export function ulpsOff(value: number, truth: Fraction): number {
  const unit = exactly(neighbour(value, 1)).sub(exactly(value)).abs();
  return exactly(value).sub(truth).abs().div(unit).valueOf();
}

/** No other double lies nearer to the true value. */
export function correctlyRounded(value: number, truth: Fraction): boolean {
  const off = exactly(value).sub(truth).abs();
  return [neighbour(value, 1), neighbour(value, -1)].every(
    (other) => off.compare(exactly(other).sub(truth).abs()) <= 0,
  );
}
