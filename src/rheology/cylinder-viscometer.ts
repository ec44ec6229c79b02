import { finite, positive, record, refuse, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import * as known from "./known.js";

/** A cylinder that turns in a cup, as a viscometer has it. */
export interface CylinderInCup {
  /** Of the cylinder [m], above 0. */
  readonly diameter: number;
  /** Inner diameter of the cup [m], above that of the cylinder. */
  readonly diameterCup: number;
  /** Of the cylinder's shaft that is wetted, its cone aside [m], above 0. */
  readonly length: number;
  /** By how much its ends raise the torque, 1 or more: from the certificate of the viscometer, or from a liquid of known viscosity. */
  readonly endEffectFactor: number;
}

/** The point of the flow curve that a reading of a cylinder in a cup gives. */
export interface CylinderReading {
  /** Representative shear rate [1/s]. */
  readonly shearRate: number;
  /** Representative shear stress [Pa]. */
  readonly stress: number;
  /** Their quotient [Pa·s]. */
  readonly viscosity: number;
}

/** Widest cup of the standard, in diameters of the cylinder (from memory); the pair then lies within 0.51 % of the curve. */
const ratioMax = 1.2;

/**
 * Shear rate, shear stress and viscosity from a viscometer's torque and speed, of a cylinder that turns in a cup.
 *
 * $$\tau = \frac{1 + \delta^2}{2\delta^2}\,\frac{M}{2\pi L r^2 c_L} \qquad \dot\gamma = 2\pi N\,\frac{\delta^2 + 1}{\delta^2 - 1}$$
 *
 * The stress falls from the cylinder to the cup. The representative stress is the mean of both walls, and the
 * representative shear rate is the one that a Newtonian liquid has where the stress is that mean; δ is the diameter of
 * the cup over that of the cylinder, r the radius of the cylinder. The pair lies on the flow curve exactly for a
 * Newtonian liquid and for a power law of index 0.5. At δ = 1.0847, the standard's ratio, it is off by no more than
 * 0.11 % of the stress for an index from 0.3 to 1; at 1.2 by no more than 0.51 %. In a wider cup that is no longer so.
 *
 * Not covered: slip at the walls, a gel that stands still at the cup (if the stress there is below its yield stress), heat
 * of shearing, and a sample that had not recovered.
 *
 * @param input.cylinder - Diameters of cylinder and cup [m], wetted length [m] and end-effect factor: 1.1 for the standard's cylinder with a cone, more for a liquid that thins (from memory).
 * @param input.speed - Of the cylinder [rev/s], above 0.
 * @param input.torque - On it [N·m], above 0.
 * @param input.beyond - `"throw"` (default), or `"extend"` for a cup that is more than 1.2 times as wide as the cylinder.
 * @returns Shear rate [1/s], shear stress [Pa] and viscosity [Pa·s].
 * @throws CalculationError `input` where an argument is out of range; `range` for a wider cup.
 * @source iso-3219, from memory
 * @example
 * ```ts
 * import { cylinderReading } from "gelwright/rheology";
 * const cylinder = { diameter: 0.02666, diameterCup: 0.02892, length: 0.04, endEffectFactor: 1.1 };
 * const { shearRate, viscosity } = cylinderReading({ cylinder, speed: 20 / 60, torque: 0.0005 });
 * shearRate.toFixed(2); // => "25.80"
 * viscosity.toFixed(3); // => "0.365"
 * ```
 */
export function cylinderReading(input: {
  readonly cylinder: CylinderInCup;
  readonly speed: number;
  readonly torque: number;
  readonly beyond?: Beyond;
}): CylinderReading {
  const { cylinder, speed, torque, beyond } = record(input, "input", known.cylinderReading);
  const { diameter, diameterCup, length, endEffectFactor } = record(cylinder, "cylinder");
  const ratio = positive(diameterCup, "cylinder.diameterCup") / positive(diameter, "cylinder.diameter");
  if (!(ratio > 1))
    refuse("input", "cylinder.diameterCup", diameterCup, `more than that of the cylinder, ${diameter} m`);
  if (!extending(beyond) && ratio > ratioMax)
    refuse(
      "range",
      "cylinder.diameterCup",
      `${ratio} times the cylinder's`,
      `up to ${ratioMax} times, or beyond: "extend"`,
      { value: ratio, max: ratioMax },
    );
  if (finite(endEffectFactor, "cylinder.endEffectFactor") < 1)
    refuse("input", "cylinder.endEffectFactor", endEffectFactor, "1 or more");
  const square = ratio * ratio;
  const area = 2 * Math.PI * positive(length, "cylinder.length") * (diameter / 2) ** 2 * endEffectFactor;
  const stress = result(((1 + square) / (2 * square)) * (positive(torque, "torque") / area), "stress");
  const shearRate = result(2 * Math.PI * positive(speed, "speed") * ((square + 1) / (square - 1)), "shearRate");
  return { shearRate, stress, viscosity: result(stress / shearRate, "viscosity") };
}
