import { positive, refuse } from "../guards.js";
import { besselJ } from "../numeric/bessel.js";

/** A body in which heat flows one way only: a slab through its thickness, a long cylinder and a sphere along the radius. */
export type ConductionShape = "slab" | "cylinder" | "sphere";

/** Surface coefficient times half thickness or radius over conductivity; `"infinite"` where the surface is held at the ambient temperature. */
export type BiotNumber = number | "infinite";

const shapes: readonly unknown[] = ["slab", "cylinder", "sphere"];

/** How many ways the surface bends: 0 for a slab, 1 for a cylinder, 2 for a sphere. */
export function bendOf(shape: ConductionShape): number {
  const bend = shapes.indexOf(shape);
  return bend < 0 ? refuse("input", "shape", shape, '"slab", "cylinder" or "sphere"') : bend;
}

/** The Biot number, Infinity for a surface that is held at the ambient temperature. */
export function biotOf(biot: BiotNumber): number {
  return biot === "infinite" ? Number.POSITIVE_INFINITY : positive(biot, 'biot (or "infinite")');
}

/**
 * The standing wave of a shape and its fall, at a distance x from the centre.
 *
 * Slab: cos x and sin x. Cylinder: J₀ and J₁. Sphere: sin x / x and (sin x − x cos x)/x².
 *
 * @source bergman-2011 sections 5.5 and 5.6
 */
export function wave(bend: number, x: number): readonly [height: number, fall: number] {
  if (bend === 1) return besselJ(x);
  if (bend === 0) return [Math.cos(x), Math.sin(x)];
  if (x >= 1) return [Math.sin(x) / x, (Math.sin(x) / x - Math.cos(x)) / x];
  // Near the centre the difference would cancel: there the power series.
  let term = x / 3;
  let fall = term;
  for (let k = 1; k < 9; k += 1) {
    term *= (-x * x) / (2 * k * (2 * k + 3));
    fall += term;
  }
  return [x === 0 ? 1 : Math.sin(x) / x, fall];
}
