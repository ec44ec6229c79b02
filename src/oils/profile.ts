import { CalculationError, type Fault } from "../error.js";
import { finite, list, notNegative, refuse, show } from "../guards.js";
import { type Acid, acidOf, shorthandWanted } from "./shorthand.js";

/** Fatty acids by their shorthand, each in percent by mass of all fatty acids of the oil. */
export type Profile = Readonly<Record<string, number>>;

/** Minimum and maximum, both included. */
export type Range = readonly [min: number, max: number];

/** Fatty acids by their shorthand, each with its limits in percent by mass of all fatty acids of the oil. */
export type ProfileRanges = Readonly<Record<string, Range>>;

/** One acid of a profile with what stands beside it. */
export interface Entry<T> {
  readonly acid: Acid;
  readonly value: T;
}

/** The acids of a profile, given as a list; keys that are no shorthand, acids that come twice and faults of the values go to `faults`. */
export function entriesOf<T>(
  percentages: readonly (readonly [key: string, value: T])[],
  path: string,
  faults: Fault[],
  faultOf: (value: T) => string | undefined,
): readonly Entry<T>[] {
  const entries = percentages.flatMap(([key, value]) => {
    const acid = acidOf(key);
    const expected = acid ? faultOf(value) : shorthandWanted;
    if (expected !== undefined) faults.push({ path: `${path}.${key}`, found: show(acid ? value : key), expected });
    return acid ? [{ acid, value }] : [];
  });
  const seen = new Set<string>();
  for (const { acid } of entries) {
    if (seen.has(acid.shorthand)) faults.push({ path, found: `${acid.shorthand} twice`, expected: "each acid once" });
    seen.add(acid.shorthand);
  }
  return entries;
}

/** A profile, as a list, after its checks: every key a fatty acid, every value a percentage, the sum near 100. */
export function sharesOf(
  percentages: readonly (readonly [key: string, value: number])[],
  sumTolerance: number | undefined,
  path = "profile",
): readonly Entry<number>[] {
  const tolerance = notNegative(sumTolerance ?? 1, "sumTolerance");
  const faults: Fault[] = [];
  const entries = entriesOf(percentages, path, faults, (value) =>
    typeof value === "number" && value >= 0 && value <= 100 ? undefined : "a percentage from 0 to 100",
  );
  if (faults.length) throw new CalculationError("input", faults);
  // Only now is each value a number.
  const sum = entries.reduce((total, { value }) => total + value, 0);
  if (!(sum > 0 && Math.abs(sum - 100) <= tolerance + 1e-9))
    refuse(
      "input",
      path,
      `a sum of ${Number(sum.toPrecision(9))} %`,
      `100 % within ${tolerance}, or a greater sumTolerance`,
    );
  return entries;
}

/** The range, if it is one within the limits. */
export function range(value: Range, path: string, limits: Range = [-Number.MAX_VALUE, Number.MAX_VALUE]): Range {
  const [min, max] = list(value, path, 2) as Range;
  if (finite(min, `${path}[0]`) < limits[0] || finite(max, `${path}[1]`) > limits[1] || min > max)
    return refuse("input", path, `${min} to ${max}`, "the minimum before the maximum, each within its limits");
  return value;
}
