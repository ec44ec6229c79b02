/**
 * The logarithmic mean of two numbers of the same sign, (a − b)/ln(a/b): the constant flow that does in the same time
 * what a flow does that falls in proportion to what is left.
 *
 * Exact to the last digits for numbers that are all but equal, too.
 */
export function logMean(one: number, other: number): number {
  const apart = (one - other) / other;
  if (apart === 0) return other;
  return apart > -0.5 ? (other * apart) / Math.log1p(apart) : (one - other) / Math.log(one / other);
}
