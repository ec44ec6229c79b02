import { fraction, positive, record, refuse, result, temperature } from "../guards.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import * as known from "./known.js";

/** A gel former that crystallises out of the oil, and the oil. */
export interface CrystallisingPair {
  /** Melting point of the pure gel former [°C]. */
  readonly temperatureMelting: number;
  /** Its heat of fusion [J/mol], above 0. */
  readonly heatOfFusion: number;
  /** Its molar mass [kg/mol], above 0. */
  readonly molarMassGelFormer: number;
  /** Molar mass of the oil [kg/mol], above 0; a triglyceride is near 0.88. */
  readonly molarMassOil: number;
}

function pairOf(pair: CrystallisingPair) {
  return {
    melting: temperature(pair.temperatureMelting, "temperatureMelting") + kelvin,
    slope: positive(pair.heatOfFusion, "heatOfFusion") / gasConstant,
    gelFormer: positive(pair.molarMassGelFormer, "molarMassGelFormer"),
    oil: positive(pair.molarMassOil, "molarMassOil"),
  };
}

/**
 * The temperature above which a crystallising gel former is dissolved in the oil, for an ideal solution.
 *
 * $$\ln x = -\frac{\Delta H_f}{R}\left(\frac1T - \frac1{T_m}\right)$$
 *
 * x is the mole fraction of gel former: for a mass fraction both molar masses count. Waxes and fatty acids in oil come
 * close to it, polar gel formers do not. On cooling, the melt sets below it, by the degree of undercooling.
 *
 * @param input.massFractionGelFormer - Mass fraction of gel former in gel former and oil, above 0 and up to 1.
 * @returns The dissolving temperature [°C]: the melting point, or below it.
 * @throws CalculationError `input` where an argument is out of range.
 * @source schroeder-1893 from memory
 * @example
 * ```ts
 * import { dissolvingTemperature } from "gelwright/gel";
 * Math.round(dissolvingTemperature({
 *   massFractionGelFormer: 0.1, temperatureMelting: 69.3, heatOfFusion: 61_000,
 *   molarMassGelFormer: 0.2845, molarMassOil: 0.88,
 * })); // => 49
 * ```
 */
export function dissolvingTemperature(input: CrystallisingPair & { readonly massFractionGelFormer: number }): number {
  const { massFractionGelFormer } = record(input, "input", known.dissolvingTemperature);
  const { melting, slope, gelFormer, oil } = pairOf(input);
  const share = positive(fraction(massFractionGelFormer, "massFractionGelFormer"), "massFractionGelFormer");
  const perMole = 1 + ((1 - share) / share) * (gelFormer / oil);
  return result(1 / (1 / melting + Math.log(perMole) / slope) - kelvin, "dissolving temperature");
}

/**
 * The mass fraction of a crystallising gel former that the oil keeps dissolved at a temperature, for an ideal solution.
 *
 * $$x = \exp\left(-\frac{\Delta H_f}{R}\left(\frac1T - \frac1{T_m}\right)\right) \qquad w = \frac{x\,M_\mathrm{gel\,former}}{x\,M_\mathrm{gel\,former} + (1 - x)\,M_\mathrm{oil}}$$
 *
 * The rest is crystalline, and forms the gel.
 *
 * @param input.temperature - Temperature [°C], up to the melting point.
 * @returns The dissolved mass fraction, 0 to 1.
 * @throws CalculationError `input` where an argument is out of range; `range` above the melting point.
 * @source schroeder-1893 from memory
 * @example
 * ```ts
 * import { dissolvedGelFormer } from "gelwright/gel";
 * dissolvedGelFormer({
 *   temperature: 69.3, temperatureMelting: 69.3, heatOfFusion: 61_000, molarMassGelFormer: 0.2845, molarMassOil: 0.88,
 * }); // => 1
 * ```
 */
export function dissolvedGelFormer(input: CrystallisingPair & { readonly temperature: number }): number {
  const { temperature: warmth } = record(input, "input", known.dissolvedGelFormer);
  const { melting, slope, gelFormer, oil } = pairOf(input);
  const at = temperature(warmth, "temperature") + kelvin;
  if (at > melting) refuse("range", "temperature", warmth, `at most the melting point, ${melting - kelvin}`);
  const moles = Math.exp(-slope * (1 / at - 1 / melting));
  return result((moles * gelFormer) / (moles * gelFormer + (1 - moles) * oil), "dissolved gel former");
}
