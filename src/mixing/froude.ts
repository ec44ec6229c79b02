import { positive, record, result } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";
import { diameterAround, type ImpellerSize, impellerDiameter, type VesselSize } from "./sizes.js";

/**
 * The Froude number of an impeller: how hard it throws the batch outwards, over the weight that holds the surface flat.
 *
 * $$\mathrm{Fr} = \frac{N^2 D}{g}$$
 *
 * It matters where there are no baffles and Re is above 300: below that no vortex forms (ludwig-1995). A limit that was
 * seen at the bench holds for the same shape at the plant, so that speed there goes as $D^{-1/2}$.
 *
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.impeller - The impeller, of which the diameter is asked [m], above 0.
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
 * That is a core as wide as the impeller, turning with it as one piece, and the rest turning freely around it. Real
 * vortices are shallower: the batch lags behind the blades, the more so the thicker it is. So a foot that stays above
 * the impeller by this bound draws no air down the middle; one that reaches it may or may not. Air also comes in at a
 * ragged surface, and with anything poured in: of that no number says anything.
 *
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.impeller - The impeller, of which the diameter is asked [m], above 0.
 * @param input.vessel - The vessel, of which the inner diameter is asked [m], at least that of the impeller.
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
