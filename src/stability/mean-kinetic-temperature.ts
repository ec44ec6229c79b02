import { list, positive, record, refuse, result, temperature } from "../guards.js";
import { arrheniusExponent } from "../laws/arrhenius.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import * as known from "./known.js";
import { between, readTransitions, type Transition } from "./transition.js";

/** Heat of activation by the convention of the pharmacopoeia [J/mol]: with it ΔH/R is 10 000 K. */
const activationEnergyUsual = 83_144;

/** A temperature and how long it lasted. */
export interface TemperatureReading {
  /** [°C]. */
  readonly temperature: number;
  /** How long it lasted [s], above 0; left out where all lasted equally long. */
  readonly duration?: number;
}

/**
 * The mean kinetic temperature of a storage: the one constant temperature at which a chemical change would have gone as far.
 *
 * $$T_K = \frac{\Delta H / R}{-\ln\left(\dfrac{\sum_i t_i\,e^{-\Delta H/(R\,T_i)}}{\sum_i t_i}\right)}$$
 *
 * It lies between the arithmetic mean and the highest reading. It speaks of chemical change under one mechanism: never of
 * bleed, clarity, set or settling, and not across a gel point or melting range. The customary activation energy comes from
 * medicines; 83.144 kJ/mol lies within the 79 to 104 kJ/mol that were found for the oxidation of oils near 110 °C.
 *
 * @param input.readings - Temperature [°C] and, if they differ, duration [s] of each stretch; at least one.
 * @param input.activationEnergy - [J/mol], above 0; default 83144.
 * @param input.transitions - Gel points and melting ranges of the product [°C]; one that the readings reach is refused.
 * @returns The mean kinetic temperature [°C].
 * @throws CalculationError `input` where an argument is no number or out of range, or some readings have a duration and
 *   others none; `range` where the product sets or melts between the coldest and the warmest reading.
 * @source usp-1160 the formula and 83.144 kJ/mol, read in restatements
 * @example
 * ```ts
 * import { meanKineticTemperature } from "gelwright/stability";
 * const readings = [
 *   { temperature: 20, duration: 7200 },
 *   { temperature: 2, duration: 14400 },
 *   { temperature: 25, duration: 3600 },
 * ];
 * meanKineticTemperature({ readings }).toFixed(1); // => "15.7"
 * ```
 */
export function meanKineticTemperature(input: {
  readonly readings: readonly TemperatureReading[];
  readonly activationEnergy?: number;
  readonly transitions?: readonly Transition[];
}): number {
  const {
    readings,
    activationEnergy = activationEnergyUsual,
    transitions,
  } = record(input, "input", known.meanKineticTemperature);
  const steepness = positive(activationEnergy, "activationEnergy") / gasConstant;
  const stretches = list(readings, "readings", 1).map((reading, i) => {
    const at = `readings[${i}]`;
    const { temperature: warmth, duration } = record(reading, at, known.temperatureReading);
    if ((duration === undefined) !== (readings[0]?.duration === undefined))
      refuse("input", `${at}.duration`, duration, "a duration for every reading or for none");
    return {
      warmth: temperature(warmth, `${at}.temperature`),
      duration: duration === undefined ? 1 : positive(duration, `${at}.duration`),
    };
  });
  const warmest = maxOf(stretches.map(({ warmth }) => warmth));
  const coldest = minOf(stretches.map(({ warmth }) => warmth));
  const inTheWay = between(readTransitions(transitions), coldest, warmest)[0];
  if (inTheWay)
    refuse("range", "readings", `${inTheWay.name} between ${coldest} and ${warmest} °C`, "no transition in the range");
  const total = stretches.reduce((sum, { duration }) => sum + duration, 0);
  // Beside the warmest reading, so that no exponential underflows: the rates relative to it lie between 0 and 1.
  const rate = stretches.reduce(
    (sum, { warmth, duration }) => sum + (duration / total) * Math.exp(arrheniusExponent(steepness, warmth, warmest)),
    0,
  );
  const inverse = 1 / (warmest + kelvin) - Math.log(rate) / steepness;
  return result(1 / inverse - kelvin, "mean kinetic temperature");
}
