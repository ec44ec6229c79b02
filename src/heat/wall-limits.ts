import { positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

/** A wall that may be no hotter, or no colder, than a limit. */
export interface WallLimit {
  /** Temperature of the batch away from the wall [°C]. */
  readonly temperatureBulk: number;
  /** What the wall may come to [°C]. */
  readonly temperatureWall: number;
  /** Between batch and wall [W/(m²·K)], above 0. */
  readonly heatTransferCoefficient: number;
}

/**
 * The heat that may pass through a wall before the wall reaches a temperature at which the batch scorches or a skin sets.
 *
 * $$q = h A\,(T_\mathrm{wall} - T_\mathrm{bulk})$$
 *
 * @param input.temperatureBulk - Temperature of the batch away from the wall [°C].
 * @param input.temperatureWall - Temperature that the wall may reach [°C].
 * @param input.heatTransferCoefficient - Between batch and wall [W/(m²·K)], above 0.
 * @param input.area - Wetted area through which the heat passes [m²], above 0.
 * @returns The heat flow into the batch [W]; negative for a wall colder than the batch.
 * @throws CalculationError `input` where an argument is no number or out of range.
 * @source definition of the heat-transfer coefficient
 * @example
 * ```ts
 * import { heatFlowAtWall } from "gelwright/heat";
 * heatFlowAtWall({ temperatureBulk: 75, temperatureWall: 115, heatTransferCoefficient: 150, area: 0.5 }); // => 3000
 * ```
 */
export function heatFlowAtWall(input: WallLimit & { readonly area: number }): number {
  const { temperatureBulk, temperatureWall, heatTransferCoefficient, area } = record(
    input,
    "input",
    known.heatFlowAtWall,
  );
  return result(
    positive(heatTransferCoefficient, "heatTransferCoefficient") *
      positive(area, "area") *
      (temperature(temperatureWall, "temperatureWall") - temperature(temperatureBulk, "temperatureBulk")),
    "heat flow",
  );
}

/**
 * The jacket that brings a wall to a given temperature: the coldest that leaves no skin, the hottest that does not scorch.
 *
 * $$T_\mathrm{jacket} = T_\mathrm{wall} + \frac{h}{h_\mathrm{jacket}}\,(T_\mathrm{wall} - T_\mathrm{bulk})$$
 *
 * @param input.temperatureBulk - Temperature of the batch away from the wall [°C].
 * @param input.temperatureWall - Temperature that the wall may reach [°C]: above the setting temperature in cooling.
 * @param input.heatTransferCoefficient - Between batch and wall [W/(m²·K)], above 0.
 * @param input.heatTransferCoefficientJacket - From the inner face of the wall to the medium, through the wall [W/(m²·K)], above 0.
 * @returns The temperature of the medium in the jacket [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where no medium is cold enough.
 * @source definition of resistances in series
 * @example
 * ```ts
 * import { jacketTemperatureAtWall } from "gelwright/heat";
 * jacketTemperatureAtWall({
 *   temperatureBulk: 70,
 *   temperatureWall: 60,
 *   heatTransferCoefficient: 100,
 *   heatTransferCoefficientJacket: 400,
 * }); // => 57.5
 * ```
 */
export function jacketTemperatureAtWall(input: WallLimit & { readonly heatTransferCoefficientJacket: number }): number {
  const { temperatureBulk, temperatureWall, heatTransferCoefficient, heatTransferCoefficientJacket } = record(
    input,
    "input",
    known.jacketTemperatureAtWall,
  );
  const wall = temperature(temperatureWall, "temperatureWall");
  const ratio =
    positive(heatTransferCoefficient, "heatTransferCoefficient") /
    positive(heatTransferCoefficientJacket, "heatTransferCoefficientJacket");
  const jacket = result(wall + ratio * (wall - temperature(temperatureBulk, "temperatureBulk")), "jacket temperature");
  if (jacket <= -273.15)
    refuse("unreachable", "temperatureWall", wall, "a wall that a medium above -273.15 °C can bring about");
  return jacket;
}
