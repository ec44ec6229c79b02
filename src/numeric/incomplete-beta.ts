import { refuse } from "../guards.js";
import { logGamma } from "./log-gamma.js";

const termsMax = 20_000;

/** The continued fraction of the incomplete beta function, by Lentz's method. */
function fractionAt(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const apart = (value: number): number => (Math.abs(value) < tiny ? tiny : value);
  let up = 1;
  let down = 1 / apart(1 - ((a + b) * x) / (a + 1));
  let value = down;
  for (let m = 1; m <= termsMax; m += 1) {
    let change = 1;
    for (const term of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      down = 1 / apart(1 + term * down);
      up = apart(1 + term / up);
      change = up * down;
      value *= change;
    }
    if (Math.abs(change - 1) < 4 * Number.EPSILON) return value;
  }
  return refuse("not-converged", "incomplete beta function", `${termsMax} terms`, "smaller parameters");
}

/**
 * The regularised incomplete beta function: the share of a beta distribution below a place.
 *
 * The place is given from both ends, since a place near 1 would lose the digits of what is left of it.
 *
 * @param x - The place, 0 to 1.
 * @param rest - 1 − x, with all its digits.
 * @param a - Above 0.
 * @param b - Above 0.
 * @source abramowitz-stegun-1964 26.5.8
 */
export function incompleteBeta(x: number, rest: number, a: number, b: number): number {
  if (x <= 0) return 0;
  const front = Math.exp(a * Math.log(x) + b * Math.log(rest) + logGamma(a + b) - logGamma(a) - logGamma(b));
  // Each side converges fast up to about its mean.
  return x < (a + 1) / (a + b + 2) ? (front * fractionAt(x, a, b)) / a : 1 - (front * fractionAt(rest, b, a)) / b;
}
