import { positive, record, refuse, result } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import { bottomGeometry, type VesselBottom } from "../mixing/index.js";
import type { Allowance } from "./allowance.js";
import * as known from "./known.js";
import { text } from "./named.js";

/**
 * The thickness of gel that stays on an upright wall when the vessel is emptied without scraping.
 *
 * $$t = \frac{\tau_y}{\rho g}$$
 *
 * The thickest layer whose weight the yield stress can hold: a thicker one slides off. Take the yield stress at the
 * temperature of emptying.
 *
 * @param input.yieldStress - Yield stress [Pa], above 0.
 * @param input.density - Density [kg/m³], above 0.
 * @returns Thickness [m].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source fox-2011 problem 8.46
 * @example
 * ```ts
 * import { filmThickness } from "gelwright/batch";
 * filmThickness({ yieldStress: 12, density: 915 }); // => 0.0013373327383317092
 * ```
 */
export function filmThickness(input: { readonly yieldStress: number; readonly density: number }): number {
  const { yieldStress, density } = record(input, "input", known.filmThickness);
  return result(positive(yieldStress, "yieldStress") / (positive(density, "density") * gravity), "film thickness");
}

/**
 * The mass of a film on a wetted area: baffles, an impeller, a pipe, a vessel of any shape.
 *
 * $$m = \rho\,t\,A$$
 *
 * @param input.thickness - Thickness of the film [m], above 0.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.area - Wetted area [m²], above 0.
 * @returns Mass [kg].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { filmMass } from "gelwright/batch";
 * filmMass({ thickness: 0.001, density: 900, area: 0.5 }); // => 0.45
 * ```
 */
export function filmMass(input: {
  readonly thickness: number;
  readonly density: number;
  readonly area: number;
}): number {
  const { thickness, density, area } = record(input, "input", known.filmMass);
  const mass = positive(thickness, "thickness") * positive(density, "density") * positive(area, "area");
  return result(mass, "film mass");
}

/**
 * The allowances for the film in an upright round vessel: a fraction of the batch on the wall, a fixed mass on the
 * bottom.
 *
 * $$f = \frac{4t}{D} \qquad m = \rho\,t\left(A_\mathrm{bottom} - \frac{4\,V_\mathrm{bottom}}{D}\right)$$
 *
 * A batch of volume V above a flat bottom wets the wall over 4V/D, so that the film on it is the same fraction of every
 * batch in that vessel; and the fraction falls as vessels get wider, which is why a beaker's percentage is not a
 * kettle's. What lies in a rounded bottom wets no wall: the fixed mass makes up for that. It holds for every batch that
 * fills the bottom; one that does not leaves less behind.
 *
 * @param input.thickness - Thickness of the film [m], above 0: measured, or from `filmThickness`.
 * @param input.density - Density [kg/m³], above 0.
 * @param input.diameter - Inner diameter of the vessel [m], more than four films.
 * @param input.bottom - Bottom of the vessel, as plain data; left out for a flat one, with $\pi D^2/4$ and no volume.
 * @param input.name - What to call them, such as the vessel's name.
 * @returns The two allowances, told apart by `part`, in the order in which `chargeFor` takes them.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the film would fill the vessel.
 * @source definition
 * @example
 * ```ts
 * import { filmAllowances } from "gelwright/batch";
 * filmAllowances({ thickness: 0.001, density: 900, diameter: 0.4, name: "kettle" }).length; // => 2
 * ```
 */
export function filmAllowances(input: {
  readonly thickness: number;
  readonly density: number;
  readonly diameter: number;
  readonly bottom?: VesselBottom;
  readonly name: string;
}): readonly Allowance[] {
  const { thickness, density, diameter, bottom, name } = record(input, "input", known.filmAllowances);
  const share = (4 * positive(thickness, "thickness")) / positive(diameter, "diameter");
  if (share >= 1) refuse("unreachable", "thickness", thickness, "a film thinner than a quarter of the diameter");
  const mass = filmMass({ thickness, density, area: areaBelowWall(diameter, bottom) });
  return [
    { kind: "proportional", name: text(name, "name"), part: "wall", fraction: share },
    { kind: "fixed", name, part: "bottom", mass },
  ];
}

/** The face of the bottom, less the wall that a flat-bottomed vessel would wet for what lies in it [m²]. */
function areaBelowWall(diameter: number, bottom: VesselBottom | undefined): number {
  const { area, volume } = bottomGeometry({ vessel: { diameter, ...(bottom && { bottom }) } });
  return area - (4 * volume) / diameter;
}
