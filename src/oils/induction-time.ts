import { list, positive, record, refuse, result, temperature } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import * as known from "./known.js";
import { type StraightLine, straightLine } from "./straight-line.js";

/** An induction time that was measured. */
export interface InductionReading {
  /** Temperature of the test [°C]. */
  readonly temperature: number;
  /** Time until oxidation sets in [s], above 0. */
  readonly duration: number;
}

/** An induction time at another temperature, by one rule. */
export interface InductionEstimate {
  /** Time until oxidation sets in [s]. */
  readonly duration: number;
  /** Between which the fitted line lies there with the confidence asked for [s]; it speaks of scatter and not of whether the rule holds. Left out for two readings. */
  readonly interval?: { readonly min: number; readonly max: number };
}

/** Both rules side by side. */
export interface InductionTime {
  /** By Arrhenius, with the activation energy [J/mol]. */
  readonly arrhenius: InductionEstimate & { readonly activationEnergy: number };
  /** By a logarithm that is straight in temperature, with the factor by which 10 K shorten the time. */
  readonly logLinear: InductionEstimate & { readonly factorPerTenKelvin: number };
  /** The time by Arrhenius over that by the other rule: how much hangs on the choice. */
  readonly ratio: number;
  /** How far the temperature lies beyond the readings [K]; 0 within them. */
  readonly beyond: number;
}

/** Molar gas constant [J/(mol·K)], exact by definition. */
const gasConstant = 8.31446261815324;

/**
 * The induction time of an oil at another temperature, from times measured at several: by two rules, side by side.
 *
 * $$\ln t = \ln A + \frac{E_\mathrm{a}}{R\,T} \qquad\qquad \ln t = a - b\,\vartheta, \quad Q_{10} = e^{10\,b\,\mathrm K}$$
 *
 * Least squares on the logarithms. Within the readings both rules fit about equally; from a test near 110 °C down to
 * room temperature they part by several times, and neither need hold there: light, metals and another chemistry take
 * over. Ten vegetable oils had 79 to 104 kJ/mol between 110 and 140 °C; under light at 10 to 30 °C less than 50 was found.
 *
 * @param input.readings - Temperature [°C] and time [s] of each measurement, at two temperatures at least.
 * @param input.temperature - Where the time is wanted [°C].
 * @param input.confidence - Of the intervals, above 0 and below 1; default 0.95.
 * @returns Both estimates with their intervals, their ratio, and how far they reach beyond the readings.
 * @throws CalculationError `input` where an argument is out of range or all readings are at one temperature, `range` where
 *   the times do not fall as it gets warmer or a result is beyond what a double can hold.
 * @source tan-2001 both rules and the energies, read in the abstract; manzocco-2012 under light, read in the abstract
 * @example
 * ```ts
 * import { inductionTime } from "gelwright/oils";
 * const readings = [
 *   { temperature: 110, duration: 36000 },
 *   { temperature: 120, duration: 17600 },
 *   { temperature: 130, duration: 9000 },
 * ];
 * const cold = inductionTime({ readings, temperature: 25 });
 * cold.logLinear.factorPerTenKelvin; // => 2
 * cold.ratio; // => 8.014866706227846
 * ```
 */
export function inductionTime(input: {
  readonly readings: readonly InductionReading[];
  readonly temperature: number;
  readonly confidence?: number;
}): InductionTime {
  const { readings, temperature: wanted, confidence = 0.95 } = record(input, "input", known.inductionTime);
  if (!(positive(confidence, "confidence") < 1)) refuse("input", "confidence", confidence, "above 0 and below 1");
  const warmth = temperature(wanted, "temperature");
  const checked = list(readings, "readings", 2).map((reading, i) => {
    const at = `readings[${i}]`;
    const { temperature: own, duration } = record(reading, at);
    return {
      warmth: temperature(own, `${at}.temperature`),
      logarithm: Math.log(positive(duration, `${at}.duration`)),
    };
  });
  const logarithms = checked.map((reading) => reading.logarithm);
  const temperatures = checked.map((reading) => reading.warmth);
  const inverse = (celsius: number) => 1 / (gasConstant * (celsius + 273.15));
  const byEnergy = straightLine(temperatures.map(inverse), logarithms);
  const byWarmth = straightLine(temperatures, logarithms);
  if (!byEnergy || !byWarmth || maxOf(temperatures) === minOf(temperatures))
    return refuse("input", "readings", "one temperature", "readings at two temperatures at least");
  if (byEnergy.slope <= 0 || byWarmth.slope >= 0)
    refuse("range", "readings", "times that do not fall with temperature", "shorter times where it is warmer");
  const arrhenius = estimate(byEnergy, inverse(warmth), confidence);
  const logLinear = estimate(byWarmth, warmth, confidence);
  return {
    arrhenius: { ...arrhenius, activationEnergy: result(byEnergy.slope, "activation energy") },
    logLinear: { ...logLinear, factorPerTenKelvin: result(Math.exp(-10 * byWarmth.slope), "factor per 10 K") },
    ratio: result(arrhenius.duration / logLinear.duration, "ratio"),
    beyond: Math.max(0, minOf(temperatures) - warmth, warmth - maxOf(temperatures)),
  };
}

function estimate(line: StraightLine, place: number, confidence: number): InductionEstimate {
  const doubt = line.doubtAt(place, confidence);
  const middle = line.at(place);
  const durationAt = (logarithm: number) => positive(result(Math.exp(logarithm), "duration"), "duration");
  const duration = durationAt(middle);
  if (doubt === undefined) return { duration };
  return { duration, interval: { min: durationAt(middle - doubt), max: durationAt(middle + doubt) } };
}
