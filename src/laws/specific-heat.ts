import { record } from "../guards.js";
import type { Beyond } from "./beyond.js";
import { compileSpecificHeat, type SpecificHeatLaw } from "./compile-specific-heat.js";
import * as known from "./known.js";

/**
 * The specific-heat law as a function of temperature, checked once, for use in inner loops.
 *
 * $$c = \sum_k c_k\,T^k \qquad c = c_\mathrm{s} + \sigma\,(c_\mathrm{l} - c_\mathrm{s}) + L\,\frac{\mathrm d\sigma}{\mathrm dT},\quad \sigma = 10x^3 - 15x^4 + 6x^5,\; x = \frac{T - T_\mathrm{onset}}{T_\mathrm{end} - T_\mathrm{onset}}$$
 *
 * The second form is the effective heat capacity of something that melts between two temperatures: σ is the share that
 * has melted, a smooth step of ours, with no source. Over the whole range it takes up exactly the latent heat. A solid
 * and a liquid of constant specific heat take as much heat as if all had melted at the middle of the range.
 *
 * @param law - The law, as plain data.
 * @param options.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns A function of temperature [°C] that gives specific heat [J/(kg·K)], and throws `range` outside the law's range
 *   and where the law is not above 0.
 * @throws CalculationError `input` for a law that is not whole.
 * @source choi-okos-1986 for the form of the polynomial
 * @example
 * ```ts
 * import { choiOkosFat, specificHeatFunction } from "gelwright/laws";
 * const fat = specificHeatFunction(choiOkosFat.specificHeat);
 * fat(60); // => 2055.31512
 * ```
 */
export function specificHeatFunction(
  law: SpecificHeatLaw,
  options: { readonly beyond?: Beyond } = {},
): (temperature: number) => number {
  return compileSpecificHeat(law, "law", record(options, "options", known.specificHeatFunctionOptions).beyond)
    .specificHeatOf;
}

/**
 * The specific heat at one temperature; within a melting range, with the latent heat that is taken up there.
 *
 * $$c = \sum_k c_k\,T^k$$
 *
 * @param input.law - The specific-heat law, as plain data.
 * @param input.temperature - Temperature [°C], above −273.15.
 * @param input.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns Specific heat [J/(kg·K)], above 0.
 * @throws CalculationError `input` for a law that is not whole, `range` outside the law's range and where the law is not
 *   above 0.
 * @source choi-okos-1986 for the form of the polynomial
 * @example
 * ```ts
 * import { specificHeatAt } from "gelwright/laws";
 * specificHeatAt({ law: { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] }, temperature: 85 }); // => 2074.74472
 * ```
 */
export function specificHeatAt(input: {
  readonly law: SpecificHeatLaw;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { law, temperature, beyond } = record(input, "input", known.specificHeatAt);
  return compileSpecificHeat(law, "law", beyond).specificHeatOf(temperature);
}

/**
 * The temperatures at which a specific-heat law has a breakpoint, where an integral over temperature is split.
 *
 * $$T_1 < T_2$$
 *
 * @param law - The specific-heat law, as plain data.
 * @returns Temperatures [°C], rising: the ends of the melting range; empty for a law without melting.
 * @throws CalculationError `input` for a law that is not whole.
 * @source definition
 * @example
 * ```ts
 * import { specificHeatBreakpoints } from "gelwright/laws";
 * specificHeatBreakpoints({
 *   law: "melting",
 *   solid: { law: "constant", specificHeat: 2100 },
 *   liquid: { law: "constant", specificHeat: 2350 },
 *   latentHeat: 185000,
 *   temperatureOnset: 58,
 *   temperatureEnd: 68,
 * }); // => [58, 68]
 * ```
 */
export function specificHeatBreakpoints(law: SpecificHeatLaw): readonly number[] {
  return compileSpecificHeat(law, "law").breakpoints;
}
