import { notNegative, positive, refuse, result, show, temperature, variant } from "../guards.js";
import { arrheniusExponent } from "../laws/arrhenius.js";
import { gasConstant } from "../laws/compile-viscosity.js";
import * as known from "./known.js";

/** How much faster a material changes where it is warmer, as plain data. */
export type AgeingKinetics =
  | {
      /** By an activation energy. */
      readonly law: "arrhenius";
      /** [J/mol], 0 or more; measured on the material. */
      readonly activationEnergy: number;
      /** Where the rate counts as 1 [°C]. */
      readonly temperatureReference: number;
    }
  | {
      /** By a factor for each 10 K. */
      readonly law: "q10";
      /** Above 0. */
      readonly q10: number;
      /** Where the rate counts as 1 [°C]. */
      readonly temperatureReference: number;
    };

/**
 * How fast a material changes at a temperature, relative to its rate at the reference temperature, as a function for the `rates` of a segment.
 *
 * $$r = \exp\left[-\frac{E_a}{R}\left(\frac1T - \frac1{T_\mathrm{ref}}\right)\right] \qquad r = Q_{10}^{(T - T_\mathrm{ref})/10}$$
 *
 * It speaks of chemical change under one mechanism: not of setting, bleed or clarity, and not across a melting point.
 *
 * @param ageingKinetics - The law, as plain data.
 * @returns A function of temperature [°C] that gives the relative rate, 1 at the reference.
 * @throws CalculationError `input` for a law that is not whole.
 * @source openstax-chemistry section 12.5 for the form by an activation energy, from memory; q10 by definition
 * @example
 * ```ts
 * import { relativeRateFunction } from "gelwright/heat";
 * const rate = relativeRateFunction({ law: "q10", q10: 2, temperatureReference: 25 });
 * rate(65); // => 16
 * ```
 */
export function relativeRateFunction(ageingKinetics: AgeingKinetics): (temperature: number) => number {
  const reference = temperature(
    variant(ageingKinetics, "ageingKinetics", "law", known.ageingKinetics).temperatureReference,
    "ageingKinetics.temperatureReference",
  );
  switch (ageingKinetics.law) {
    case "arrhenius": {
      const barrier = notNegative(ageingKinetics.activationEnergy, "ageingKinetics.activationEnergy") / gasConstant;
      return (at) =>
        result(Math.exp(arrheniusExponent(barrier, temperature(at, "temperature"), reference)), "relative rate");
    }
    case "q10": {
      const q10 = positive(ageingKinetics.q10, "ageingKinetics.q10");
      return (at) => result(q10 ** ((temperature(at, "temperature") - reference) / 10), "relative rate");
    }
    default:
      return refuse(
        "input",
        "ageingKinetics.law",
        show((ageingKinetics as { law: unknown }).law),
        '"arrhenius" or "q10"',
      );
  }
}
