import { fraction, positive, record, refuse, result, show } from "../guards.js";
import * as known from "./known.js";

/** How much of an antioxidant, as it is supplied, brings an oil to a wanted content. */
export interface AntioxidantDose {
  /** Mass as supplied, with its carrier and its moisture [kg]. */
  readonly mass: number;
  /** What is active in it [kg]. */
  readonly massActive: number;
  /** The oil that it goes into [kg]: less than before where it takes the place of oil. */
  readonly massOil: number;
}

/**
 * How much of an antioxidant brings an oil to a wanted content, with what the oil already holds: arithmetic and no advice.
 *
 * $$a = s\,(1 - l), \qquad m = M\,\frac{c - c_0}{a - c_0} \ \text{in place of oil}, \qquad m = M\,\frac{c - c_0}{a - c} \ \text{on top}$$
 *
 * The content is the caller's to choose, from trials in the oil at hand: 100 to 500 ppm of added α-tocopherol made almond
 * oil that was already partly oxidised go off sooner.
 *
 * @param input.massOil - The oil, or the whole where the antioxidant takes the place of oil [kg], above 0.
 * @param input.massFractionTarget - Content of active wanted in the whole [kg/kg], 0 to 1; 1 ppm is 1e-6.
 * @param input.massFractionPresent - Content that the oil already holds [kg/kg], by default 0.
 * @param input.strength - Active part of the antioxidant as supplied, or of its dry mass where a loss on drying is given [kg/kg], above 0 to 1.
 * @param input.lossOnDrying - Moisture of the antioxidant as supplied, for a strength of the dry mass [kg/kg], by default 0.
 * @param input.inPlaceOf - `"oil"` keeps the whole at its mass, `"nothing"` adds on top; by default `"oil"`.
 * @returns Mass as supplied, active mass, and mass of oil [kg].
 * @throws CalculationError `input` where an argument is out of range, `unreachable` where the oil holds more than is wanted or the antioxidant holds no more than is wanted.
 * @source definition
 * @source auezova-2012, that more can be worse
 * @example
 * ```ts
 * import { antioxidantDose } from "gelwright/oils";
 * const wanted = { massOil: 25, massFractionPresent: 450e-6, massFractionTarget: 1000e-6, strength: 0.7 };
 * antioxidantDose(wanted).mass; // => 0.019655492816810807
 * ```
 */
export function antioxidantDose(input: {
  readonly massOil: number;
  readonly massFractionTarget: number;
  readonly massFractionPresent?: number;
  readonly strength: number;
  readonly lossOnDrying?: number;
  readonly inPlaceOf?: "oil" | "nothing";
}): AntioxidantDose {
  const {
    massOil,
    massFractionTarget,
    massFractionPresent = 0,
    strength,
    lossOnDrying = 0,
    inPlaceOf = "oil",
  } = record(input, "input", known.antioxidantDose);
  const oil = positive(massOil, "massOil");
  const wanted = fraction(massFractionTarget, "massFractionTarget");
  const held = fraction(massFractionPresent, "massFractionPresent");
  const active = fraction(strength, "strength") * (1 - fraction(lossOnDrying, "lossOnDrying"));
  if (inPlaceOf !== "oil" && inPlaceOf !== "nothing")
    refuse("input", "inPlaceOf", show(inPlaceOf), '"oil" or "nothing"');
  if (wanted < held)
    refuse("unreachable", "massFractionTarget", wanted, `what the oil holds already, ${held}, or more`);
  if (active <= wanted) refuse("unreachable", "strength", active, `more active than is wanted in the oil, ${wanted}`);
  const replaces = inPlaceOf === "oil";
  const mass = result((oil * (wanted - held)) / (active - (replaces ? held : wanted)), "mass");
  return { mass, massActive: mass * active, massOil: replaces ? oil - mass : oil };
}
