import { notNegative, positive, record, refuse, result, show } from "../guards.js";
import { type Beyond, extending } from "./beyond.js";
import * as known from "./known.js";

/** Which way a horizontal surface looks. A surface colder than the room counts as warm and looking the other way. */
export type Facing = "up" | "down";

/** Lowest and highest Rayleigh number. */
type Range = readonly [number, number];
export const verticalRange: Range = [0, 1e12];
export const horizontalRange: Readonly<Record<Facing, Range>> = { up: [1, 1e11], down: [1e5, 1e10] };

/** The Rayleigh number, if a correlation holds there or may be extended. */
export function ranged(rayleigh: number, [min, max]: Range, extended: boolean): number {
  return extended || (rayleigh >= min && rayleigh <= max)
    ? rayleigh
    : refuse("range", "rayleigh", rayleigh, `${min} to ${max}, or beyond: "extend"`);
}

export function vertical(rayleigh: number, prandtl: number): number {
  return (0.825 + (0.387 * rayleigh ** (1 / 6)) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)) ** 2;
}

/** What a vertical cylinder loses more than a plate, by its curvature; √32 Gr^(−1/4) H/D is the thickness of the film. */
export function curvature(rayleigh: number, prandtl: number, slenderness: number): number {
  const film = Math.sqrt(32) * (prandtl / rayleigh) ** 0.25 * slenderness;
  const factor = 0.0571322 + 0.20305 * prandtl ** -0.43;
  const power = 0.9165 - 0.0043 * Math.sqrt(prandtl) + 0.01333 * Math.log(prandtl) + 0.0004809 / prandtl;
  return 1 + factor * film ** power;
}

/** 0.835 · 0.671/[1 + (0.492/Pr)^(9/16)]^(4/9) for air, Pr 0.71. */
const thinFilmOfAir = 0.4300355201719215;

export function horizontal(rayleigh: number, facing: Facing): number {
  const laminar = rayleigh ** 0.25;
  if (facing === "down") return 0.27 * laminar;
  // A film that is no longer thin beside the surface conducts as well: the branches meet near Ra 1.3e3.
  const thick = rayleigh < 1e4 ? 1.4 / Math.log1p(1.4 / (thinFilmOfAir * laminar)) : 0;
  // The printed branches change over at Ra 1e7 with a jump of 6 %; they meet at 4.7e6.
  return Math.max(thick, 0.54 * laminar, 0.15 * Math.cbrt(rayleigh));
}

/** The direction, if it is one. */
function facingOf(facing: Facing, path: string): Facing {
  return facing === "up" || facing === "down" ? facing : refuse("input", path, show(facing), '"up" or "down"');
}

/**
 * Nusselt number of natural convection at a warm vertical wall, over its whole height.
 *
 * $$\mathrm{Nu} = \left[0.825 + \frac{0.387\,\mathrm{Ra}^{1/6}}{\left[1 + (0.492/\mathrm{Pr})^{9/16}\right]^{8/27}}\right]^2$$
 *
 * Also holds for a wide vertical cylinder, of a diameter of at least 35 H/Gr^(1/4).
 *
 * @param input.rayleigh - Rayleigh number over the height, 0 to 1e12.
 * @param input.prandtl - Prandtl number of the fluid, above 0.
 * @param input.beyond - Outside the range: `"throw"` (default) or `"extend"`.
 * @returns Nusselt number over the height.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` above Ra 1e12.
 * @source churchill-chu-1975 as restated in bergman-2011, equation 9.26
 * @example
 * ```ts
 * import { nusseltVerticalPlate } from "gelwright/laws";
 * nusseltVerticalPlate({ rayleigh: 1.8147e9, prandtl: 0.69 }); // => 147.16185223770603
 * ```
 */
export function nusseltVerticalPlate(input: {
  readonly rayleigh: number;
  readonly prandtl: number;
  readonly beyond?: Beyond;
}): number {
  const { rayleigh, prandtl, beyond } = record(input, "input", known.nusseltVerticalPlate);
  const number = ranged(notNegative(rayleigh, "rayleigh"), verticalRange, extending(beyond));
  return result(vertical(number, positive(prandtl, "prandtl")), "Nusselt number");
}

/**
 * Nusselt number of natural convection at the side of a warm vertical cylinder: a plate, and more for its curvature.
 *
 * $$\mathrm{Nu} = \mathrm{Nu}_\mathrm{plate}\left[1 + B\left(\sqrt{32}\,\mathrm{Gr}^{-1/4}\,\frac{H}{D}\right)^C\right] \qquad B = 0.0571322 + 0.20305\,\mathrm{Pr}^{-0.43} \qquad C = 0.9165 - 0.0043\,\mathrm{Pr}^{1/2} + 0.01333\ln\mathrm{Pr} + \frac{0.0004809}{\mathrm{Pr}}$$
 *
 * The correction was derived for a laminar film; on a turbulent one (Ra above 1e9) it is small. It grows without bound
 * as Ra goes to 0, so do not trust it where it more than doubles the plate's figure.
 *
 * @param input.rayleigh - Rayleigh number over the height, above 0 to 1e12.
 * @param input.prandtl - Prandtl number of the fluid, 0.01 to 100.
 * @param input.height - Height [m], above 0.
 * @param input.diameter - Diameter [m], above 0.
 * @param input.beyond - Outside the ranges: `"throw"` (default) or `"extend"`.
 * @returns Nusselt number over the height.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` above Ra 1e12 or outside
 *   Pr 0.01 to 100.
 * @source popiel-2007 as restated in the ht library, on churchill-chu-1975
 * @example
 * ```ts
 * import { nusseltVerticalCylinder } from "gelwright/laws";
 * nusseltVerticalCylinder({ rayleigh: 7e9, prandtl: 0.7, height: 2.5, diameter: 1 }); // => 228.89790055149896
 * ```
 */
export function nusseltVerticalCylinder(input: {
  readonly rayleigh: number;
  readonly prandtl: number;
  readonly height: number;
  readonly diameter: number;
  readonly beyond?: Beyond;
}): number {
  const { rayleigh, prandtl, height, diameter, beyond } = record(input, "input", known.nusseltVerticalCylinder);
  const extended = extending(beyond);
  const number = ranged(positive(rayleigh, "rayleigh"), verticalRange, extended);
  if (!extended && !(positive(prandtl, "prandtl") >= 0.01 && prandtl <= 100))
    refuse("range", "prandtl", prandtl, '0.01 to 100, or beyond: "extend"');
  const slenderness = positive(height, "height") / positive(diameter, "diameter");
  const plate = vertical(number, positive(prandtl, "prandtl"));
  return result(plate * curvature(number, prandtl, slenderness), "Nusselt number");
}

/**
 * Nusselt number of natural convection at a warm horizontal surface, such as a lid, a free surface or a bottom.
 *
 * $$\mathrm{Nu}_\mathrm{up} = \max\left(\frac{1.4}{\ln\left(1 + 3.26\,\mathrm{Ra}^{-1/4}\right)},\; 0.54\,\mathrm{Ra}^{1/4},\; 0.15\,\mathrm{Ra}^{1/3}\right) \qquad \mathrm{Nu}_\mathrm{down} = 0.27\,\mathrm{Ra}^{1/4}$$
 *
 * Over the characteristic length, which is area over perimeter. The first branch, for a small difference of temperature, is
 * that of air (Pr 0.71) and overtakes the second below Ra 1.3e3. The two others are printed
 * for Ra below and above 1e7, where they jump by 6 %; here they change over where they meet, at 4.7e6.
 *
 * @param input.rayleigh - Rayleigh number over the characteristic length: 1 to 1e11 facing up, 1e5 to 1e10 facing down.
 * @param input.facing - `"up"` or `"down"`; a surface colder than the fluid counts as warm and facing the other way.
 * @param input.beyond - Outside the range: `"throw"` (default) or `"extend"`.
 * @returns Nusselt number over the characteristic length.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` outside the range.
 * @source lloyd-moran-1974 facing up, mcadams-1954 facing down, both as restated in bergman-2011, equations 9.30 to 9.32
 * @source nellis-klein-2021, facing up at low Ra, its laminar part
 * @example
 * ```ts
 * import { nusseltHorizontalPlate } from "gelwright/laws";
 * nusseltHorizontalPlate({ rayleigh: 1e6, facing: "up" }); // => 17.076299364909246
 * ```
 */
export function nusseltHorizontalPlate(input: {
  readonly rayleigh: number;
  readonly facing: Facing;
  readonly beyond?: Beyond;
}): number {
  const { rayleigh, facing, beyond } = record(input, "input", known.nusseltHorizontalPlate);
  const side = facingOf(facing, "facing");
  const number = ranged(notNegative(rayleigh, "rayleigh"), horizontalRange[side], extending(beyond));
  return result(horizontal(number, side), "Nusselt number");
}
