import fc from "fast-check";

const steps = 2 ** 30;

/**
 * Numbers from `min` to `max`, spread as a formulator's are.
 *
 * fc.double draws every exponent as often as any other: from 0 to 1 nine in ten are below 1e-30, and a property that holds
 * at 0 alone would pass. So a range that touches or crosses 0 is gone through in even steps. Any other keeps fast-check's
 * spread, in which a micron is as likely as a millimetre.
 */
export function between(min: number, max: number): fc.Arbitrary<number> {
  if (min > 0 || max < 0) return fc.double({ min, max, noNaN: true });
  return fc.integer({ min: 0, max: steps }).map((step) => (step === steps ? max : min + (max - min) * (step / steps)));
}
