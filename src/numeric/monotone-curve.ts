import { root } from "./root.js";

/** A smooth curve that rises through all its points and never swings back between two of them. */
export interface MonotoneCurve {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slope: readonly number[];
}

/**
 * Piecewise cubic through points that rise in x and y, with the slopes of Fritsch and Butland.
 *
 * An end takes the slope of the parabola through three points. That is less than twice the slope of its last stretch, so
 * the curve stays monotone; it is held above a quarter of it, so that a continuation beyond the end rises.
 *
 * @source fritsch-butland-1984 from memory
 */
export function monotoneCurve(x: readonly number[], y: readonly number[]): MonotoneCurve {
  const width = (k: number): number => (x[k + 1] as number) - (x[k] as number);
  const rise = (k: number): number => ((y[k + 1] as number) - (y[k] as number)) / width(k);
  const last = x.length - 2;
  const end = (at: number, next: number): number => {
    if (last === 0) return rise(0);
    const parabola = rise(at) + ((rise(at) - rise(next)) * width(at)) / (width(at) + width(next));
    return Math.max(rise(at) / 4, parabola);
  };
  const slope = x.map((_, k) => {
    if (k === 0) return end(0, 1);
    if (k > last) return end(last, last - 1);
    const near = 2 * width(k) + width(k - 1);
    const far = width(k) + 2 * width(k - 1);
    return (near + far) / (near / rise(k - 1) + far / rise(k));
  });
  return { x, y, slope };
}

/** The height of the curve at a place; beyond its ends, on the straight line that continues the end's slope. */
export function curveAt(curve: MonotoneCurve, place: number): number {
  const { x, y, slope } = curve;
  const last = x.length - 1;
  let k = 0;
  for (let above = last + 1; above - k > 1; ) {
    const middle = (k + above) >> 1;
    if (place >= (x[middle] as number)) k = middle;
    else above = middle;
  }
  const from = place - (x[k] as number);
  const start = y[k] as number;
  const tangent = slope[k] as number;
  if (k === last || from < 0) return start + from * tangent;
  const width = (x[k + 1] as number) - (x[k] as number);
  const secant = ((y[k + 1] as number) - start) / width;
  const share = from / width;
  const bend = tangent - secant;
  const twist = bend + (slope[k + 1] as number) - secant;
  return start + from * (tangent - share * (bend + twist * (1 - share)));
}

/** The place at which the curve, or the straight line that continues it, has a height. */
export function curvePlace(curve: MonotoneCurve, height: number): number {
  const { x, y, slope } = curve;
  const last = x.length - 1;
  const near = height > (y[0] as number) ? last : 0;
  const beyond = height - (y[near] as number);
  if (near === 0 || beyond >= 0) return (x[near] as number) + beyond / (slope[near] as number);
  return root((place) => curveAt(curve, place) - height, x[0] as number, x[last] as number, "place on the curve");
}
