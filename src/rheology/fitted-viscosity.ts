import { finite, list, record, refuse, result, show, temperature as warmth } from "../guards.js";
import { compileViscosity, gasConstant, kelvin } from "../laws/compile-viscosity.js";
import type { AndradeLaw } from "./fit-andrade.js";
import type { VogelLaw } from "./fit-vogel.js";
import * as known from "./known.js";
import type { ViscosityFit } from "./viscosity-fit.js";

/** What a fitted viscosity law says at a temperature, and how well it knows it. */
export interface FittedViscosity {
  /** Viscosity of the law [Pa·s]. */
  readonly viscosity: number;
  /** Standard error of that viscosity, in parts of it [-]; left out where the fit had no readings to spare. */
  readonly relativeStandardError?: number;
  /** True outside the temperatures that were read. */
  readonly extrapolated: boolean;
}

/** Derivatives of ln viscosity by the parameters of the law. */
function slopesOf(law: AndradeLaw | VogelLaw, at: number): readonly number[] {
  switch (law.law) {
    case "andrade":
      return [1, 1 / (gasConstant * (at + kelvin))];
    case "vogel-fulcher-tammann": {
      const away = at - law.temperatureVogel;
      return [1, 1 / away, law.coefficient / away ** 2];
    }
    default:
      return refuse("input", "fit.law.law", show((law as { law: unknown }).law), "a law that is fitted here");
  }
}

/**
 * The viscosity of a fitted law with its standard error, flagged where it goes beyond the readings.
 *
 * $$s_{\ln\mu}^2 = g^\mathsf{T}\,(\operatorname{cov} p)\,g \qquad g_k = \frac{\partial\ln\mu}{\partial p_k}$$
 *
 * @param input.fit - What `fitAndrade` or `fitVogel` gave.
 * @param input.temperature - Temperature [°C].
 * @returns Viscosity [Pa·s], its relative standard error [-], and whether the temperature lies outside the readings.
 * @throws CalculationError `input` for a fit that is not whole, `range` at or below the pole of Vogel's law.
 * @source seber-wild-1989 from memory
 * @example
 * ```ts
 * import { fitAndrade, fittedViscosityAt } from "gelwright/rheology";
 * const points = [
 *   { temperature: 25, viscosity: 0.055 },
 *   { temperature: 80, viscosity: 0.0105 },
 * ];
 * fittedViscosityAt({ fit: fitAndrade({ points }), temperature: 95 }).extrapolated; // => true
 * ```
 */
export function fittedViscosityAt(input: {
  readonly fit: ViscosityFit<AndradeLaw | VogelLaw>;
  readonly temperature: number;
}): FittedViscosity {
  const { fit, temperature } = record(input, "input", known.fittedViscosityAt);
  const { law, covariance, temperatureMin, temperatureMax } = record(fit, "fit");
  const viscosity = compileViscosity(law, "extend", "fit.law").viscosityOf(temperature);
  const slopes = slopesOf(law, temperature);
  let variance = 0;
  if (covariance !== undefined) {
    const rows = list(covariance, "fit.covariance", slopes.length);
    for (const [j, one] of slopes.entries())
      for (const [k, other] of slopes.entries())
        variance += one * other * finite(list(rows[j] ?? [], `fit.covariance[${j}]`)[k], `fit.covariance[${j}][${k}]`);
  }
  return {
    viscosity,
    ...(covariance !== undefined && {
      relativeStandardError: Math.sqrt(Math.max(0, result(variance, "variance"))),
    }),
    extrapolated:
      temperature < warmth(temperatureMin, "fit.temperatureMin") ||
      temperature > warmth(temperatureMax, "fit.temperatureMax"),
  };
}
