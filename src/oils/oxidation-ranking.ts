import { fraction, list, notNegative, record, refuse, result, show } from "../guards.js";
import * as known from "./known.js";

/** An oil, and the heat it goes through in one order of work and in the other. */
export interface HeatedOil {
  /** What it is called. */
  readonly name: string;
  /** Oxidisability (Cox value, `profileValues`), 0 or more. */
  readonly oxidisability: number;
  /** Share of the product by mass, 0 to 1. */
  readonly massFraction: number;
  /** Time at the reference temperature of all these oils that does as much as its way as it is charged now [s], 0 or more. */
  readonly equivalentTime: number;
  /** The same if it is charged after the heat is off [s], 0 or more; the same figure where it already is. */
  readonly equivalentTimeOffHeat: number;
}

/** What heat does to one oil of a product. */
export interface OxidationBurden {
  readonly name: string;
  /** As long as the whole product, were it pure oleic acid, would have to stand at the reference temperature [s]. */
  readonly burden: number;
  /** The same if the oil is charged after the heat is off [s]. */
  readonly burdenOffHeat: number;
  /** What charging it after the heat is off takes away [s]; below 0 where it goes through more then. */
  readonly spared: number;
  /** What it has of all that the heat does [0 to 1]; 0 where the heat does nothing. */
  readonly share: number;
}

/**
 * Which oils to charge after the heat is off: what heat does to each, most to be spared first.
 *
 * $$b_i = w_i\,\mathrm{Cox}_i\,t_{\mathrm{eq},i} \qquad \Delta b_i = w_i\,\mathrm{Cox}_i\,(t_{\mathrm{eq},i} - t_{\mathrm{eq},i}^\mathrm{off}) \qquad s_i = \frac{b_i}{\sum_j b_j}$$
 *
 * The Cox value says how readily the oil oxidises beside oleic acid, the equivalent time (`thermalExposure` in `gelwright/heat`)
 * what the heat was, the share how much of the oil there is. It ranks: from which figure on an oil has to wait is yours
 * to say, and no figure here says how long one keeps, which tocopherols, peroxides, metals and light decide. That one
 * Cox value serves at every temperature is an approximation of ours, with no source.
 *
 * @param input.oils - The oils, at least one: Cox value, share of the product, and both equivalent times [s], all at one reference temperature.
 * @returns Each oil with its burden [s] and share, the one that gains most from waiting first; at equal gain, the one with the larger burden.
 * @throws CalculationError `input` where an argument is out of range.
 * @source fatemi-hammond-1980 for the Cox value; the product is a definition of ours
 * @example
 * ```ts
 * import { oxidationRanking } from "gelwright/oils";
 * const hot = { equivalentTime: 900_000, equivalentTimeOffHeat: 500_000 };
 * const [first] = oxidationRanking({
 *   oils: [
 *     { name: "high-oleic sunflower oil", oxidisability: 1.5, massFraction: 0.6, ...hot },
 *     { name: "rosehip oil", oxidisability: 12, massFraction: 0.1, ...hot },
 *   ],
 * });
 * first?.name; // => "rosehip oil"
 * first?.spared; // => 480000
 * ```
 */
export function oxidationRanking(input: { readonly oils: readonly HeatedOil[] }): readonly OxidationBurden[] {
  const burdens = list(record(input, "input", known.oxidationRanking).oils, "oils", 1).map((oil, i) => {
    const at = `oils[${i}]`;
    const { name, oxidisability, massFraction, equivalentTime, equivalentTimeOffHeat } = record(oil, at);
    if (typeof name !== "string" || name === "") refuse("input", `${at}.name`, show(name), "a name");
    const weight = fraction(massFraction, `${at}.massFraction`) * notNegative(oxidisability, `${at}.oxidisability`);
    const burden = result(weight * notNegative(equivalentTime, `${at}.equivalentTime`), "burden");
    const burdenOffHeat = result(weight * notNegative(equivalentTimeOffHeat, `${at}.equivalentTimeOffHeat`), "burden");
    return { name, burden, burdenOffHeat, spared: burden - burdenOffHeat };
  });
  const whole = result(
    burdens.reduce((sum, { burden }) => sum + burden, 0),
    "burden",
  );
  return burdens
    .map((oil) => ({ ...oil, share: whole === 0 ? 0 : oil.burden / whole }))
    .sort((one, other) => other.spared - one.spared || other.burden - one.burden);
}
