import { maxOf } from "../numeric/extremes.js";
import { studentT } from "../numeric/student.js";

/** A straight line through points, by least squares. */
export interface StraightLine {
  readonly slope: number;
  /** The line at a place. */
  at(place: number): number;
  /** What each value has beyond the line, in the order of the points. */
  readonly residuals: readonly number[];
  /** How far the slope may be off, to either side; undefined where two points leave nothing to judge by. */
  slopeDoubt(confidence: number): number | undefined;
  /** How far the line itself may be off at a place, to either side; undefined where two points leave nothing to judge by. */
  doubtAt(place: number, confidence: number): number | undefined;
}

/**
 * The straight line through points, which are centred first so that no digits are lost. Undefined where all places are one.
 *
 * @source abramowitz-stegun-1964 section 26.7 for the interval; the rest is the definition of least squares
 */
export function straightLine(places: readonly number[], values: readonly number[]): StraightLine | undefined {
  const count = places.length;
  const mean = (of: readonly number[]) => of.reduce((sum, value) => sum + value / count, 0);
  const middle = mean(places);
  const level = mean(values);
  const apart = places.map((place) => place - middle);
  const spread = apart.reduce((sum, x) => sum + x * x, 0);
  const slope = apart.reduce((sum, x, i) => sum + x * ((values[i] as number) - level), 0) / spread;
  if (!Number.isFinite(slope)) return undefined;
  const at = (place: number) => level + slope * (place - middle);
  const residuals = places.map((place, i) => (values[i] as number) - at(place));
  const scatter = Math.sqrt(residuals.reduce((sum, left) => sum + left * left, 0) / (count - 2));
  const doubt = (confidence: number, leverage: number) =>
    count < 3 ? undefined : studentT(confidence, count - 2) * scatter * Math.sqrt(leverage);
  return {
    slope,
    at,
    residuals,
    slopeDoubt: (confidence) => doubt(confidence, 1 / spread),
    doubtAt: (place, confidence) => doubt(confidence, 1 / count + (place - middle) ** 2 / spread),
  };
}

/**
 * Whether points bend away from a straight line by more than their scatter explains: whether the coefficient of the
 * square differs from zero with the confidence given. Asks for four points at four places at least.
 */
export function bends(places: readonly number[], values: readonly number[], confidence: number): boolean {
  const left = straightLine(places, values)?.residuals ?? [];
  // The square less its own straight line: then its coefficient is found by itself.
  const square =
    straightLine(
      places,
      places.map((place) => place * place),
    )?.residuals ?? [];
  const length = square.reduce((sum, own) => sum + own * own, 0);
  const coefficient = square.reduce((sum, own, i) => sum + own * (left[i] as number), 0) / length;
  const rest = left.reduce((sum, value, i) => sum + (value - coefficient * (square[i] as number)) ** 2, 0);
  const degrees = places.length - 3;
  const doubt = studentT(confidence, degrees) * Math.sqrt(rest / degrees / length);
  const rounding = (1e-12 * maxOf(values.map(Math.abs))) / Math.sqrt(length);
  return Math.abs(coefficient) > doubt + rounding;
}
