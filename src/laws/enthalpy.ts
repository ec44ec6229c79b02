import { record, result } from "../guards.js";
import type { Beyond } from "./beyond.js";
import { compileSpecificHeat, type SpecificHeatLaw } from "./compile-specific-heat.js";
import * as known from "./known.js";

/**
 * The heat that a kilogram takes up between two temperatures, melting included.
 *
 * $$\Delta h = \int_{T_1}^{T_2} c(T)\,\mathrm dT$$
 *
 * The integral of the law in closed form, so that intervals add up, and a short one is as exact as a long one.
 *
 * @param input.law - The specific-heat law, as plain data.
 * @param input.temperatureStart - Temperature before [°C].
 * @param input.temperatureEnd - Temperature after [°C].
 * @param input.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns Heat [J/kg]; negative where it is given off.
 * @throws CalculationError `input` for a law that is not whole, `range` where a temperature lies outside the law's range
 *   or the law is not above 0 there (what lies between the two is not looked at).
 * @source definition
 * @example
 * ```ts
 * import { enthalpyBetween } from "gelwright/laws";
 * const wax = {
 *   law: "melting",
 *   solid: { law: "constant", specificHeat: 2100 },
 *   liquid: { law: "constant", specificHeat: 2350 },
 *   latentHeat: 185000,
 *   temperatureOnset: 58,
 *   temperatureEnd: 68,
 * } as const;
 * enthalpyBetween({ law: wax, temperatureStart: 20, temperatureEnd: 85 }); // => 327000
 * ```
 */
export function enthalpyBetween(input: {
  readonly law: SpecificHeatLaw;
  readonly temperatureStart: number;
  readonly temperatureEnd: number;
  readonly beyond?: Beyond;
}): number {
  const { law, temperatureStart, temperatureEnd, beyond } = record(input, "input", known.enthalpyBetween);
  return result(compileSpecificHeat(law, "law", beyond).heatBetween(temperatureStart, temperatureEnd), "enthalpy");
}
