import { notNegative, positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";
import { each } from "./named.js";
import type { WeighingTolerance } from "./tolerance.js";

/** One line of a batch record: what was planned and what went in. */
export interface WeighedLine {
  readonly name: string;
  /** Mass planned [kg], above 0. */
  readonly planned: number;
  /** Mass weighed in [kg], 0 or more. */
  readonly actual: number;
  /** Readings that were allowed [kg]. */
  readonly tolerance?: WeighingTolerance;
}

/** A batch after the event. */
export interface Reconciliation {
  readonly lines: readonly {
    readonly name: string;
    /** Share of the charge as planned [0 to 1]. */
    readonly massFractionPlanned: number;
    /** Share of the charge as weighed [0 to 1]. */
    readonly massFraction: number;
    /** Weighed less planned [kg]. */
    readonly deviation: number;
    /** The same relative to what was planned. */
    readonly deviationRelative: number;
    /** Whether the reading lay within its tolerance; left out where none was given. */
    readonly withinTolerance?: boolean;
  }[];
  /** Mass weighed in [kg]. */
  readonly charge: number;
  /** Delivered as a fraction of what was weighed in. */
  readonly yield: number;
  /** Weighed in less delivered and everything accounted for [kg]; below 0 where more came out than went in. */
  readonly unaccounted: number;
  /** The same as a fraction of what was weighed in. */
  readonly unaccountedFraction: number;
}

/**
 * A batch after the event: actual composition, deviations, yield, and what is unaccounted for.
 *
 * $$y = \frac{m_\mathrm{delivered}}{\sum_i m_i} \qquad m_? = \sum_i m_i - m_\mathrm{delivered} - \sum_j m_j$$
 *
 * The yield is relative to what was weighed in, which is what a batch without any loss would give.
 *
 * @param input.lines - Name, planned and actual mass [kg] of each line, and the readings allowed.
 * @param input.delivered - Finished product in the packs [kg], 0 or more.
 * @param input.accounted - What else is known to have left: samples, scrapings, waste, evaporation by weight; name and mass [kg].
 * @returns Lines with shares and deviations, charge [kg], yield, and what is unaccounted for [kg and fraction].
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source cfr-21-210
 * @example
 * ```ts
 * import { reconcile } from "gelwright/batch";
 * reconcile({
 *   lines: [{ name: "oil", planned: 36, actual: 36.02 }, { name: "gel former", planned: 4, actual: 3.98 }],
 *   delivered: 39.1,
 *   accounted: [{ name: "samples", mass: 0.3 }],
 * }).yield; // => 0.9775
 * ```
 */
export function reconcile(input: {
  readonly lines: readonly WeighedLine[];
  readonly delivered: number;
  readonly accounted: readonly { readonly name: string; readonly mass: number }[];
}): Reconciliation {
  const { lines, delivered, accounted } = record(input, "input", known.reconcile);
  const weighed = each(lines, "lines", (line, at) => ({
    ...record(line, at, known.weighedLine),
    at,
    planned: positive(line.planned, `${at}.planned`),
    actual: notNegative(line.actual, `${at}.actual`),
  }));
  const planned = result(
    weighed.reduce((sum, line) => sum + line.planned, 0),
    "planned charge",
  );
  const charge = result(
    positive(
      weighed.reduce((sum, line) => sum + line.actual, 0),
      "charge",
    ),
    "charge",
  );
  const gone = each(accounted, "accounted", ({ mass }, at) => notNegative(mass, `${at}.mass`), 0);
  const unaccounted = result(
    gone.reduce((rest, mass) => rest - mass, charge - notNegative(delivered, "delivered")),
    "unaccounted",
  );
  return {
    lines: weighed.map((line) => ({
      name: line.name,
      massFractionPlanned: line.planned / planned,
      massFraction: line.actual / charge,
      deviation: line.actual - line.planned,
      deviationRelative: result((line.actual - line.planned) / line.planned, line.at),
      ...(line.tolerance && { withinTolerance: within(line.actual, line.tolerance, `${line.at}.tolerance`) }),
    })),
    charge,
    yield: result(delivered / charge, "yield"),
    unaccounted,
    unaccountedFraction: result(unaccounted / charge, "unaccounted fraction"),
  };
}

function within(mass: number, tolerance: WeighingTolerance, path: string): boolean {
  const { min, max } = record(tolerance, path);
  if (notNegative(min, `${path}.min`) > positive(max, `${path}.max`))
    refuse("input", path, `${min} to ${max}`, "min not above max");
  return mass >= min && mass <= max;
}
