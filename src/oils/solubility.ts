import { notNegative, positive, record, result } from "../guards.js";
import { fractionsOf, meanOf } from "./fractions.js";
import * as known from "./known.js";

/** Hansen solubility parameters at 25 °C [MPa^½]. */
export interface SolubilityParameters {
  /** Of dispersion forces [MPa^½], 0 or more. */
  readonly dispersion: number;
  /** Of polar forces [MPa^½], 0 or more. */
  readonly polar: number;
  /** Of hydrogen bonds [MPa^½], 0 or more. */
  readonly hydrogenBonding: number;
}

/** How far a liquid lies from what it should dissolve. */
export interface SolubilityDistance {
  /** Solubility-parameter distance [MPa^½]. */
  readonly distance: number;
  /** The distance over the interaction radius, where one was given; below 1 the liquid is expected to dissolve or swell it. */
  readonly ratio?: number;
}

/** The parameters, if they are ones. */
export function checked(parameters: SolubilityParameters, path: string): SolubilityParameters {
  const { dispersion, polar, hydrogenBonding } = record(parameters, path);
  notNegative(dispersion, `${path}.dispersion`);
  notNegative(polar, `${path}.polar`);
  notNegative(hydrogenBonding, `${path}.hydrogenBonding`);
  return { dispersion, polar, hydrogenBonding };
}

/** The parameters in which the distance is the ordinary one: dispersion counts double. */
export const straight = (p: SolubilityParameters): readonly [number, number, number] => [
  2 * p.dispersion,
  p.polar,
  p.hydrogenBonding,
];

/** The distance of two checked sets of parameters [MPa^½]. */
export function distanceBetween(first: SolubilityParameters, second: SolubilityParameters): number {
  const far = straight(second);
  return result(Math.hypot(...straight(first).map((value, axis) => value - (far[axis] as number))), "distance");
}

/**
 * The solubility parameters of a blend: their mean by volume.
 *
 * $$\delta_k = \sum_i \varphi_i\,\delta_{k,i}, \qquad k = \mathrm{D}, \mathrm{P}, \mathrm{H}$$
 *
 * @param input.parts - Volume [m³] or share, 0 or more, of which only the proportions count, and parameters [MPa^½] of each liquid.
 * @returns The three parameters of the blend [MPa^½].
 * @throws CalculationError `input` where an argument is out of range.
 * @source hansen-2007 from memory
 * @example
 * ```ts
 * import { solubilityOfBlend } from "gelwright/oils";
 * const toluene = { dispersion: 18, polar: 1.4, hydrogenBonding: 2 };
 * const ethanol = { dispersion: 15.8, polar: 8.8, hydrogenBonding: 19.4 };
 * solubilityOfBlend({ parts: [{ volume: 1, parameters: toluene }, { volume: 1, parameters: ethanol }] }).hydrogenBonding; // => 10.7
 * ```
 */
export function solubilityOfBlend(input: {
  readonly parts: readonly { readonly volume: number; readonly parameters: SolubilityParameters }[];
}): SolubilityParameters {
  const { parts } = record(input, "input", known.solubilityOfBlend);
  const volumes = fractionsOf(parts, "volume");
  const all = parts.map(({ parameters }, i) => checked(parameters, `parts[${i}].parameters`));
  const mean = (of: keyof SolubilityParameters) =>
    result(
      meanOf(volumes, (i) => all[i]?.[of] as number),
      of,
    );
  return { dispersion: mean("dispersion"), polar: mean("polar"), hydrogenBonding: mean("hydrogenBonding") };
}

/**
 * The solubility-parameter distance of two substances, and its ratio to the interaction radius of one of them.
 *
 * $$R_a = \sqrt{4\,(\Delta\delta_\mathrm{D})^2 + (\Delta\delta_\mathrm{P})^2 + (\Delta\delta_\mathrm{H})^2}, \qquad \mathrm{ratio} = \frac{R_a}{R_0}$$
 *
 * The interaction radius is the solute's and comes from trials in many liquids; without it a distance ranks and no more.
 *
 * @param input.first - Parameters of the one [MPa^½].
 * @param input.second - Parameters of the other [MPa^½].
 * @param input.interactionRadius - Interaction radius of the solute [MPa^½], above 0, where it is known.
 * @returns The distance [MPa^½], and its ratio to the radius where that is given.
 * @throws CalculationError `input` where an argument is out of range.
 * @source hansen-2007, the distance read second-hand
 * @example
 * ```ts
 * import { solubilityDistance } from "gelwright/oils";
 * const first = { dispersion: 15.5, polar: 10.4, hydrogenBonding: 7 };
 * const second = { dispersion: 15.8, polar: 5.3, hydrogenBonding: 7.2 };
 * solubilityDistance({ first, second }).distance; // => 5.13906606301184
 * ```
 */
export function solubilityDistance(input: {
  readonly first: SolubilityParameters;
  readonly second: SolubilityParameters;
  readonly interactionRadius?: number;
}): SolubilityDistance {
  const { first, second, interactionRadius } = record(input, "input", known.solubilityDistance);
  const distance = distanceBetween(checked(first, "first"), checked(second, "second"));
  if (interactionRadius === undefined) return { distance };
  return { distance, ratio: result(distance / positive(interactionRadius, "interactionRadius"), "ratio") };
}
