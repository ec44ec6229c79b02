import { notNegative, positive, record, result } from "../guards.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";
import { type CompiledBottom, compileBottom, type VesselShape } from "./vessel-bottom.js";

function volumeTo({ diameter, depth, below }: CompiledBottom, level: number): number {
  if (level <= depth) return below(level);
  return below(depth) + (Math.PI / 4) * diameter * diameter * (level - depth);
}

/**
 * How much an upright round vessel holds up to a level.
 *
 * $$V = V_\mathrm{bottom} + \frac\pi4 T^2 (h - h_\mathrm{bottom})$$
 *
 * A flat plate, a cone, half an ellipsoid, or a dish (part of a sphere that is rounded into the wall). The volume of
 * shaft, impeller and baffles is left out.
 *
 * @param input.vessel - Inner diameter [m] and bottom, as plain data.
 * @param input.level - Above the lowest point [m], 0 or more.
 * @returns Volume [m³].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { volumeAtLevel } from "gelwright/mixing";
 * const vessel = { diameter: 0.6, bottom: { shape: "dished" } } as const;
 * volumeAtLevel({ vessel, level: 0.5 }); // => 0.12987530151556925
 * ```
 */
export function volumeAtLevel(input: { readonly vessel: VesselShape; readonly level: number }): number {
  const { vessel, level } = record(input, "input", known.volumeAtLevel);
  return result(volumeTo(compileBottom(vessel, "vessel"), notNegative(level, "level")), "volume");
}

/**
 * The level to which a volume fills an upright round vessel.
 *
 * $$V(h) = V$$
 *
 * @param input.vessel - Inner diameter [m] and bottom, as plain data.
 * @param input.volume - Volume of the filling [m³], 0 or more.
 * @returns Level above the lowest point [m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { levelOfVolume } from "gelwright/mixing";
 * levelOfVolume({ vessel: { diameter: 0.5 }, volume: 0.1 }); // => 0.5092958178940651
 * ```
 */
export function levelOfVolume(input: { readonly vessel: VesselShape; readonly volume: number }): number {
  const { vessel, volume } = record(input, "input", known.levelOfVolume);
  const bottom = compileBottom(vessel, "vessel");
  const filled = notNegative(volume, "volume");
  const inBottom = bottom.below(bottom.depth);
  if (filled >= inBottom)
    return result(bottom.depth + (filled - inBottom) / ((Math.PI / 4) * bottom.diameter * bottom.diameter), "level");
  if (filled === 0) return 0;
  const over = (share: number): number => bottom.below(share * bottom.depth) / inBottom - filled / inBottom;
  return result(bottom.depth * root(over, 0, 1, "level", 1e-15), "level");
}

/**
 * The smallest volume that a vessel must hold for its impeller to be covered.
 *
 * $$V_\mathrm{min} = V(h_\mathrm{top} + h_\mathrm{cover})$$
 *
 * An impeller that is not covered beats air in. How much has to stand above it is up to the caller: half of its
 * diameter for a propeller or pitched blades that are to pump, common practice, no source; an anchor works half
 * covered too.
 *
 * @param input.vessel - Inner diameter [m] and bottom, as plain data.
 * @param input.heightTop - Of the impeller's upper edge above the lowest point of the vessel [m], above 0.
 * @param input.cover - What is to stand above that [m], 0 or more.
 * @returns Volume [m³].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { minimumWorkingVolume } from "gelwright/mixing";
 * minimumWorkingVolume({ vessel: { diameter: 0.5 }, heightTop: 0.15, cover: 0.1 }); // => 0.04908738521234052
 * ```
 */
export function minimumWorkingVolume(input: {
  readonly vessel: VesselShape;
  readonly heightTop: number;
  readonly cover: number;
}): number {
  const { vessel, heightTop, cover } = record(input, "input", known.minimumWorkingVolume);
  return volumeAtLevel({ vessel, level: positive(heightTop, "heightTop") + notNegative(cover, "cover") });
}
