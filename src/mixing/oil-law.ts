import { finite, fraction, list, positive, record, refuse } from "../guards.js";
import { polyline } from "../numeric/polyline.js";
import * as known from "./known.js";

/** One thing that was tried at one oil fraction. */
export interface OilPoint {
  /** Volume fraction of oil in oil and gel former, 0 to 1. */
  readonly volumeFractionOil: number;
  /** What was found there, above 0 [its own unit]. */
  readonly value: number;
}

/**
 * Something that goes with the oil in the vessel, as the bench found it: the share that is taken up at once [0 to 1, or
 * more], or the time that incorporation takes [s].
 */
export type OilLaw =
  /** The same at every oil fraction. */
  | {
      readonly law: "constant";
      /** Above 0 [its own unit]. */
      readonly value: number;
    }
  /** A straight line. */
  | {
      readonly law: "linear";
      /** With no oil in the vessel, above 0 [its own unit]. */
      readonly atNoOil: number;
      /** Rise over an oil fraction from 0 to 1 [its own unit]; below 0 it falls. */
      readonly perVolumeFraction: number;
    }
  /** Straight lines between points; what was not tried is not known. */
  | {
      readonly law: "table";
      /** Points in rising order of oil; at least two. */
      readonly points: readonly OilPoint[];
    };

/** A law that was checked: its value anywhere, and where it bends. */
export interface CompiledOilLaw {
  readonly at: (volumeFractionOil: number) => number;
  /** Volume fractions at which the line has a corner. */
  readonly corners: readonly number[];
}

/** Checks a law once, so that it can be asked often. */
export function compileOilLaw(law: OilLaw, path: string): CompiledOilLaw {
  record(law, path);
  if (law.law === "constant") {
    const value = positive(law.value, `${path}.value`);
    return { at: () => value, corners: [] };
  }
  if (law.law === "linear") {
    const start = positive(law.atNoOil, `${path}.atNoOil`);
    const rise = finite(law.perVolumeFraction, `${path}.perVolumeFraction`);
    return { at: (oil) => above(start + rise * oil, oil, path), corners: [] };
  }
  if (law.law === "table") return compileTable(law.points, `${path}.points`);
  return refuse("input", `${path}.law`, (law as OilLaw).law, '"constant", "linear" or "table"');
}

function above(value: number, oil: number, path: string): number {
  if (value > 0 && Number.isFinite(value)) return value;
  return refuse("range", path, value, `a law that stays above 0, also at an oil fraction of ${oil}`);
}

function compileTable(points: readonly OilPoint[], path: string): CompiledOilLaw {
  const corners: number[] = [];
  const values: number[] = [];
  list(points, path, 2).forEach((point, i) => {
    const at = `${path}[${i}]`;
    const oil = fraction(record(point, at).volumeFractionOil, `${at}.volumeFractionOil`);
    if (oil <= (corners.at(-1) ?? -1))
      refuse("input", `${at}.volumeFractionOil`, oil, "more oil than the point before");
    corners.push(oil);
    values.push(positive(point.value, `${at}.value`));
  });
  const [min = 0, max = 0] = [corners[0], corners.at(-1)];
  return {
    corners,
    at: (oil) => {
      // Volumes carry the noise of doubles: a hair past the last point is the last point.
      if (oil < min - 1e-12 || oil > max + 1e-12)
        refuse(
          "range",
          path,
          `an oil fraction of ${oil}`,
          `a table that reaches it; this one goes from ${min} to ${max}`,
        );
      return polyline(corners, values, oil);
    },
  };
}

/**
 * The value of a bench law at an oil fraction: the share that is taken up at once, or the incorporation time.
 *
 * $$f(\varphi) = f_0 \qquad f(\varphi) = f_0 + f_1\,\varphi \qquad f(\varphi) = f_i + (f_{i+1} - f_i)\,\frac{\varphi - \varphi_i}{\varphi_{i+1} - \varphi_i}$$
 *
 * @param input.law - A constant, a straight line, or a table with straight lines between its points.
 * @param input.volumeFractionOil - Volume fraction of oil in oil and gel former, 0 to 1.
 * @returns The value [unit of the law], above 0.
 * @throws CalculationError `input` where an argument is out of range; `range` where a line falls to 0 or a table does not reach.
 * @source definition
 * @example
 * ```ts
 * import { interpolateAtOilFraction } from "gelwright/mixing";
 * const share = {
 *   law: "table",
 *   points: [{ volumeFractionOil: 0, value: 0.02 }, { volumeFractionOil: 0.5, value: 0.05 }, { volumeFractionOil: 0.9, value: 0.1 }],
 * } as const;
 * interpolateAtOilFraction({ law: share, volumeFractionOil: 0.7 }).toFixed(3); // => "0.075"
 * ```
 */
export function interpolateAtOilFraction(input: { readonly law: OilLaw; readonly volumeFractionOil: number }): number {
  const { law, volumeFractionOil } = record(input, "input", known.interpolateAtOilFraction);
  const { at } = compileOilLaw(law, "law");
  return at(fraction(volumeFractionOil, "volumeFractionOil"));
}
