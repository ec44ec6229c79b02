import { list, record, refuse, result, temperature } from "../guards.js";
import { type ChargeByLaw, compilePart, type PartByLaw } from "./charge-by-law.js";
import type { EqualAdditions } from "./least-additions.js";
import { mixingTemperatureByLaw } from "./mixing-temperature-by-law.js";

/** More parts than this are no way to work. */
const partsMost = 100;

/**
 * The least number of equal parts in which an addition goes in when the vessel is brought back to its temperature before
 * each, with specific heats by law, and with a least temperature that may fall as the addition dilutes the gel former.
 *
 * $$n = \min\left\lbrace n : T_{\mathrm{mix},k} \ge T_\mathrm{least}(k\,m_c/n)\ \text{for}\ k = 1 \dots n\right\rbrace$$
 *
 * It is `leastAdditions` with laws; what is said there of heat between the parts holds here.
 *
 * @param input.melt - What is in the vessel: mass [kg] and specific-heat law of each part; at least one.
 * @param input.temperatureMelt - Its temperature, to which it is brought back before each part [°C].
 * @param input.addition - All that is to go in: mass [kg], specific-heat law, temperature [°C].
 * @param input.temperatureLeast - The mix may not fall below this [°C]; or a function of the mass added so far [kg].
 * @returns The number, the mass of each part [kg], and the coldest that the mix becomes [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where a hundred parts are not enough.
 * @source definition, from the balance of `mixingTemperatureByLaw`
 * @example
 * ```ts
 * import { leastAdditionsByLaw } from "gelwright/heat";
 * const law = (specificHeat: number) => ({ law: "constant", specificHeat }) as const;
 * leastAdditionsByLaw({
 *   melt: [{ mass: 0.75, specificHeat: law(2200) }],
 *   temperatureMelt: 75,
 *   addition: { mass: 1.2, specificHeat: law(2000), temperature: 23 },
 *   temperatureLeast: 55,
 * }).number; // => 3
 * ```
 */
export function leastAdditionsByLaw(input: {
  readonly melt: readonly PartByLaw[];
  readonly temperatureMelt: number;
  readonly addition: ChargeByLaw;
  readonly temperatureLeast: number | ((massAdded: number) => number);
}): EqualAdditions {
  const { melt, temperatureMelt, addition, temperatureLeast } = record(input, "input");
  const warm = temperature(temperatureMelt, "temperatureMelt");
  const inside = list(melt, "melt", 1).map((part) => ({ ...record(part, "melt"), temperature: warm }));
  const whole = compilePart(addition, "addition").mass;
  const leastAt = (added: number): number =>
    temperature(
      typeof temperatureLeast === "function" ? temperatureLeast(added) : temperatureLeast,
      "temperatureLeast",
    );
  for (let number = 1; number <= partsMost; number += 1) {
    const mass = whole / number;
    let temperatureLowest = Number.POSITIVE_INFINITY;
    let isEnough = true;
    for (let k = 1; k <= number && isEnough; k += 1) {
      const before = k === 1 ? [] : [{ ...addition, mass: (k - 1) * mass, temperature: warm }];
      const mixed = mixingTemperatureByLaw({ charges: [...inside, ...before, { ...addition, mass }] });
      temperatureLowest = Math.min(temperatureLowest, mixed);
      isEnough = mixed >= leastAt(k === number ? whole : k * mass);
    }
    if (isEnough) return { number, mass: result(mass, "mass"), temperatureLowest };
  }
  return refuse("unreachable", "temperatureMelt", warm, `a melt so warm that ${partsMost} parts are enough`);
}
