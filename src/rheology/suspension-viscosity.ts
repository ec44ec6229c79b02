import { fraction, positive, record, refuse, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import * as known from "./known.js";

/** Einstein's intrinsic viscosity of hard spheres [-]. */
const spheres = 2.5;

function within(volumeFraction: number, limit: number, beyond: Beyond | undefined): number {
  const extended = extending(beyond);
  const share = fraction(volumeFraction, "volumeFraction");
  if (!extended && share > limit)
    refuse("range", "volumeFraction", share, `up to ${limit} for a dilute suspension, or beyond: "extend"`);
  return share;
}

function loose(volumeFraction: number, packed: number): number {
  const full = fraction(packed, "volumeFractionPacked");
  const share = fraction(volumeFraction, "volumeFraction");
  if (!(share < full))
    refuse("range", "volumeFraction", share, `below ${full}, where the particles are packed and nothing flows`);
  return 1 - share / full;
}

/**
 * How much a few hard spheres thicken a liquid, each by itself.
 *
 * $$\eta_r = 1 + 2.5\,\varphi$$
 *
 * @param input.volumeFraction - Particles by volume, 0 to 0.02.
 * @param input.beyond - Above 0.02: `"throw"` (default) or `"extend"`.
 * @returns Viscosity over that of the liquid [-].
 * @throws CalculationError `input` where an argument is out of range, `range` above 0.02.
 * @source einstein-1911 from memory
 * @example
 * ```ts
 * import { einsteinViscosity } from "gelwright/rheology";
 * einsteinViscosity({ volumeFraction: 0.02 }); // => 1.05
 * ```
 */
export function einsteinViscosity(input: { readonly volumeFraction: number; readonly beyond?: Beyond }): number {
  const { volumeFraction, beyond } = record(input, "input", known.einsteinViscosity);
  return 1 + spheres * within(volumeFraction, 0.02, beyond);
}

/**
 * How much hard spheres thicken a liquid where pairs of them meet.
 *
 * $$\eta_r = 1 + 2.5\,\varphi + 6.2\,\varphi^2$$
 *
 * The 6.2 is for small spheres that Brownian motion keeps stirred.
 *
 * @param input.volumeFraction - Particles by volume, 0 to 0.1.
 * @param input.beyond - Above 0.1: `"throw"` (default) or `"extend"`.
 * @returns Viscosity over that of the liquid [-].
 * @throws CalculationError `input` where an argument is out of range, `range` above 0.1.
 * @source batchelor-1977 second-hand
 * @example
 * ```ts
 * import { batchelorViscosity } from "gelwright/rheology";
 * batchelorViscosity({ volumeFraction: 0.1 }); // => 1.312
 * ```
 */
export function batchelorViscosity(input: { readonly volumeFraction: number; readonly beyond?: Beyond }): number {
  const { volumeFraction, beyond } = record(input, "input", known.batchelorViscosity);
  const share = within(volumeFraction, 0.1, beyond);
  return 1 + spheres * share + 6.2 * share * share;
}

/**
 * How much a dense suspension is thicker than its liquid.
 *
 * $$\eta_r = \left(1 - \frac{\varphi}{\varphi_m}\right)^{-2}$$
 *
 * @param input.volumeFraction - Particles by volume, from 0 to below packed.
 * @param input.volumeFractionPacked - φ_m, where nothing flows any more: about 0.58 to 0.64 for spheres, far less for
 *   flakes and for flocculated pigment; `packedFraction` gives one from the oil absorption.
 * @returns Viscosity over that of the liquid [-].
 * @throws CalculationError `input` where an argument is out of range, `range` for a suspension that is packed.
 * @source maron-pierce-1956 from memory
 * @example
 * ```ts
 * import { maronPierceViscosity } from "gelwright/rheology";
 * maronPierceViscosity({ volumeFraction: 0.3, volumeFractionPacked: 0.6 }); // => 4
 * ```
 */
export function maronPierceViscosity(input: {
  readonly volumeFraction: number;
  readonly volumeFractionPacked: number;
}): number {
  const { volumeFraction, volumeFractionPacked } = record(input, "input", known.maronPierceViscosity);
  return result(loose(volumeFraction, volumeFractionPacked) ** -2, "relative viscosity");
}

/**
 * How much a suspension is thicker than its liquid, from dilute to packed.
 *
 * $$\eta_r = \left(1 - \frac{\varphi}{\varphi_m}\right)^{-[\eta]\,\varphi_m}$$
 *
 * @param input.volumeFraction - Particles by volume, from 0 to below packed.
 * @param input.volumeFractionPacked - φ_m, where nothing flows any more.
 * @param input.intrinsicViscosity - [η] [-], above 0: 2.5 for spheres (default), more for flakes and needles.
 * @returns Viscosity over that of the liquid [-].
 * @throws CalculationError `input` where an argument is out of range, `range` for a suspension that is packed.
 * @source krieger-dougherty-1959 from memory
 * @example
 * ```ts
 * import { kriegerDoughertyViscosity } from "gelwright/rheology";
 * kriegerDoughertyViscosity({ volumeFraction: 0.3, volumeFractionPacked: 0.64 }); // => 2.751197011795915
 * ```
 */
export function kriegerDoughertyViscosity(input: {
  readonly volumeFraction: number;
  readonly volumeFractionPacked: number;
  readonly intrinsicViscosity?: number;
}): number {
  const {
    volumeFraction,
    volumeFractionPacked,
    intrinsicViscosity = spheres,
  } = record(input, "input", known.kriegerDoughertyViscosity);
  const gap = loose(volumeFraction, volumeFractionPacked);
  const power = -positive(intrinsicViscosity, "intrinsicViscosity") * volumeFractionPacked;
  return result(gap ** power, "relative viscosity");
}

/**
 * The most particles that a suspension may hold and be no thicker than wanted: Krieger and Dougherty's law backwards.
 *
 * $$\varphi = \varphi_m\left(1 - \eta_r^{-1/([\eta]\,\varphi_m)}\right)$$
 *
 * @param input.relativeViscosity - Viscosity over that of the liquid [-], 1 or more.
 * @param input.volumeFractionPacked - φ_m, where nothing flows any more: above 0.
 * @param input.intrinsicViscosity - [η] [-], above 0: 2.5 for spheres (default).
 * @returns Particles by volume.
 * @throws CalculationError `input` where an argument is out of range.
 * @source krieger-dougherty-1959 from memory, solved for the volume fraction
 * @example
 * ```ts
 * import { loadAtViscosity } from "gelwright/rheology";
 * loadAtViscosity({ relativeViscosity: 4, volumeFractionPacked: 0.6, intrinsicViscosity: 10 / 3 }); // => 0.3
 * ```
 */
export function loadAtViscosity(input: {
  readonly relativeViscosity: number;
  readonly volumeFractionPacked: number;
  readonly intrinsicViscosity?: number;
}): number {
  const {
    relativeViscosity,
    volumeFractionPacked,
    intrinsicViscosity = spheres,
  } = record(input, "input", known.loadAtViscosity);
  const packed = positive(fraction(volumeFractionPacked, "volumeFractionPacked"), "volumeFractionPacked");
  const thicker = positive(relativeViscosity, "relativeViscosity");
  if (thicker < 1) refuse("input", "relativeViscosity", thicker, "1 or more: particles thicken");
  const power = -1 / (positive(intrinsicViscosity, "intrinsicViscosity") * packed);
  return -packed * Math.expm1(result(power * Math.log(thicker), "load"));
}
