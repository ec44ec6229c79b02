import { finite, list, positive, record, refuse, result, temperature } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { leastSquares } from "../numeric/least-squares.js";
import * as known from "./known.js";

/** A kinematic viscosity that was read at a temperature. */
export interface KinematicReading {
  /** Temperature [°C]. */
  readonly temperature: number;
  /** Kinematic viscosity [m²/s], above 2 mm²/s. */
  readonly kinematicViscosity: number;
}

/** The straight line of Walther's chart. */
export interface WaltherLine {
  /** A [-]. */
  readonly intercept: number;
  /** B [-], above 0. */
  readonly slope: number;
}

/** m² in one mm². */
const square = 1e-6;
/** Below this [mm²/s] the constant is not 0.7 any more. */
const thinnest = 2;
const constant = 0.7;

function thickEnough(viscosity: number, extended: boolean, path: string): number {
  const expected = 'more than 2e-6 m²/s, where the constant is 0.7, or beyond: "extend"';
  return extended || viscosity > thinnest * square ? viscosity : refuse("range", path, viscosity, expected);
}

/**
 * The line of the viscosity–temperature chart through kinematic viscosities read at two or more temperatures.
 *
 * $$\log_{10}\log_{10}(\nu + 0.7) = A - B\log_{10}T \qquad \nu \text{ in mm}^2/\text{s}$$
 *
 * Made for mineral oils; vegetable oils follow it well between 20 and 100 °C (common practice, no source). Least
 * squares in the doubled logarithm; through two readings the line is exact.
 *
 * @param input.points - The readings: temperature [°C] and kinematic viscosity [m²/s], at two or more temperatures.
 * @param input.beyond - For readings of 2 mm²/s and less: `"throw"` (default) or `"extend"`.
 * @returns Intercept and slope of the line [-].
 * @throws CalculationError `input` for readings that are too few or none, `range` for thin ones, `unreachable` where
 *   the viscosity does not fall with rising temperature.
 * @source astm-d341 from memory
 * @example
 * ```ts
 * import { fitWalther, waltherViscosityAt } from "gelwright/rheology";
 * const points = [
 *   { temperature: 40, kinematicViscosity: 30e-6 },
 *   { temperature: 100, kinematicViscosity: 5.23e-6 },
 * ];
 * waltherViscosityAt({ ...fitWalther({ points }), temperature: 50 }); // => 0.000020314134098509906
 * ```
 */
export function fitWalther(input: {
  readonly points: readonly KinematicReading[];
  readonly beyond?: Beyond;
}): WaltherLine {
  const { points, beyond } = record(input, "input", known.fitWalther);
  const extended = extending(beyond);
  const rows = list(points, "points", 2).map((point, i) => {
    const at = `points[${i}]`;
    const { temperature: warmth, kinematicViscosity } = record(point, at);
    const viscosity = thickEnough(positive(kinematicViscosity, `${at}.kinematicViscosity`), extended, at);
    const inner = Math.log10(viscosity / square + constant);
    if (!(inner > 0)) refuse("range", at, viscosity, "more than 0.3e-6 m²/s, where the logarithm ends");
    return { x: -Math.log10(temperature(warmth, `${at}.temperature`) + kelvin), y: Math.log10(inner) };
  });
  const right = Float64Array.from(rows, ({ y }) => y);
  const line = leastSquares([right.map(() => 1), Float64Array.from(rows, ({ x }) => x)], right);
  if (!line) return refuse("input", "points", "one temperature", "readings at two or more temperatures");
  const [intercept = 0, slope = 0] = line.coefficients;
  if (!(slope > 0))
    refuse("unreachable", "points", "a viscosity that does not fall", "viscosities that fall as it warms");
  return { intercept: result(intercept, "intercept"), slope: result(slope, "slope") };
}

/**
 * The kinematic viscosity at a temperature, on the line of the viscosity–temperature chart.
 *
 * $$\nu = 10^{10^{A - B\log_{10}T}} - 0.7 \qquad \nu \text{ in mm}^2/\text{s}$$
 *
 * @param input.intercept - A of the line [-].
 * @param input.slope - B of the line [-], above 0.
 * @param input.temperature - Temperature [°C].
 * @param input.beyond - Where the result is 2 mm²/s or less: `"throw"` (default) or `"extend"`.
 * @returns Kinematic viscosity [m²/s]; times the density it is the viscosity in Pa·s.
 * @throws CalculationError `input` where an argument is out of range, `range` for a thin result.
 * @source astm-d341 from memory
 * @example
 * ```ts
 * import { waltherViscosityAt } from "gelwright/rheology";
 * waltherViscosityAt({ intercept: 9.48716015, slope: 3.73226475, temperature: 50 }); // => 0.00002031413442615288
 * ```
 */
export function waltherViscosityAt(input: {
  readonly intercept: number;
  readonly slope: number;
  readonly temperature: number;
  readonly beyond?: Beyond;
}): number {
  const { intercept, slope, temperature: warmth, beyond } = record(input, "input", known.waltherViscosityAt);
  const extended = extending(beyond);
  const power =
    10 **
    (finite(intercept, "intercept") -
      positive(slope, "slope") * Math.log10(temperature(warmth, "temperature") + kelvin));
  const viscosity = result(square * (10 ** power - constant), "kinematic viscosity");
  return thickEnough(viscosity, extended, "kinematic viscosity");
}
