import { fraction, notNegative, record, result } from "../guards.js";
import { history } from "./conduction-history.js";
import { type BiotNumber, bendOf, biotOf, type ConductionShape } from "./conduction-shape.js";
import * as known from "./known.js";

/**
 * How much of the temperature difference is left at a place inside a slab, a long cylinder or a sphere: 1 at the start,
 * 0 at the ambient temperature.
 *
 * $$\theta = \frac{T - T_\mathrm{amb}}{T_0 - T_\mathrm{amb}} = \sum_n A_n\,X(\lambda_n x)\,e^{-\lambda_n^2\,\mathrm{Fo}} \qquad X = \cos,\ J_0,\ \frac{\sin\lambda x}{\lambda x}$$
 *
 * The whole series, to about 1e-13; below Fo = 0.001, where it would need many terms, the Laplace transform instead.
 * Heat is only conducted: nothing flows, melts or sets on the way. For a short cylinder multiply the cylinder by the
 * slab.
 *
 * @param input.shape - `"slab"`, `"cylinder"` (long) or `"sphere"`.
 * @param input.biot - Surface coefficient times half thickness or radius over conductivity, above 0, or `"infinite"`.
 * @param input.fourier - Diffusivity times time over half thickness or radius squared, 0 or more.
 * @param input.position - Distance from the centre over half thickness or radius, 0 (default) to 1.
 * @returns Relative temperature, 0 to 1.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source bergman-2011 sections 5.5 and 5.6
 * @example
 * ```ts
 * import { relativeTemperature } from "gelwright/heat";
 * relativeTemperature({ shape: "cylinder", biot: 3, fourier: 0.15, position: 0.5 }); // => 0.7082027515253617
 * ```
 */
export function relativeTemperature(input: {
  readonly shape: ConductionShape;
  readonly biot: BiotNumber;
  readonly fourier: number;
  readonly position?: number;
}): number {
  const { shape, biot, fourier, position = 0 } = record(input, "input", known.relativeTemperature);
  const left = history(bendOf(shape), biotOf(biot), fraction(position, "position"));
  return result(left(notNegative(fourier, "fourier")), "relative temperature");
}

/**
 * How much of the heat is left in a slab, a long cylinder or a sphere: the relative temperature, averaged over the
 * volume.
 *
 * $$\bar\theta = 1 - \frac{Q}{Q_\mathrm{max}} = \sum_n A_n\,\frac{(m+1)\,Y(\lambda_n)}{\lambda_n}\,e^{-\lambda_n^2\,\mathrm{Fo}} \qquad Y = \sin,\ J_1,\ \frac{\sin\lambda - \lambda\cos\lambda}{\lambda^2}$$
 *
 * m is 0 for the slab, 1 for the cylinder and 2 for the sphere.
 *
 * @param input.shape - `"slab"`, `"cylinder"` (long) or `"sphere"`.
 * @param input.biot - Surface coefficient times half thickness or radius over conductivity, above 0, or `"infinite"`.
 * @param input.fourier - Diffusivity times time over half thickness or radius squared, 0 or more.
 * @returns Mean relative temperature, 0 to 1.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source bergman-2011 sections 5.5 and 5.6
 * @example
 * ```ts
 * import { meanRelativeTemperature } from "gelwright/heat";
 * meanRelativeTemperature({ shape: "cylinder", biot: 3, fourier: 0.15 }); // => 0.5739689350903333
 * ```
 */
export function meanRelativeTemperature(input: {
  readonly shape: ConductionShape;
  readonly biot: BiotNumber;
  readonly fourier: number;
}): number {
  const { shape, biot, fourier } = record(input, "input", known.meanRelativeTemperature);
  const left = history(bendOf(shape), biotOf(biot), "mean");
  return result(left(notNegative(fourier, "fourier")), "mean relative temperature");
}
