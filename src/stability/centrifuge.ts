import { fraction, notNegative, positive, record, refuse, result, show } from "../guards.js";
import { gravity } from "../laws/gravity.js";
import * as known from "./known.js";

/** Random close packing of equal spheres: from here on drops press on one another. */
const packed = 0.64;

/**
 * The relative centrifugal force: how many times stronger than gravity a centrifuge pulls.
 *
 * $$\mathrm{RCF} = \frac{(2\pi N)^2\,r}{g}$$
 *
 * @param input.speed - Speed of the rotor [rev/s], 0 or more; 3000 rev/min are 50 rev/s.
 * @param input.radius - Distance from the axis [m], above 0.
 * @returns Multiples of standard gravity.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source definition, with standard gravity 9.80665 m/s²
 * @example
 * ```ts
 * import { relativeCentrifugalForce } from "gelwright/stability";
 * relativeCentrifugalForce({ speed: 50, radius: 0.1 }).toFixed(0); // => "1006"
 * ```
 */
export function relativeCentrifugalForce(input: { readonly speed: number; readonly radius: number }): number {
  const { speed, radius } = record(input, "input", known.relativeCentrifugalForce);
  const angular = 2 * Math.PI * notNegative(speed, "speed");
  return result((angular * angular * positive(radius, "radius")) / gravity, "relative centrifugal force");
}

/**
 * The speed at which a rotor reaches a relative centrifugal force.
 *
 * $$N = \frac{1}{2\pi}\sqrt{\frac{\mathrm{RCF}\,g}{r}}$$
 *
 * Stay below the highest speed that the maker allows for the rotor and the tubes.
 *
 * @param input.relativeCentrifugalForce - Wanted, in multiples of gravity, above 0.
 * @param input.radius - Distance from the axis [m], above 0.
 * @returns Speed [rev/s].
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source definition, with standard gravity 9.80665 m/s²
 * @example
 * ```ts
 * import { centrifugeSpeed } from "gelwright/stability";
 * Math.round(60 * centrifugeSpeed({ relativeCentrifugalForce: 500, radius: 0.1 })); // => 2115
 * ```
 */
export function centrifugeSpeed(input: { readonly relativeCentrifugalForce: number; readonly radius: number }): number {
  const { relativeCentrifugalForce: force, radius } = record(input, "input", known.centrifugeSpeed);
  const square = (positive(force, "relativeCentrifugalForce") * gravity) / positive(radius, "radius");
  return result(Math.sqrt(square) / (2 * Math.PI), "speed");
}

/** Why a centrifuge says nothing about time on the shelf. */
export type CentrifugeDoubt =
  /** A yield stress may hold in gravity what a centrifuge tears loose: on the shelf it may never move. */
  | "yield-stress"
  /** No yield stress is stated, not even that there is none. */
  | "yield-stress-not-stated"
  /** Drops or particles are packed: they do not settle, they are pressed together. */
  | "packed"
  /** Nobody stated how much of the volume is drops or particles. */
  | "volume-fraction-not-stated"
  /** The liquid thins under shear, so that the drag in the centrifuge is another one than on the shelf. */
  | "not-newtonian"
  /** Nobody stated whether the liquid thins under shear. */
  | "newtonian-not-stated";

/** A run of a centrifuge in terms of gravity, or the reasons why nobody can say. */
export type GravityTime =
  | {
      readonly known: true;
      /** Under gravity, by the pull at the surface of the sample and at its bottom [s]. */
      readonly duration: {
        /** By the pull at the surface [s]. */
        readonly min: number;
        /** By the pull at the bottom [s]. */
        readonly max: number;
      };
      /** Multiples of gravity. */
      readonly relativeCentrifugalForce: {
        /** At the surface of the sample. */
        readonly min: number;
        /** At its bottom. */
        readonly max: number;
      };
    }
  | { readonly known: false; readonly codes: readonly CentrifugeDoubt[] };

/**
 * For how long under gravity a run of a centrifuge stands, where it stands for any.
 *
 * $$t_g = \mathrm{RCF}\cdot t$$
 *
 * It holds for a few particles or drops in a liquid of constant viscosity: there the velocity goes with the pull. Half an
 * hour at a thousand g is three weeks, not years. With a yield stress, packed drops or a liquid that thins the answer is
 * `known: false`, and so it is where nobody stated that there is none of them.
 *
 * @param input.speed - Speed of the rotor [rev/s], above 0.
 * @param input.radiusMin - From the axis to the surface of the sample [m], above 0.
 * @param input.radiusMax - From the axis to the bottom of the sample [m], not below `radiusMin`.
 * @param input.duration - Of the run [s], above 0.
 * @param input.yieldStress - Of the product at rest [Pa], 0 where it was found to have none; left out if it is not known.
 * @param input.volumeFractionDispersed - Drops or particles by volume, 0 to 1; left out if it is not known.
 * @param input.newtonian - Whether its viscosity is the same at every shear rate; left out if it is not known.
 * @returns The time under gravity [s], from the pull at the surface to that at the bottom, or why it is not known.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source definition; random close packing at 0.64 from memory
 * @example
 * ```ts
 * import { gravityTime } from "gelwright/stability";
 * const run = { speed: 50, radiusMin: 0.06, radiusMax: 0.1, duration: 1800 };
 * const oil = gravityTime({ ...run, yieldStress: 0, volumeFractionDispersed: 0.01, newtonian: true });
 * oil.known && (oil.duration.max / 86400).toFixed(1); // => "21.0"
 * const gel = gravityTime({ ...run, yieldStress: 12, volumeFractionDispersed: 0.01, newtonian: false });
 * gel.known || gel.codes; // => ["yield-stress", "not-newtonian"]
 * ```
 */
export function gravityTime(input: {
  readonly speed: number;
  readonly radiusMin: number;
  readonly radiusMax: number;
  readonly duration: number;
  readonly yieldStress?: number;
  readonly volumeFractionDispersed?: number;
  readonly newtonian?: boolean;
}): GravityTime {
  const { speed, radiusMin, radiusMax, duration, yieldStress, volumeFractionDispersed, newtonian } = record(
    input,
    "input",
    known.gravityTime,
  );
  const turning = positive(speed, "speed");
  const near = positive(radiusMin, "radiusMin");
  const far = positive(radiusMax, "radiusMax");
  if (far < near) refuse("input", "radiusMax", far, "not below radiusMin");
  const time = positive(duration, "duration");
  if (newtonian !== undefined && typeof newtonian !== "boolean")
    refuse("input", "newtonian", show(newtonian), "true or false");
  const codes: CentrifugeDoubt[] = [];
  if (yieldStress === undefined) codes.push("yield-stress-not-stated");
  else if (notNegative(yieldStress, "yieldStress") > 0) codes.push("yield-stress");
  if (volumeFractionDispersed === undefined) codes.push("volume-fraction-not-stated");
  else if (fraction(volumeFractionDispersed, "volumeFractionDispersed") >= packed) codes.push("packed");
  if (newtonian === undefined) codes.push("newtonian-not-stated");
  else if (!newtonian) codes.push("not-newtonian");
  const relative = {
    min: relativeCentrifugalForce({ speed: turning, radius: near }),
    max: relativeCentrifugalForce({ speed: turning, radius: far }),
  };
  const under = (force: number): number => result(force * time, "duration under gravity");
  const span = { min: under(relative.min), max: under(relative.max) };
  if (codes.length > 0) return { known: false, codes };
  return { known: true, duration: span, relativeCentrifugalForce: relative };
}
