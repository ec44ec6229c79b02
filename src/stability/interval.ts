import { positive, record, refuse } from "../guards.js";
import type { Interval } from "../laws/interval.js";

/** A positive number given as one value, or as a value with its bounds. */
export function positiveInterval(given: number | Interval, path: string): Interval {
  if (typeof given === "number") {
    const value = positive(given, path);
    return { min: value, value, max: value };
  }
  const { min, value, max } = record(given, path);
  const bounds = {
    min: positive(min, `${path}.min`),
    value: positive(value, `${path}.value`),
    max: positive(max, `${path}.max`),
  };
  if (!(bounds.min <= bounds.value && bounds.value <= bounds.max))
    refuse("input", path, `${min}, ${value}, ${max}`, "min, value and max in rising order");
  return bounds;
}

/** The interval of a function that rises or falls over the whole of another interval. */
export function through(interval: Interval, valueAt: (x: number) => number): Interval {
  const [one, value, other] = [valueAt(interval.min), valueAt(interval.value), valueAt(interval.max)];
  return { min: Math.min(one, other), value, max: Math.max(one, other) };
}
