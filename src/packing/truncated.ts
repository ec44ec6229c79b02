import { normalBelow, normalDensity } from "../numeric/normal.js";

/** What a part of the normal distribution holds: its share, and its mean powers from the first to the fourth. */
export interface Truncated {
  readonly share: number;
  readonly powers: readonly [number, number, number, number];
}

/** The normal distribution of mean 0 and deviation 1 between two places. */
export function truncated(from: number, to: number): Truncated {
  // From the nearer tail, so that a small share keeps its digits.
  const share = from > 0 ? normalBelow(-from) - normalBelow(-to) : normalBelow(to) - normalBelow(from);
  if (!(share > 0)) return { share: 0, powers: [0, 0, 0, 0] };
  const edge = (at: number, power: number): number =>
    Math.abs(at) === Number.POSITIVE_INFINITY ? 0 : at ** power * normalDensity(at);
  const first = edge(from, 0) - edge(to, 0);
  const second = share + edge(from, 1) - edge(to, 1);
  const third = 2 * first + edge(from, 2) - edge(to, 2);
  const fourth = 3 * second + edge(from, 3) - edge(to, 3);
  return { share, powers: [first / share, second / share, third / share, fourth / share] };
}

/** Mean and variance of α z + β (z − m)² over the part. */
export function quadraticOf(
  { powers: [p1, p2, p3, p4] }: Truncated,
  alpha: number,
  beta: number,
  m: number,
): { readonly mean: number; readonly variance: number } {
  const square = p2 - 2 * m * p1 + m * m;
  const cross = p3 - 2 * m * p2 + m * m * p1;
  const fourth = p4 - 4 * m * p3 + 6 * m * m * p2 - 4 * m ** 3 * p1 + m ** 4;
  const mean = alpha * p1 + beta * square;
  const variance = alpha * alpha * p2 + 2 * alpha * beta * cross + beta * beta * fourth - mean * mean;
  return { mean, variance: Math.max(0, variance) };
}
