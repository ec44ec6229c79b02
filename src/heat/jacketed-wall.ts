import { positive, record, refuse, result, temperature } from "../guards.js";
import { root } from "../numeric/root.js";
import { rootBeyond } from "../numeric/root-beyond.js";
import * as known from "./known.js";

/** A wall with a batch on one side and the medium of a jacket on the other. */
export interface JacketedWall {
  /** Temperature of the wall on the side of the batch [°C]. */
  readonly temperatureWall: number;
  /** Between batch and wall, at that temperature [W/(m²·K)]. */
  readonly heatTransferCoefficient: number;
  /** Between batch and medium [W/(m²·K)]. */
  readonly heatTransferCoefficientOverall: number;
}

/**
 * The temperature of a wall between a batch and the medium in its jacket.
 *
 * $$h(T_\mathrm{wall})\,(T_\mathrm{wall} - T) = h_\mathrm{jacket}\,(T_\mathrm{jacket} - T_\mathrm{wall}) \qquad \frac1U = \frac1h + \frac1{h_\mathrm{jacket}}$$
 *
 * @param input.temperatureBulk - Temperature of the batch [°C].
 * @param input.temperatureJacket - Temperature of the medium [°C]; at the inlet the wall of a cooled batch is coldest.
 * @param input.heatTransferCoefficient - Between batch and wall [W/(m²·K)], above 0; or a function of the wall's temperature [°C].
 * @param input.heatTransferCoefficientJacket - From the inner face of the wall to the medium, through the wall [W/(m²·K)], above 0.
 * @returns The wall [°C] and the coefficients [W/(m²·K)].
 * @throws CalculationError `input` where an argument is no number or out of range; what the function throws.
 * @source definition of resistances in series
 * @example
 * ```ts
 * import { jacketedWall } from "gelwright/heat";
 * jacketedWall({
 *   temperatureBulk: 70,
 *   temperatureJacket: 15,
 *   heatTransferCoefficient: 100,
 *   heatTransferCoefficientJacket: 400,
 * }).temperatureWall; // => 26
 * ```
 */
export function jacketedWall(input: {
  readonly temperatureBulk: number;
  readonly temperatureJacket: number;
  readonly heatTransferCoefficient: number | ((temperatureWall: number) => number);
  readonly heatTransferCoefficientJacket: number;
}): JacketedWall {
  const {
    temperatureBulk,
    temperatureJacket,
    heatTransferCoefficient: given,
  } = record(input, "input", known.jacketedWall);
  const bulk = temperature(temperatureBulk, "temperatureBulk");
  const jacket = temperature(temperatureJacket, "temperatureJacket");
  const outside = positive(input.heatTransferCoefficientJacket, "heatTransferCoefficientJacket");
  const inside = (wall: number): number =>
    positive(typeof given === "function" ? given(wall) : given, "heatTransferCoefficient");
  const imbalance = (wall: number): number => inside(wall) * (wall - bulk) - outside * (jacket - wall);
  const temperatureWall =
    bulk === jacket
      ? bulk
      : typeof given === "function"
        ? root(imbalance, bulk, jacket, "wall temperature", 1e-12)
        : result((inside(bulk) * bulk + outside * jacket) / (inside(bulk) + outside), "wall temperature");
  const heatTransferCoefficient = inside(temperatureWall);
  const heatTransferCoefficientOverall = 1 / (1 / heatTransferCoefficient + 1 / outside);
  return { temperatureWall, heatTransferCoefficient, heatTransferCoefficientOverall };
}

/**
 * The coefficient on the far side of a wall, from a measured conductance and the coefficient on the side of the batch.
 *
 * $$\frac1{h_\mathrm{jacket}} = \frac AK - \frac1h$$
 *
 * @param input.conductance - Between batch and medium, as measured [W/K], above 0.
 * @param input.area - Wall that the batch wets [m²], above 0.
 * @param input.heatTransferCoefficient - Between batch and wall [W/(m²·K)], above 0.
 * @returns From the inner face of the wall to the medium [W/(m²·K)].
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where the batch alone passes less than was measured.
 * @source definition of resistances in series
 * @example
 * ```ts
 * import { jacketCoefficient } from "gelwright/heat";
 * jacketCoefficient({ conductance: 40, area: 0.5, heatTransferCoefficient: 100 }); // => 400
 * ```
 */
export function jacketCoefficient(input: {
  readonly conductance: number;
  readonly area: number;
  readonly heatTransferCoefficient: number;
}): number {
  const { conductance, area, heatTransferCoefficient } = record(input, "input", known.jacketCoefficient);
  const overall = positive(conductance, "conductance") / positive(area, "area");
  const inside = positive(heatTransferCoefficient, "heatTransferCoefficient");
  const left = 1 - overall / inside;
  if (!(left > 0))
    refuse("unreachable", "conductance", conductance, `below ${inside * area} W/K, what the batch passes`);
  return result(overall / left, "coefficient");
}

/** No batch is looked for warmer than this [K above the wall]. */
const hottest = 1000;

/**
 * The temperature of the batch at which a jacket brings its wall to a given temperature: the coolest at which a cold
 * jacket sets no skin, and has to be turned off.
 *
 * $$T = T_\mathrm{wall} + \frac{h_\mathrm{jacket}}{h(T)}\,(T_\mathrm{wall} - T_\mathrm{jacket})$$
 *
 * @param input.temperatureWall - Temperature that the wall may reach [°C]: the setting temperature, or above it by a margin.
 * @param input.temperatureJacket - Temperature of the medium [°C], below that of the wall.
 * @param input.heatTransferCoefficient - Between batch and wall [W/(m²·K)], above 0; or a function of the batch's temperature [°C].
 * @param input.heatTransferCoefficientJacket - From the inner face of the wall to the medium, through the wall [W/(m²·K)], above 0.
 * @returns The temperature of the batch [°C], above that of the wall.
 * @throws CalculationError `input` where an argument is no number or out of range; `unreachable` where no batch up to 1000 K warmer keeps the wall at that temperature.
 * @source definition of resistances in series
 * @example
 * ```ts
 * import { batchTemperatureAtWall } from "gelwright/heat";
 * batchTemperatureAtWall({
 *   temperatureWall: 60,
 *   temperatureJacket: 57.5,
 *   heatTransferCoefficient: 100,
 *   heatTransferCoefficientJacket: 400,
 * }); // => 70
 * ```
 */
export function batchTemperatureAtWall(input: {
  readonly temperatureWall: number;
  readonly temperatureJacket: number;
  readonly heatTransferCoefficient: number | ((temperatureBulk: number) => number);
  readonly heatTransferCoefficientJacket: number;
}): number {
  const {
    temperatureWall,
    temperatureJacket,
    heatTransferCoefficient: given,
  } = record(input, "input", known.batchTemperatureAtWall);
  const wall = temperature(temperatureWall, "temperatureWall");
  const jacket = temperature(temperatureJacket, "temperatureJacket");
  if (jacket >= wall) refuse("input", "temperatureJacket", jacket, `below temperatureWall (${wall} °C)`);
  const taken = result(
    positive(input.heatTransferCoefficientJacket, "heatTransferCoefficientJacket") * (wall - jacket),
    "heat flux",
  );
  if (typeof given !== "function")
    return result(wall + taken / positive(given, "heatTransferCoefficient"), "temperature of the batch");
  const spare = (bulk: number): number =>
    result(positive(given(bulk), "heatTransferCoefficient") * (bulk - wall) - taken, "heat flux");
  return (
    rootBeyond(spare, wall, wall + hottest, "temperature of the batch", 1e-12) ??
    refuse("unreachable", "temperatureWall", wall, `a wall that a batch within ${hottest} K keeps as warm`)
  );
}
