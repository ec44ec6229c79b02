import { type Complex, invertLaplace, over, times } from "../numeric/laplace.js";

/** Hankel's sum for modified Bessel functions of a large argument, of order ν with ν² given; it ends by itself for ½ and ³⁄₂. */
function hankel(square: number, argument: Complex): Complex {
  let term: Complex = [1, 0];
  let sum: Complex = [1, 0];
  for (let k = 1; Math.hypot(...term) > Number.EPSILON; k += 1) {
    const factor = ((k - 1 / 2) ** 2 - square) / (2 * k);
    term = over([term[0] * factor, term[1] * factor], argument);
    sum = [sum[0] + term[0], sum[1] + term[1]];
  }
  return sum;
}

/**
 * Relative temperature of a body that has only just begun to cool: its layer is so thin that the far side is not felt.
 *
 * The solution in the Laplace domain, with q² = s and depth y = 1 − x under the surface, inverted by quadrature:
 *
 * $$1 - \theta = \mathcal L^{-1}\left[\frac1s\,\frac{\mathrm{Bi}\,x^{-m/2}\,e^{-qy}\,P_\nu(qx)}{q\,P_{\nu+1}(q) + \mathrm{Bi}\,P_\nu(q)}\right] \qquad \nu = \frac{m-1}2$$
 *
 * P is Hankel's sum. What is left out is the wave from the far side, exp(−2q), which for Fo below 0.001 is less than
 * 1e-24. For a slab this is the sum of erfc terms of the semi-infinite solid; for bent surfaces there is no such sum.
 *
 * @source carslaw-jaeger-1959 chapters 12 and 13, from memory
 */
export function earlyTemperature(bend: number, biot: number, place: number | "mean", fourier: number): number {
  const depth = place === "mean" ? 0 : 1 - place;
  // erfc(6) is 2e-17: the cold has not come this far, to the last digit of a double.
  if (depth > 12 * Math.sqrt(fourier)) return 1;
  const inside = 1 / (1 + biot);
  const outside = biot === Number.POSITIVE_INFINITY ? 1 : biot / (1 + biot);
  const lower = ((bend - 1) / 2) ** 2;
  const upper = ((bend + 1) / 2) ** 2;
  const loss = invertLaplace((s) => {
    const q = rootOf([s[0] / fourier, s[1] / fourier]);
    const fall = hankel(upper, q);
    const flow = times(q, fall);
    const height = hankel(lower, q);
    const surface: Complex = [inside * flow[0] + outside * height[0], inside * flow[1] + outside * height[1]];
    const here = place === "mean" ? over(fall, q) : times(damp(q, depth), hankel(lower, [q[0] * place, q[1] * place]));
    return over(here, times(surface, s));
  });
  return 1 - loss * outside * (place === "mean" ? bend + 1 : place ** (-bend / 2));
}

/** The square root in the right half of the plane, of a number off the negative real axis in the upper half. */
function rootOf([re, im]: Complex): Complex {
  const size = Math.hypot(re, im);
  const right = Math.sqrt((size + Math.abs(re)) / 2);
  return re > 0 ? [right, im / (2 * right)] : [im / (2 * right), right];
}

/** exp(−q y). */
function damp([re, im]: Complex, depth: number): Complex {
  const size = Math.exp(-re * depth);
  return [size * Math.cos(im * depth), -size * Math.sin(im * depth)];
}
