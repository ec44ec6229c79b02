import { fraction, list, positive, record, result } from "../guards.js";
import * as known from "./known.js";
import { type CompiledOilLaw, compileOilLaw, type OilLaw } from "./oil-law.js";

/** How long the gel takes with each addition. */
export interface Incorporation {
  /** Time until an addition is taken up at the bench [s], against the oil fraction once it is in. */
  readonly incorporationTime: OilLaw;
  /** Factor on the bench's times, as `incorporationTimeScale` gives it, above 0, or against the oil fraction; default 1. */
  readonly incorporationTimeFactor?: number | OilLaw;
  /** The most that the pump or the hand delivers [kg/s], above 0; unless given, an addition goes in at once. */
  readonly rateMax?: number;
}

/** When one addition goes in, and until when it is waited for [s]. */
export interface AdditionTime {
  /** It begins to go in [s]. */
  readonly timeStart: number;
  /** All of it is in [s]. */
  readonly timeIn: number;
  /** It is taken up, and the next may follow [s]. */
  readonly timeEnd: number;
}

/**
 * When each addition goes in: poured no faster than the pump allows, followed by the incorporation time.
 *
 * $$t_i = t_{i-1} + \frac{m_i}{\dot m} + k(\varphi_i)\,t_\mathrm{inc}(\varphi_i)$$
 *
 * Times are for planning. At the vessel the next addition follows when the last is uniform and glossy, and not before.
 *
 * @param input.additions - Additions as `additionSchedule` gives them: mass [kg] and the oil fraction after each.
 * @param input.incorporationTime - Time that the bench measured [s] against the oil fraction after the addition.
 * @param input.incorporationTimeFactor - Factor on it, above 0, or a law of it against the oil fraction; default 1.
 * @param input.rateMax - Maximum rate of the pump [kg/s], above 0; default at once.
 * @returns The three times of each addition, since the first began [s].
 * @throws CalculationError `input` where an argument is out of range; `range` where the law does not reach.
 * @source definition
 * @example
 * ```ts
 * import { additionTimes } from "gelwright/mixing";
 * const times = additionTimes({
 *   additions: [{ mass: 1, volumeFractionOil: 0.1 }, { mass: 1.2, volumeFractionOil: 0.2 }],
 *   incorporationTime: { law: "constant", value: 90 },
 *   incorporationTimeFactor: 2,
 *   rateMax: 0.1,
 * });
 * times.map((addition) => addition.timeEnd); // => [190, 382]
 * ```
 */
export function additionTimes(
  input: Incorporation & {
    readonly additions: readonly {
      /** Oil of the addition [kg]. */
      readonly mass: number;
      /** Volume fraction of oil after it, 0 to 1. */
      readonly volumeFractionOil: number;
    }[];
  },
): readonly AdditionTime[] {
  const { additions, rateMax } = record(input, "input", known.additionTimes);
  const { at } = compileIncorporationTime(input);
  const rate = rateMax === undefined ? Number.POSITIVE_INFINITY : positive(rateMax, "rateMax");
  let time = 0;
  return list(additions, "additions", 1).map((addition, i) => {
    const path = `additions[${i}]`;
    const mass = positive(record(addition, path).mass, `${path}.mass`);
    const oil = fraction(addition.volumeFractionOil, `${path}.volumeFractionOil`);
    const timeStart = time;
    const timeIn = timeStart + mass / rate;
    time = result(timeIn + at(oil), "time");
    return { timeStart, timeIn, timeEnd: time };
  });
}

/** The bench's times with their factor, checked once. */
export function compileIncorporationTime({
  incorporationTime,
  incorporationTimeFactor = 1,
}: Incorporation): CompiledOilLaw {
  const taken = compileOilLaw(incorporationTime, "incorporationTime");
  const factor = compileOilLaw(
    typeof incorporationTimeFactor === "object"
      ? incorporationTimeFactor
      : { law: "constant", value: positive(incorporationTimeFactor, "incorporationTimeFactor") },
    "incorporationTimeFactor",
  );
  return { at: (oil) => factor.at(oil) * taken.at(oil), corners: [...taken.corners, ...factor.corners] };
}
