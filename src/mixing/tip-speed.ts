import { positive, record, result } from "../guards.js";
import * as known from "./known.js";
import { type ImpellerSize, impellerDiameter } from "./sizes.js";

/**
 * How fast the tip of the blades moves: the fastest thing in the vessel, and what the gel feels there.
 *
 * $$u = \pi N D$$
 *
 * @param input.speed - Speed of the impeller [rev/s], above 0.
 * @param input.impeller - The impeller: its diameter [m], above 0.
 * @returns Tip speed [m/s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { tipSpeed } from "gelwright/mixing";
 * tipSpeed({ speed: 5, impeller: { diameter: 0.1 } }); // => 1.5707963267948966
 * ```
 */
export function tipSpeed(input: { readonly speed: number; readonly impeller: ImpellerSize }): number {
  const { speed, impeller } = record(input, "input", known.tipSpeed);
  return result(Math.PI * positive(speed, "speed") * impellerDiameter(impeller), "tip speed");
}
