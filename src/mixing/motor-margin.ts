import { positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/** How much of a drive an impeller leaves unused. */
export interface MotorMargin {
  /** What the motor can give to the shaft over what the impeller takes: above 1 it turns. */
  readonly margin: number;
  /** What the impeller takes from the shaft [N·m]. */
  readonly torque: number;
  /** What the drive allows over that, if the caller gives its maximum torque. */
  readonly marginTorque?: number;
}

/**
 * Whether the motor turns the impeller, and what is left over.
 *
 * $$s = \frac{\eta\,P_\mathrm{motor}}{P} \qquad M = \frac{P}{2\pi N} \qquad s_M = \frac{M_\mathrm{max}}{M}$$
 *
 * A motor that is slowed by a frequency converter keeps its torque and not its power: then give the maximum torque.
 * Starting in a gel that has rested needs more torque than running does; a margin of a quarter is common practice, no
 * source.
 *
 * @param input.power - What the impeller takes [W], above 0.
 * @param input.speed - Speed of the shaft [rev/s], above 0.
 * @param input.powerMotor - What the motor gives at this speed [W], above 0.
 * @param input.efficiency - Of gear and seal, above 0 and up to 1; default 1.
 * @param input.torqueMax - The maximum torque that shaft or gear allow [N·m], above 0.
 * @returns Margin of power, torque [N·m], margin of torque.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { motorMargin } from "gelwright/mixing";
 * motorMargin({ power: 200, speed: 2, powerMotor: 370, efficiency: 0.8 }).margin; // => 1.48
 * ```
 */
export function motorMargin(input: {
  readonly power: number;
  readonly speed: number;
  readonly powerMotor: number;
  readonly efficiency?: number;
  readonly torqueMax?: number;
}): MotorMargin {
  const { power, speed, powerMotor, efficiency = 1, torqueMax } = record(input, "input", known.motorMargin);
  const taken = positive(power, "power");
  const passed = positive(efficiency, "efficiency");
  if (passed > 1) refuse("input", "efficiency", passed, "above 0 and up to 1");
  const torque = result(taken / (2 * Math.PI * positive(speed, "speed")), "torque");
  const margin = result((passed * positive(powerMotor, "powerMotor")) / taken, "margin");
  if (torqueMax === undefined) return { margin, torque };
  return { margin, torque, marginTorque: result(positive(torqueMax, "torqueMax") / torque, "margin of torque") };
}
