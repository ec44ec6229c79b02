import { fraction, positive, record, result } from "../guards.js";
import * as known from "./known.js";

/**
 * The share of the volume that equal spheres fill at their closest, π/(3√2) or about 0.7405.
 *
 * Droplets of one size touch and begin to deform near here (disordered ones sooner, near 0.64), and from here
 * on an emulsion of oil in gel former has strength. It is not the fraction at which the emulsion inverts: that
 * maximum oil fraction is set by surfactant and by the rate of addition, and comes from trials.
 */
export const volumeFractionClosestPacking: number = Math.PI / (3 * Math.SQRT2);

/** The two phases of a gel of oil in gel former, and how dense they are. */
export interface PhaseDensities {
  /** Density of the oil [kg/m³], above 0. */
  readonly densityOil: number;
  /** Density of the gel former, the outer phase with all that is dissolved in it [kg/m³], above 0. */
  readonly densityGelFormer: number;
}

/**
 * The share of the volume that is oil, from the share of the mass: 85 % by mass is not 0.85 by volume.
 *
 * $$\varphi = \frac{w/\rho_\mathrm{oil}}{w/\rho_\mathrm{oil} + (1 - w)/\rho_\mathrm{gel\,former}}$$
 *
 * The volumes of the two phases add up: they do not dissolve in one another, and no air is stirred in.
 *
 * @param input.massFractionOil - Mass fraction of oil in gel former and oil together, 0 to 1.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.densityGelFormer - Density of the gel former at the same temperature [kg/m³], above 0.
 * @returns The volume fraction of oil, 0 to 1.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { volumeFractionOfOil } from "gelwright/gel";
 * volumeFractionOfOil({ massFractionOil: 0.8, densityOil: 915, densityGelFormer: 1250 }); // => 0.8453085376162299
 * ```
 */
export function volumeFractionOfOil(input: PhaseDensities & { readonly massFractionOil: number }): number {
  const { massFractionOil, densityOil, densityGelFormer } = record(input, "input", known.volumeFractionOfOil);
  const oil = fraction(massFractionOil, "massFractionOil") / positive(densityOil, "densityOil");
  const gelFormer = (1 - massFractionOil) / positive(densityGelFormer, "densityGelFormer");
  return result(oil / (oil + gelFormer), "volume fraction of oil");
}

/**
 * The share of the mass that is oil, from the share of the volume; the inverse of `volumeFractionOfOil`.
 *
 * $$w = \frac{\varphi\,\rho_\mathrm{oil}}{\varphi\,\rho_\mathrm{oil} + (1 - \varphi)\,\rho_\mathrm{gel\,former}}$$
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0 to 1.
 * @param input.densityOil - Density of the oil [kg/m³], above 0.
 * @param input.densityGelFormer - Density of the gel former at the same temperature [kg/m³], above 0.
 * @returns The mass fraction of oil in gel former and oil together, 0 to 1.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { massFractionOfOil } from "gelwright/gel";
 * massFractionOfOil({ volumeFractionOil: 0.85, densityOil: 915, densityGelFormer: 1250 }); // => 0.8057498057498057
 * ```
 */
export function massFractionOfOil(input: PhaseDensities & { readonly volumeFractionOil: number }): number {
  const { volumeFractionOil, densityOil, densityGelFormer } = record(input, "input", known.massFractionOfOil);
  const oil = fraction(volumeFractionOil, "volumeFractionOil") * positive(densityOil, "densityOil");
  const gelFormer = (1 - volumeFractionOil) * positive(densityGelFormer, "densityGelFormer");
  return result(oil / (oil + gelFormer), "mass fraction of oil");
}
