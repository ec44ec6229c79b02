import { finite, positive, record, refuse, show, temperature } from "../error.js";

/** How density depends on temperature, as plain data. */
export type DensityLaw =
  | {
      readonly law: "constant";
      /** [kg/m³], above 0. */
      readonly density: number;
    }
  | {
      /** Density falls by `slope` a kelvin. */
      readonly law: "linear";
      /** [kg/m³] at the reference temperature, above 0. */
      readonly density: number;
      /** [°C]. */
      readonly temperatureReference: number;
      /** Fall of density [kg/(m³·K)]: positive for nearly every liquid. */
      readonly slope: number;
    };

/** The law as a function, named `path` in its faults. */
export function compileDensity(law: DensityLaw, path: string): (temperature: number) => number {
  const density = positive(record(law, path).density, `${path}.density`);
  switch (law.law) {
    case "constant":
      return () => density;
    case "linear": {
      const reference = temperature(law.temperatureReference, `${path}.temperatureReference`);
      const slope = finite(law.slope, `${path}.slope`);
      return (at) => {
        const found = density - slope * (at - reference);
        return found > 0 && found < Number.POSITIVE_INFINITY
          ? found
          : refuse("range", path, found, `a density above 0 at ${at} °C`);
      };
    }
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), "a density law");
  }
}

/**
 * The density law as a function of temperature, checked once and then fit for hot loops.
 *
 * $$\rho = \rho_\mathrm{ref} - b\,(T - T_\mathrm{ref})$$
 *
 * @param law - The law, as plain data.
 * @returns A function of temperature [°C] that gives density [kg/m³], and throws `range` where the line has fallen to 0.
 * @throws CalculationError `input` for a law that is not whole.
 * @source definition
 * @example
 * ```ts
 * import { densityFunction } from "gelwright/laws";
 * const density = densityFunction({ law: "linear", density: 925.59, temperatureReference: 0, slope: 0.41757 });
 * density(60); // => 900.5358
 * ```
 */
export function densityFunction(law: DensityLaw): (temperature: number) => number {
  const densityOf = compileDensity(law, "law");
  return (at) => densityOf(temperature(at, "temperature"));
}

/**
 * The density at one temperature.
 *
 * $$\rho = \rho_\mathrm{ref} - b\,(T - T_\mathrm{ref})$$
 *
 * @param input.law - The density law, as plain data.
 * @param input.temperature - Temperature [°C], above −273.15.
 * @returns Density [kg/m³], above 0.
 * @throws CalculationError `input` for a law that is not whole, `range` where a linear law has fallen to 0.
 * @source definition
 * @example
 * ```ts
 * import { densityAt } from "gelwright/laws";
 * const law = { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 } as const;
 * densityAt({ law, temperature: 70 }); // => 883
 * ```
 */
export function densityAt(input: { readonly law: DensityLaw; readonly temperature: number }): number {
  const { law, temperature: at } = record(input, "input");
  return densityFunction(law)(at);
}
