import { list, record, refuse, result, temperature } from "../guards.js";
import { root } from "../numeric/root.js";
import { rootBeyond } from "../numeric/root-beyond.js";
import { anyLaw, type Charge, compilePart, heatGiven, type Part } from "./charge.js";
import * as known from "./known.js";

/** No addition and no melt is looked for hotter than this [K above the minimum temperature of the mix]. */
const hottest = 1000;

/**
 * The largest cool addition that a hot melt can take before the mix falls to the minimum temperature allowed.
 *
 * $$m_c = \frac{\sum_i m_i \int_{T_\mathrm{min}}^{T_i} c_i\,\mathrm dT}{\int_{T_c}^{T_\mathrm{min}} c_c\,\mathrm dT} \qquad c\ \text{constant}:\; m_c = \frac{\sum_i m_i\,c_i\,(T_i - T_\mathrm{min})}{c_c\,(T_\mathrm{min} - T_c)}$$
 *
 * Nothing is lost to the room, and what melts or sets on the way does so as its specific-heat law says. The addition
 * dilutes the gel former, which moves the setting temperature itself: take the one of the mix.
 *
 * @param input.melt - The hot melt: mass [kg], specific heat [J/(kg·K)] or specific-heat law, and temperature [°C] of each part; at least one.
 * @param input.addition - What is poured in: specific heat [J/(kg·K)] or specific-heat law, and temperature [°C].
 * @param input.temperatureMin - The mix may not fall below this [°C]: the setting temperature with a margin.
 * @returns The largest mass of the addition [kg].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where the melt is already too cool, or the addition so warm that any amount is allowed.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { largestAddition } from "gelwright/heat";
 * largestAddition({
 *   melt: [{ mass: 0.75, specificHeat: 2200, temperature: 75 }],
 *   addition: { specificHeat: 2000, temperature: 23 },
 *   temperatureMin: 55,
 * }); // => 0.515625
 * const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * largestAddition({
 *   melt: [{ mass: 0.75, specificHeat: oil, temperature: 75 }],
 *   addition: { specificHeat: oil, temperature: 23 },
 *   temperatureMin: 55,
 * }); // => 0.47464388472855223
 * ```
 */
export function largestAddition(input: {
  readonly melt: readonly Charge[];
  readonly addition: Omit<Charge, "mass">;
  readonly temperatureMin: number;
}): number {
  const { melt, addition, temperatureMin } = record(input, "input", known.largestAddition);
  const min = temperature(temperatureMin, "temperatureMin");
  const spare = result(heatGiven(melt, "melt")(min), "heat of the melt");
  if (spare < 0)
    refuse("unreachable", "melt", `${-spare} J short`, `a melt that is warmer than temperatureMin (${min} °C)`);
  const { heatBetween } = compilePart({ ...record(addition, "addition"), mass: 1 }, "addition");
  const taken = heatBetween(temperature(addition.temperature, "addition.temperature"), min);
  if (taken <= 0)
    refuse(
      "unreachable",
      "addition.temperature",
      addition.temperature,
      `below temperatureMin (${min} °C): any amount of it may go in`,
    );
  return result(spare / taken, "largest addition");
}

/**
 * The temperature to which an addition must be warmed so that the mix does not fall below the minimum temperature
 * allowed.
 *
 * $$m_c \int_{T_c}^{T_\mathrm{min}} c_c\,\mathrm dT = \sum_i m_i \int_{T_\mathrm{min}}^{T_i} c_i\,\mathrm dT \qquad c\ \text{constant}:\; T_c = T_\mathrm{min} - \frac{\sum_i m_i\,c_i\,(T_i - T_\mathrm{min})}{m_c\,c_c}$$
 *
 * Without the storage temperature it is a bound: for a small addition it can lie below any real temperature, and then
 * no addition is too cold.
 *
 * @param input.melt - The melt: mass [kg], specific heat [J/(kg·K)] or specific-heat law, and temperature [°C] of each part; at least one.
 * @param input.addition - What is poured in: mass [kg], and specific heat [J/(kg·K)] or specific-heat law.
 * @param input.temperatureStored - At which the addition is stored [°C]; needed where any specific heat is a law.
 * @param input.temperatureMin - The mix may not fall below this [°C].
 * @returns The minimum temperature of the addition [°C]; where it may go in as it is, the temperature at which it is stored.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where a specific heat is a law and no addition is hot enough.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { additionTemperatureMin } from "gelwright/heat";
 * additionTemperatureMin({
 *   melt: [{ mass: 0.75, specificHeat: 2200, temperature: 75 }],
 *   addition: { mass: 0.25, specificHeat: 2000 },
 *   temperatureMin: 55,
 * }); // => -11
 * const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * additionTemperatureMin({
 *   melt: [{ mass: 0.75, specificHeat: oil, temperature: 75 }],
 *   addition: { mass: 0.75, specificHeat: oil },
 *   temperatureStored: 21,
 *   temperatureMin: 55,
 * }); // => 34.813731010013896
 * ```
 */
export function additionTemperatureMin(input: {
  readonly melt: readonly Charge[];
  readonly addition: Part;
  readonly temperatureStored?: number;
  readonly temperatureMin: number;
}): number {
  const { melt, addition, temperatureStored, temperatureMin } = record(input, "input", known.additionTemperatureMin);
  const min = temperature(temperatureMin, "temperatureMin");
  const spare = result(heatGiven(melt, "melt")(min), "heat of the melt");
  const { heatBetween } = compilePart(addition, "addition");
  if (!anyLaw([...melt, addition])) {
    const bound = result(min - spare / heatBetween(0, 1), "minimum temperature of the addition");
    return temperatureStored === undefined
      ? bound
      : Math.max(bound, temperature(temperatureStored, "temperatureStored"));
  }
  const sought = compilePart(addition, "addition", "extend").heatBetween;
  const stored = temperature(temperatureStored, "temperatureStored");
  const left = (at: number): number => result(spare - sought(at, min), "heat of the mix");
  if (left(stored) >= 0) return stored;
  const high = Math.max(stored, min) + (spare < 0 ? hottest : 0);
  if (left(high) < 0) refuse("unreachable", "addition", `${-left(high)} J short`, `an addition of ${high} °C or less`);
  const warmed = root(left, stored, high, "minimum temperature of the addition", 1e-12);
  heatBetween(warmed, min);
  return warmed;
}

/**
 * The temperature that the melt must have so that an addition does not bring the mix below the minimum temperature
 * allowed.
 *
 * $$\sum_i m_i \int_{T_\mathrm{min}}^{T_h} c_i\,\mathrm dT = m_c \int_{T_c}^{T_\mathrm{min}} c_c\,\mathrm dT \qquad c\ \text{constant}:\; T_h = T_\mathrm{min} + \frac{m_c\,c_c\,(T_\mathrm{min} - T_c)}{\sum_i m_i\,c_i}$$
 *
 * Compare it with the temperature that the oils in the melt withstand. Where the addition is warmer than the minimum
 * temperature of the mix, it
 * is a bound below that, as in `additionTemperatureMin`; with a law the search ends at the minimum temperature.
 *
 * @param input.melt - The melt: mass [kg], and specific heat [J/(kg·K)] or specific-heat law, of each part; at least one.
 * @param input.addition - What is poured in: mass [kg], specific heat [J/(kg·K)] or specific-heat law, temperature [°C].
 * @param input.temperatureMin - The mix may not fall below this [°C].
 * @returns The minimum temperature of the melt [°C]; where any specific heat is a law, not below `temperatureMin`.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where a specific heat is a law and no melt is hot enough.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { meltTemperatureMin } from "gelwright/heat";
 * meltTemperatureMin({
 *   melt: [{ mass: 0.8, specificHeat: 2000 }],
 *   addition: { mass: 0.2, specificHeat: 2000, temperature: 23 },
 *   temperatureMin: 55,
 * }); // => 63
 * const oil = { law: "constant", specificHeat: 2000 } as const;
 * meltTemperatureMin({
 *   melt: [{ mass: 0.8, specificHeat: oil }],
 *   addition: { mass: 0.2, specificHeat: oil, temperature: 23 },
 *   temperatureMin: 55,
 * }).toFixed(9); // => "63.000000000"
 * ```
 */
export function meltTemperatureMin(input: {
  readonly melt: readonly Part[];
  readonly addition: Charge;
  readonly temperatureMin: number;
}): number {
  const { melt, addition, temperatureMin } = record(input, "input", known.meltTemperatureMin);
  const min = temperature(temperatureMin, "temperatureMin");
  const parts = list(melt, "melt", 1).map((part, i) => compilePart(part, `melt[${i}]`));
  const cold = compilePart(addition, "addition");
  const taken = result(
    cold.heatBetween(temperature(addition.temperature, "addition.temperature"), min),
    "heat of the addition",
  );
  const given = (from: number, to: number): number =>
    parts.reduce((sum, { heatBetween }) => sum + heatBetween(from, to), 0);
  if (!anyLaw([...melt, addition])) return result(min + taken / given(0, 1), "minimum temperature of the melt");
  if (taken <= 0) return min;
  return (
    rootBeyond(
      (at) => result(given(min, at) - taken, "heat of the melt"),
      min,
      min + hottest,
      "minimum temperature of the melt",
      1e-12,
    ) ?? refuse("unreachable", "addition", `${taken} J`, `less than a melt gives that is ${hottest} K warmer`)
  );
}
