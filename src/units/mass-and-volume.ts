import { notNegative, positive, record, result } from "../guards.js";
import * as known from "./known.js";

/**
 * What a volume weighs.
 *
 * $$m = V \rho$$
 *
 * @param input.volume - Volume [m³], 0 or more.
 * @param input.density - Density at the temperature at which the volume was measured [kg/m³], above 0.
 * @returns The mass [kg].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a double cannot hold the result.
 * @source definition
 * @example
 * ```ts
 * import { massOfVolume } from "gelwright/units";
 * massOfVolume({ volume: 0.04, density: 915 }); // => 36.6
 * ```
 */
export function massOfVolume(input: { readonly volume: number; readonly density: number }): number {
  const { volume, density } = record(input, "input", known.massOfVolume);
  return result(notNegative(volume, "volume") * positive(density, "density"), "mass");
}

/**
 * The room that a mass takes.
 *
 * $$V = \frac{m}{\rho}$$
 *
 * @param input.mass - Mass [kg], 0 or more.
 * @param input.density - Density at the temperature at which the volume is wanted [kg/m³], above 0.
 * @returns The volume [m³].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a double cannot hold the result.
 * @source definition
 * @example
 * ```ts
 * import { volumeOfMass } from "gelwright/units";
 * volumeOfMass({ mass: 36.6, density: 915 }); // => 0.04
 * ```
 */
export function volumeOfMass(input: { readonly mass: number; readonly density: number }): number {
  const { mass, density } = record(input, "input", known.volumeOfMass);
  return result(notNegative(mass, "mass") / positive(density, "density"), "volume");
}
