import { positive, record, result } from "../guards.js";
import * as known from "./known.js";
import { pullAlong } from "./slope.js";

/**
 * The thickest film of a gel that does not run on a slope.
 *
 * $$h = \frac{\tau_y}{\rho\,g\,\sin\alpha}$$
 *
 * On an upright wall it is also what stays behind when a vessel is emptied without scraping.
 *
 * @param input.yieldStress - Yield stress [Pa], above 0: state its convention, and take a low one.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.inclination - Slope [°] from level, above 0; 90, a wall, by default.
 * @returns Thickness [m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source fox-2011 problem 8.46, for a wall
 * @example
 * ```ts
 * import { thickestFilm } from "gelwright/rheology";
 * thickestFilm({ yieldStress: 12, density: 915, inclination: 90 }); // => 0.0013373327383317092
 * ```
 */
export function thickestFilm(input: {
  readonly yieldStress: number;
  readonly density: number;
  readonly inclination?: number;
}): number {
  const { yieldStress, density, inclination } = record(input, "input", known.thickestFilm);
  const weight = positive(density, "density") * pullAlong(inclination);
  return result(positive(yieldStress, "yieldStress") / weight, "film thickness");
}

/**
 * The yield stress that a film of a given thickness needs in order not to run.
 *
 * $$\tau_y = \rho\,g\,h\,\sin\alpha$$
 *
 * @param input.thickness - Thickness of the film [m], above 0.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.inclination - Slope [°] from level, above 0; 90, a wall, by default.
 * @returns Yield stress [Pa].
 * @throws CalculationError `input` where an argument is out of range.
 * @source fox-2011 problem 8.46, solved for the stress
 * @example
 * ```ts
 * import { yieldStressForFilm } from "gelwright/rheology";
 * yieldStressForFilm({ thickness: 0.002, density: 1000 }); // => 19.6133
 * ```
 */
export function yieldStressForFilm(input: {
  readonly thickness: number;
  readonly density: number;
  readonly inclination?: number;
}): number {
  const { thickness, density, inclination } = record(input, "input", known.yieldStressForFilm);
  const weight = positive(density, "density") * pullAlong(inclination);
  return result(positive(thickness, "thickness") * weight, "yield stress");
}
