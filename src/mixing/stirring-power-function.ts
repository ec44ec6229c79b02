import { positive, record, result } from "../guards.js";
import { type Beyond, extending } from "../laws/beyond.js";
import type { Impeller, StirredVessel } from "./impeller.js";
import { curveOf } from "./impeller-curve.js";
import * as known from "./known.js";
import { compilePower } from "./power-number.js";

/**
 * The power of an impeller at one speed as a function of viscosity, for a charge that thickens as it cools.
 *
 * $$P(\mu) = \mathrm{Po}\!\left(\frac{\rho N D^2}{\mu}\right)\rho N^3 D^5$$
 *
 * Impeller and vessel are checked once, so that a segment of heating or cooling may ask at every temperature.
 *
 * @param input.impeller - The impeller, as plain data.
 * @param input.vessel - The vessel [m], from which blades and anchors have their power curve.
 * @param input.density - Density of the batch [kg/m³], above 0.
 * @param input.speed - Speed [rev/s], above 0.
 * @param input.beyond - Outside the Reynolds numbers of the power curve: `"throw"` (default) or `"extend"` it.
 * @returns Power [W] at a viscosity [Pa·s], above 0; it throws as `stirring` does.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no power curve is known.
 * @source definition
 * @example
 * ```ts
 * import { stirringPowerFunction } from "gelwright/mixing";
 * const powerAt = stirringPowerFunction({ impeller: { kind: "anchor", diameter: 0.34 }, density: 900, speed: 0.6 });
 * [0.03, 0.3, 3].map((viscosity) => powerAt(viscosity).toFixed(2)); // => ["0.42", "1.37", "10.92"]
 * ```
 */
export function stirringPowerFunction(input: {
  readonly impeller: Impeller;
  readonly vessel?: StirredVessel;
  readonly density: number;
  readonly speed: number;
  readonly beyond?: Beyond;
}): (viscosity: number) => number {
  const { impeller, vessel, density, speed, beyond } = record(input, "input", known.stirringPowerFunction);
  const numberAt = compilePower(curveOf(impeller, vessel), "impeller.power", extending(beyond));
  const { diameter } = impeller;
  const swirl = positive(density, "density") * positive(speed, "speed") * diameter * diameter;
  const jet = result(swirl * speed * speed * diameter ** 3, "power");
  return (viscosity) => {
    const reynolds = positive(swirl / positive(viscosity, "viscosity"), "Reynolds number");
    return result(numberAt(reynolds) * jet, "power");
  };
}
