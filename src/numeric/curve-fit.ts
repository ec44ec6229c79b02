import { type LeastSquares, leastSquares, lengthOf } from "./least-squares.js";

/** A model that is fitted to readings: each already weighted. */
export interface Fittable {
  /** What was read. */
  readonly target: Float64Array;
  /** What the model gives instead; not finite where the parameters are none that it can have. */
  readonly valuesAt: (parameters: readonly number[]) => Float64Array;
  /** The derivative of those values by each parameter. */
  readonly slopesAt: (parameters: readonly number[]) => readonly Float64Array[];
  /**
   * The same parameters, with those that the values are linear in set to their best. Without it a fit creeps along the
   * curved valley where one parameter makes up for another; with it the valley is straight.
   */
  readonly settled?: (parameters: readonly number[]) => readonly number[] | undefined;
}

/** Parameters at which no change lowers the sum of squares. */
export interface CurveFit {
  readonly parameters: readonly number[];
  readonly sumOfSquares: number;
  /** (JᵀJ)⁻¹ at the parameters. */
  readonly inverse: readonly (readonly number[])[];
}

/** A step that moves the fitted values by less than this, beside what was read, is the last. */
const still = 1e-13;
/** A step that is to lower the sum of squares by less than the square of this, in parts of it, is lost in rounding. */
const unseen = 1e-7;
/** The same, where no step is found that lowers the sum of squares: rounding is all that is left. */
const rounding = 1e-7;

function missing({ target, valuesAt }: Fittable, parameters: readonly number[]): Float64Array {
  const values = valuesAt(parameters);
  return target.map((read, i) => read - (values[i] as number));
}

const squares = (left: Float64Array): number => left.reduce((sum, one) => sum + one * one, 0);

/**
 * The parameters of a curve of least squares, by Gauss and Newton's method with Marquardt's damping.
 *
 * Damping is by each column's own length, so that parameters may have any unit.
 *
 * @returns Nothing where the readings do not tell the parameters apart, or where there is no end to be found.
 * @source marquardt-1963 from memory
 */
export function curveFit(fittable: Fittable, start: readonly number[]): CurveFit | undefined {
  const size = lengthOf(fittable.target);
  let parameters = start;
  let left = missing(fittable, parameters);
  let sumOfSquares = squares(left);
  let damping = 1e-3;
  let shortest = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 200; round += 1) {
    const slopes = fittable.slopesAt(parameters);
    const plain = leastSquares(slopes, left);
    if (!plain) return undefined;
    // Squares of sums round before their parameters do, so the last step is taken on trust.
    const last = parameters.map((value, k) => value + (plain.coefficients[k] as number));
    const done = { parameters: last, sumOfSquares, inverse: plain.inverse };
    if (plain.projected <= still * size) return Number.isFinite(squares(missing(fittable, last))) ? done : undefined;
    if (plain.projected <= unseen * Math.sqrt(sumOfSquares)) {
      // So are those before it, while each is at most half as long as the one that went before.
      if (!(plain.projected < shortest / 2)) return done;
      shortest = plain.projected;
      parameters = last;
      left = missing(fittable, parameters);
      sumOfSquares = squares(left);
      continue;
    }
    let lowered = false;
    while (!lowered) {
      const step = damped(slopes, left, damping);
      const stepped = parameters.map((value, k) => value + (step?.coefficients[k] as number));
      const tried = fittable.settled?.(stepped) ?? stepped;
      const leftThere = missing(fittable, tried);
      const there = squares(leftThere);
      lowered = there < sumOfSquares;
      // What the step gained, in parts of what it would have gained had the values been linear.
      const gain = lowered ? (sumOfSquares - there) / (step as LeastSquares).projected ** 2 : 0;
      if (lowered) [parameters, left, sumOfSquares] = [tried, leftThere, there];
      if (gain > 0.75) damping /= 10;
      else if (gain < 0.25) damping = Math.max(damping * 4, 1e-9);
      if (damping > 1e14) return plain.projected <= rounding * size ? done : undefined;
    }
  }
  return undefined;
}

/** The step of Gauss and Newton, held back by one more row a parameter. */
function damped(slopes: readonly Float64Array[], left: Float64Array, damping: number): LeastSquares | undefined {
  const columns = slopes.map((column, k) => {
    const longer = new Float64Array(column.length + slopes.length);
    longer.set(column);
    longer[column.length + k] = Math.sqrt(damping) * lengthOf(column);
    return longer;
  });
  const longer = new Float64Array(left.length + slopes.length);
  longer.set(left);
  return leastSquares(columns, longer);
}
