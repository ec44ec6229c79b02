/**
 * The logarithm of the gamma function.
 *
 * Stirling's series from 12 upwards, where seven terms reach the last digits; smaller arguments are lifted by recurrence.
 *
 * @param x - Above 0.
 * @source abramowitz-stegun-1964 6.1.40 and 6.1.15
 */
export function logGamma(x: number): number {
  let at = x;
  let product = 1;
  for (; at < 12; at += 1) product *= at;
  const inverse = 1 / at;
  const square = inverse * inverse;
  const series =
    1 / 12 -
    square * (1 / 360 - square * (1 / 1260 - square * (1 / 1680 - square * (1 / 1188 - square * (691 / 360360)))));
  return (at - 0.5) * Math.log(at) - at + Math.log(2 * Math.PI) / 2 + inverse * series - Math.log(product);
}
