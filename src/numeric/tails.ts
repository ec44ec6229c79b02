import { incompleteBeta } from "./incomplete-beta.js";
import { root } from "./root.js";

/**
 * The share of Student's distribution that lies further from 0 than t, to both sides.
 *
 * @param t - Any number.
 * @param degrees - Degrees of freedom, above 0; fractions too, as Welch's test asks for.
 * @source abramowitz-stegun-1964 26.7.1
 */
export function studentBeyond(t: number, degrees: number): number {
  const square = t * t;
  return incompleteBeta(degrees / (degrees + square), square / (degrees + square), degrees / 2, 0.5);
}

/**
 * How many standard errors to either side hold a share of Student's distribution, for any degrees of freedom.
 *
 * @param confidence - The share, above 0 and below 1.
 * @param degrees - Degrees of freedom, above 0.
 * @source abramowitz-stegun-1964 26.7.1
 */
export function studentTOf(confidence: number, degrees: number): number {
  // With t = √ν tan θ the whole range is a bracket, and the share grows smoothly with θ.
  const within = (angle: number): number =>
    incompleteBeta(Math.sin(angle) ** 2, Math.cos(angle) ** 2, 0.5, degrees / 2) - confidence;
  return Math.sqrt(degrees) * Math.tan(root(within, 0, Math.PI / 2, "Student's t"));
}

/**
 * The share of the F distribution above a ratio of variances.
 *
 * @param ratio - 0 or more.
 * @param above - Degrees of freedom of the variance above the line.
 * @param below - Degrees of freedom of the variance below the line.
 * @source abramowitz-stegun-1964 26.6.2
 */
export function fisherAbove(ratio: number, above: number, below: number): number {
  const total = below + above * ratio;
  return incompleteBeta(below / total, (above * ratio) / total, below / 2, above / 2);
}
