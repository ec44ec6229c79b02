import { notNegative, positive, record, refuse, result } from "../guards.js";
import { fractionsOf, meanOf } from "./fractions.js";
import * as known from "./known.js";

/** How readily a blend oxidises beside a reference, and which oils make it so. */
export interface RelativeOxidation {
  /** Oxidisability of the blend (Cox value), 1 for pure oleic acid. */
  readonly oxidisability: number;
  /** The blend's oxidisability over that of the reference. */
  readonly rate: number;
  /** What each part has of the blend's oxidisability [0 to 1], in the order of the parts. */
  readonly shares: readonly number[];
}

/**
 * How readily a blend of oils oxidises beside a reference, and the share that each oil has in it.
 *
 * $$\mathrm{Cox} = \sum_i w_i\,\mathrm{Cox}_i, \qquad r = \frac{\mathrm{Cox}}{\mathrm{Cox}_\mathrm{ref}}, \qquad s_i = \frac{w_i\,\mathrm{Cox}_i}{\mathrm{Cox}}$$
 *
 * It ranks oils and blends; it does not say how long one keeps, which tocopherols, peroxides, metals and light decide.
 * The part with the largest share is the first to be charged off the heat.
 *
 * @param input.parts - Mass [kg] or share, 0 or more, and oxidisability, 0 or more, of each oil (`profileValues`); one of the products above 0.
 * @param input.oxidisabilityReference - That of the oil to compare with, above 0; by default 1, pure oleic acid.
 * @returns The oxidisability of the blend, its ratio to the reference, and the share of each part.
 * @throws CalculationError `input` where an argument is out of range or nothing in the blend oxidises.
 * @source fatemi-hammond-1980, by mass as the percentages of acids; the mean by mass is common practice
 * @example
 * ```ts
 * import { relativeOxidation } from "gelwright/oils";
 * const parts = [{ mass: 90, oxidisability: 1.65 }, { mass: 10, oxidisability: 14 }];
 * relativeOxidation({ parts, oxidisabilityReference: 1.65 }).rate; // => 1.7484848484848485
 * ```
 */
export function relativeOxidation(input: {
  readonly parts: readonly { readonly mass: number; readonly oxidisability: number }[];
  readonly oxidisabilityReference?: number;
}): RelativeOxidation {
  const { parts, oxidisabilityReference = 1 } = record(input, "input", known.relativeOxidation);
  const masses = fractionsOf(parts, "mass");
  const each = masses.map((mass, i) => mass * notNegative(parts[i]?.oxidisability, `parts[${i}].oxidisability`));
  const oxidisability = result(
    meanOf(each, () => 1),
    "oxidisability",
  );
  if (oxidisability === 0) refuse("input", "parts", "an oxidisability of 0", "at least one oil that oxidises");
  return {
    oxidisability,
    rate: result(oxidisability / positive(oxidisabilityReference, "oxidisabilityReference"), "rate"),
    shares: each.map((own) => own / oxidisability),
  };
}
