import { positive, record, result, temperature } from "../guards.js";
import type { Interval } from "../laws/interval.js";
import { through } from "./interval.js";
import { type AgeingKinetics, accelerationOf } from "./kinetics.js";
import * as known from "./known.js";
import { between, readTransitions, type Transition } from "./transition.js";

/** What has to hold for storage at one temperature to stand for storage at another. */
export type AgeingAssumption =
  /** One chemical reaction sets the pace, at both temperatures the same one. */
  | "one-mechanism"
  /** Its activation energy does not change between the two temperatures. */
  | "constant-activation-energy"
  /** A factor for each 10 K holds near the temperatures at which it was measured only. */
  | "factor-holds-from-test-to-reference"
  /** Air, water, light and pack are the same at both temperatures. */
  | "same-air-water-light"
  /** It says nothing of bleed, clarity, set or settling. */
  | "chemical-change-only";

/** Storage at a temperature in terms of storage at another, or the reason why nobody can say. */
export type EquivalentStorage =
  | {
      readonly known: true;
      /** Time at the reference temperature that does the same [s]. */
      readonly duration: Interval;
      /** How many times faster it goes than at the reference. */
      readonly acceleration: Interval;
      readonly assumptions: readonly AgeingAssumption[];
    }
  | {
      readonly known: false;
      /** The product is another material at one of the two temperatures. */
      readonly code: "transition-between";
      /** Those in the way. */
      readonly transitions: readonly Transition[];
    };

/** Storage at one temperature, held against another. */
export interface ComparedStorage {
  /** Temperature of the storage [°C]. */
  readonly temperature: number;
  /** Where the time is wanted [°C]. */
  readonly temperatureReference: number;
  /** How much faster chemical change goes where it is warmer, measured or assumed. */
  readonly kinetics: AgeingKinetics;
  /** Gel points and melting ranges of the product; none if it has none. */
  readonly transitions?: readonly Transition[];
}

/** The answer, where `durationBy` makes a time out of the acceleration. */
function storage(input: ComparedStorage, durationBy: (acceleration: number) => number): EquivalentStorage {
  const { temperature: warmth, temperatureReference, kinetics, transitions } = record(input, "input");
  const hot = temperature(warmth, "temperature");
  const reference = temperature(temperatureReference, "temperatureReference");
  const acceleration = accelerationOf(kinetics)(hot, reference);
  const inTheWay = between(readTransitions(transitions), hot, reference);
  if (inTheWay.length > 0) return { known: false, code: "transition-between", transitions: inTheWay };
  return {
    known: true,
    duration: through(acceleration, (own) => result(durationBy(own), "duration")),
    acceleration,
    assumptions: [
      "one-mechanism",
      kinetics.law === "arrhenius" ? "constant-activation-energy" : "factor-holds-from-test-to-reference",
      "same-air-water-light",
      "chemical-change-only",
    ],
  };
}

/**
 * For how long at the shelf a storage at another temperature stands: 12 weeks at 40 °C, say, in weeks at 25 °C.
 *
 * $$t_\mathrm{ref} = t\,Q_{10}^{(T - T_\mathrm{ref})/10} \qquad t_\mathrm{ref} = t\,\exp\left[-\frac{E_a}{R}\left(\frac1T - \frac1{T_\mathrm{ref}}\right)\right]$$
 *
 * It is an estimate of one chemical change, no proof of shelf life, and says nothing of bleed, clarity, set or settling.
 * If the product sets or melts between the two temperatures the answer is `known: false`. State the kinetics with their
 * bounds: from a test near 110 °C down to room temperature the two laws part by several times.
 *
 * @param input.temperature - Temperature of the storage [°C].
 * @param input.duration - How long it was or will be stored there [s], above 0.
 * @param input.temperatureReference - Temperature at which the time is wanted [°C].
 * @param input.kinetics - A factor for each 10 K, or an activation energy [J/mol], each with bounds if there are any.
 * @param input.transitions - Gel points and melting ranges of the product [°C], if it has any.
 * @returns The time at the reference [s] with bounds and assumptions, or what lies between the two temperatures.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source openstax-chemistry section 12.5 for the form by an activation energy, from memory; q10 by definition
 * @example
 * ```ts
 * import { equivalentStorage } from "gelwright/stability";
 * const day = 86400;
 * const kinetics = { law: "q10", q10: { min: 1.8, value: 2, max: 2.5 } } as const;
 * const storage = { temperature: 45, duration: 90 * day, temperatureReference: 25, kinetics };
 * const shelf = equivalentStorage(storage);
 * shelf.known && shelf.duration.value / day; // => 360
 * const wax = { name: "wax melts", temperatureMin: 38, temperatureMax: 46 };
 * equivalentStorage({ ...storage, transitions: [wax] }).known; // => false
 * ```
 */
export function equivalentStorage(input: ComparedStorage & { readonly duration: number }): EquivalentStorage {
  const time = positive(record(input, "input", known.equivalentStorage).duration, "duration");
  return storage(input, (acceleration) => time * acceleration);
}

/**
 * How long to store at a test temperature so that it stands for a wanted time at the reference: `equivalentStorage` solved for the test.
 *
 * $$t = t_\mathrm{ref} / a \qquad a = Q_{10}^{(T - T_\mathrm{ref})/10}\ \text{or}\ \exp\left[-\frac{E_a}{R}\left(\frac1T - \frac1{T_\mathrm{ref}}\right)\right]$$
 *
 * @param input.temperature - Temperature of the test [°C].
 * @param input.durationReference - Time at the reference temperature that it is to stand for [s], above 0.
 * @param input.temperatureReference - The reference temperature [°C].
 * @param input.kinetics - A factor for each 10 K, or an activation energy [J/mol], each with bounds if there are any.
 * @param input.transitions - Gel points and melting ranges of the product [°C], if it has any.
 * @returns The time of the test [s] in `duration`, with bounds and assumptions, or what lies between the two temperatures.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source openstax-chemistry section 12.5 for the form by an activation energy, from memory; q10 by definition
 * @example
 * ```ts
 * import { storageFor } from "gelwright/stability";
 * const year = 365 * 86400;
 * const kinetics = { law: "q10", q10: 2 } as const;
 * const test = storageFor({ temperature: 55, durationReference: 2 * year, temperatureReference: 25, kinetics });
 * test.known && test.duration.value / 86400; // => 91.25
 * ```
 */
export function storageFor(input: ComparedStorage & { readonly durationReference: number }): EquivalentStorage {
  const time = positive(record(input, "input", known.storageFor).durationReference, "durationReference");
  return storage(input, (acceleration) => time / acceleration);
}
