import { finite, positive, record, refuse, result, temperature } from "../guards.js";

/**
 * The temperature of the wall that heats or cools a batch: where scorching, flash point and a skin are judged.
 *
 * $$T_\mathrm{wall} = T_\mathrm{bulk} + \frac{q}{h A}$$
 *
 * @param input.temperatureBulk - Temperature of the batch away from the wall [°C].
 * @param input.heatFlow - Heat from the wall into the batch [W]; negative in cooling.
 * @param input.area - Wetted area through which it passes [m²], above 0.
 * @param input.heatTransferCoefficient - Between wall and batch [W/(m²·K)], above 0.
 * @returns The temperature of the wall [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where the wall would be colder than absolute zero.
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
  readonly heatTransferCoefficient: number;
}): number {
  const { temperatureBulk, heatFlow, area, heatTransferCoefficient } = record(input, "input");
  const wall = result(
    temperature(temperatureBulk, "temperatureBulk") +
      finite(heatFlow, "heatFlow") /
        positive(area, "area") /
        positive(heatTransferCoefficient, "heatTransferCoefficient"),
    "wall temperature",
  );
  if (wall <= -273.15) refuse("range", "wall temperature", wall, "a wall above -273.15 °C");
  return wall;
}
