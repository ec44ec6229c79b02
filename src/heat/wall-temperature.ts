import { finite, positive, record, refuse, result, temperature } from "../guards.js";
import { rootBeyond } from "../numeric/root-beyond.js";
import * as known from "./known.js";

/** No wall is looked for farther from the batch than this [K]. */
const farthest = 1000;

/**
 * The temperature of the wall that heats or cools a batch: scorching, flash points and a skin on the wall are judged there.
 *
 * $$T_\mathrm{wall} = T_\mathrm{bulk} + \frac{q}{h A}$$
 *
 * @param input.temperatureBulk - Temperature of the batch away from the wall [°C].
 * @param input.heatFlow - Heat from the wall into the batch [W]; negative in cooling.
 * @param input.area - Wetted area through which it passes [m²], above 0.
 * @param input.heatTransferCoefficient - Between wall and batch [W/(m²·K)], above 0; a function of the wall's temperature
 *   [°C] where the batch there is thinner or thicker, as of `insideCoefficientFunction`.
 * @returns The temperature of the wall [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where the wall would be colder than absolute zero; `unreachable` where no wall within 1000 K passes that much.
 * @source definition of the heat-transfer coefficient
 * @example
 * ```ts
 * import { wallTemperature } from "gelwright/heat";
 * wallTemperature({ temperatureBulk: 75, heatFlow: 3000, area: 0.5, heatTransferCoefficient: 150 }); // => 115
 * ```
 */
export function wallTemperature(input: {
  readonly temperatureBulk: number;
  readonly heatFlow: number;
  readonly area: number;
  readonly heatTransferCoefficient: number | ((temperatureWall: number) => number);
}): number {
  const { temperatureBulk, heatFlow, area, heatTransferCoefficient } = record(input, "input", known.wallTemperature);
  const bulk = temperature(temperatureBulk, "temperatureBulk");
  const flux = finite(heatFlow, "heatFlow") / positive(area, "area");
  const wall =
    typeof heatTransferCoefficient === "function"
      ? wallByFunction(bulk, result(flux, "heatFlow"), heatTransferCoefficient)
      : result(bulk + flux / positive(heatTransferCoefficient, "heatTransferCoefficient"), "wall temperature");
  if (wall <= -273.15) refuse("range", "wall temperature", wall, "a wall above -273.15 °C");
  return wall;
}

/** The wall nearest to the batch that passes the flux, looked for in strides that double. */
function wallByFunction(bulk: number, flux: number, coefficientAt: (wall: number) => number): number {
  const sense = Math.sign(flux);
  const short = (wall: number): number =>
    sense * result(positive(coefficientAt(wall), "heatTransferCoefficient") * (wall - bulk) - flux, "heat flux");
  if (short(bulk) === 0) return bulk;
  return (
    rootBeyond(short, bulk, sense > 0 ? bulk + farthest : -273, "wall temperature", 1e-12) ??
    refuse("unreachable", "heatFlow", `${flux} W/m²`, `less: no wall within ${farthest} K of the batch passes it`)
  );
}
