import { refuse, show } from "../guards.js";
import { ruleFor } from "./rule.js";
import type { DimensionOf, Unit } from "./unit.js";

/**
 * Converts every value of a typed array where it stands: all of them, or on an error none.
 *
 * @param values - The values [from]; a `Float64Array`, or a `Float32Array`, whose results are rounded to single precision.
 * @param from - Their unit.
 * @param to - The unit asked for, of the same dimension.
 * @returns The array itself, now in the other unit [to].
 * @throws CalculationError `input` for another kind of array and as `convert` does, with the index of the first bad
 * value; `range` where the array cannot hold a result.
 * @source nist-sp811 Appendix B
 * @example
 * ```ts
 * import { convertInPlace } from "gelwright/units";
 * convertInPlace(new Float64Array([20, 85]), "°C", "K")[1]; // => 358.15
 * ```
 */
export function convertInPlace<From extends Unit, Values extends Float64Array | Float32Array>(
  values: Values,
  from: From,
  to: Unit<DimensionOf<From>>,
): Values {
  // The tag and not the class: an array of another realm is as good.
  const kind = ArrayBuffer.isView(values) && Object.prototype.toString.call(values);
  const single = kind === "[object Float32Array]";
  if (!single && kind !== "[object Float64Array]")
    return refuse("input", "values", show(values), "a Float64Array or a Float32Array");
  const { run, rescue } = ruleFor(from, to);
  // A first pass only looks, so that a bad value leaves the array as it was.
  for (let i = 0; i < values.length; i++) {
    const converted = run(values[i] as number);
    if (converted - converted !== 0) rescue(values[i] as number, `values[${i}]`);
    if (single && Math.abs(Math.fround(converted)) === Number.POSITIVE_INFINITY)
      refuse("range", `values[${i}]`, show(values[i]), "a value whose result a Float32Array can hold");
  }
  for (let i = 0; i < values.length; i++) {
    const converted = run(values[i] as number);
    values[i] = converted - converted === 0 ? converted : rescue(values[i] as number, `values[${i}]`);
  }
  return values;
}
