import { notNegative, positive, record, refuse } from "../guards.js";
import { increment as decimal, multiple, slack, stepsDown, stepsUp } from "../numeric/decimal.js";
import { minOf } from "../numeric/extremes.js";
import { apportion } from "./apportion.js";
import * as known from "./known.js";
import { each } from "./named.js";

/** A line to be rounded to the balance it is weighed on. */
export interface LineToRound {
  readonly name: string;
  /** Exact mass [kg]: 0, or not below one increment. */
  readonly mass: number;
  /** Smallest step of its balance [kg]. */
  readonly increment: number;
  /** True for the line that takes what rounding leaves over (q.s.); at most one. */
  readonly carrier?: boolean;
  /** The most that the batch may hold of it [kg], not below the mass: rounding never goes above. */
  readonly massMax?: number;
}

/** Masses that the balances can show. */
export interface RoundedLines {
  readonly lines: readonly {
    readonly name: string;
    /** Mass to weigh [kg], a whole number of increments. */
    readonly mass: number;
    /** Rounded less exact [kg]. */
    readonly deviation: number;
  }[];
  /** Sum of the rounded masses [kg], exact as a decimal. */
  readonly total: number;
  /** The total that was asked for [kg]. */
  readonly totalTarget: number;
  /** Whether the total is the one wanted; if not, it is the next above that the balances can reach. */
  readonly onGrid: boolean;
}

/**
 * Rounds every line to its balance, so that the lines still add up to the batch.
 *
 * Each line is rounded down or up by less than one increment. Which ones go up is settled by the largest remainder
 * among the lines of one increment (of equal ones the first), and between increments by an exact search: the total is the smallest that the
 * balances can reach and that is not below the one wanted, with the smallest deviation in all. Only where the lines alone
 * cannot reach it, the carrier takes the rest, by more than one increment if need be.
 *
 * @param input.lines - Name, exact mass [kg], increment [kg], and what else binds each line.
 * @param input.totalMin - Total wanted [kg]; default the sum of the exact masses.
 * @returns Rounded lines, their exact total, and whether it is the total wanted [kg].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where a line is below one increment of its balance, or limits keep the lines below the total; `range` where there are too many steps to count.
 * @source comap-2016 chapter 14 (largest remainder: Hamilton's method)
 * @example
 * ```ts
 * import { roundToBalances } from "gelwright/batch";
 * roundToBalances({
 *   lines: [
 *     { name: "oil", mass: 36.1446, increment: 0.001, carrier: true },
 *     { name: "gel former", mass: 4.0161, increment: 0.001 },
 *     { name: "fragrance", mass: 0.2093, increment: 0.001 },
 *   ],
 * }).total; // => 40.37
 * ```
 */
export function roundToBalances(input: {
  readonly lines: readonly LineToRound[];
  readonly totalMin?: number;
}): RoundedLines {
  const { lines, totalMin } = record(input, "input", known.roundToBalances);
  const read = each(lines, "lines", readLine);
  const [, second] = read.filter((line) => line.carrier);
  if (second) refuse("input", `${second.at}.carrier`, true, "one carrier at most");
  const totalTarget = positive(totalMin ?? read.reduce((sum, line) => sum + line.mass, 0), "total");

  // All masses as whole numbers of the finest decimal place that any increment has.
  const exponent = minOf(read.map((line) => line.exponent));
  const candidates = read.map((line) => ({
    ...line,
    unit: multiple(1, { ...line, exponent: line.exponent - exponent }, line.at),
  }));
  const counts = apportion(candidates, stepsUp(totalTarget / 10 ** exponent));
  const units = candidates.reduce((sum, { unit }, i) => sum + (counts[i] as number) * unit, 0);
  const total = multiple(units, { digits: 1, exponent }, "total");
  return {
    lines: candidates.map((line, i) => {
      const mass = multiple(counts[i] as number, line, line.at);
      return { name: line.name, mass, deviation: mass - line.mass };
    }),
    total,
    totalTarget,
    onGrid: total <= totalTarget * (1 + slack),
  };
}

function readLine({ name, mass, increment, carrier = false, massMax = Number.MAX_VALUE }: LineToRound, at: string) {
  if (typeof carrier !== "boolean") refuse("input", `${at}.carrier`, carrier, "true or false");
  const step = decimal(increment, `${at}.increment`);
  const steps = notNegative(mass, `${at}.mass`) / increment;
  const floor = stepsDown(steps);
  if (mass > 0 && floor === 0)
    refuse("unreachable", at, `${mass} kg of ${name}`, `at least one increment, ${increment} kg`);
  const max = stepsDown(positive(massMax, `${at}.massMax`) / increment);
  if (steps * (1 - slack) > massMax / increment) refuse("input", at, mass, `at most its limit, ${massMax} kg`);
  // A remainder within the noise of doubles is none: the mass lies on the grid.
  const remainder = steps - floor > slack * steps ? steps - floor : 0;
  return { ...step, name, at, mass, floor, remainder, max, carrier };
}
