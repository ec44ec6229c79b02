import { list, positive, record, refuse, result, temperature } from "../guards.js";
import type { Band } from "../laws/band.js";
import type { MeltLaw, ViscosityReading } from "../laws/viscosity-law.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import type { Weighting } from "./fit-flow-curve.js";

/**
 * How sure a viscosity is between readings 40 to 50 K apart, by each law: six oils from 24 to 110 °C, fitted to three
 * readings, the other four predicted. Andrade's two constants bend too little: 5 % too high on the mean, 18 % at most.
 */
export const viscosityFitBands: Readonly<Record<"andrade" | "vogel-fulcher-tammann" | "walther", Band>> = {
  andrade: { by: "factor", min: 0.85, max: 1.05, basis: "spread", sources: ["noureddini-1992-viscosity"] },
  "vogel-fulcher-tammann": {
    by: "factor",
    min: 0.92,
    max: 1.08,
    basis: "spread",
    sources: ["noureddini-1992-viscosity"],
  },
  walther: { by: "factor", min: 0.92, max: 1.08, basis: "spread", sources: ["noureddini-1992-viscosity"] },
};

/** A law of viscosity against temperature, fitted to readings. */
export interface ViscosityFit<Law extends MeltLaw = MeltLaw> {
  /** The law, to be handed to whatever takes one. */
  readonly law: Law;
  /** Which residuals were made small: `"relative"` those of ln viscosity, `"absolute"` those in Pa·s. */
  readonly weighting: Weighting;
  /** The names of the fitted parameters, in the order of `covariance`. */
  readonly parameters: readonly string[];
  /** Standard error of each parameter by its name, in its unit; left out where there are no readings to spare. */
  readonly standardErrors?: Readonly<Record<string, number>>;
  /** Covariance of the parameters, in the products of their units; left out likewise. */
  readonly covariance?: readonly (readonly number[])[];
  /** What was read less what the law gives: in ln viscosity [-] or, where they are absolute, in Pa·s. */
  readonly residuals: readonly number[];
  /** Sum of the residuals' squares [-], or [Pa²·s²] where they are absolute. */
  readonly sumOfSquares: number;
  /** Readings less parameters. */
  readonly degreesOfFreedom: number;
  /** Lowest temperature read [°C]. */
  readonly temperatureMin: number;
  /** Highest temperature read [°C]. */
  readonly temperatureMax: number;
}

/** Checks readings, which have to stand at so many different temperatures. */
export function viscosityReadings(points: readonly ViscosityReading[], min: number): readonly ViscosityReading[] {
  const readings = list(points, "points", 1).map((point, i) => {
    const { temperature: warmth, viscosity } = record(point, `points[${i}]`);
    return {
      temperature: temperature(warmth, `points[${i}].temperature`),
      viscosity: positive(viscosity, `points[${i}].viscosity`),
    };
  });
  const different = new Set(readings.map((reading) => reading.temperature)).size;
  if (different < min)
    refuse("input", "points", `readings at ${different} temperatures`, `readings at ${min} or more temperatures`);
  return readings;
}

/** Puts a fit together from what least squares gave. */
export function viscosityFit<Law extends MeltLaw>(
  law: Law,
  weighting: Weighting,
  parameters: readonly string[],
  inverse: readonly (readonly number[])[],
  residuals: readonly number[],
  readings: readonly ViscosityReading[],
): ViscosityFit<Law> {
  const degreesOfFreedom = readings.length - parameters.length;
  const sumOfSquares = residuals.reduce((sum, one) => sum + one * one, 0);
  const variance = sumOfSquares / degreesOfFreedom;
  const covariance = inverse.map((row) => row.map((value) => value * variance));
  const temperatures = readings.map((reading) => reading.temperature);
  return {
    law,
    weighting,
    parameters,
    ...(degreesOfFreedom > 0 && {
      covariance: covariance.map((row) => row.map((value) => result(value, "covariance"))),
      standardErrors: Object.fromEntries(
        parameters.map((name, k) => [name, result(Math.sqrt(covariance[k]?.[k] as number), "standard error")]),
      ),
    }),
    residuals: residuals.map((one) => result(one, "residual")),
    sumOfSquares: result(sumOfSquares, "sum of squares"),
    degreesOfFreedom,
    temperatureMin: minOf(temperatures),
    temperatureMax: maxOf(temperatures),
  };
}
