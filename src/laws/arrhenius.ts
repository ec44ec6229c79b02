import { kelvin } from "./compile-viscosity.js";

/**
 * The exponent of Arrhenius' law between two temperatures, E/R (1/T_ref − 1/T), as one quotient: near the reference the
 * difference of two reciprocals would cancel.
 *
 * @param steepness - Activation energy over the gas constant [K].
 * @param at - Temperature [°C].
 * @param reference - Temperature at which the exponent is 0 [°C].
 */
export function arrheniusExponent(steepness: number, at: number, reference: number): number {
  return (steepness * (at - reference)) / ((at + kelvin) * (reference + kelvin));
}
