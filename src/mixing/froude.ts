import { positive, record, result } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";
import { diameterAround, type ImpellerSize, impellerDiameter, type VesselSize } from "./sizes.js";

/**
 * The Froude number of an impeller: centrifugal force over gravity, which keeps the surface flat.
 *
 * $$\mathrm{Fr} = \frac{N^2 D}{g}$$
 *
 * It matters where there are no baffles and Re is above 300: below that no vortex forms (ludwig-1995). A limit that was
 * seen at the bench holds for the same shape at the plant, so that speed there goes as $D^{-1/2}$.
 *
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0.
 * @returns Froude number.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { impellerFroude } from "gelwright/mixing";
 * impellerFroude({ speed: 5, impeller: { diameter: 0.1 } }); // => 0.25492905324448207
 * ```
 */
export function impellerFroude(input: { readonly speed: number; readonly impeller: ImpellerSize }): number {
  const { speed, impeller } = record(input, "input", known.impellerFroude);
  return result((positive(speed, "speed") ** 2 * impellerDiameter(impeller)) / gravity, "Froude number");
}

/**
 * The deepest vortex that an impeller in the middle of a vessel without baffles could make, from the rim to its foot.
 *
 * $$h = \pi^2\,\mathrm{Fr}\,D\left(1 - \frac{D^2}{2\,T^2}\right)$$
 *
 * It assumes a core as wide as the impeller that rotates with it like a solid, and a free vortex around it. Real
 * vortices are shallower: the batch lags behind the blades, the more so the thicker it is. If the foot stays above the
 * impeller by this bound, no air is drawn down the middle; if it reaches the impeller, air may or may not be drawn in.
 * Air that enters at a rough surface, or with anything poured in, is not covered.
 *
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0.
 * @param input.vessel - The vessel: its inner diameter [m], at least that of the impeller.
 * @returns Depth at most [m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source nagata-1975 from memory for a forced vortex within a free one; its depth derived here
 * @example
 * ```ts
 * import { vortexDepthMax } from "gelwright/mixing";
 * vortexDepthMax({ speed: 2, impeller: { diameter: 0.2 }, vessel: { diameter: 0.4 } }); // => 0.1408987387285679
 * ```
 */
export function vortexDepthMax(input: {
  readonly speed: number;
  readonly impeller: ImpellerSize;
  readonly vessel: VesselSize;
}): number {
  const { speed, impeller, vessel } = record(input, "input", known.vortexDepthMax);
  const froude = impellerFroude({ speed, impeller });
  const { diameter } = impeller;
  const share = diameter / diameterAround(vessel, diameter);
  return result(Math.PI ** 2 * froude * diameter * (1 - (share * share) / 2), "depth of the vortex");
}
