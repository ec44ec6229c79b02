import { notNegative, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** Oil that left a gel, by weighing. */
export interface OilBleed {
  /** Share of the gel that left it as oil [mass fraction]; a little below 0 by the doubt of the weighings. */
  readonly massFraction: number;
  /** Standard uncertainty of that share. */
  readonly standardUncertainty: number;
  /** Whether the share is larger than twice its uncertainty: if not, no bleed was found, which is no proof of none. */
  readonly found: boolean;
}

/**
 * Oil bleed from weighings: the share of a gel that a collector (paper, mesh, dish) took up, with its uncertainty.
 *
 * $$b = \frac{c_1 - c_0}{g_1 - g_0} \qquad u_b = \frac{\sqrt{2}\,u\,\sqrt{1 + b^2}}{g_1 - g_0}$$
 *
 * The uncertainty is that of the balance alone. How much two samples of one gel differ is larger as a rule: weigh
 * several, and compare formulas by `welchTest`.
 *
 * @param input.massVessel - The vessel of the gel, empty [kg], 0 or more.
 * @param input.massFilled - The same with the gel [kg], above `massVessel`.
 * @param input.massCollectorBefore - The collector, clean [kg], 0 or more.
 * @param input.massCollectorAfter - The same with the oil [kg], 0 or more.
 * @param input.uncertaintyWeighing - Standard uncertainty of one reading of the balance [kg], 0 or more.
 * @returns The share [mass fraction], its standard uncertainty, and whether it stands out from that.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source jcgm-100-2008 clause 5.1.2 from memory; the share is a definition
 * @example
 * ```ts
 * import { oilBleed } from "gelwright/stability";
 * const bleed = oilBleed({
 *   massVessel: 0.0152,
 *   massFilled: 0.0352,
 *   massCollectorBefore: 0.00081,
 *   massCollectorAfter: 0.00111,
 *   uncertaintyWeighing: 1e-5,
 * });
 * (100 * bleed.massFraction).toFixed(2); // => "1.50"
 * (100 * bleed.standardUncertainty).toFixed(2); // => "0.07"
 * ```
 */
export function oilBleed(input: {
  readonly massVessel: number;
  readonly massFilled: number;
  readonly massCollectorBefore: number;
  readonly massCollectorAfter: number;
  readonly uncertaintyWeighing: number;
}): OilBleed {
  const { massVessel, massFilled, massCollectorBefore, massCollectorAfter, uncertaintyWeighing } = record(
    input,
    "input",
    known.oilBleed,
  );
  const gel = positive(massFilled, "massFilled") - notNegative(massVessel, "massVessel");
  if (!(gel > 0)) refuse("input", "massFilled", massFilled, "above massVessel");
  const oil =
    notNegative(massCollectorAfter, "massCollectorAfter") - notNegative(massCollectorBefore, "massCollectorBefore");
  const massFraction = result(oil / gel, "massFraction");
  const reading = notNegative(uncertaintyWeighing, "uncertaintyWeighing") / gel;
  const standardUncertainty = result(Math.SQRT2 * reading * Math.hypot(1, massFraction), "standardUncertainty");
  return { massFraction, standardUncertainty, found: massFraction > 2 * standardUncertainty };
}
