/** Where the downward recurrence is scaled back, lest it overflow. */
const large = 1e150;

/**
 * The Riccati–Bessel functions ψ and their derivatives for orders 0 to `last`, times a factor that is not known.
 *
 * Downwards, from so far above the turning point that what is started with has died away. The factor is one for all
 * orders where `last` is not far above the argument; elsewhere it may change between orders, never within one.
 */
function riccati(argument: number, last: number): { value: Float64Array; slope: Float64Array } {
  const top = Math.ceil(Math.max(last, argument + 4 * Math.cbrt(argument)) + 16 + 2 * Math.cbrt(argument));
  const value = new Float64Array(last + 1);
  const slope = new Float64Array(last + 1);
  let [above, here] = [0, 1e-150];
  for (let order = top; order >= 0; order -= 1) {
    const below = ((2 * order + 1) / argument) * here - above;
    if (order <= last) {
      value[order] = here;
      slope[order] = below - (order / argument) * here;
    }
    [above, here] = [here, below];
    if (Math.abs(here) > large) {
      above /= large;
      here /= large;
    }
  }
  return { value, slope };
}

/**
 * The scattering efficiency of a sphere that absorbs nothing, by Mie's series.
 *
 * Written so that everything is real: with p and q below, |a|² = p²/(p² + q²), and likewise b. Their products lose no
 * digits when the indices are close, but those that the difference of the indices has lost itself.
 *
 * @param size - Circumference over the wavelength in the outer phase.
 * @param ratio - Index of the sphere over that of the outer phase.
 * @source bohren-huffman-1983 chapter 4, from memory
 */
export function mieEfficiency(size: number, ratio: number): number {
  const last = Math.ceil(size + 4.05 * Math.cbrt(size) + 2);
  const outside = riccati(size, last);
  const inside = riccati(ratio * size, last);
  let [before, chi] = [Math.cos(size), Math.cos(size) / size + Math.sin(size)];
  const [zeroth, first] = outside.value as unknown as readonly [number, number];
  // ψ₀χ₁ − ψ₁χ₀ = 1 gives the factor that the downward recurrence leaves open.
  const factor = 1 / (zeroth * chi - first * before);
  let sum = 0;
  for (let order = 1; order <= last; order += 1) {
    const chiSlope = before - (order / size) * chi;
    const psi = factor * (outside.value[order] as number);
    const psiSlope = factor * (outside.slope[order] as number);
    const own = inside.value[order] as number;
    const ownSlope = inside.slope[order] as number;
    sum +=
      (2 * order + 1) *
      (share(ratio * own * psiSlope - psi * ownSlope, ratio * own * chiSlope - chi * ownSlope) +
        share(own * psiSlope - ratio * psi * ownSlope, own * chiSlope - ratio * chi * ownSlope));
    [before, chi] = [chi, ((2 * order + 1) / size) * chi - before];
  }
  return (2 / (size * size)) * sum;
}

/** p²/(p² + q²), where p or q may be too large or too small to be squared. */
function share(p: number, q: number): number {
  if (p === 0) return 0;
  const ratio = q / p;
  return 1 / (1 + ratio * ratio);
}
