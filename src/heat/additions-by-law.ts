import { list, record, refuse, result, temperature } from "../guards.js";
import { root } from "../numeric/root.js";
import { rootBeyond } from "../numeric/root-beyond.js";
import { type ChargeByLaw, compilePart, heatGiven, type PartByLaw } from "./charge-by-law.js";

/** No addition is looked for hotter than this [K above the least temperature of the mix]. */
const hottest = 1000;

/**
 * The most of an addition that a melt takes before the mix falls to the least temperature allowed, with specific heats by law and melting.
 *
 * $$m_c = \frac{\sum_i m_i \int_{T_\mathrm{least}}^{T_i} c_i\,\mathrm dT}{\int_{T_c}^{T_\mathrm{least}} c_c\,\mathrm dT}$$
 *
 * It is `largestAddition` with laws; what is said there of the setting temperature holds here.
 *
 * @param input.melt - What is in the vessel: mass [kg], specific-heat law and temperature [°C] of each part; at least one.
 * @param input.addition - What is poured in: specific-heat law and temperature [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C]: the setting temperature with a margin.
 * @returns The largest mass of the addition [kg].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where the melt is already too cool, or the addition so warm that any amount is allowed.
 * @source definition, from the balance of `mixingTemperatureByLaw`
 * @example
 * ```ts
 * import { largestAdditionByLaw } from "gelwright/heat";
 * const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * largestAdditionByLaw({
 *   melt: [{ mass: 0.75, specificHeat: oil, temperature: 75 }],
 *   addition: { specificHeat: oil, temperature: 23 },
 *   temperatureLeast: 55,
 * }); // => 0.47464388472855223
 * ```
 */
export function largestAdditionByLaw(input: {
  readonly melt: readonly ChargeByLaw[];
  readonly addition: Omit<ChargeByLaw, "mass">;
  readonly temperatureLeast: number;
}): number {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const least = temperature(temperatureLeast, "temperatureLeast");
  const spare = result(heatGiven(melt, "melt")(least), "heat of the melt");
  if (spare < 0) refuse("unreachable", "melt", `${-spare} J short`, `a melt that is warmer than ${least} °C`);
  const { heatBetween } = compilePart({ ...record(addition, "addition"), mass: 1 }, "addition");
  const taken = heatBetween(temperature(addition.temperature, "addition.temperature"), least);
  if (taken <= 0)
    refuse(
      "unreachable",
      "addition.temperature",
      addition.temperature,
      `below ${least} °C: any amount of it may go in`,
    );
  return result(spare / taken, "largest addition");
}

/**
 * The temperature to which an addition must be warmed so that the mix does not fall below the least temperature allowed, with specific heats by law and melting.
 *
 * $$m_c \int_{T_c}^{T_\mathrm{least}} c_c\,\mathrm dT = \sum_i m_i \int_{T_\mathrm{least}}^{T_i} c_i\,\mathrm dT$$
 *
 * @param input.melt - What is in the vessel: mass [kg], specific-heat law and temperature [°C] of each part; at least one.
 * @param input.addition - What is poured in: mass [kg], specific-heat law, and the temperature at which it is stored [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C].
 * @returns The temperature to warm it to [°C]; that of the store where it may go in as it is.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where no addition is hot enough.
 * @source definition, from the balance of `mixingTemperatureByLaw`
 * @example
 * ```ts
 * import { additionTemperatureLeastByLaw } from "gelwright/heat";
 * const oil = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048008] } as const;
 * additionTemperatureLeastByLaw({
 *   melt: [{ mass: 0.75, specificHeat: oil, temperature: 75 }],
 *   addition: { mass: 0.75, specificHeat: oil, temperature: 21 },
 *   temperatureLeast: 55,
 * }); // => 34.813731010013896
 * ```
 */
export function additionTemperatureLeastByLaw(input: {
  readonly melt: readonly ChargeByLaw[];
  readonly addition: ChargeByLaw;
  readonly temperatureLeast: number;
}): number {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const least = temperature(temperatureLeast, "temperatureLeast");
  const spare = result(heatGiven(melt, "melt")(least), "heat of the melt");
  const { mass, heatBetween } = compilePart(addition, "addition");
  const sought = compilePart(addition, "addition", "extend").heatBetween;
  const stored = temperature(addition.temperature, "addition.temperature");
  const left = (at: number): number => result(spare - mass * sought(at, least), "heat of the mix");
  if (left(stored) >= 0) return stored;
  const high = Math.max(stored, least) + (spare < 0 ? hottest : 0);
  if (left(high) < 0) refuse("unreachable", "addition", `${-left(high)} J short`, `an addition of ${high} °C or less`);
  const warmed = root(left, stored, high, "least temperature of the addition", 1e-12);
  heatBetween(warmed, least);
  return warmed;
}

/**
 * The temperature that the melt must have so that an addition does not bring the mix below the least temperature allowed, with specific heats by law and melting.
 *
 * $$\sum_i m_i \int_{T_\mathrm{least}}^{T_h} c_i\,\mathrm dT = m_c \int_{T_c}^{T_\mathrm{least}} c_c\,\mathrm dT$$
 *
 * Compare it with what the oils in the melt stand.
 *
 * @param input.melt - What is in the vessel: mass [kg] and specific-heat law of each part; at least one.
 * @param input.addition - What is poured in: mass [kg], specific-heat law and temperature [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C].
 * @returns The temperature of the melt [°C], the least temperature or above it.
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where no melt is hot enough.
 * @source definition, from the balance of `mixingTemperatureByLaw`
 * @example
 * ```ts
 * import { meltTemperatureLeastByLaw } from "gelwright/heat";
 * const oil = { law: "constant", specificHeat: 2000 } as const;
 * meltTemperatureLeastByLaw({
 *   melt: [{ mass: 0.8, specificHeat: oil }],
 *   addition: { mass: 0.2, specificHeat: oil, temperature: 23 },
 *   temperatureLeast: 55,
 * }).toFixed(9); // => "63.000000000"
 * ```
 */
export function meltTemperatureLeastByLaw(input: {
  readonly melt: readonly PartByLaw[];
  readonly addition: ChargeByLaw;
  readonly temperatureLeast: number;
}): number {
  const { melt, addition, temperatureLeast } = record(input, "input");
  const least = temperature(temperatureLeast, "temperatureLeast");
  const parts = list(melt, "melt", 1).map((part, i) => compilePart(part, `melt[${i}]`));
  const { mass, heatBetween } = compilePart(addition, "addition");
  const taken = result(
    mass * heatBetween(temperature(addition.temperature, "addition.temperature"), least),
    "heat of the addition",
  );
  if (taken <= 0) return least;
  const spare = (at: number): number =>
    result(parts.reduce((sum, part) => sum + part.mass * part.heatBetween(least, at), 0) - taken, "heat of the melt");
  return (
    rootBeyond(spare, least, least + hottest, "least temperature of the melt", 1e-12) ??
    refuse("unreachable", "addition", `${taken} J`, `less than a melt gives that is ${hottest} K warmer`)
  );
}
