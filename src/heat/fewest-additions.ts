import { list, record, refuse, result, temperature } from "../guards.js";
import { largestAddition } from "./additions.js";
import { anyLaw, type Charge, compilePart, type Part } from "./charge.js";
import * as known from "./known.js";
import { mixingTemperature } from "./mixing-temperature.js";

/** In how many parts an addition goes in, and how cold the mix becomes at its coldest. */
export interface EqualAdditions {
  /** How many equal parts, 1 or more. */
  readonly number: number;
  /** Mass of each [kg]. */
  readonly mass: number;
  /** The mix at its coldest [°C]: after the first part, unless specific heats vary. */
  readonly temperatureMin: number;
}

/** Where parts are tried one number after another: more than this are no way to work. */
const partsMax = 100;

/**
 * The smallest number of equal parts in which an addition can go in without bringing the mix below a temperature, when the
 * vessel is brought back to the melt's temperature before each part.
 *
 * $$n = \min\left\lbrace n : T_{\mathrm{mix},k} \ge T_\mathrm{min}(k\,m_c/n)\ \text{for}\ k = 1 \dots n\right\rbrace \qquad c,\,T_\mathrm{min}\ \text{constant}:\; n = \left\lceil \frac{m_c}{m_{c,\mathrm{max}}} \right\rceil$$
 *
 * With constant specific heats the first part cools the mix most, because the vessel holds least at that point, and the largest
 * addition gives the number. Without heat between the parts no number of them helps: the end is that of a single
 * addition. The gel former is diluted on the way: give the minimum temperature as a function of what has been added, or
 * take the setting temperature of the whole mix, or, if it falls with dilution, that of the melt.
 *
 * @param input.melt - What is in the vessel: mass [kg], and specific heat [J/(kg·K)] or specific-heat law, of each part; at least one.
 * @param input.temperatureMelt - Its temperature, to which it is brought back before each part [°C].
 * @param input.addition - All that is to go in: mass [kg], specific heat [J/(kg·K)] or specific-heat law, temperature [°C].
 * @param input.temperatureMin - The mix may not fall below this [°C]: the setting temperature with a margin; or a function of the mass added so far [kg].
 * @returns The number, the mass of each part [kg], and the lowest temperature of the mix [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; `range` where a law ends; `unreachable` where the melt is not above the minimum temperature, or where a hundred parts are not enough with a law or a function.
 * @source definition, from the balance of `mixingTemperature`
 * @example
 * ```ts
 * import { fewestAdditions } from "gelwright/heat";
 * fewestAdditions({
 *   melt: [{ mass: 0.75, specificHeat: 2200 }],
 *   temperatureMelt: 75,
 *   addition: { mass: 1.2, specificHeat: 2000, temperature: 23 },
 *   temperatureMin: 55,
 * }).number; // => 3
 * const law = (specificHeat: number) => ({ law: "constant", specificHeat }) as const;
 * fewestAdditions({
 *   melt: [{ mass: 0.75, specificHeat: law(2200) }],
 *   temperatureMelt: 75,
 *   addition: { mass: 1.2, specificHeat: law(2000), temperature: 23 },
 *   temperatureMin: 55,
 * }).number; // => 3
 * ```
 */
export function fewestAdditions(input: {
  readonly melt: readonly Part[];
  readonly temperatureMelt: number;
  readonly addition: Charge;
  readonly temperatureMin: number | ((massAdded: number) => number);
}): EqualAdditions {
  const { melt, temperatureMelt, addition, temperatureMin } = record(input, "input", known.fewestAdditions);
  const warm = temperature(temperatureMelt, "temperatureMelt");
  const inside = list(melt, "melt", 1).map((part, i) => {
    compilePart(part, `melt[${i}]`);
    return { ...part, temperature: warm };
  });
  compilePart(addition, "addition");
  temperature(addition.temperature, "addition.temperature");
  if (typeof temperatureMin === "function") return tried(inside, warm, addition, temperatureMin);
  const min = temperature(temperatureMin, "temperatureMin");
  return anyLaw([...inside, addition]) ? tried(inside, warm, addition, () => min) : divided(inside, addition, min);
}

/** By the largest addition, which is the same for every part or grows from one to the next. */
function divided(melt: readonly Charge[], addition: Charge, min: number): EqualAdditions {
  const whole = mixingTemperature({ charges: [...melt, addition] });
  if (whole >= min) return { number: 1, mass: addition.mass, temperatureMin: whole };
  const max = largestAddition({ melt, addition, temperatureMin: min });
  if (max === 0) refuse("unreachable", "temperatureMelt", melt[0]?.temperature, `above temperatureMin (${min} °C)`);
  // A quotient that is whole but for rounding is whole.
  const number = result(Math.ceil((addition.mass / max) * (1 - 4 * Number.EPSILON)), "number");
  const mass = addition.mass / number;
  const coolest = mixingTemperature({ charges: [...melt, { ...addition, mass }] });
  return { number, mass, temperatureMin: coolest };
}

/** One number of parts after another, each part mixed in turn. */
function tried(
  melt: readonly Charge[],
  warm: number,
  addition: Charge,
  temperatureMin: (massAdded: number) => number,
): EqualAdditions {
  const whole = addition.mass;
  for (let number = 1; number <= partsMax; number += 1) {
    const mass = whole / number;
    let coolest = Number.POSITIVE_INFINITY;
    let isEnough = true;
    for (let k = 1; k <= number && isEnough; k += 1) {
      const before = k === 1 ? [] : [{ ...addition, mass: (k - 1) * mass, temperature: warm }];
      const mixed = mixingTemperature({ charges: [...melt, ...before, { ...addition, mass }] });
      coolest = Math.min(coolest, mixed);
      isEnough = mixed >= temperature(temperatureMin(k === number ? whole : k * mass), "temperatureMin");
    }
    if (isEnough) return { number, mass: result(mass, "mass"), temperatureMin: coolest };
  }
  return refuse("unreachable", "temperatureMelt", warm, `a melt so warm that ${partsMax} parts are enough`);
}
