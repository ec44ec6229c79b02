import { positive, record, refuse, result } from "../guards.js";
import { fractionsOf, meanOf } from "./fractions.js";
import * as known from "./known.js";

/** One mm²/s in m²/s. */
const squareMillimetre = 1e-6;

/**
 * The viscosity blending number of Refutas, which averages by mass.
 *
 * $$\mathrm{VBN} = 14.534 \ln\!\left(\ln\!\left(\frac{\nu}{\mathrm{mm^2/s}} + 0.8\right)\right) + 10.975$$
 *
 * Both logarithms are natural. The rule is one of mineral oils, Newtonian and at one temperature.
 *
 * @param input.kinematicViscosity - Kinematic viscosity [m²/s], above 2e-7.
 * @returns The number; more for a thicker liquid.
 * @throws CalculationError `input` where the argument is no number above 0, `range` at 0.2 mm²/s or less.
 * @source maples-2000, as restated on a page of engineering formulas; zhmud-2014
 * @example
 * ```ts
 * import { viscosityBlendingNumber } from "gelwright/oils";
 * viscosityBlendingNumber({ kinematicViscosity: 20e-6 }); // => 27.110587704973547
 * ```
 */
export function viscosityBlendingNumber(input: { readonly kinematicViscosity: number }): number {
  return numberOf(record(input, "input", known.viscosityBlendingNumber).kinematicViscosity, "kinematicViscosity");
}

/**
 * The kinematic viscosity of a blend by the viscosity blending number of Refutas.
 *
 * $$\mathrm{VBN} = \sum_i w_i\,\mathrm{VBN}_i, \qquad \nu = \left(e^{e^{(\mathrm{VBN} - 10.975)/14.534}} - 0.8\right)\ \mathrm{mm^2/s}$$
 *
 * @param input.parts - Mass [kg] or share, 0 or more, of which only the proportions count, and kinematic viscosity [m²/s], above 2e-7, of each liquid.
 * @returns The kinematic viscosity [m²/s], between the lowest and the highest of the parts.
 * @throws CalculationError `input` where an argument is out of range, `range` at 0.2 mm²/s or less.
 * @source maples-2000, as restated on a page of engineering formulas; zhmud-2014
 * @example
 * ```ts
 * import { viscosityByBlendingNumber } from "gelwright/oils";
 * const parts = [{ mass: 0.6, kinematicViscosity: 5e-6 }, { mass: 0.4, kinematicViscosity: 20e-6 }];
 * viscosityByBlendingNumber({ parts }); // => 0.000008108549290140973
 * ```
 */
export function viscosityByBlendingNumber(input: {
  readonly parts: readonly { readonly mass: number; readonly kinematicViscosity: number }[];
}): number {
  const { parts } = record(input, "input", known.viscosityByBlendingNumber);
  const mean = meanOf(fractionsOf(parts, "mass"), (i) =>
    numberOf(parts[i]?.kinematicViscosity, `parts[${i}].kinematicViscosity`),
  );
  return result((Math.exp(Math.exp((mean - 10.975) / 14.534)) - 0.8) * squareMillimetre, "kinematic viscosity");
}

function numberOf(kinematicViscosity: unknown, path: string): number {
  const inner = positive(kinematicViscosity, path) / squareMillimetre + 0.8;
  if (inner <= 1) refuse("range", path, kinematicViscosity, "above 2e-7 m²/s, where the inner logarithm is above 0");
  return result(14.534 * Math.log(Math.log(inner)) + 10.975, "viscosity blending number");
}
