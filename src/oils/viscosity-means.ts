import { positive, record, result } from "../guards.js";
import type { Band } from "../laws/band.js";
import { fractionsOf, meanOf } from "./fractions.js";
import * as known from "./known.js";

/**
 * How sure a blend's viscosity is by each rule, against 84 measured blends of an alcohol with squalane and with hexadecane.
 *
 * The rules without a term come out up to 27 % (Arrhenius by moles), 44 % (by mass), 31 % (Kendall and Monroe) and 35 %
 * (blending number) too high there, where one part binds hydrogen and the other does not. One fitted term leaves 9 % rms
 * for squalane, 1.3 % for hexadecane. Oils that are alike do better; no measured blend of two was found to read.
 */
export const blendViscosityBands: Readonly<
  Record<"arrhenius" | "kendallMonroe" | "blendingNumber" | "grunbergNissan", Band>
> = {
  arrhenius: { by: "factor", min: 0.7, max: 1.1, basis: "spread", sources: ["dubey-sharma-2008"] },
  kendallMonroe: { by: "factor", min: 0.75, max: 1.1, basis: "spread", sources: ["dubey-sharma-2008"] },
  blendingNumber: { by: "factor", min: 0.7, max: 1.1, basis: "spread", sources: ["dubey-sharma-2008"] },
  grunbergNissan: { by: "factor", min: 0.85, max: 1.15, basis: "spread", sources: ["dubey-sharma-2008"] },
};

/**
 * The viscosity of a blend by the rule of Arrhenius: the logarithms average.
 *
 * $$\ln \eta = \sum_i x_i \ln \eta_i$$
 *
 * Whether the shares are of mass, volume or moles is not in the rule; for oils of like size they differ little. Say
 * which was used. Dynamic and kinematic viscosity both go in, if all are of one kind and at one temperature. Liquids of
 * unlike size or that bind one another stray from it by tens of percent: fit `grunbergNissanTerm` to one measured blend.
 *
 * @param input.parts - Share, 0 or more, of which only the proportions count, and viscosity [Pa·s] or [m²/s], above 0, of each liquid.
 * @returns The viscosity in the unit of the parts, between the lowest and the highest of them.
 * @throws CalculationError `input` where an argument is out of range.
 * @source arrhenius-1887 from memory
 * @example
 * ```ts
 * import { viscosityByArrhenius } from "gelwright/oils";
 * viscosityByArrhenius({ parts: [{ share: 1, viscosity: 0.01 }, { share: 1, viscosity: 0.1 }] }); // => 0.0316227766016838
 * ```
 */
export function viscosityByArrhenius(input: {
  readonly parts: readonly { readonly share: number; readonly viscosity: number }[];
}): number {
  const { parts } = record(input, "input", known.viscosityByArrhenius);
  const logarithm = meanOf(fractionsOf(parts, "share"), (i) => Math.log(viscosityAt(parts, i)));
  return result(Math.exp(logarithm), "viscosity");
}

/**
 * The viscosity of a blend by the rule of Kendall and Monroe: the cube roots average, by moles.
 *
 * $$\eta^{1/3} = \sum_i x_i\,\eta_i^{1/3}$$
 *
 * @param input.parts - Amount [mol], 0 or more, of which only the proportions count, and viscosity [Pa·s], above 0, of each liquid.
 * @returns The viscosity [Pa·s], between the lowest and the highest of the parts and never below that of Arrhenius' rule.
 * @throws CalculationError `input` where an argument is out of range.
 * @source kendall-monroe-1917 from memory, zhmud-2014 names it as a cube-root mean
 * @example
 * ```ts
 * import { viscosityByKendallMonroe } from "gelwright/oils";
 * viscosityByKendallMonroe({ parts: [{ moles: 1, viscosity: 0.01 }, { moles: 1, viscosity: 0.1 }] }); // => 0.039235088213667495
 * ```
 */
export function viscosityByKendallMonroe(input: {
  readonly parts: readonly { readonly moles: number; readonly viscosity: number }[];
}): number {
  const { parts } = record(input, "input", known.viscosityByKendallMonroe);
  return result(meanOf(fractionsOf(parts, "moles"), (i) => Math.cbrt(viscosityAt(parts, i))) ** 3, "viscosity");
}

/** The viscosity of one part, if it is one. */
export function viscosityAt(parts: readonly { readonly viscosity: number }[], i: number): number {
  return positive(parts[i]?.viscosity, `parts[${i}].viscosity`);
}
