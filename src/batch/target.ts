import { positive, record, refuse, result, wholeNumber } from "../guards.js";
import * as known from "./known.js";

/**
 * What is to arrive in the packs: a mass [kg], a volume [m³] with the density [kg/m³] at which it is meant, or
 * a number of packs with the mass [kg] or the volume [m³] in each.
 */
export type Target =
  | { readonly mass: number }
  | { readonly volume: number; readonly density: number }
  | { readonly packs: number; readonly fillMass: number }
  | { readonly packs: number; readonly fillVolume: number; readonly density: number };

/**
 * The mass of finished product that a target asks for.
 *
 * $$m = V\rho \qquad m = n\,m_\mathrm{fill} = n\,V_\mathrm{fill}\,\rho$$
 *
 * A volume printed on a pack is meant at 20 °C (Directive 76/211/EEC): give the density at 20 °C, not at the
 * temperature of filling.
 *
 * @param target - A mass [kg]; a volume [m³] and density [kg/m³]; or a whole number of packs with the fill mass [kg], or fill volume [m³] and density, of each. All above 0.
 * @returns Mass of finished product [kg].
 * @throws CalculationError `input` where a number is missing or out of range, or two forms are mixed.
 * @source definition
 * @example
 * ```ts
 * import { deliveredMass } from "gelwright/batch";
 * deliveredMass({ packs: 1200, fillVolume: 15e-6, density: 915 }); // => 16.47
 * ```
 */
export function deliveredMass(target: Target): number {
  const given: Partial<Record<"mass" | "volume" | "packs" | "fillMass" | "fillVolume" | "density", number>> = record(
    target,
    "target",
    known.target,
  );
  const { mass, volume, packs, fillMass, fillVolume, density } = given;
  if ([mass, volume, fillMass, fillVolume].filter((amount) => amount !== undefined).length !== 1)
    refuse("input", "target", "not one amount", "one of mass, volume, fillMass and fillVolume");
  if ((packs === undefined) !== (fillMass === undefined && fillVolume === undefined))
    refuse("input", "target.packs", packs, "packs with a fill of each, or neither");
  if (packs !== undefined) wholeNumber(packs, "target.packs", 1);
  const amount = mass ?? fillMass ?? volume ?? fillVolume;
  const weighed = mass !== undefined || fillMass !== undefined;
  if (weighed && density !== undefined) refuse("input", "target.density", density, "no density beside a mass");
  return result(
    (packs ?? 1) * positive(amount, "target amount") * (weighed ? 1 : positive(density, "target.density")),
    "delivered mass",
  );
}
