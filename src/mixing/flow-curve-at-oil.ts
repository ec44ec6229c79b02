import { fraction, positive, record, refuse, result } from "../guards.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import * as known from "./known.js";
import type { OilPoint } from "./oil-law.js";
import { readingsAlongOil } from "./readings-along-oil.js";

/** What a rheometer read of a gel at a few oil fractions; each list in rising order of oil, at least two. */
export interface GelReadings {
  /** Shear rate at which all viscosities were read [1/s], above 0. */
  readonly shearRate: number;
  /** Viscosity at that shear rate [Pa·s]. */
  readonly viscosity: readonly OilPoint[];
  /** Slope of stress against shear rate on logarithmic axes, the yield stress taken off [-]; 1 for one that does not thin. */
  readonly flowIndex: readonly OilPoint[];
  /** Yield stress [Pa]; where it was not read, or with less oil than where it was, the gel counts as without. */
  readonly yieldStress?: readonly OilPoint[];
}

/**
 * The flow curve of a gel at an oil fraction, from readings at a few others, for any shear rate of a stirrer.
 *
 * $$\tau = \tau_y + K\dot\gamma^n \qquad K = \frac{\eta_r\,\dot\gamma_r - \tau_y}{\dot\gamma_r^{\,n}}$$
 *
 * The logarithms of viscosity and yield stress, and the flow index itself, are interpolated linearly. At the shear rate
 * of the readings this gives the viscosity that was read; the further away, the more it depends on the index.
 * Below the lowest oil fraction with a yield stress the gel is taken to have none; above the highest its yield stress
 * is not known.
 *
 * @param input.volumeFractionOil - Volume fraction of oil in oil and gel former, 0 to 1.
 * @param input.readings - Viscosities [Pa·s] and their one shear rate [1/s], flow indices, yield stresses [Pa].
 * @returns A flow curve, as plain data for `stirring`: Herschel and Bulkley's, or a power law
 *   where no yield stress was read, or none yet.
 * @throws CalculationError `input` where an argument is out of range, or a stress that was read lies below the yield
 *   stress; `range` where viscosity or flow index was not read, or with more oil than any yield stress.
 * @source definition; straight logarithms between readings: common practice, no source
 * @example
 * ```ts
 * import { flowCurveAtOil } from "gelwright/mixing";
 * const [less, more] = [0.7, 0.8];
 * flowCurveAtOil({
 *   volumeFractionOil: 0.75,
 *   readings: {
 *     shearRate: 16,
 *     viscosity: [{ volumeFractionOil: less, value: 1 }, { volumeFractionOil: more, value: 4 }],
 *     flowIndex: [{ volumeFractionOil: less, value: 0.6 }, { volumeFractionOil: more, value: 0.4 }],
 *     yieldStress: [{ volumeFractionOil: less, value: 2 }, { volumeFractionOil: more, value: 8 }],
 *   },
 * }); // => { law: "herschel-bulkley", yieldStress: 4, consistency: 7, flowIndex: 0.5 }
 * ```
 */
export function flowCurveAtOil(input: {
  readonly volumeFractionOil: number;
  readonly readings: GelReadings;
}): Extract<FlowCurve, { law: "power-law" | "herschel-bulkley" }> {
  const { volumeFractionOil, readings } = record(input, "input", known.flowCurveAtOil);
  const oil = fraction(volumeFractionOil, "volumeFractionOil");
  const { shearRate, viscosity, flowIndex, yieldStress } = record(readings, "readings", known.gelReadings);
  const rate = positive(shearRate, "readings.shearRate");
  const read = (points: readonly OilPoint[], name: keyof GelReadings, as: "logarithm" | "value"): number | undefined =>
    readingsAlongOil(points, `readings.${name}`, as)(oil);
  const needed = (value: number | undefined, name: keyof GelReadings): number =>
    value ??
    refuse("range", "volumeFractionOil", oil, `an oil fraction between the first and the last of readings.${name}`);
  const stress = rate * needed(read(viscosity, "viscosity", "logarithm"), "viscosity");
  const index = needed(read(flowIndex, "flowIndex", "value"), "flowIndex");
  const yields = yieldStress && read(yieldStress, "yieldStress", "logarithm");
  // Below the first reading it has none yet; above the last it was not measured.
  if (
    yieldStress &&
    yields === undefined &&
    oil > (yieldStress.at(-1) as (typeof yieldStress)[number]).volumeFractionOil
  )
    needed(yields, "yieldStress");
  const flowing = stress - (yields ?? 0);
  if (!(flowing > 0))
    refuse("input", "readings.yieldStress", yields, `below ${stress} Pa, the stress at the shear rate of the readings`);
  const consistency = positive(result(flowing / rate ** index, "consistency"), "consistency");
  return yields === undefined
    ? { law: "power-law", consistency, flowIndex: index }
    : { law: "herschel-bulkley", yieldStress: yields, consistency, flowIndex: index };
}
