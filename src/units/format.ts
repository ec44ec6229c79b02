import { record, refuse, show, wholeNumber } from "../guards.js";
import { convertAt } from "./convert.js";
import * as known from "./known.js";
import { dimensionsWith, type Unit } from "./unit.js";

/**
 * Writes a quantity as text that `Quantity` and the parser take back.
 *
 * Without `significantDigits` the shortest text that reads back as the same number; with it, rounded to that many,
 * trailing zeros kept, and a power of ten only from 1e20 on or below 1e-6. Always a point, never a locale.
 *
 * @param value - The number [unit]; a temperature not below absolute zero.
 * @param unit - The unit, in the spelling in which it is to stand there.
 * @param options.significantDigits - How many digits count, 1 to 17.
 * @returns The number, a space, the unit.
 * @throws CalculationError `input` where the value is no finite number, the unit unknown, or the digits are not 1 to 17.
 * @source bipm-si-brochure section 5.4
 * @example
 * ```ts
 * import { formatQuantity } from "gelwright/units";
 * formatQuantity(0.8049, "kg", { significantDigits: 2 }); // => "0.80 kg"
 * formatQuantity(12345, "mPa·s", { significantDigits: 3 }); // => "12300 mPa·s"
 * ```
 */
export function formatQuantity<U extends Unit>(
  value: number,
  unit: U,
  options: { readonly significantDigits?: number } = {},
): `${number} ${U}` {
  const { significantDigits } = record(options, "options", known.formatQuantityOptions);
  if (dimensionsWith(unit).length === 0) return refuse("input", "unit", show(unit), "a unit such as kg or Pa·s");
  convertAt(value, unit, unit, "value");
  if (significantDigits === undefined) return `${value} ${unit}`;
  wholeNumber(significantDigits, "significantDigits", 1, 17);
  const rounded = value.toPrecision(significantDigits);
  // Rounding may step over absolute zero or over what a double holds, and then nothing could read the text.
  convertAt(Number(rounded), unit, unit, "value");
  // toPrecision writes 12345 to three digits as 1.23e+4; a batch sheet wants 12300.
  const plain = Math.abs(value) < 1e20 ? rounded.replace(/.*e\+.*/, (power) => String(Number(power))) : rounded;
  return `${plain} ${unit}` as `${number} ${U}`;
}
