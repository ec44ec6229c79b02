import { record, refuse, show } from "../guards.js";
import { kelvin } from "../laws/compile-viscosity.js";
import type { MeltLaw, ViscosityReading } from "../laws/viscosity-law.js";
import { curveFit, type Fittable } from "../numeric/curve-fit.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import { leastSquares } from "../numeric/least-squares.js";
import type { Weighting } from "./fit-flow-curve.js";
import * as known from "./known.js";
import { type ViscosityFit, viscosityFit, viscosityReadings } from "./viscosity-fit.js";

/** A viscosity law by three constants. */
export type VogelLaw = Extract<MeltLaw, { readonly law: "vogel-fulcher-tammann" }>;

/** ln μ = a + b/(T − T₀) at the readings, with its derivatives. */
function logarithms(temperatures: readonly number[], target: Float64Array): Fittable {
  return {
    target,
    // At and above the pole there is no law.
    valuesAt: ([a = 0, b = 0, pole = 0]) =>
      Float64Array.from(temperatures, (at) => (at > pole ? a + b / (at - pole) : Number.NaN)),
    slopesAt: ([, b = 0, pole = 0]) => [
      Float64Array.from(temperatures, () => 1),
      Float64Array.from(temperatures, (at) => 1 / (at - pole)),
      Float64Array.from(temperatures, (at) => b / (at - pole) ** 2),
    ],
  };
}

/** The same for μ itself. */
function exponentials({ valuesAt, slopesAt }: Fittable, target: Float64Array): Fittable {
  const values = (parameters: readonly number[]): Float64Array => valuesAt(parameters).map(Math.exp);
  return {
    target,
    valuesAt: values,
    slopesAt: (parameters) => {
      const here = values(parameters);
      return slopesAt(parameters).map((column) => column.map((slope, i) => slope * (here[i] as number)));
    },
  };
}

/** The best of a ladder of poles below the coldest reading: for each the other two follow by a straight line. */
function startOf(temperatures: readonly number[], logs: Float64Array): readonly number[] | undefined {
  const coldest = minOf(temperatures);
  const span = maxOf(temperatures) - coldest;
  let best: { readonly sumOfSquares: number; readonly parameters: readonly number[] } | undefined;
  for (let away = span / 100; away < span * 1e3; away *= 1.2) {
    const pole = coldest - away;
    const slope = Float64Array.from(temperatures, (at) => 1 / (at - pole));
    const line = leastSquares([logs.map(() => 1), slope], logs);
    if (line && !(line.sumOfSquares >= (best?.sumOfSquares ?? Number.POSITIVE_INFINITY)))
      best = { sumOfSquares: line.sumOfSquares, parameters: [...line.coefficients, pole] };
  }
  return best?.parameters;
}

/**
 * The law of Vogel, Fulcher and Tammann through viscosities read at three or more temperatures.
 *
 * $$\ln\mu = \ln A + \frac{B}{T - T_0}$$
 *
 * Least squares in ln μ, or in μ itself where `weighting` says so; through three readings the law is exact. For every
 * pole of a ladder the other two constants follow by linear least squares; the best goes on by Gauss and Newton's
 * method. The three constants hang together closely: their standard errors are large where the law itself is well
 * known, and one alone means little.
 *
 * @param input.points - The readings: temperature [°C] and viscosity [Pa·s], at three or more temperatures.
 * @param input.weighting - `"relative"` (default) for residuals of ln μ, `"absolute"` for those of μ.
 * @returns The law with covariance and residuals; its parameters are `lnFactor` [-], `coefficient` [K] and
 *   `temperatureVogel` [°C].
 * @throws CalculationError `input` for readings that are too few or none, `unreachable` where they do not bend as the
 *   law does, or so little that the pole would lie at or below absolute zero.
 * @source viswanath-natarajan-1989 the three-constant equation; marquardt-1963 and golub-pereyra-1973 for the fit, from memory
 * @example
 * ```ts
 * import { fitVogel } from "gelwright/rheology";
 * const points = [
 *   { temperature: 25, viscosity: 0.055 },
 *   { temperature: 50, viscosity: 0.0225 },
 *   { temperature: 90, viscosity: 0.0085 },
 * ];
 * Math.round(fitVogel({ points }).law.coefficient * 1e3) / 1e3; // => 810.246
 * ```
 */
export function fitVogel(input: {
  readonly points: readonly ViscosityReading[];
  readonly weighting?: Weighting;
}): ViscosityFit<VogelLaw> {
  const { points, weighting = "relative" } = record(input, "input", known.fitVogel);
  if (weighting !== "relative" && weighting !== "absolute")
    refuse("input", "weighting", show(weighting), '"relative" or "absolute"');
  const readings = viscosityReadings(points, 3);
  const temperatures = readings.map(({ temperature }) => temperature);
  const logs = Float64Array.from(readings, ({ viscosity }) => Math.log(viscosity));
  const start = startOf(temperatures, logs);
  const inLogs = logarithms(temperatures, logs);
  const fittable =
    weighting === "relative"
      ? inLogs
      : exponentials(
          inLogs,
          Float64Array.from(readings, ({ viscosity }) => viscosity),
        );
  const fit = start && curveFit(fittable, start);
  if (!fit || !((fit.parameters[1] as number) > 0))
    return refuse(
      "unreachable",
      "points",
      "no bend of Vogel's kind",
      "viscosities that fall ever less as it warms, over a wider span of temperatures; or fitAndrade",
    );
  const [lnFactor = 0, coefficient = 0, temperatureVogel = 0] = fit.parameters;
  if (!(temperatureVogel > -kelvin))
    refuse(
      "unreachable",
      "points",
      `a pole at ${Number(temperatureVogel.toPrecision(4))} °C, at or below absolute zero`,
      "viscosities that bend more, over a wider span of temperatures; or fitAndrade",
    );
  const values = fittable.valuesAt(fit.parameters);
  return viscosityFit(
    { law: "vogel-fulcher-tammann", lnFactor, coefficient, temperatureVogel },
    weighting,
    ["lnFactor", "coefficient", "temperatureVogel"],
    fit.inverse,
    [...fittable.target].map((read, i) => read - (values[i] as number)),
    readings,
  );
}
