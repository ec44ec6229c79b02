import { convert, type Dimension, type Unit } from "../../units/index.js";
import type { Known } from "./types.js";

/** How many digits of a number count: significant ones, or decimals. */
export type Digits =
  | {
      /** Significant digits. */
      readonly significant: number;
    }
  | {
      /** Digits behind the decimal sign. */
      readonly decimals: number;
    };

/** Writes a number. */
export type NumberFormat = (value: number, digits: Digits) => string;

/** Units that a caller prefers, by dimension; a dimension that is left out is written in the unit of the sheet. */
export type PreferredUnits = { readonly [D in Dimension]?: Unit<D> };

/** A point, no separators between thousands, no zeros that say nothing after significant digits. */
export const plainNumber: NumberFormat = (value, digits) =>
  "decimals" in digits ? value.toFixed(digits.decimals) : String(Number(value.toPrecision(digits.significant)));

/** Whether there is a number to write. */
export function isKnown(value: Known): value is number {
  return typeof value === "number" && Number.isFinite(value);
}

/** Writes a number of one dimension: in the unit that a caller prefers, else in the one of the sheet for its size; if short, without decimals that are zeros. */
export function unitWriter<D extends Dimension>(
  dimension: D,
  base: Unit<D>,
  unitFor: (value: number) => Unit<D>,
  {
    units,
    format,
    isShort,
  }: { readonly units: PreferredUnits; readonly format: NumberFormat; readonly isShort?: boolean },
): (value: number, digits: Digits) => string {
  const preferred = units[dimension] as Unit<D> | undefined;
  return (value, digits) => {
    const unit = preferred ?? unitFor(value);
    // Both are units of one dimension; the compiler does not see it through the parameter.
    const converted = convert(value, base as Unit, unit as never);
    const written = isShort ? withoutZeros(converted, digits) : digits;
    return `${format(converted, written)} ${unit.replace("Δ", "")}`;
  };
}

/** No decimals where they would be zeros. */
function withoutZeros(value: number, digits: Digits): Digits {
  return "decimals" in digits && Number.isInteger(Number(value.toFixed(digits.decimals))) ? { decimals: 0 } : digits;
}
