import { finite, positive, record, refuse, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";

/** Droplets packed beyond their closest packing. */
export interface PackedDroplets {
  /** Volume fraction of oil: 0.75 to 0.98 for the modulus, 0.83 to 0.98 for the yield stress. */
  readonly volumeFractionOil: number;
  /** Sauter mean diameter of the droplets, d₃₂ [m], above 0. */
  readonly diameter: number;
  /** Interfacial tension of oil against gel former, with its surfactant [N/m], above 0. */
  readonly interfacialTension: number;
}

/** Up to where the two laws were measured. */
const oilMax = 0.98;
const modulusFrom = 0.75;
/** The yield law crosses zero near 0.80; below this it is no measurement. */
export const yieldFrom: number = 0.83;

const modulusFactor = (oil: number): number => 1.769 * Math.cbrt(oil) * (oil - 0.712);
const yieldFactor = (oil: number): number => Math.cbrt(oil) * (-0.08 - 0.114 * Math.log10(1 - oil));

/**
 * How sure modulus and yield stress of packed droplets are. The constants are from memory, and the laws leave out the
 * film between the droplets, which makes small droplets stronger: a film of 10 nm raises the yield stress at 0.85 by 6 %
 * for droplets of 10 µm, by 21 % for 3 µm, by 69 % for 1 µm (worked from the droplet's radius with half a film around it).
 * Another law of the modulus, σ/R φ (φ − 0.635) up to a factor near 1.6 (mason-1995, the factor from memory), lies 20 to 30 %
 * higher.
 */
export const packedStrengthBand: Band = {
  by: "factor",
  min: 0.7,
  max: 1.7,
  basis: "judgement",
  sources: ["princen-kiss-1986", "princen-kiss-1989", "mason-1995"],
};

/** σ/R₃₂, the scale of every stress in a packed emulsion. */
function scaleOf({ diameter, interfacialTension }: Omit<PackedDroplets, "volumeFractionOil">): number {
  return (2 * positive(interfacialTension, "interfacialTension")) / positive(diameter, "diameter");
}

function strengthOf(input: PackedDroplets, factor: (oil: number) => number, oilMin: number, what: string): number {
  const { volumeFractionOil } = record(input, "input");
  const oil = finite(volumeFractionOil, "volumeFractionOil");
  if (oil < oilMin || oil > oilMax)
    refuse("range", "volumeFractionOil", oil, `${oilMin} to ${oilMax} by volume, where the law was measured`);
  return result(scaleOf(input) * factor(oil), what);
}

function oilFor(scale: number, strength: number, factor: (oil: number) => number, oilMin: number): number {
  const [min, max] = [scale * factor(oilMin), scale * factor(oilMax)];
  if (!(strength >= min && strength <= max))
    refuse("unreachable", "strength", strength, `${min} to ${max} Pa with these droplets, or finer ones for more`);
  return root((oil) => scale * factor(oil) - strength, oilMin, oilMax, "volume fraction of oil");
}

/**
 * The shear modulus of packed droplets.
 *
 * $$G = 1.769\,\frac{\sigma}{R_{32}}\,\varphi^{1/3}\,(\varphi - 0.712)$$
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0.75 to 0.98: by volume, 85 % by mass is not 0.85.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.interfacialTension - Interfacial tension [N/m], above 0.
 * @returns The modulus [Pa].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where the law was not measured.
 * @source princen-kiss-1986 from memory
 * @example
 * ```ts
 * import { modulusOfDroplets } from "gelwright/gel";
 * Math.round(modulusOfDroplets({ volumeFractionOil: 0.86, diameter: 5e-6, interfacialTension: 0.005 })); // => 498
 * ```
 */
export function modulusOfDroplets(input: PackedDroplets): number {
  record(input, "input", known.modulusOfDroplets);
  return strengthOf(input, modulusFactor, modulusFrom, "modulus");
}

/**
 * The yield stress of packed droplets.
 *
 * $$\tau_y = \frac{\sigma}{R_{32}}\,\varphi^{1/3}\,Y(\varphi) \qquad Y = -0.080 - 0.114\,\log_{10}(1 - \varphi)$$
 *
 * Y crosses zero near φ = 0.80, where real emulsions still have a small yield stress: below 0.83 it is refused.
 * The film between the droplets is left out: below 3 µm the true stress is higher by a fifth and more
 * (`packedStrengthBand`).
 *
 * @param input.volumeFractionOil - Volume fraction of oil, 0.83 to 0.98: by volume, 85 % by mass is not 0.85.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.interfacialTension - Interfacial tension [N/m], above 0.
 * @returns The yield stress [Pa].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where the law was not measured.
 * @source princen-kiss-1989 from memory
 * @example
 * ```ts
 * import { yieldStressOfDroplets } from "gelwright/gel";
 * Math.round(yieldStressOfDroplets({ volumeFractionOil: 0.86, diameter: 5e-6, interfacialTension: 0.005 })); // => 33
 * ```
 */
export function yieldStressOfDroplets(input: PackedDroplets): number {
  record(input, "input", known.yieldStressOfDroplets);
  return strengthOf(input, yieldFactor, yieldFrom, "yield stress");
}

/**
 * The volume fraction of oil at which packed droplets have a modulus; the inverse of `modulusOfDroplets`.
 *
 * @param input.modulus - Modulus wanted [Pa], above 0.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.interfacialTension - Interfacial tension [N/m], above 0.
 * @returns The volume fraction of oil, 0.75 to 0.98.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no measured oil fraction gives it.
 * @source princen-kiss-1986 from memory
 * @example
 * ```ts
 * import { oilFractionForModulus } from "gelwright/gel";
 * Math.round(oilFractionForModulus({ modulus: 500, diameter: 5e-6, interfacialTension: 0.005 }) * 1000); // => 861
 * ```
 */
export function oilFractionForModulus(
  input: Omit<PackedDroplets, "volumeFractionOil"> & { readonly modulus: number },
): number {
  const { modulus } = record(input, "input", known.oilFractionForModulus);
  return oilFor(scaleOf(input), positive(modulus, "modulus"), modulusFactor, modulusFrom);
}

/**
 * The volume fraction of oil at which packed droplets have a yield stress; the inverse of `yieldStressOfDroplets`.
 *
 * @param input.yieldStress - Yield stress wanted [Pa], above 0.
 * @param input.diameter - Sauter mean diameter of the droplets [m], above 0.
 * @param input.interfacialTension - Interfacial tension [N/m], above 0.
 * @returns The volume fraction of oil, 0.83 to 0.98.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no measured oil fraction gives it.
 * @source princen-kiss-1989 from memory
 * @example
 * ```ts
 * import { oilFractionForYieldStress } from "gelwright/gel";
 * Math.round(oilFractionForYieldStress({ yieldStress: 50, diameter: 5e-6, interfacialTension: 0.005 }) * 1000); // => 883
 * ```
 */
export function oilFractionForYieldStress(
  input: Omit<PackedDroplets, "volumeFractionOil"> & { readonly yieldStress: number },
): number {
  const { yieldStress } = record(input, "input", known.oilFractionForYieldStress);
  return oilFor(scaleOf(input), positive(yieldStress, "yieldStress"), yieldFactor, yieldFrom);
}
