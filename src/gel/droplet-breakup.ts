import { positive, record, refuse, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import * as known from "./known.js";

/** Where simple shear stops breaking droplets, however strong it is. */
const stiffest = 4.08;
/** Below this the fit leaves the slope that Grace's curve has for thin droplets. */
const thinnest = 3e-4;

/** Oil that is sheared into droplets. */
export interface ShearedOil {
  /** Viscosity of the oil [Pa·s], above 0. */
  readonly viscosityOil: number;
  /** Shear rate [1/s], above 0. */
  readonly shearRate: number;
  /** Interfacial tension of oil against gel former, with its surfactant [N/m], above 0. */
  readonly interfacialTension: number;
}

/** The droplet size by two readings of the stress that breaks it. */
export interface DropletDiameters {
  /** With the outer phase's viscosity: right for few droplets, far too large for packed ones; absent where none breaks. */
  readonly byOuterPhase?: number;
  /** With the emulsion's own viscosity at that shear rate: for packed droplets; absent where none breaks. */
  readonly byEmulsion?: number;
}

/** How sure the critical capillary number is, and with it a droplet's diameter in shear: the fit and its restatement; packed droplets are less sure. */
export const criticalCapillaryBand: Band = {
  by: "factor",
  min: 0.85,
  max: 1.15,
  basis: "judgement",
  sources: ["de-bruijn-1989", "grace-1982"],
};

/**
 * The capillary number from which simple shear breaks a droplet, by de Bruijn's fit to Grace's curve.
 *
 * $$\log \mathrm{Ca} = -0.506 - 0.0994\,\log\lambda + 0.124\,\log^2\lambda - \frac{0.115}{\log\lambda - \log 4.08}$$
 *
 * @param input.viscosityRatio - Viscosity of the droplet over that around it, λ, 3e-4 to below 4.08.
 * @returns The critical capillary number.
 * @throws CalculationError `input` where the ratio is no number above 0; `unreachable` from 4.08 on, where shear breaks no
 *   droplet; `range` below 3e-4.
 * @source de-bruijn-1989 the constants second-hand; that the logarithms are decimal from memory
 * @source grace-1982 from memory, the curve that is fitted
 * @example
 * ```ts
 * import { criticalCapillaryNumber } from "gelwright/gel";
 * Math.round(criticalCapillaryNumber({ viscosityRatio: 1 }) * 1000); // => 481
 * ```
 */
export function criticalCapillaryNumber(input: { readonly viscosityRatio: number }): number {
  const ratio = positive(record(input, "input", known.criticalCapillaryNumber).viscosityRatio, "viscosityRatio");
  if (ratio >= stiffest)
    refuse("unreachable", "viscosityRatio", ratio, `below ${stiffest}, from where simple shear breaks no droplet`);
  if (ratio < thinnest) refuse("range", "viscosityRatio", ratio, `at least ${thinnest}`);
  const log = Math.log10(ratio);
  const distance = log - Math.log10(stiffest);
  return result(10 ** (-0.506 - 0.0994 * log + 0.124 * log * log - 0.115 / distance), "capillary number");
}

/**
 * The largest droplet that steady shear leaves whole.
 *
 * $$d = \frac{2\,\mathrm{Ca}(\lambda)\,\sigma}{\mu\,\dot\gamma} \qquad \lambda = \frac{\mu_\mathrm{oil}}{\mu}$$
 *
 * @param input.viscosityOil - Viscosity of the oil [Pa·s], above 0.
 * @param input.viscosityAround - Viscosity of what surrounds the droplet [Pa·s], above 0: the outer phase, or the emulsion.
 * @param input.shearRate - Shear rate [1/s], above 0.
 * @param input.interfacialTension - Interfacial tension [N/m], above 0.
 * @returns The diameter [m].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` or `range` as for the capillary number.
 * @source de-bruijn-1989 second-hand
 * @example
 * ```ts
 * import { largestDroplet } from "gelwright/gel";
 * Math.round(largestDroplet({ viscosityOil: 1, viscosityAround: 1, shearRate: 100, interfacialTension: 0.01 }) * 1e6); // => 96
 * ```
 */
export function largestDroplet(input: ShearedOil & { readonly viscosityAround: number }): number {
  const { viscosityOil, viscosityAround, shearRate, interfacialTension } = record(input, "input", known.largestDroplet);
  const around = positive(viscosityAround, "viscosityAround");
  const viscosityRatio = positive(viscosityOil, "viscosityOil") / around;
  const stress = around * positive(shearRate, "shearRate");
  const tension = positive(interfacialTension, "interfacialTension");
  return result((2 * criticalCapillaryNumber({ viscosityRatio }) * tension) / stress, "diameter");
}

/**
 * Droplet size from shear, with the outer phase's viscosity and with the emulsion's own, side by side.
 *
 * $$d = \frac{2\,\mathrm{Ca}(\lambda)\,\sigma}{\mu\,\dot\gamma}$$
 *
 * Jansen and others found up to 70 % by volume that a droplet breaks as if the whole emulsion were the fluid around it: so
 * stress and viscosity ratio both take the emulsion's viscosity, and packed droplets come out far finer. Beyond 70 % it is
 * an extrapolation.
 *
 * @param input.viscosityOil - Viscosity of the oil [Pa·s], above 0.
 * @param input.viscosityGelFormer - Viscosity of the outer phase [Pa·s], above 0.
 * @param input.viscosityEmulsion - Viscosity of the emulsion at that shear rate [Pa·s], above 0.
 * @param input.shearRate - Shear rate [1/s], above 0.
 * @param input.interfacialTension - Interfacial tension [N/m], above 0.
 * @returns Both diameters [m]; one is absent where its viscosity ratio is 4.08 or more, and shear breaks nothing.
 * @throws CalculationError `input` where an argument is out of range; `range` where a viscosity ratio is below 3e-4.
 * @source jansen-2001 abstract: the emulsion's viscosity decides
 * @source de-bruijn-1989 second-hand
 * @example
 * ```ts
 * import { dropletDiameterInShear } from "gelwright/gel";
 * const sizes = dropletDiameterInShear({
 *   viscosityOil: 0.06, viscosityGelFormer: 0.6, viscosityEmulsion: 12, shearRate: 50, interfacialTension: 0.005,
 * });
 * Object.values(sizes).map((size) => Math.round(size * 1e6)); // => [205, 44]
 * ```
 */
export function dropletDiameterInShear(
  input: ShearedOil & { readonly viscosityGelFormer: number; readonly viscosityEmulsion: number },
): DropletDiameters {
  const { viscosityGelFormer, viscosityEmulsion, ...sheared } = record(input, "input", known.dropletDiameterInShear);
  const outer = positive(viscosityGelFormer, "viscosityGelFormer");
  const emulsion = positive(viscosityEmulsion, "viscosityEmulsion");
  const breaks = (around: number): boolean => positive(sheared.viscosityOil, "viscosityOil") / around < stiffest;
  return {
    ...(breaks(outer) && { byOuterPhase: largestDroplet({ ...sheared, viscosityAround: outer }) }),
    ...(breaks(emulsion) && { byEmulsion: largestDroplet({ ...sheared, viscosityAround: emulsion }) }),
  };
}
