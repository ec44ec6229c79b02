import { ruleFor } from "./rule.js";
import type { DimensionOf, Unit } from "./unit.js";

/** The value in another unit; a fault names `path`. */
export function convertAt(value: number, from: string, to: string, path: string): number {
  const { run, rescue } = ruleFor(from, to);
  const converted = typeof value === "number" ? run(value) : Number.NaN;
  return converted - converted === 0 ? converted : rescue(value, path);
}

/**
 * A value in another unit of the same dimension.
 *
 * $$y = \frac{x\,n}{d}, \qquad y = \frac{x\,n + o}{d} \text{ for temperatures}$$
 *
 * n, d and o are the whole numbers of the exact conversion in lowest terms. The result is correctly rounded wherever
 * n, d and x·n are exact doubles, so that whole numbers stay whole; otherwise it is within 2 ulp. A temperature is
 * within 2⁻⁵² (|x·n/d| + |y|). The same unit gives the value itself.
 *
 * @param value - The value [from]; a temperature not below absolute zero.
 * @param from - Its unit, in the SI or the ASCII spelling.
 * @param to - The unit asked for, of the same dimension.
 * @returns The value [to].
 * @throws CalculationError `input` where the value is no finite number, a unit is unknown, the two are of different
 * dimensions, or a temperature lies below absolute zero; `range` where a double cannot hold the result.
 * @source nist-sp811 Appendix B
 * @example
 * ```ts
 * import { convert } from "gelwright/units";
 * convert(1, "ft", "in"); // => 12
 * convert(82, "°C", "°F"); // => 179.6
 * ```
 */
export function convert<From extends Unit>(value: number, from: From, to: Unit<DimensionOf<From>>): number {
  return convertAt(value, from, to, "value");
}

/**
 * The conversion between two units as a function for inner loops: the units are looked up once.
 *
 * @param from - The unit of the values that the function takes.
 * @param to - The unit of what it gives, of the same dimension.
 * @returns A function of one value [from] that gives it in the other unit [to], and refuses as `convert` does.
 * @throws CalculationError `input` where a unit is unknown or the two are of different dimensions.
 * @source nist-sp811 Appendix B
 * @example
 * ```ts
 * import { converter } from "gelwright/units";
 * const toPascalSeconds = converter("cP", "Pa·s");
 * toPascalSeconds(4500); // => 4.5
 * ```
 */
export function converter<From extends Unit>(from: From, to: Unit<DimensionOf<From>>): (value: number) => number {
  const { run, rescue } = ruleFor(from, to);
  return (value) => {
    const converted = typeof value === "number" ? run(value) : Number.NaN;
    return converted - converted === 0 ? converted : rescue(value, "value");
  };
}
