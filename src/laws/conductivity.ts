import { positive, record, refuse, show, variant } from "../guards.js";
import type { Beyond } from "./beyond.js";
import * as known from "./known.js";
import { checkCoefficients, compilePolynomial, type LawRange } from "./polynomial.js";

/** How thermal conductivity depends on temperature, as plain data. */
export type ConductivityLaw =
  | {
      readonly law: "constant";
      /** [W/(m·K)], above 0. */
      readonly conductivity: number;
    }
  | ({
      /** Conductivity = k₀ + k₁ T + k₂ T² + …, with T in °C. */
      readonly law: "polynomial";
      /** From the constant term up [W/(m·K)], [W/(m·K²)] and so on; at least one. */
      readonly coefficients: readonly number[];
    } & LawRange);

function compileConductivity(law: ConductivityLaw, beyond: Beyond | undefined): (temperature: number) => number {
  variant(law, "law", "law", known.conductivity);
  switch (law.law) {
    case "constant":
      return compilePolynomial([positive(law.conductivity, "law.conductivity")], 0, {}, beyond, "law", "conductivity");
    case "polynomial":
      return compilePolynomial(checkCoefficients(law.coefficients, "law"), 0, law, beyond, "law", "conductivity");
    default:
      return refuse("input", "law.law", show((law as { law: unknown }).law), "a conductivity law");
  }
}

/**
 * The thermal-conductivity law as a function of temperature, checked once, for use in inner loops.
 *
 * $$k = \sum_i k_i\,T^i$$
 *
 * @param law - The law, as plain data.
 * @param options.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns A function of temperature [°C] that gives conductivity [W/(m·K)], and throws `range` outside the law's range
 *   and where the law is not above 0.
 * @throws CalculationError `input` for a law that is not whole.
 * @source choi-okos-1986 for the form
 * @example
 * ```ts
 * import { choiOkosFat, conductivityFunction } from "gelwright/laws";
 * const conductivity = conductivityFunction(choiOkosFat.conductivity);
 * conductivity(85); // => 0.15596423475
 * ```
 */
export function conductivityFunction(
  law: ConductivityLaw,
  options: { readonly beyond?: Beyond } = {},
): (temperature: number) => number {
  return compileConductivity(law, record(options, "options", known.conductivityFunctionOptions).beyond);
}

/**
 * The thermal conductivity at one temperature.
 *
 * $$k = \sum_i k_i\,T^i$$
 *
 * @param input.law - The conductivity law, as plain data.
 * @param input.temperature - Temperature [°C], above −273.15.
 * @param input.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns Conductivity [W/(m·K)], above 0.
 * @throws CalculationError `input` for a law that is not whole, `range` outside the law's range and where the law is
 *   not above 0.
 * @source choi-okos-1986 for the form
 * @example
 * ```ts
 * import { conductivityAt } from "gelwright/laws";
 * conductivityAt({ law: { law: "constant", conductivity: 0.17 }, temperature: 40 }); // => 0.17
 * ```
 */
export function conductivityAt(input: {
  readonly law: ConductivityLaw;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { law, temperature, beyond } = record(input, "input", known.conductivityAt);
  return compileConductivity(law, beyond)(temperature);
}
