/**
 * The guards that every kernel checks its arguments with. Internal: the package gives its users the error alone.
 *
 * A guard returns the value it was given, so that a kernel reads as its equation.
 */
import { CalculationError, type ErrorCode, type FaultParameters, type FaultRule } from "./error.js";

/** Shows any value in a fault without ever throwing itself. */
export function show(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}…` : value);
  if (typeof value === "number" || typeof value === "boolean" || value === null || value === undefined)
    return Object.is(value, -0) ? "-0" : String(value);
  if (typeof value === "bigint") return `${value}n`;
  return Array.isArray(value) ? `a list of ${value.length}` : `a value of type ${typeof value}`;
}

/** Throws with a single fault. A finite number that was found goes with it as a number, and so do the ends of the range. */
export function refuse(
  code: ErrorCode,
  path: string,
  found: unknown,
  expected: string,
  more: FaultParameters & { readonly rule?: FaultRule } = {},
): never {
  const { rule = ruleOf(code, found), ...given } = more;
  const value = typeof found === "number" && Number.isFinite(found) ? { value: found } : {};
  const parameters = { ...value, ...given };
  const fault = { path, found: typeof found === "string" ? found : show(found), expected, rule };
  throw new CalculationError(code, [Object.keys(parameters).length > 0 ? { ...fault, parameters } : fault]);
}

/** The rule that a refusal speaks of, as far as its code and the value tell. */
function ruleOf(code: ErrorCode, found: unknown): FaultRule {
  if (code === "unreachable" || code === "not-converged") return code;
  if (found === undefined) return "missing";
  if (code === "range" || typeof found === "number") return "out-of-range";
  return "not-allowed";
}

/** Throws about an argument of the wrong type or beyond its range. */
function refuseArgument(path: string, found: unknown, type: string, expected: string): never {
  const own = Array.isArray(found) ? "list" : typeof found;
  const rule = found === undefined ? "missing" : own === type ? "out-of-range" : "wrong-type";
  return refuse("input", path, show(found), expected, { rule });
}

/** The value, if it is a finite number. */
export function finite(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  return refuseArgument(path, value, "number", "a finite number");
}

/** The value, if it is a finite number above zero. */
export function positive(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value > 0) return value;
  return refuseArgument(path, value, "number", "a finite number above 0");
}

/** The value, if it is a finite number of zero or more. */
export function notNegative(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value >= 0) return value;
  return refuseArgument(path, value, "number", "a finite number of 0 or more");
}

/** The value, if it is a fraction from 0 to 1. */
export function fraction(value: unknown, path: string): number {
  if (typeof value === "number" && value >= 0 && value <= 1) return value;
  return refuseArgument(path, value, "number", "a fraction from 0 to 1");
}

/** The value, if it is a number above `above` and below `below`. */
export function within(value: unknown, path: string, above: number, below: number): number {
  if (typeof value === "number" && value > above && value < below) return value;
  return refuseArgument(path, value, "number", `a number above ${above} and below ${below}`);
}

/** The value, if it is a whole number from `min` to `max`. */
export function wholeNumber(value: unknown, path: string, min: number, max: number = Number.MAX_SAFE_INTEGER): number {
  if (typeof value === "number" && Number.isSafeInteger(value) && value >= min && value <= max) return value;
  const range = max < Number.MAX_SAFE_INTEGER ? `from ${min} to ${max}` : `of ${min} or more`;
  return refuseArgument(path, value, "number", `a whole number ${range}`);
}

/** The value, if it is a temperature in °C above absolute zero. */
export function temperature(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value > -273.15) return value;
  return refuseArgument(path, value, "number", "a temperature in °C above -273.15");
}

/** The names that an object of arguments may have: those that it needs, then those that it may be given. */
export type Known = readonly [needed: readonly string[], optional: readonly string[]];

/**
 * The value, if it is an object whose fields can be read, and has none but those that are `known`, where they are given.
 *
 * The count of its fields tells at little cost that all is well: a kernel refuses an object that lacks what it needs, so
 * one with no more fields than it needs has nothing else. The names are only looked at where there are more.
 */
export function record<T extends object>(value: T, path: string, known?: Known): T {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    return refuseArgument(path, value, "record", "an object with named arguments");
  if (known !== undefined) {
    let count = 0;
    for (const _ in value) count++;
    if (count > known[0].length) nothingElse(value, path, known);
  }
  return value;
}

/** As `record`, for an object whose `tag` says which of several kinds it is; of a kind that there is not, the caller speaks. */
export function variant<T extends object>(
  value: T,
  path: string,
  tag: keyof T & string,
  known: Readonly<Record<string, Known>>,
): T {
  const kind = record(value, path)[tag] as unknown;
  const names = typeof kind === "string" ? known[kind] : undefined;
  // What every object inherits, such as a constructor, is no list of names.
  return Array.isArray(names) ? record(value, path, names as unknown as Known) : value;
}

/** Refuses the first field of an object that is not known, and asks for the known one that it is most like. */
function nothingElse(value: object, path: string, [needed, optional]: Known): void {
  let next = 0;
  for (const name in value) {
    // Most callers give what is needed first, in the order of the type.
    if (next < needed.length && name === needed[next]) next++;
    else if (!optional.includes(name) && !needed.includes(name) && Object.hasOwn(value, name))
      refuseName(value, path, name, [...needed, ...optional]);
  }
}

function refuseName(value: object, path: string, name: string, all: readonly string[]): never {
  const near = nearest(
    name,
    all.filter((one) => !Object.hasOwn(value, one)),
  );
  const expected = near === undefined ? `: there are ${all.join(", ")}` : didYouMean(near);
  return refuse(
    "input",
    path === "input" ? name : `${path}.${name}`,
    `the argument ${name}`,
    `no such argument${expected}`,
    { rule: "unknown-field", name, ...(near === undefined ? { allowed: all } : { nearest: near }) },
  );
}

/** The value, if it is a list with at least `min` members and none left out: a hole would be skipped in silence. */
export function list<T>(value: readonly T[], path: string, min = 0): readonly T[] {
  if (!Array.isArray(value) || value.length < min)
    return refuseArgument(path, value, "list", min > 0 ? `a list of at least ${min}` : "a list");
  for (let i = 0; i < value.length; i++)
    if (value[i] === undefined) refuse("input", `${path}[${i}]`, undefined, "a member at each place of the list");
  return value;
}

/**
 * A result, if doubles could hold it: inputs that are each in range can still overflow or cancel
 * together, and then no number is better than a wrong one.
 */
export function result(value: number, path: string): number {
  if (Number.isFinite(value)) return value;
  return refuse("range", path, show(value), "inputs whose result a double can hold (about 1e-308 to 1e308)");
}

/** The name that is fewest changes of a letter away, if it is near enough to be a slip. */
export function nearest(found: string, known: readonly string[]): string | undefined {
  const lower = found.toLowerCase();
  const ranked = known
    .map((name) => ({ name, distance: distanceOf(lower, name.toLowerCase()) }))
    .sort((one, other) => one.distance - other.distance);
  const [first] = ranked;
  return first && first.distance < first.name.length && first.distance <= Math.ceil(first.name.length / 3)
    ? first.name
    : undefined;
}

/** The question after the expectation, if there is something near to ask for. */
export function didYouMean(near: string | undefined): string {
  return near === undefined ? "" : `; did you mean ${near}?`;
}

/** Insertions, deletions and replacements between two words (Levenshtein), on one row of the table. */
function distanceOf(one: string, other: string): number {
  if (Math.abs(one.length - other.length) > 8 || one.length > 60) return Number.POSITIVE_INFINITY;
  let row = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++)
      next[j] = Math.min(
        (row[j] as number) + 1,
        (next[j - 1] as number) + 1,
        (row[j - 1] as number) + (one[i - 1] === other[j - 1] ? 0 : 1),
      );
    row = next;
  }
  return row[other.length] as number;
}
