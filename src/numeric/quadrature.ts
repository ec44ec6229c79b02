import { refuse } from "../error.js";

/** Puts the values that several functions have at one place into `values`. */
export type Integrand = (x: number, values: Float64Array) => void;

const order = 24;
/** How much of the whole integral a panel may leave in its last two Legendre coefficients. */
const resolution = 1e-10;
const halvingsMost = 2000;

/** Four numbers a node of the positive half: place, weight, and what it gives to the last two coefficients. */
let rule: Float64Array | undefined;

function gaussLegendre(): Float64Array {
  const table = new Float64Array(2 * order);
  for (let at = 0; at < table.length; at += 4) {
    let x = Math.cos((Math.PI * (at / 4 + 0.75)) / (order + 0.5));
    let last = 1;
    let before = 0;
    let earlier = 0;
    for (let newton = 0; newton < 6; newton += 1) {
      [last, before, earlier] = [1, 0, 0];
      for (let k = 1; k <= order; k += 1)
        [last, before, earlier] = [((2 * k - 1) * x * last - (k - 1) * before) / k, last, before];
      x -= (last * (x * x - 1)) / (order * (x * last - before));
    }
    const weight = (2 * (1 - x * x)) / (order * before) ** 2;
    table.set([x, weight, (order - 1.5) * weight * earlier, (order - 0.5) * weight * before], at);
  }
  return table;
}

/** Puts into `sums`, for each function: its integral, the integral of its magnitude, its two last coefficients. */
function measure(
  from: number,
  to: number,
  integrand: Integrand,
  left: Float64Array,
  right: Float64Array,
  sums: Float64Array,
): void {
  rule ??= gaussLegendre();
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  sums.fill(0);
  for (let at = 0; at < 2 * order; at += 4) {
    const offset = half * (rule[at] as number);
    integrand(middle - offset, left);
    integrand(middle + offset, right);
    for (let k = 0; k < left.length; k += 1) {
      const low = half * (left[k] as number);
      const high = half * (right[k] as number);
      (sums[4 * k] as number) += (low + high) * (rule[at + 1] as number);
      (sums[4 * k + 1] as number) += (Math.abs(low) + Math.abs(high)) * (rule[at + 1] as number);
      (sums[4 * k + 2] as number) += (low + high) * (rule[at + 2] as number);
      (sums[4 * k + 3] as number) += (high - low) * (rule[at + 3] as number);
    }
  }
}

/**
 * The integrals of `count` functions over the panels between `edges`, which run up or down.
 *
 * Gauss–Legendre with 24 nodes a panel. A panel counts as resolved when its two highest Legendre coefficients have
 * died away to 1e-10 of the integral so far; the error is then about the square of that where the functions are smooth,
 * and about 1e-10 where they have a kink that is no edge. A panel that is not resolved is halved.
 *
 * Sums that overflow come back as they are: the caller puts them through `result`.
 *
 * @throws CalculationError `not-converged` where 2000 halvings do not resolve the functions.
 * @source abramowitz-stegun-1964 25.4.29, from memory; the nodes by Newton's method
 */
export function integrate(edges: readonly number[], integrand: Integrand, count: number, path: string): Float64Array {
  const total = new Float64Array(count);
  const scale = new Float64Array(count);
  const left = new Float64Array(count);
  const right = new Float64Array(count);
  const sums = new Float64Array(4 * count);
  const ahead = edges.slice().reverse();
  let from = ahead.pop() as number;
  let halvings = 0;
  while (ahead.length > 0) {
    const to = ahead[ahead.length - 1] as number;
    measure(from, to, integrand, left, right, sums);
    let resolved = true;
    for (let k = 0; k < count; k += 1) {
      const whole = (scale[k] as number) + Math.abs(sums[4 * k + 1] as number);
      const doubt = Math.abs(sums[4 * k + 2] as number) + Math.abs(sums[4 * k + 3] as number);
      if (doubt > resolution * whole) resolved = false;
    }
    if (resolved) {
      for (let k = 0; k < count; k += 1) {
        (total[k] as number) += sums[4 * k] as number;
        (scale[k] as number) += Math.abs(sums[4 * k + 1] as number);
      }
      from = to;
      ahead.pop();
    } else {
      halvings += 1;
      if (halvings > halvingsMost)
        refuse("not-converged", path, `no end near ${from} after ${halvingsMost} halvings`, "a smoother function");
      ahead.push((from + to) / 2);
    }
  }
  return total;
}
