/** The answer to a linear least-squares problem. */
export interface LeastSquares {
  /** One coefficient a column. */
  readonly coefficients: number[];
  /** Sum of the squares of what is left. */
  readonly sumOfSquares: number;
  /** (AᵀA)⁻¹: times the variance of a reading, the covariance of the coefficients. */
  readonly inverse: number[][];
  /** How much of the right-hand side the columns account for: its length once projected on them. */
  readonly projected: number;
}

/** A column counts as a combination of the others when no more than this share of it is its own. */
const independence = 1e-10;

const dot = (one: Float64Array, other: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < one.length; i += 1) sum += (one[i] as number) * (other[i] as number);
  return sum;
};

/** Length of a column, whatever the size of its numbers. */
export function lengthOf(column: Float64Array): number {
  let max = 0;
  for (let i = 0; i < column.length; i += 1) max = Math.max(max, Math.abs(column[i] as number));
  if (!(max > 0 && max < Number.POSITIVE_INFINITY)) return max;
  let sum = 0;
  for (let i = 0; i < column.length; i += 1) sum += ((column[i] as number) / max) ** 2;
  return max * Math.sqrt(sum);
}

/** Makes a column shorter by a factor. */
function divide(column: Float64Array, by: number): void {
  for (let i = 0; i < column.length; i += 1) (column[i] as number) /= by;
}

/** Takes `share` of `one` out of `from`. */
function remove(from: Float64Array, one: Float64Array, share: number): void {
  for (let i = 0; i < one.length; i += 1) (from[i] as number) -= share * (one[i] as number);
}

/**
 * The coefficients that bring the sum of `columns` closest to `right`, in the sense of least squares.
 *
 * Gram–Schmidt, each column made orthogonal twice, so that the digits lost go with the condition of the columns and
 * not with its square. Columns may differ in size by any factor.
 *
 * @returns Nothing where a column is a combination of the others, or where a number is not finite.
 * @source bjorck-1996 from memory
 */
export function leastSquares(columns: readonly Float64Array[], right: Float64Array): LeastSquares | undefined {
  const count = columns.length;
  const basis: Float64Array[] = [];
  const upper = columns.map(() => new Float64Array(count));
  const left = right.slice();
  const along = new Float64Array(count);
  for (let k = 0; k < count; k += 1) {
    const own = (columns[k] as Float64Array).slice();
    const length = lengthOf(own);
    divide(own, length);
    for (let pass = 0; pass < 2; pass += 1)
      for (let j = 0; j < k; j += 1) {
        const share = dot(basis[j] as Float64Array, own);
        remove(own, basis[j] as Float64Array, share);
        ((upper[j] as Float64Array)[k] as number) += share * length;
      }
    const kept = lengthOf(own);
    // Of a column whose length overflows, or that holds what is no number, nothing is kept or what is none.
    if (!(kept > independence)) return undefined;
    divide(own, kept);
    basis.push(own);
    (upper[k] as Float64Array)[k] = kept * length;
    along[k] = dot(own, left);
    remove(left, own, along[k] as number);
  }
  const inverted = invertUpper(upper);
  return {
    coefficients: inverted.map((row) => dot(row, along)),
    sumOfSquares: dot(left, left),
    inverse: inverted.map((row) => inverted.map((other) => dot(row, other))),
    projected: lengthOf(along),
  };
}

/** The inverse of an upper triangular matrix, by rows. */
function invertUpper(upper: readonly Float64Array[]): Float64Array[] {
  const inverted = upper.map(() => new Float64Array(upper.length));
  for (let k = 0; k < upper.length; k += 1)
    for (let i = k; i >= 0; i -= 1) {
      const row = upper[i] as Float64Array;
      let sum = i === k ? 1 : 0;
      for (let j = i + 1; j <= k; j += 1) sum -= (row[j] as number) * ((inverted[j] as Float64Array)[k] as number);
      (inverted[i] as Float64Array)[k] = sum / (row[i] as number);
    }
  return inverted;
}
