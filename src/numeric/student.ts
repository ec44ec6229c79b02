import { wholeNumber, within } from "../guards.js";
import { root } from "./root.js";

/** The share of Student's distribution that lies between −t and t, where t = √ν tan θ. */
function shareBetween(angle: number, degrees: number): number {
  const odd = degrees % 2;
  const cosine = Math.cos(angle);
  let term = odd ? cosine : 1;
  let sum = degrees > 1 ? term : 0;
  for (let power = 2 + odd; power < degrees; power += 2) {
    term *= ((power - 1) / power) * cosine * cosine;
    sum += term;
  }
  const share = Math.sin(angle) * sum;
  return odd ? (2 / Math.PI) * (angle + share) : share;
}

/**
 * How many standard errors to either side hold a share of Student's distribution: 2.571 for 0.95 and 5 degrees.
 *
 * @param confidence - The share, above 0 and below 1; 1 − confidence is lost to rounding below about 1e-6.
 * @param degrees - Degrees of freedom, a whole number of 1 or more. The time it takes goes with it.
 * @source abramowitz-stegun-1964 26.7.3 and 26.7.4
 */
export function studentT(confidence: number, degrees: number): number {
  const angle = root((at) => shareBetween(at, degrees) - confidence, 0, Math.PI / 2, "Student's t");
  return Math.sqrt(degrees) * Math.tan(angle);
}

/** Student's t for limits to both sides, 0.95 where no confidence is given; the caller's figures are checked. */
export function confidenceFactor(
  confidence: number | undefined,
  degreesOfFreedom: number,
  path: string = "degreesOfFreedom",
): number {
  return studentT(within(confidence ?? 0.95, "confidence", 0, 1), wholeNumber(degreesOfFreedom, path, 1, 1e6));
}
