import { positive, record, refuse, result, wholeNumber } from "../guards.js";
import type { Band } from "../laws/band.js";
import * as known from "./known.js";
import { impellerDiameter, type VesselSize, vesselDiameter } from "./sizes.js";

/** The sizes of a helical ribbon. */
export interface RibbonSize {
  /** Outer diameter of the ribbon [m], above 0. */
  readonly diameter: number;
  /** Number of ribbons around the shaft: 1 or 2. */
  readonly starts: number;
  /** Height of the ribbon [m], above 0; default its diameter. */
  readonly height?: number;
  /** Rise of a ribbon in one turn [m], above 0; default its diameter. */
  readonly pitch?: number;
  /** Width of the ribbon along the radius [m], above 0; default a tenth of the diameter. */
  readonly ribbonWidth?: number;
}

/** The correlation fits its measurements more closely; the one sheet that gives a ribbon's constant is far from it. */
export const ribbonPowerBand: Band = {
  by: "factor",
  min: 0.85,
  max: 1.15,
  basis: "judgement",
  sources: ["rieger-1988"],
};

/**
 * The power constant of a helical ribbon in creeping flow, from its shape and its gap to the wall.
 *
 * $$K = \mathrm{Po}\,\mathrm{Re} = 82.8\,\frac hD \left(\frac cD\right)^{-0.38} \left(\frac pD\right)^{-0.35} \left(\frac wD\right)^{0.20} n^{0.78} \qquad c = \frac{T - D}{2}$$
 *
 * One ribbon and two differ by a factor of 1.7, and so do the revolutions to blend (`ribbonRevolutions`) by 2.5. With
 * height and pitch of one diameter and a width of a tenth, one ribbon has 157 to 208 and two have 269 to 357 where the
 * diameter is 0.90 to 0.95 of the vessel's. The limits of its shapes were not read; those of the gap are ours.
 *
 * @param input.impeller - The ribbon: its diameter [m] and number of starts, and what is known of height, pitch and
 *   width [m]; default one diameter for the first two, a tenth of it for the width.
 * @param input.vessel - The vessel: its inner diameter [m]; the ribbon has 0.8 to 0.99 of it.
 * @returns Power number times Reynolds number in creeping flow, up to Re 10 or so.
 * @throws CalculationError `input` where an argument is out of range; `range` where the gap is.
 * @source rieger-1988 as restated in fluids-2024, mixing.Kp_helical_ribbon_Rieger
 * @example
 * ```ts
 * import { ribbonPowerConstant } from "gelwright/mixing";
 * const constant = (starts: number) => ribbonPowerConstant({ impeller: { diameter: 1.9, starts }, vessel: { diameter: 2 } });
 * [constant(1), constant(2)].map((one) => one.toFixed(0)); // => ["208", "357"]
 * ```
 */
export function ribbonPowerConstant(input: { readonly impeller: RibbonSize; readonly vessel: VesselSize }): number {
  const { impeller, vessel } = record(input, "input", known.ribbonPowerConstant);
  return ribbonConstant(impeller, vesselDiameter(vessel), "impeller");
}

/** As `ribbonPowerConstant`, for an impeller that faults call `path`. */
export function ribbonConstant(ribbon: RibbonSize, around: number, path: string): number {
  const diameter = impellerDiameter(ribbon, path);
  const { starts, height = diameter, pitch = diameter, ribbonWidth = diameter / 10 } = ribbon;
  const share = diameter / around;
  if (!(share >= 0.8 && share <= 0.99))
    refuse("range", `${path}.diameter`, diameter, `0.8 to 0.99 of the diameter of the vessel, ${around} m`);
  const constant =
    82.8 *
    (positive(height, `${path}.height`) / diameter) *
    ((1 / share - 1) / 2) ** -0.38 *
    (positive(pitch, `${path}.pitch`) / diameter) ** -0.35 *
    (positive(ribbonWidth, `${path}.ribbonWidth`) / diameter) ** 0.2 *
    wholeNumber(starts, `${path}.starts`, 1, 2) ** 0.78;
  return result(constant, "power constant");
}
