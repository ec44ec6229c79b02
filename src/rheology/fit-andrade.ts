import { record, refuse, result } from "../guards.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import type { MeltLaw, ViscosityReading } from "../laws/viscosity-law.js";
import { leastSquares } from "../numeric/least-squares.js";
import * as known from "./known.js";
import { type ViscosityFit, viscosityFit, viscosityReadings } from "./viscosity-fit.js";

/** A viscosity law by two constants. */
export type AndradeLaw = Extract<MeltLaw, { readonly law: "andrade" }>;

/**
 * Andrade's law through viscosities read at two or more temperatures.
 *
 * $$\ln\mu = \ln A + \frac{E_a}{R\,T}$$
 *
 * Ordinary least squares in ln μ; through two readings the line is exact. Oils bend away from it over more than some
 * 40 K: where the residuals run in a bow, `fitVogel` is the law to take.
 *
 * @param input.points - The readings: temperature [°C] and viscosity [Pa·s], at two or more temperatures.
 * @returns The law with covariance and residuals of ln μ; its parameters are `lnFactor` [-] and `activationEnergy`
 *   [J/mol].
 * @throws CalculationError `input` for readings that are too few or none, `unreachable` where the viscosity does not
 *   fall with rising temperature.
 * @source viswanath-natarajan-1989 the two-constant equation
 * @example
 * ```ts
 * import { fitAndrade } from "gelwright/rheology";
 * const points = [
 *   { temperature: 25, viscosity: 0.055 },
 *   { temperature: 80, viscosity: 0.0105 },
 * ];
 * fitAndrade({ points }).law.activationEnergy; // => 26358.14353092486
 * ```
 */
export function fitAndrade(input: { readonly points: readonly ViscosityReading[] }): ViscosityFit<AndradeLaw> {
  const readings = viscosityReadings(record(input, "input", known.fitAndrade).points, 2);
  const inverse = Float64Array.from(readings, ({ temperature }) => 1 / (gasConstant * (temperature + kelvin)));
  const logs = Float64Array.from(readings, ({ viscosity }) => Math.log(viscosity));
  const line = leastSquares([logs.map(() => 1), inverse], logs);
  if (!line) return refuse("input", "points", "temperatures too close", "readings over a wider span of temperatures");
  const [lnFactor = 0, activationEnergy = 0] = line.coefficients;
  if (!(activationEnergy > 0))
    refuse("unreachable", "points", "a viscosity that does not fall", "viscosities that fall as it warms");
  const factor = Math.exp(lnFactor);
  if (!(factor > 0)) refuse("range", "factor", factor, "a factor that a double can hold");
  return viscosityFit(
    {
      law: "andrade",
      factor: result(factor, "factor"),
      activationEnergy: result(activationEnergy, "activation energy"),
    },
    "relative",
    ["lnFactor", "activationEnergy"],
    line.inverse,
    [...logs].map((log, i) => log - (lnFactor + activationEnergy * (inverse[i] as number))),
    readings,
  );
}
