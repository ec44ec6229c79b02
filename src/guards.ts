/**
 * The guards that every kernel checks its arguments with. Internal: the package gives its users the error alone.
 *
 * A guard returns the value it was given, so that a kernel reads as its equation.
 */
import { CalculationError, type ErrorCode } from "./error.js";

/** Shows any value in a fault without ever throwing itself. */
export function show(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value.length > 60 ? `${value.slice(0, 57)}…` : value);
  if (typeof value === "number" || typeof value === "boolean" || value === null || value === undefined)
    return Object.is(value, -0) ? "-0" : String(value);
  if (typeof value === "bigint") return `${value}n`;
  return Array.isArray(value) ? `a list of ${value.length}` : `a value of type ${typeof value}`;
}

/** Throws with a single fault. */
export function refuse(code: ErrorCode, path: string, found: unknown, expected: string): never {
  throw new CalculationError(code, [{ path, found: typeof found === "string" ? found : show(found), expected }]);
}

/** The value, if it is a finite number. */
export function finite(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  return refuse("input", path, show(value), "a finite number");
}

/** The value, if it is a finite number above zero. */
export function positive(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value > 0) return value;
  return refuse("input", path, show(value), "a finite number above 0");
}

/** The value, if it is a finite number of zero or more. */
export function notNegative(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value >= 0) return value;
  return refuse("input", path, show(value), "a finite number of 0 or more");
}

/** The value, if it is a fraction from 0 to 1. */
export function fraction(value: unknown, path: string): number {
  if (typeof value === "number" && value >= 0 && value <= 1) return value;
  return refuse("input", path, show(value), "a fraction from 0 to 1");
}

/** The value, if it is a whole number from `min` to `max`. */
export function wholeNumber(value: unknown, path: string, min: number, max: number = Number.MAX_SAFE_INTEGER): number {
  if (typeof value === "number" && Number.isSafeInteger(value) && value >= min && value <= max) return value;
  const range = max < Number.MAX_SAFE_INTEGER ? `from ${min} to ${max}` : `of ${min} or more`;
  return refuse("input", path, show(value), `a whole number ${range}`);
}

/** The value, if it is a temperature in °C above absolute zero. */
export function temperature(value: unknown, path: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value > -273.15) return value;
  return refuse("input", path, show(value), "a temperature in °C above -273.15");
}

/** The value, if it is an object whose fields can be read. */
export function record<T extends object>(value: T, path: string): T {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return value;
  return refuse("input", path, show(value), "an object with named arguments");
}

/** The value, if it is a list with at least `min` members. */
export function list<T>(value: readonly T[], path: string, min = 0): readonly T[] {
  if (Array.isArray(value) && value.length >= min) return value;
  return refuse("input", path, show(value), min > 0 ? `a list of at least ${min}` : "a list");
}

/**
 * A result, if doubles could hold it: inputs that are each in range can still overflow or cancel
 * together, and then no number is better than a wrong one.
 */
export function result(value: number, path: string): number {
  if (Number.isFinite(value)) return value;
  return refuse("range", path, show(value), "inputs whose result a double can hold (about 1e-308 to 1e308)");
}
