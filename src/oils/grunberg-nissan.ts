import { finite, list, positive, record, refuse, result } from "../guards.js";
import { fractionsOf, meanOf } from "./fractions.js";
import * as known from "./known.js";
import { viscosityAt } from "./viscosity-means.js";

/** A liquid of a blend, by moles. */
export interface MolarPart {
  /** Amount [mol], 0 or more; only the proportions count. */
  readonly moles: number;
  /** Viscosity at the temperature of all parts [Pa·s], above 0. */
  readonly viscosity: number;
}

/** How two liquids of a blend act on one another. */
export interface Interaction {
  /** The two parts, by their place in the list from 0 on. */
  readonly between: readonly [first: number, second: number];
  /** The term, measured at the temperature of the blend; 0 for none, below 0 where the blend is thinner than the rule of Arrhenius. */
  readonly term: number;
}

/**
 * The viscosity of a blend by Grunberg and Nissan: Arrhenius' rule by moles with a term for every pair.
 *
 * $$\ln \eta = \sum_i x_i \ln \eta_i + \sum_{i < j} x_i\,x_j\,G_{ij}$$
 *
 * Pairs that are not listed have no term. A term belongs to one temperature: measure it where it will be used.
 *
 * @param input.parts - Amount [mol] and viscosity [Pa·s] of each liquid; at least one.
 * @param input.interactions - Pairs with their terms; default none.
 * @returns The viscosity [Pa·s]; with terms it may lie above or below all of the parts.
 * @throws CalculationError `input` where an argument is out of range, or a pair is not of two parts or stands twice.
 * @source grunberg-nissan-1949 from memory
 * @example
 * ```ts
 * import { viscosityByGrunbergNissan } from "gelwright/oils";
 * const parts = [{ moles: 1, viscosity: 0.01 }, { moles: 1, viscosity: 0.1 }];
 * viscosityByGrunbergNissan({ parts, interactions: [{ between: [0, 1], term: 0.8 }] }); // => 0.038624146561979475
 * ```
 */
export function viscosityByGrunbergNissan(input: {
  readonly parts: readonly MolarPart[];
  readonly interactions?: readonly Interaction[];
}): number {
  const { parts, interactions = [] } = record(input, "input", known.viscosityByGrunbergNissan);
  const fractions = fractionsOf(parts, "moles");
  const seen = new Set<number>();
  const excess = list(interactions, "interactions").reduce((sum, interaction, i) => {
    const at = `interactions[${i}]`;
    const { between, term } = record(interaction, at);
    const [first, second] = list(between, `${at}.between`, 2) as Interaction["between"];
    const x = fractions[finite(first, `${at}.between[0]`)];
    const y = fractions[finite(second, `${at}.between[1]`)];
    const pair = Math.min(first, second) * parts.length + Math.max(first, second);
    if (x === undefined || y === undefined || first === second || seen.has(pair))
      return refuse(
        "input",
        `${at}.between`,
        between,
        `two different places from 0 to ${parts.length - 1}, each pair once`,
      );
    seen.add(pair);
    return sum + x * y * finite(term, `${at}.term`);
  }, 0);
  return result(Math.exp(meanOf(fractions, (i) => Math.log(viscosityAt(parts, i))) + excess), "viscosity");
}

/**
 * The interaction term of two liquids, from the viscosity of one measured blend of them.
 *
 * $$G_{12} = \frac{\ln \eta - x_1 \ln \eta_1 - x_2 \ln \eta_2}{x_1\,x_2}$$
 *
 * Near a pure liquid an error of the reading is multiplied by 1/(x₁ x₂): measure near equal moles.
 *
 * @param input.parts - Amount [mol] and viscosity [Pa·s] of the two liquids, both amounts above 0.
 * @param input.viscosityBlend - Viscosity of their blend at the same temperature [Pa·s], above 0.
 * @returns The term, for `viscosityByGrunbergNissan` at that temperature.
 * @throws CalculationError `input` where an argument is out of range or there are not two liquids.
 * @source grunberg-nissan-1949 from memory, solved for its term
 * @example
 * ```ts
 * import { grunbergNissanTerm } from "gelwright/oils";
 * const parts = [{ moles: 1, viscosity: 0.01 }, { moles: 1, viscosity: 0.1 }];
 * grunbergNissanTerm({ parts, viscosityBlend: 0.04 }); // => 0.9400072584914714
 * ```
 */
export function grunbergNissanTerm(input: {
  readonly parts: readonly MolarPart[];
  readonly viscosityBlend: number;
}): number {
  const { parts, viscosityBlend } = record(input, "input", known.grunbergNissanTerm);
  const fractions = fractionsOf(parts, "moles");
  const [first = 0, second = 0] = fractions;
  if (fractions.length !== 2 || first * second === 0)
    refuse("input", "parts", parts, "two liquids, with some of each in the blend");
  const ideal = meanOf(fractions, (i) => Math.log(viscosityAt(parts, i)));
  return result((Math.log(positive(viscosityBlend, "viscosityBlend")) - ideal) / (first * second), "term");
}
