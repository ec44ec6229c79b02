import { fraction, list, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** A point of an oscillation with growing amplitude, at one frequency. */
export interface SweepReading {
  /** Amplitude of the shear stress [Pa], above 0. */
  readonly stress: number;
  /** Storage modulus G′ [Pa], above 0. */
  readonly storageModulus: number;
  /** Loss modulus G″ [Pa], above 0. */
  readonly lossModulus: number;
}

/** Where `above` falls to 0 for the first time, between two readings on a logarithmic axis of stress. */
function firstFall(readings: readonly SweepReading[], above: (reading: SweepReading) => number, what: string): number {
  const at = readings.findIndex((reading) => above(reading) <= 0);
  const over = readings[at];
  if (at === 0)
    return refuse("unreachable", "points", `${what} passed at the first reading`, "readings at lower stresses");
  if (!over) return refuse("unreachable", "points", `${what} not reached`, "readings at higher stresses");
  const under = readings[at - 1] as SweepReading;
  const along = above(under) / (above(under) - above(over));
  return result(under.stress * (over.stress / under.stress) ** along, what);
}

/**
 * The two yield stresses of an amplitude sweep: where the gel begins to give, and where it flows.
 *
 * $$G'(\tau_\mathrm{give}) = (1 - \varepsilon)\,G'_0 \qquad G'(\tau_\mathrm{flow}) = G''(\tau_\mathrm{flow})$$
 *
 * G′₀ is the modulus of the reading at the lowest stress. Between readings the logarithms of the moduli are taken as
 * linear in the logarithm of the stress. Both figures move with frequency and with the time at each amplitude.
 *
 * @param input.points - The readings, in any order: stress amplitude, storage and loss modulus [Pa], all above 0; at
 *   least two, each at a stress of its own.
 * @param input.drop - ε, the loss of modulus that counts as giving way, between 0 and 1; by default 0.05, which is
 *   common practice, no source.
 * @returns The end of the linear range and the flow point [Pa].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the readings stop short.
 * @source common practice, no source
 * @example
 * ```ts
 * import { sweepYieldStresses } from "gelwright/rheology";
 * const points = [
 *   { stress: 1, storageModulus: 400, lossModulus: 40 },
 *   { stress: 10, storageModulus: 380, lossModulus: 60 },
 *   { stress: 100, storageModulus: 20, lossModulus: 20 },
 * ];
 * sweepYieldStresses({ points }); // => { yieldPoint: 10, flowPoint: 100 }
 * ```
 */
export function sweepYieldStresses(input: { readonly points: readonly SweepReading[]; readonly drop?: number }): {
  readonly yieldPoint: number;
  readonly flowPoint: number;
} {
  const { points, drop = 0.05 } = record(input, "input", known.sweepYieldStresses);
  const kept = 1 - fraction(drop, "drop");
  if (!(kept > 0 && kept < 1)) refuse("input", "drop", drop, "between 0 and 1");
  const readings = list(points, "points", 2)
    .map((point, i) => {
      const { stress, storageModulus, lossModulus } = record(point, `points[${i}]`);
      return {
        stress: positive(stress, `points[${i}].stress`),
        storageModulus: positive(storageModulus, `points[${i}].storageModulus`),
        lossModulus: positive(lossModulus, `points[${i}].lossModulus`),
      };
    })
    .sort((one, other) => one.stress - other.stress);
  const twice = readings.find(({ stress }, i) => stress === readings[i + 1]?.stress);
  if (twice) refuse("input", "points", `two readings at ${twice.stress} Pa`, "one reading at each stress");
  const plateau = (readings[0] as (typeof readings)[number]).storageModulus;
  return {
    yieldPoint: firstFall(
      readings,
      ({ storageModulus }) => Math.log(storageModulus / plateau / kept),
      "end of the linear range",
    ),
    flowPoint: firstFall(
      readings,
      ({ storageModulus, lossModulus }) => Math.log(storageModulus / lossModulus),
      "flow point",
    ),
  };
}
