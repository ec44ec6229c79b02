import { fraction, positive, record } from "../guards.js";
import * as known from "./known.js";

/**
 * The mole fraction of a volatile part in an oil, by which it evaporates.
 *
 * $$x = \frac{w/M}{w/M + (1 - w)/M_\mathrm{rest}}$$
 *
 * The molecules of a triglyceride are heavy, near 0.88 kg/mol, so that a light part has a far larger share by moles
 * than by mass.
 *
 * @param input.massFraction - Share of the volatile part by mass, 0 to 1.
 * @param input.molarMass - Of the volatile part [kg/mol], above 0.
 * @param input.molarMassRest - Of everything else, on average by moles [kg/mol], above 0.
 * @returns The mole fraction, 0 to 1.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition
 * @example
 * ```ts
 * import { moleFraction } from "gelwright/heat";
 * moleFraction({ massFraction: 0.02, molarMass: 0.136234, molarMassRest: 0.88 }); // => 0.11647196877068867
 * ```
 */
export function moleFraction(input: {
  readonly massFraction: number;
  readonly molarMass: number;
  readonly molarMassRest: number;
}): number {
  const { massFraction, molarMass, molarMassRest } = record(input, "input", known.moleFraction);
  const share = fraction(massFraction, "massFraction");
  const ratio = positive(molarMass, "molarMass") / positive(molarMassRest, "molarMassRest");
  return share === 0 ? 0 : share / (share + (1 - share) * ratio);
}
