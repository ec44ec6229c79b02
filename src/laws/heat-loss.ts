import { record, refuse, result, show, temperature } from "../guards.js";
import { compileHeatLoss, compileLayers } from "./compile-heat-loss.js";
import type { HeatLossLaw, LayersLoss } from "./heat-loss-law.js";
import * as known from "./known.js";

export { compileHeatLoss } from "./compile-heat-loss.js";
export type { HeatLossLaw } from "./heat-loss-law.js";

/**
 * The heat-loss law as a function of temperature, checked once, for use in inner loops.
 *
 * $$q = U\!A\,(T - T_\mathrm{a}) \qquad q = \frac{\mathrm{Nu}\,k}{L}\,A\,(T - T_\mathrm{a}) \qquad q = \varepsilon\sigma A\,(T^4 - T_\mathrm{a}^4) \qquad \frac{T - T_\mathrm{s}}{\sum_i \delta_i/(k_i A) + 1/(h A)} = q_\mathrm{outside}(T_\mathrm{s})$$
 *
 * Newton's law; natural convection, with the Nusselt number of `nusseltVerticalPlate`, `nusseltVerticalCylinder` or
 * `nusseltHorizontalPlate` and the air of the film; radiation; layers, with the temperature of their outer surface
 * found so that as much arrives as leaves; and sums of these.
 *
 * @param law - The law, as plain data.
 * @param temperatureAmbient - Temperature of the room [°C].
 * @returns A function of the vessel's temperature [°C] that gives the heat lost [W], negative where the room is warmer;
 *   it throws `range` outside the range of a correlation.
 * @throws CalculationError `input` for a law that is not whole.
 * @source bergman-2011 sections 1.2, 3.1 and 9.6
 * @example
 * ```ts
 * import { heatLossFunction } from "gelwright/laws";
 * const loss = heatLossFunction({ law: "newton", conductance: 15 }, 20);
 * loss(85); // => 975
 * ```
 */
export function heatLossFunction(law: HeatLossLaw, temperatureAmbient: number): (temperature: number) => number {
  const lossOf = compileHeatLoss(law, "law");
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  return (at) => result(lossOf(temperature(at, "temperature"), ambient), "heat loss");
}

/**
 * The heat that a vessel loses to the room at one temperature.
 *
 * $$q = q(T, T_\mathrm{ambient})$$
 *
 * @param input.law - The heat-loss law, as plain data.
 * @param input.temperature - Temperature of the vessel [°C].
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns Heat lost [W], negative where the room is warmer.
 * @throws CalculationError `input` for a law that is not whole, `range` outside the range of a correlation.
 * @source bergman-2011 sections 1.2, 3.1 and 9.6
 * @example
 * ```ts
 * import { heatLossAt } from "gelwright/laws";
 * const area = 1.2;
 * const side = {
 *   law: "sum",
 *   parts: [
 *     { law: "natural convection", surface: "vertical", area, height: 0.6 },
 *     { law: "radiation", area, emissivity: 0.3 },
 *   ],
 * } as const;
 * heatLossAt({ law: side, temperature: 85, temperatureAmbient: 20 }); // => 620.5359746583548
 * ```
 */
export function heatLossAt(input: {
  readonly law: HeatLossLaw;
  readonly temperature: number;
  readonly temperatureAmbient: number;
}): number {
  const { law, temperature: at, temperatureAmbient } = record(input, "input", known.heatLossAt);
  return heatLossFunction(law, temperatureAmbient)(at);
}

/**
 * The temperature of the outer surface of a vessel with walls or insulation: what a hand feels, and what loses heat to the room.
 *
 * $$\frac{T - T_\mathrm{s}}{\sum_i \delta_i/(k_i A) + 1/(h A)} = q_\mathrm{outside}(T_\mathrm{s})$$
 *
 * @param input.law - The layers, as plain data.
 * @param input.temperature - Temperature of the content [°C].
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns Temperature of the outer surface [°C], between the two.
 * @throws CalculationError `input` for a law that is not whole, `range` outside the range of a correlation.
 * @source bergman-2011 section 3.1
 * @example
 * ```ts
 * import { outerTemperature } from "gelwright/laws";
 * outerTemperature({
 *   law: {
 *     law: "layers",
 *     area: 1.2,
 *     layers: [{ thickness: 0.05, conductivity: 0.04 }],
 *     outside: [{ law: "newton", conductance: 12 }],
 *   },
 *   temperature: 85,
 *   temperatureAmbient: 20,
 * }); // => 24.814814814814813
 * ```
 */
export function outerTemperature(input: {
  readonly law: LayersLoss;
  readonly temperature: number;
  readonly temperatureAmbient: number;
}): number {
  const { law, temperature: at, temperatureAmbient } = record(input, "input", known.outerTemperature);
  if (record(law, "law", known.layers).law !== "layers") refuse("input", "law.law", show(law.law), '"layers"');
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  const excess = temperature(at, "temperature") - ambient;
  const { shareOutside, loss } = compileLayers(law, "law");
  result(loss(excess, ambient), "heat loss");
  return ambient + shareOutside(excess, ambient) * excess;
}
