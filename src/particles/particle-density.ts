import { fraction, list, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** A part of a particle, by mass. */
export interface ParticlePart {
  /** Mass of this part per mass of the particle, 0 to 1. */
  readonly massFraction: number;
  /** Density of this part [kg/m³], above 0. */
  readonly density: number;
}

/**
 * The density of a particle that is made of several materials, such as a platelet of mica under a layer of oxide.
 *
 * $$\frac1\rho = \sum_i \frac{w_i}{\rho_i}$$
 *
 * @param input.parts - The parts: mass fraction and density [kg/m³] of each; the fractions sum to 1 within 1e-6.
 * @returns Density [kg/m³].
 * @throws CalculationError `input` where an argument is out of range or the fractions do not sum to 1.
 * @source definition (volumes add up; pores between the parts would make it less)
 * @example
 * ```ts
 * import { compositeDensity } from "gelwright/particles";
 * const mica = { massFraction: 0.6, density: 2800 };
 * const oxide = { massFraction: 0.4, density: 4230 };
 * compositeDensity({ parts: [mica, oxide] }); // => 3237.834882449426
 * ```
 */
export function compositeDensity(input: { readonly parts: readonly ParticlePart[] }): number {
  let mass = 0;
  let volume = 0;
  list(record(input, "input", known.compositeDensity).parts, "parts", 1).forEach((part, i) => {
    const { massFraction, density } = record(part, `parts[${i}]`);
    mass += fraction(massFraction, `parts[${i}].massFraction`);
    volume += massFraction / positive(density, `parts[${i}].density`);
  });
  if (Math.abs(mass - 1) > 1e-6) refuse("input", "parts", `mass fractions that sum to ${mass}`, "a sum of 1");
  return result(mass / volume, "density");
}

/**
 * The density of a sphere with a coat of another material.
 *
 * $$\rho = \rho_\mathrm{coat} + (\rho_\mathrm{core} - \rho_\mathrm{coat})\left(\frac{d}{d + 2t}\right)^3$$
 *
 * @param input.diameterCore - Diameter of the core [m], above 0.
 * @param input.thicknessCoat - Thickness of the coat [m], above 0.
 * @param input.densityCore - Density of the core [kg/m³], above 0.
 * @param input.densityCoat - Density of the coat [kg/m³], above 0.
 * @returns Density of the whole [kg/m³].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition (volumes add up)
 * @example
 * ```ts
 * import { coatedSphereDensity } from "gelwright/particles";
 * coatedSphereDensity({ diameterCore: 100e-6, thicknessCoat: 2e-6, densityCore: 1380, densityCoat: 2700 }); // => 1526.5248065543922
 * ```
 */
export function coatedSphereDensity(input: {
  readonly diameterCore: number;
  readonly thicknessCoat: number;
  readonly densityCore: number;
  readonly densityCoat: number;
}): number {
  const { diameterCore, thicknessCoat, densityCore, densityCoat } = record(input, "input", known.coatedSphereDensity);
  const width = positive(diameterCore, "diameterCore");
  const share = (width / (width + 2 * positive(thicknessCoat, "thicknessCoat"))) ** 3;
  const core = positive(densityCore, "densityCore");
  return result(share * core + (1 - share) * positive(densityCoat, "densityCoat"), "density");
}
