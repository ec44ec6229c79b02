import { fraction, positive, record, result } from "../guards.js";
import * as known from "./known.js";

/** Droplets of oil and what covers them. */
export interface Coverage {
  /** Surfactant adsorbed on a full interface [kg/m²], above 0; 1e-6 to 3e-6 is usual: common practice, no source. */
  readonly adsorption: number;
  /** Mass fraction of active matter in the surfactant as supplied, above 0; default 1. */
  readonly strength?: number;
}

/** Surfactant that an interface needs. */
export interface SurfactantNeeded {
  /** As active matter [kg]. */
  readonly active: number;
  /** As supplied [kg]. */
  readonly asSupplied: number;
}

function activeShare(strength: number | undefined): number {
  return positive(fraction(strength ?? 1, "strength"), "strength");
}

/**
 * The surface of all droplets.
 *
 * $$A = \frac{6\,V_\mathrm{oil}}{d_{32}}$$
 *
 * @param input.volumeOil - Volume of oil [m³], above 0.
 * @param input.diameter - Sauter mean diameter of the droplets, d₃₂ [m], above 0.
 * @returns The interface [m²].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition of the Sauter mean diameter
 * @example
 * ```ts
 * import { interfaceOfDroplets } from "gelwright/gel";
 * interfaceOfDroplets({ volumeOil: 0.001, diameter: 5e-6 }); // => 1200
 * ```
 */
export function interfaceOfDroplets(input: { readonly volumeOil: number; readonly diameter: number }): number {
  const { volumeOil, diameter } = record(input, "input", known.interfaceOfDroplets);
  return result((6 * positive(volumeOil, "volumeOil")) / positive(diameter, "diameter"), "interface");
}

/**
 * The surfactant that covers all droplets once.
 *
 * $$m_\mathrm{active} = \Gamma\,\frac{6\,V_\mathrm{oil}}{d_{32}} \qquad m_\mathrm{supplied} = \frac{m_\mathrm{active}}{w}$$
 *
 * Surfactant that stays dissolved or in micelles is extra.
 *
 * @param input.volumeOil - Volume of oil [m³], above 0.
 * @param input.diameter - Sauter mean diameter of the droplets, d₃₂ [m], above 0.
 * @param input.adsorption - Active matter adsorbed on a full interface [kg/m²], above 0.
 * @param input.strength - Mass fraction of active matter in the surfactant as supplied, above 0; default 1.
 * @returns Active matter, and surfactant as supplied [kg].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { surfactantForDroplets } from "gelwright/gel";
 * surfactantForDroplets({ volumeOil: 0.001, diameter: 5e-6, adsorption: 2e-6, strength: 0.5 }).asSupplied; // => 0.0048
 * ```
 */
export function surfactantForDroplets(
  input: Coverage & { readonly volumeOil: number; readonly diameter: number },
): SurfactantNeeded {
  const { adsorption, strength, ...droplets } = record(input, "input", known.surfactantForDroplets);
  const active = result(interfaceOfDroplets(droplets) * positive(adsorption, "adsorption"), "surfactant");
  return { active, asSupplied: result(active / activeShare(strength), "surfactant") };
}

/**
 * The smallest droplet that the available surfactant can cover: finer ones coalesce.
 *
 * $$d_{32} = \frac{6\,\Gamma\,V_\mathrm{oil}}{w\,m}$$
 *
 * @param input.volumeOil - Volume of oil [m³], above 0.
 * @param input.massSurfactant - Surfactant as supplied that is free to adsorb [kg], above 0.
 * @param input.adsorption - Active matter adsorbed on a full interface [kg/m²], above 0.
 * @param input.strength - Mass fraction of active matter in the surfactant as supplied, above 0; default 1.
 * @returns The Sauter mean diameter [m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { smallestDroplet } from "gelwright/gel";
 * smallestDroplet({ volumeOil: 0.001, massSurfactant: 0.0048, adsorption: 2e-6, strength: 0.5 }); // => 5e-6
 * ```
 */
export function smallestDroplet(
  input: Coverage & { readonly volumeOil: number; readonly massSurfactant: number },
): number {
  const { volumeOil, massSurfactant, adsorption, strength } = record(input, "input", known.smallestDroplet);
  const active = activeShare(strength) * positive(massSurfactant, "massSurfactant");
  const covered = positive(adsorption, "adsorption") * positive(volumeOil, "volumeOil");
  return result((6 * covered) / positive(active, "massSurfactant times strength"), "diameter");
}
