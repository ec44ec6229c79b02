import { notNegative, record, refuse, result, show, temperature } from "../error.js";

/** How fast a vessel loses heat to the room, as plain data. */
export type HeatLossLaw = {
  /** Newton's law: in proportion to the difference of temperature. */
  readonly law: "newton";
  /** Heat-transfer coefficient times area, over all walls [W/K], 0 or more. */
  readonly conductance: number;
};

/** The law as a function of both temperatures, named `path` in its faults. */
export function compileHeatLoss(law: HeatLossLaw, path: string): (temperature: number, ambient: number) => number {
  record(law, path);
  switch (law.law) {
    case "newton": {
      const conductance = notNegative(law.conductance, `${path}.conductance`);
      return (at, ambient) => conductance * (at - ambient);
    }
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), "a heat-loss law");
  }
}

/**
 * The heat-loss law as a function of temperature, checked once and then fit for hot loops.
 *
 * $$q = U\!A\,(T - T_\mathrm{ambient})$$
 *
 * @param law - The law, as plain data.
 * @param temperatureAmbient - Temperature of the room [°C].
 * @returns A function of the vessel's temperature [°C] that gives the heat lost [W], negative where the room is warmer.
 * @throws CalculationError `input` for a law that is not whole.
 * @source bergman-2011 section 5.1
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
 * $$q = U\!A\,(T - T_\mathrm{ambient})$$
 *
 * @param input.law - The heat-loss law, as plain data.
 * @param input.temperature - Temperature of the vessel [°C].
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @returns Heat lost [W], negative where the room is warmer.
 * @throws CalculationError `input` for a law that is not whole.
 * @source bergman-2011 section 5.1
 * @example
 * ```ts
 * import { heatLossAt } from "gelwright/laws";
 * heatLossAt({ law: { law: "newton", conductance: 15 }, temperature: 85, temperatureAmbient: 20 }); // => 975
 * ```
 */
export function heatLossAt(input: {
  readonly law: HeatLossLaw;
  readonly temperature: number;
  readonly temperatureAmbient: number;
}): number {
  const { law, temperature: at, temperatureAmbient } = record(input, "input");
  return heatLossFunction(law, temperatureAmbient)(at);
}
