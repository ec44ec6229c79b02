import { finite, positive, record, refuse, show, temperature, variant } from "../guards.js";
import type { Beyond } from "./beyond.js";
import * as known from "./known.js";
import { checkCoefficients, compilePolynomial, type LawRange } from "./polynomial.js";

/** How density depends on temperature, as plain data. */
export type DensityLaw =
  | {
      readonly law: "constant";
      /** [kg/m³], above 0. */
      readonly density: number;
    }
  | ({
      /** Density falls by `slope` a kelvin. */
      readonly law: "linear";
      /** [kg/m³] at the reference temperature, above 0. */
      readonly density: number;
      /** [°C]. */
      readonly temperatureReference: number;
      /** Fall of density [kg/(m³·K)]: positive for nearly every liquid. */
      readonly slope: number;
    } & LawRange)
  | ({
      /** Density = ρ₀ + ρ₁ T + ρ₂ T² + …, with T in °C. */
      readonly law: "polynomial";
      /** From the constant term up [kg/m³], [kg/(m³·K)] and so on; at least one. */
      readonly coefficients: readonly number[];
    } & LawRange);

/** The law as a function, named `path` in its faults. */
export function compileDensity(law: DensityLaw, path: string, beyond?: Beyond): (temperature: number) => number {
  variant(law, path, "law", known.density);
  switch (law.law) {
    case "constant":
      return compilePolynomial([positive(law.density, `${path}.density`)], 0, {}, beyond, path, "density");
    case "linear": {
      const density = positive(law.density, `${path}.density`);
      const reference = temperature(law.temperatureReference, `${path}.temperatureReference`);
      return compilePolynomial([density, -finite(law.slope, `${path}.slope`)], reference, law, beyond, path, "density");
    }
    case "polynomial":
      return compilePolynomial(checkCoefficients(law.coefficients, path), 0, law, beyond, path, "density");
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), "a density law");
  }
}

/**
 * The density law as a function of temperature, checked once, for use in inner loops.
 *
 * $$\rho = \rho_\mathrm{ref} - b\,(T - T_\mathrm{ref}) \qquad \rho = \sum_k \rho_k\,T^k$$
 *
 * @param law - The law, as plain data.
 * @param options.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns A function of temperature [°C] that gives density [kg/m³], and throws `range` outside the law's range and
 *   where the law has fallen to 0.
 * @throws CalculationError `input` for a law that is not whole.
 * @source definition
 * @example
 * ```ts
 * import { densityFunction } from "gelwright/laws";
 * const density = densityFunction({ law: "linear", density: 925.59, temperatureReference: 0, slope: 0.41757 });
 * density(60); // => 900.5358
 * ```
 */
export function densityFunction(
  law: DensityLaw,
  options: { readonly beyond?: Beyond } = {},
): (temperature: number) => number {
  return compileDensity(law, "law", record(options, "options", known.densityFunctionOptions).beyond);
}

/**
 * The density at one temperature.
 *
 * $$\rho = \rho_\mathrm{ref} - b\,(T - T_\mathrm{ref}) \qquad \rho = \sum_k \rho_k\,T^k$$
 *
 * @param input.law - The density law, as plain data.
 * @param input.temperature - Temperature [°C], above −273.15.
 * @param input.beyond - Outside the law's range, where it has one: `"throw"` (default) or `"extend"`.
 * @returns Density [kg/m³], above 0.
 * @throws CalculationError `input` for a law that is not whole, `range` outside the law's range and where the law has
 *   fallen to 0.
 * @source definition
 * @example
 * ```ts
 * import { densityAt } from "gelwright/laws";
 * const law = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
 * densityAt({ law, temperature: 70 }); // => 883
 * ```
 */
export function densityAt(input: {
  readonly law: DensityLaw;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { law, temperature: at, beyond } = record(input, "input", known.densityAt);
  return compileDensity(law, "law", beyond)(at);
}
