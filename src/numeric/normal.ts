import { root } from "./root.js";

const density = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/**
 * The density of the normal distribution of mean 0 and deviation 1.
 *
 * @source abramowitz-stegun-1964 26.2.1
 */
export const normalDensity: (x: number) => number = density;

/** The share above x, for x of 0 or more. */
function above(x: number): number {
  if (x < 3) {
    let term = x;
    let sum = x;
    for (let k = 3; term > 1e-18; k += 2) {
      term *= (x * x) / k;
      sum += term;
    }
    return 0.5 - density(x) * sum;
  }
  let fraction = x;
  for (let k = 120; k >= 1; k -= 1) fraction = x + k / fraction;
  return density(x) / fraction;
}

/**
 * The share of the normal distribution of mean 0 and deviation 1 that lies below x.
 *
 * A power series near the middle, a continued fraction in the tail, so that small shares keep their digits.
 *
 * @source abramowitz-stegun-1964 26.2.11 and 26.2.14
 */
export function normalBelow(x: number): number {
  return x < 0 ? above(-x) : 1 - above(x);
}

/**
 * The place below which a share of the normal distribution lies: 1.96 for 0.975.
 *
 * @param share - Above 0 and below 1.
 * @source abramowitz-stegun-1964 26.2.2, solved for x
 */
export function normalQuantile(share: number): number {
  if (share > 0.5) return -normalQuantile(1 - share);
  return root((x) => Math.log(above(-x) / share), -38, 0, "normal quantile", 1e-15);
}
