import { refuse } from "../guards.js";

/** Puts the values that several functions have at one place into `values`. */
export type Integrand = (x: number, values: Float64Array) => void;

/**
 * Nodes a panel: `wide` for panels as wide as the integral, `narrow` for one in ten of them, `slim` for one in a hundred,
 * and `smooth` for one in a hundred between two edges where every breakpoint is an edge.
 */
export const nodes = { wide: 24, narrow: 12, slim: 6, smooth: 4 } as const;
/** How much of the whole integral a panel may leave in its last two Legendre coefficients. */
const resolution = 1e-10;
/** The same of a panel that is known to be smooth: its error is about the square of that. */
const resolutionSmooth = 1e-6;
const halvingsMax = 500;

/** Numbers kept of each node of the positive half: place, weight, part in each of the two last coefficients; and of each function. */
const row = 4;
/** Rows of nodes, by number of nodes. */
const rules: Float64Array[] = [];

function gaussLegendre(order: number): Float64Array {
  const table = new Float64Array((order / 2) * row);
  for (let at = 0; at < table.length; at += row) {
    let x = Math.cos((Math.PI * (at / row + 0.75)) / (order + 0.5));
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

/** A stretch of the integral that one set of nodes has seen. */
interface Panel {
  readonly from: number;
  readonly to: number;
  /** For each function: its integral, the integral of its magnitude, its two last coefficients. */
  readonly sums: Float64Array;
}

function measure(
  rule: Float64Array,
  from: number,
  to: number,
  integrand: Integrand,
  left: Float64Array,
  right: Float64Array,
): Panel {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  const sums = new Float64Array(row * left.length);
  for (let at = 0; at < rule.length; at += row) {
    const offset = half * (rule[at] as number);
    integrand(middle - offset, left);
    integrand(middle + offset, right);
    for (let k = 0; k < left.length; k += 1) {
      const low = half * (left[k] as number);
      const high = half * (right[k] as number);
      (sums[row * k] as number) += (low + high) * (rule[at + 1] as number);
      (sums[row * k + 1] as number) += (Math.abs(low) + Math.abs(high)) * (rule[at + 1] as number);
      (sums[row * k + 2] as number) += (low + high) * (rule[at + 2] as number);
      (sums[row * k + 3] as number) += (high - low) * (rule[at + 3] as number);
    }
  }
  return { from, to, sums };
}

/**
 * The integrals of `count` functions over the panels between `edges`, which run up or down.
 *
 * Gauss–Legendre with 24 nodes a panel, or fewer where panels are narrow already. All panels are looked at once, so that
 * the size of the whole is known; then one counts as resolved when its two highest Legendre coefficients have died away
 * to 1e-10 of the whole; the error is then about the square of that where the functions are smooth, and about 1e-10
 * where they have a breakpoint that is no edge. A panel that is not resolved is halved.
 *
 * Sums that overflow come back as they are: the caller puts them through `result`. `passedAt`, where it is given, takes
 * the integral of the first function from the first edge up to each edge.
 *
 * @throws CalculationError `not-converged` where 500 halvings do not resolve the functions.
 * @source abramowitz-stegun-1964 25.4.29, the nodes by Newton's method
 */
export function integrate(
  edges: readonly number[],
  integrand: Integrand,
  count: number,
  path: string,
  order: number = nodes.wide,
  passedAt?: Float64Array,
): Float64Array {
  const finest = order === nodes.smooth ? resolutionSmooth : resolution;
  rules[order] ??= gaussLegendre(order);
  const rule = rules[order] as Float64Array;
  const left = new Float64Array(count);
  const right = new Float64Array(count);
  const look = (from: number, to: number): Panel => measure(rule, from, to, integrand, left, right);
  const ahead = edges.slice(1).map((to, i) => look(edges[i] as number, to));
  const total = new Float64Array(count);
  const passed = new Float64Array(count);
  const scale = new Float64Array(count);
  for (const { sums } of ahead) for (let k = 0; k < count; k += 1) (scale[k] as number) += sums[row * k + 1] as number;
  ahead.reverse();
  let halvings = 0;
  let edge = 1;
  for (let panel = ahead.pop(); panel !== undefined; panel = ahead.pop()) {
    const { from, to, sums } = panel;
    let resolved = true;
    for (let k = 0; k < count; k += 1) {
      // What halving has brought to light counts too.
      scale[k] = Math.max(scale[k] as number, (passed[k] as number) + (sums[row * k + 1] as number));
      const doubt = Math.abs(sums[row * k + 2] as number) + Math.abs(sums[row * k + 3] as number);
      if (doubt > finest * (scale[k] as number)) resolved = false;
    }
    if (resolved) {
      for (let k = 0; k < count; k += 1) {
        (total[k] as number) += sums[row * k] as number;
        (passed[k] as number) += sums[row * k + 1] as number;
      }
      if (passedAt && to === edges[edge]) {
        passedAt[edge] = total[0] as number;
        edge += 1;
      }
    } else {
      halvings += 1;
      if (halvings > halvingsMax)
        refuse("not-converged", path, `no end near ${from} after ${halvingsMax} halvings`, "a smoother function");
      const middle = (from + to) / 2;
      const near = look(from, middle);
      ahead.push(look(middle, to), near);
    }
  }
  return total;
}
