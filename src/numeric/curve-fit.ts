import { type LeastSquares, leastSquares } from "./least-squares.js";

/** A model that is fitted to readings: each already weighted. */
export interface Fittable {
  /** What was read. */
  readonly target: Float64Array;
  /** What the model gives instead; not finite where the parameters are none that it can have. */
  readonly valuesAt: (parameters: readonly number[]) => Float64Array;
  /** The derivative of those values by each parameter. */
  readonly slopesAt: (parameters: readonly number[]) => readonly Float64Array[];
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
  const size = Math.hypot(...fittable.target);
  let parameters = start;
  let left = missing(fittable, parameters);
  let sumOfSquares = squares(left);
  let damping = 1e-3;
  for (let round = 0; round < 200; round += 1) {
    const slopes = fittable.slopesAt(parameters);
    const plain = leastSquares(slopes, left);
    if (!plain) return undefined;
    // Squares of sums round before their parameters do, so the last step is taken on trust.
    const last = parameters.map((value, k) => value + (plain.coefficients[k] as number));
    const done = { parameters: last, sumOfSquares, inverse: plain.inverse };
    if (plain.projected <= still * size) return done;
    let lowered = false;
    while (!lowered) {
      const step = damped(slopes, left, damping);
      const tried = parameters.map((value, k) => value + (step?.coefficients[k] ?? Number.NaN));
      const leftThere = missing(fittable, tried);
      const there = squares(leftThere);
      lowered = there < sumOfSquares;
      if (lowered) {
        [parameters, left, sumOfSquares] = [tried, leftThere, there];
        damping = damping < 1e-12 ? 0 : damping / 10;
      } else {
        damping = Math.max(damping * 4, 1e-9);
        if (damping > 1e14) return plain.projected <= rounding * size ? done : undefined;
      }
    }
  }
  return undefined;
}

/** The step of Gauss and Newton, held back by one more row a parameter. */
function damped(slopes: readonly Float64Array[], left: Float64Array, damping: number): LeastSquares | undefined {
  const columns = slopes.map((column, k) => {
    const longer = new Float64Array(column.length + slopes.length);
    longer.set(column);
    longer[column.length + k] = Math.sqrt(damping) * Math.hypot(...column);
    return longer;
  });
  const longer = new Float64Array(left.length + slopes.length);
  longer.set(left);
  return leastSquares(columns, longer);
}
