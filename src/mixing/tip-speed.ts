import { positive, record, result } from "../guards.js";

/**
 * How fast the tip of the blades moves: the fastest thing in the vessel, and what the gel feels there.
 *
 * $$u = \pi N D$$
 *
 * @param input.speed - Speed of the impeller [rev/s], above 0.
 * @param input.diameterImpeller - Diameter of the impeller [m], above 0.
 * @returns Tip speed [m/s].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition
 * @example
 * ```ts
 * import { tipSpeed } from "gelwright/mixing";
 * tipSpeed({ speed: 5, diameterImpeller: 0.1 }); // => 1.5707963267948966
 * ```
 */
export function tipSpeed(input: { readonly speed: number; readonly diameterImpeller: number }): number {
  const { speed, diameterImpeller } = record(input, "input");
  return result(Math.PI * positive(speed, "speed") * positive(diameterImpeller, "diameterImpeller"), "tip speed");
}
