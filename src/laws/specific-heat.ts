import { finite, list, positive, record, refuse, show, temperature } from "../error.js";

/** How specific heat depends on temperature, as plain data. */
export type SpecificHeatLaw =
  | {
      readonly law: "constant";
      /** [J/(kg·K)], above 0. */
      readonly specificHeat: number;
    }
  | {
      /** Specific heat = c₀ + c₁ T + c₂ T² + …, with T in °C. */
      readonly law: "polynomial";
      /** From the constant term up [J/(kg·K)], [J/(kg·K²)] and so on; at least one. */
      readonly coefficients: readonly number[];
    };

/**
 * The specific-heat law as a function of temperature, checked once and then fit for hot loops.
 *
 * $$c = \sum_k c_k\,T^k$$
 *
 * @param law - The law, as plain data.
 * @returns A function of temperature [°C] that gives specific heat [J/(kg·K)], and throws `range` where it is not above 0.
 * @throws CalculationError `input` for a law that is not whole.
 * @source choi-okos-1986 for the form
 * @example
 * ```ts
 * import { specificHeatFunction } from "gelwright/laws";
 * const fat = specificHeatFunction({ law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] });
 * fat(60); // => 2055.31512
 * ```
 */
export function specificHeatFunction(law: SpecificHeatLaw): (temperature: number) => number {
  record(law, "law");
  switch (law.law) {
    case "constant": {
      const specificHeat = positive(law.specificHeat, "law.specificHeat");
      return (at) => {
        temperature(at, "temperature");
        return specificHeat;
      };
    }
    case "polynomial": {
      const coefficients = list(law.coefficients, "law.coefficients", 1).map((value, i) =>
        finite(value, `law.coefficients[${i}]`),
      );
      return (at) => {
        temperature(at, "temperature");
        const found = coefficients.reduceRight((sum, coefficient) => sum * at + coefficient, 0);
        return found > 0 && found < Number.POSITIVE_INFINITY
          ? found
          : refuse("range", "specific heat", found, `a specific heat above 0 at ${at} °C`);
      };
    }
    default:
      return refuse("input", "law.law", show((law as { law: unknown }).law), "a specific-heat law");
  }
}

/**
 * The specific heat at one temperature.
 *
 * $$c = \sum_k c_k\,T^k$$
 *
 * @param input.law - The specific-heat law, as plain data.
 * @param input.temperature - Temperature [°C], above −273.15.
 * @returns Specific heat [J/(kg·K)], above 0.
 * @throws CalculationError `input` for a law that is not whole, `range` where a polynomial has fallen to 0.
 * @source choi-okos-1986 for the form
 * @example
 * ```ts
 * import { specificHeatAt } from "gelwright/laws";
 * const fat = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * specificHeatAt({ law: fat, temperature: 60 }); // => 2055.31512
 * ```
 */
export function specificHeatAt(input: { readonly law: SpecificHeatLaw; readonly temperature: number }): number {
  const { law, temperature: at } = record(input, "input");
  return specificHeatFunction(law)(at);
}
