import { notNegative, positive, record, refuse, result } from "../guards.js";
import { stepsUp } from "../numeric/decimal.js";
import * as known from "./known.js";
import { each, text } from "./named.js";

/** A balance or scale. */
export interface Balance {
  readonly name: string;
  /** Smallest step of the display [kg]. */
  readonly increment: number;
  /** Largest load [kg], the container included. */
  readonly capacity: number;
  /** Smallest net mass [kg] that it weighs closely enough: from `minimumWeight`, or from its certificate. */
  readonly minimumWeight: number;
}

/** More weighings of one line than this are a slip in the figures, not a way to weigh. */
const portionsMax = 1000;

/**
 * The smallest net mass that a balance weighs to a stated relative uncertainty, from its repeatability.
 *
 * $$m_\mathrm{min} = \frac{2\,\max(s,\ 0.41\,d)}{u}$$
 *
 * The mass of the container does not count, only the net mass.
 *
 * @param input.standardDeviation - Standard deviation of at least ten weighings of one weight [kg], 0 or more.
 * @param input.increment - Smallest step d of the display [kg], above 0.
 * @param input.uncertainty - Relative uncertainty u [above 0 to 1]; default 0.001, as the source asks of an assay.
 * @returns Smallest net mass [kg].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source usp-41
 * @example
 * ```ts
 * import { minimumWeight } from "gelwright/batch";
 * minimumWeight({ standardDeviation: 0.00004, increment: 0.0001, uncertainty: 0.01 }); // => 0.0082
 * ```
 */
export function minimumWeight(input: {
  readonly standardDeviation: number;
  readonly increment: number;
  readonly uncertainty?: number;
}): number {
  const { standardDeviation, increment, uncertainty = 0.001 } = record(input, "input", known.minimumWeight);
  const spread = Math.max(notNegative(standardDeviation, "standardDeviation"), 0.41 * positive(increment, "increment"));
  if (positive(uncertainty, "uncertainty") > 1) refuse("input", "uncertainty", uncertainty, "a fraction up to 1");
  return result((2 * spread) / uncertainty, "minimum weight");
}

/**
 * The balance for a mass: the finest whose range from minimum weight to capacity includes it, in as few portions as possible.
 *
 * A mass above every capacity is weighed in equal portions. One below every minimum weight is refused: weigh a larger
 * batch, a finer balance, or a premix that carries it.
 *
 * @param input.name - The line, for the message.
 * @param input.mass - Mass to weigh [kg], above 0.
 * @param input.balances - What there is to choose from: name, increment, capacity and minimum weight [kg] of each.
 * @param input.tare - Mass of the container on the balance [kg], 0 or more; default 0.
 * @returns The balance and the number of equal portions.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no balance can weigh the mass.
 * @source common practice, no source
 * @example
 * ```ts
 * import { chooseBalance } from "gelwright/batch";
 * chooseBalance({
 *   name: "gel former",
 *   mass: 4.2,
 *   balances: [
 *     { name: "bench", increment: 0.001, capacity: 6, minimumWeight: 0.05 },
 *     { name: "floor", increment: 0.02, capacity: 150, minimumWeight: 2 },
 *   ],
 * }).increment; // => 0.001
 * ```
 */
export function chooseBalance<B extends Balance>(input: {
  readonly name: string;
  readonly mass: number;
  readonly balances: readonly B[];
  readonly tare?: number;
}): { readonly balance: B; readonly portions: number; readonly increment: number } {
  const { name, mass, balances, tare = 0 } = record(input, "input", known.chooseBalance);
  text(name, "name");
  positive(mass, "mass");
  notNegative(tare, "tare");
  const choices = each(balances, "balances", (balance, at) => {
    const increment = positive(balance.increment, `${at}.increment`);
    const room = positive(balance.capacity, `${at}.capacity`) - tare;
    const min = notNegative(balance.minimumWeight, `${at}.minimumWeight`);
    return {
      balance,
      increment,
      min,
      portions: room > 0 ? Math.max(1, stepsUp(mass / room)) : Number.POSITIVE_INFINITY,
    };
  }).filter(({ min, portions }) => portions <= portionsMax && mass / portions >= min);
  const [best] = choices.sort((a, b) => a.portions - b.portions || a.increment - b.increment);
  if (best) return { balance: best.balance, portions: best.portions, increment: best.increment };
  return refuse(
    "unreachable",
    name,
    `${Number(mass.toPrecision(4))} kg, which no balance can weigh (${balances.map((b) => `${b.name}: ${b.minimumWeight} to ${b.capacity} kg`).join(", ")})`,
    "a mass within one of them: a larger batch, another balance, or a premix that carries this line",
  );
}
