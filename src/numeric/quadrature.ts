import { refuse } from "../error.js";

/** Puts the values that several functions have at one place into `values`. */
export type Integrand = (x: number, values: Float64Array) => void;

const order = 24;
/** How much of the whole integral a panel may leave in its last two Legendre coefficients. */
const resolution = 1e-10;
const halvingsMost = 500;

/** Four numbers a node of the positive half: place, weight, and its part in the coefficients of degree 22 and 23. */
let rule: Float64Array | undefined;

function gaussLegendre(): Float64Array {
  const table = new Float64Array(2 * order);
  for (let at = 0; at < table.length; at += 4) {
    let x = Math.cos((Math.PI * (at / 4 + 0.75)) / (order + 0.5));
    let [last, before, earlier, slope] = [1, 0, 0, 1];
    for (let newton = 0; newton < 6; newton += 1) {
      [last, before, earlier] = [1, 0, 0];
      for (let k = 1; k <= order; k += 1)
        [last, before, earlier] = [((2 * k - 1) * x * last - (k - 1) * before) / k, last, before];
      slope = (order * (x * last - before)) / (x * x - 1);
      x -= last / slope;
    }
    // Of the forms of the weight this is the one that feels the rounding of the node least.
    const weight = 2 / ((1 - x * x) * slope * slope);
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
 * died away to 1e-10 of the whole; the error is then about the square of that where the functions are smooth,
 * and about 1e-10 where they have a kink that is no edge. A panel that is not resolved is halved.
 *
 * Sums that overflow come back as they are: the caller puts them through `result`.
 *
 * @throws CalculationError `not-converged` where 500 halvings do not resolve the functions.
 * @source abramowitz-stegun-1964 25.4.29, the nodes by Newton's method
 */
export function integrate(edges: readonly number[], integrand: Integrand, count: number, path: string): Float64Array {
  const total = new Float64Array(count);
  const passed = new Float64Array(count);
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
      // Whatever has been seen of the whole counts, so that a small part is not resolved beyond its weight.
      scale[k] = Math.max(scale[k] as number, (passed[k] as number) + Math.abs(sums[4 * k + 1] as number));
      const doubt = Math.abs(sums[4 * k + 2] as number) + Math.abs(sums[4 * k + 3] as number);
      if (doubt > resolution * (scale[k] as number)) resolved = false;
    }
    if (resolved) {
      for (let k = 0; k < count; k += 1) {
        (total[k] as number) += sums[4 * k] as number;
        (passed[k] as number) += Math.abs(sums[4 * k + 1] as number);
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
