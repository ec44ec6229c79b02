import { record, refuse } from "../guards.js";
import * as known from "./known.js";
import { type CheckedOil, checkOil, type OilToAdd, type VesselWithOil } from "./oil-to-add.js";
import { type Portions, portionsOf } from "./portions.js";

/** One addition of oil, and the vessel after it. */
export interface Addition extends VesselWithOil {
  /** Oil to add [kg]. */
  readonly mass: number;
  /** As a share of what was in the vessel. */
  readonly share: number;
  /** The maximum share that the law allows there. */
  readonly shareMax: number;
}

/** How the additions of a schedule grow. */
export type ScheduleForm = "largest" | "equal" | "geometric";

/** More additions than this are no schedule: stream the oil in. */
export const additionsMax = 10_000;
/** So many additions are planned in search of even ones: a share with a narrow dip lets none of ten thousand counts through. */
const plannedMax = 2_000_000;
/** Masses and shares carry the noise of doubles. */
const slack = 1e-12;

/**
 * The additions in which oil goes into a gel former, none of them larger than the share that is taken up at once.
 *
 * $$m_i \le f(\varphi_{i-1})\,M_{i-1} \qquad \sum_i m_i = m_\mathrm{oil}$$
 *
 * `largest`: each as large as its share allows, in the fewest steps; the last is the remainder. `equal`: all of the
 * same mass, small enough for the first. `geometric`: all of the same share, $(M_\mathrm{end}/M_0)^{1/n} - 1$. On a
 * balance each is rounded down, so that none exceeds its share; the last takes the remainder, so that the total is
 * exact, and if it would then exceed its share, there is one more addition.
 *
 * @param input - The oil to add: masses [kg], densities [kg/m³], the law of the share, the maximum oil fraction.
 * @param input.form - `"largest"` (default), `"equal"` or `"geometric"`.
 * @param input.increment - Smallest step of the balance [kg], above 0; default none. A total between two steps is kept: it stays with the last addition.
 * @returns The additions in order, at most 10,000.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where the oil passes the maximum oil fraction, or a share is less than the balance can read; `range` where the law does not reach, there would be too many, or no even ones were found in two million that were planned.
 * @source definition: the geometric series
 * @example
 * ```ts
 * import { additionSchedule } from "gelwright/mixing";
 * const schedule = additionSchedule({
 *   massGelFormer: 10,
 *   massToAdd: 90,
 *   densityOil: 915,
 *   densityGelFormer: 1250,
 *   share: { law: "constant", value: 0.1 },
 *   increment: 0.02,
 * });
 * schedule.length; // => 25
 * schedule.slice(0, 3).map((addition) => addition.mass); // => [1, 1.1, 1.2]
 * schedule.at(-1)?.massInVessel.toFixed(6); // => "100.000000"
 * ```
 */
export function additionSchedule(
  input: OilToAdd & { readonly form?: ScheduleForm; readonly increment?: number },
): readonly Addition[] {
  const { form = "largest", increment } = record(input, "input", known.additionSchedule);
  const oil = checkOil(input);
  const portions = portionsOf(oil.massToAdd, increment);
  if (form === "largest") return largest(oil, portions);
  if (form !== "equal" && form !== "geometric")
    return refuse("input", "form", form, '"largest", "equal" or "geometric"');
  // No form does with fewer than the largest additions do; the balance may ask for one more.
  const effort = { left: plannedMax };
  for (let count = largest(oil, portions).length; count <= additionsMax && effort.left > 0; count += 1) {
    const found = evenly(oil, portions, form, count, effort);
    if (found) return found;
  }
  return effort.left > 0 ? tooMany() : noneFound(form);
}

function noneFound(form: "equal" | "geometric"): never {
  return refuse(
    "range",
    "share",
    `no ${form} additions in ${plannedMax} that were planned`,
    "a share without a narrow dip, or the largest additions",
  );
}

function tooMany(): never {
  return refuse("range", "share", `more than ${additionsMax} additions`, "a larger share, or a continuous feed");
}

/** The vessel before an addition, and the most of it [units] that goes in at once. */
function before({ after, share }: CheckedOil, { mass, of }: Portions, done: number) {
  const vessel = after(mass(done));
  const shareMax = share.at(vessel.volumeFractionOil);
  return { vessel, shareMax, max: of(shareMax * vessel.massInVessel) };
}

function addition(oil: CheckedOil, { mass }: Portions, done: number, units: number, shareMax: number): Addition {
  const added = mass(units);
  return {
    mass: added,
    share: added / oil.after(mass(done)).massInVessel,
    shareMax,
    ...oil.after(mass(done + units)),
  };
}

function largest(oil: CheckedOil, portions: Portions): readonly Addition[] {
  const { total, step, down, mass } = portions;
  const additions: Addition[] = [];
  for (let done = 0; done < total; ) {
    if (additions.length === additionsMax) return tooMany();
    const { max, shareMax } = before(oil, portions, done);
    const left = total - done;
    const units = left <= max * (1 + slack) ? left : down(max);
    if (!(units > 0))
      return refuse(
        "unreachable",
        "increment",
        `a share of ${shareMax}, less than one step of ${mass(step)} kg`,
        "a balance with smaller steps, or a larger share",
      );
    // A share too small to move a double would never end.
    if (done + units === done) return tooMany();
    additions.push(addition(oil, portions, done, units, shareMax));
    // What is left and what was done may add up to a double short of the total, which is no addition of its own.
    done = units === left ? total : done + units;
  }
  return additions;
}

/** So many additions of one mass or one share, planned anew before each; nothing where one would pass its share. */
function evenly(
  oil: CheckedOil,
  portions: Portions,
  form: "equal" | "geometric",
  count: number,
  effort: { left: number },
): readonly Addition[] | undefined {
  const { total, step, of, down } = portions;
  const planned: (readonly [done: number, units: number, shareMax: number])[] = [];
  for (let done = 0; done < total; ) {
    const { vessel, max, shareMax } = before(oil, portions, done);
    const [left, inVessel] = [total - done, of(vessel.massInVessel)];
    const ahead = count - planned.length;
    const wanted = form === "equal" ? left / ahead : inVessel * Math.expm1(Math.log1p(left / inVessel) / ahead);
    const units = ahead <= 1 ? left : Math.min(left, Math.max(step, down(wanted)));
    effort.left -= 1;
    if (units > max * (1 + slack) || done + units === done) return undefined;
    planned.push([done, units, shareMax]);
    done = units === left ? total : done + units;
  }
  return planned.map(([done, units, shareMax]) => addition(oil, portions, done, units, shareMax));
}
