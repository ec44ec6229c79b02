import { record, refuse, result } from "../guards.js";
import * as known from "./known.js";
import { checked, distanceBetween, type SolubilityParameters, solubilityOfBlend, straight } from "./solubility.js";

/** The blend of two liquids that comes nearest to a target. */
export interface NearestBlend {
  /** Volume fraction of the first liquid, 0 to 1. */
  readonly volumeFractionFirst: number;
  /** Parameters of the blend [MPa^½]. */
  readonly parameters: SolubilityParameters;
  /** Its solubility-parameter distance to the target [MPa^½]. */
  readonly distance: number;
}

/**
 * The blend of two liquids whose solubility parameters come nearest to a target.
 *
 * $$\varphi_1 = \frac{(\mathbf t - \mathbf d_2) \cdot (\mathbf d_1 - \mathbf d_2)}{|\mathbf d_1 - \mathbf d_2|^2} \quad \text{with} \quad \mathbf d = (2\delta_\mathrm{D},\ \delta_\mathrm{P},\ \delta_\mathrm{H})$$
 *
 * All blends lie on the straight line between the two liquids. Where the line comes nearest beyond one of its ends, that
 * pure liquid is the answer, and the fraction is 0 or 1.
 *
 * @param input.first - Parameters of the first liquid [MPa^½].
 * @param input.second - Parameters of the second liquid [MPa^½], other than the first.
 * @param input.target - Parameters to come near to [MPa^½].
 * @returns The volume fraction of the first, the blend's parameters and its distance to the target [MPa^½].
 * @throws CalculationError `input` where an argument is out of range or both liquids are alike.
 * @source hansen-2007, the distance read second-hand; the foot of a perpendicular
 * @example
 * ```ts
 * import { nearestBlend } from "gelwright/oils";
 * const first = { dispersion: 18, polar: 1.4, hydrogenBonding: 2 };
 * const second = { dispersion: 15.8, polar: 8.8, hydrogenBonding: 19.4 };
 * const target = { dispersion: 15.8, polar: 5.3, hydrogenBonding: 7.2 };
 * nearestBlend({ first, second, target }).volumeFractionFirst; // => 0.6319783485459562
 * ```
 */
export function nearestBlend(input: {
  readonly first: SolubilityParameters;
  readonly second: SolubilityParameters;
  readonly target: SolubilityParameters;
}): NearestBlend {
  const { first, second, target } = record(input, "input", known.nearestBlend);
  const one = checked(first, "first");
  const other = checked(second, "second");
  const aim = checked(target, "target");
  const end = straight(other);
  const along = straight(one).map((value, axis) => value - (end[axis] as number));
  const length = Math.hypot(...along);
  if (length === 0) refuse("input", "second", "the parameters of the first", "another liquid");
  const foot = straight(aim).reduce(
    (sum, value, axis) => sum + ((value - (end[axis] as number)) / length) * ((along[axis] as number) / length),
    0,
  );
  const volumeFractionFirst = Math.min(1, Math.max(0, result(foot, "volume fraction")));
  const parts = [
    { volume: volumeFractionFirst, parameters: one },
    { volume: 1 - volumeFractionFirst, parameters: other },
  ];
  const parameters = solubilityOfBlend({ parts });
  return { volumeFractionFirst, parameters, distance: distanceBetween(parameters, aim) };
}
