import { record, wholeNumber } from "../guards.js";
import { root } from "../numeric/root.js";
import { type BiotNumber, bendOf, biotOf, type ConductionShape, wave } from "./conduction-shape.js";
import * as known from "./known.js";

/** One term of the conduction series. */
export interface ConductionRoot {
  /** Root of the surface condition: the term falls as exp(−root² Fo). */
  readonly root: number;
  /** What the term is multiplied with at the centre. */
  readonly coefficient: number;
}

/** The root of the surface condition that has `order` − 1 below it. */
export function surfaceRoot(bend: number, biot: number, order: number): number {
  // Between two neighbouring quarters of π there is one root, whatever the Biot number.
  let high = (order + (bend - 1) / 4) * Math.PI;
  let low = high - Math.PI;
  if (order === 1) {
    const lumped = (bend + 1) * biot;
    if (biot < 1e-8) return Math.sqrt(lumped * (1 - biot / (bend + 3)));
    high = Math.min(Math.sqrt(lumped), high);
    low = high / 2;
  }
  const inside = 1 / (1 + biot);
  const outside = biot === Number.POSITIVE_INFINITY ? 1 : biot / (1 + biot);
  return root(
    (x) => {
      const [height, fall] = wave(bend, x);
      return inside * x * fall - outside * height;
    },
    low,
    high,
    "root",
  );
}

/** What a term is multiplied with at the centre: the mean of its wave over the mean of the wave's square. */
export function coefficientAt(bend: number, x: number): number {
  const [height, fall] = wave(bend, x);
  return (2 * fall) / (x * (height * height + fall * fall) + (1 - bend) * height * fall);
}

/**
 * Root and coefficient of a term of the series for conduction in a slab, a long cylinder or a sphere; the first term is
 * the one-term approximation of the textbooks.
 *
 * $$\lambda\tan\lambda = \mathrm{Bi} \qquad \lambda\,\frac{J_1(\lambda)}{J_0(\lambda)} = \mathrm{Bi} \qquad 1 - \lambda\cot\lambda = \mathrm{Bi}$$
 *
 * $$A = \frac{4\sin\lambda}{2\lambda + \sin 2\lambda} \qquad A = \frac{2 J_1(\lambda)}{\lambda\,(J_0^2(\lambda) + J_1^2(\lambda))} \qquad A = \frac{4(\sin\lambda - \lambda\cos\lambda)}{2\lambda - \sin 2\lambda}$$
 *
 * After Fo = 0.2 the first term alone gives the centre within about 2 %: relative temperature = A exp(−λ² Fo).
 *
 * @param input.shape - `"slab"`, `"cylinder"` (long) or `"sphere"`.
 * @param input.biot - Biot number on half thickness or radius, above 0, or `"infinite"`.
 * @param input.order - Which term, 1 (default) to 1,000,000.
 * @returns Root and coefficient.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source bergman-2011 sections 5.5 and 5.6, abramowitz-stegun-1964 for the functions
 * @example
 * ```ts
 * import { conductionRoot } from "gelwright/heat";
 * conductionRoot({ shape: "slab", biot: 1 }); // => { root: 0.8603335890193797, coefficient: 1.1191320084054335 }
 * ```
 */
export function conductionRoot(input: {
  readonly shape: ConductionShape;
  readonly biot: BiotNumber;
  readonly order?: number;
}): ConductionRoot {
  const { shape, biot, order = 1 } = record(input, "input", known.conductionRoot);
  const bend = bendOf(shape);
  const number = biotOf(biot);
  wholeNumber(order, "order", 1, 1e6);
  const found = surfaceRoot(bend, number, order);
  return { root: found, coefficient: coefficientAt(bend, found) };
}
