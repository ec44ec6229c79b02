import { positive, record, refuse } from "../guards.js";
import { increment as decimal, multiple, stepsDown, stepsUp } from "../numeric/decimal.js";
import * as known from "./known.js";

/** The readings between which a weighing is accepted [kg]. */
export interface WeighingTolerance {
  /** Smallest reading [kg]. */
  readonly min: number;
  /** Largest reading [kg]. */
  readonly max: number;
}

/**
 * The readings between which a weighing is accepted, never tighter than one step of the balance.
 *
 * $$|m_\mathrm{read} - m| \le \max(r\,m,\ d)$$
 *
 * Both limits are readings that the balance can show. A limit of the ingredient bounds the upper one.
 *
 * @param input.mass - Mass to weigh [kg], above 0: as rounded to the balance.
 * @param input.increment - Smallest step d of the balance [kg], above 0 and below the mass.
 * @param input.relative - Relative tolerance r, above 0 and below 1.
 * @param input.massMax - The most of this line that the batch may hold [kg], not below the mass; default no limit.
 * @returns Smallest and largest reading [kg].
 * @throws CalculationError `input` where an argument is out of range.
 * @source common practice, no source
 * @example
 * ```ts
 * import { weighingTolerance } from "gelwright/batch";
 * weighingTolerance({ mass: 4.2, increment: 0.001, relative: 0.005 }); // => { min: 4.179, max: 4.221 }
 * ```
 */
export function weighingTolerance(input: {
  readonly mass: number;
  readonly increment: number;
  readonly relative: number;
  readonly massMax?: number;
}): WeighingTolerance {
  const { mass, increment, relative, massMax = Number.MAX_VALUE } = record(input, "input", known.weighingTolerance);
  const step = decimal(increment, "increment");
  if (!(increment < positive(mass, "mass")))
    refuse("input", "increment", increment, `a step below the mass, ${mass} kg`);
  if (positive(relative, "relative") >= 1) refuse("input", "relative", relative, "a fraction below 1");
  if (positive(massMax, "massMax") * (1 + 1e-12) < mass)
    refuse("input", "massMax", massMax, `a limit not below the mass, ${mass} kg`);
  const half = Math.max(relative * mass, increment);
  return {
    min: multiple(Math.max(1, stepsUp((mass - half) / increment)), step, "min"),
    max: multiple(stepsDown(Math.min(mass + half, massMax) / increment), step, "max"),
  };
}
