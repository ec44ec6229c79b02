import { enthalpyBetween, type SpecificHeatLaw, specificHeatFunction, specificHeatKinks } from "../laws/index.js";
import type { Vessel } from "./job.js";
import type { Content } from "./moment.js";

/** Heat capacity of a charge against temperature, with the vessel wall that warms along where one is given. */
export interface HeatCapacity {
  /** [J/K] at a temperature [°C]. */
  readonly at: (temperature: number) => number;
  /** Heat from one temperature to another [J]. */
  readonly between: (from: number, to: number) => number;
  /** Where it has a kink [°C]: the ends of melting ranges. */
  readonly kinks: readonly number[];
}

/** A specific heat that is not known stops every time that hangs on it; its name says whose. */
export interface Missing {
  readonly missing: string;
}

/**
 * Heat capacity of some contents. What is solid melts on the way up; what has dissolved does not freeze at its melting
 * range on the way down but sets at the gel's setting temperature, which these figures end at.
 */
export function heatCapacityOf(
  contents: readonly Content[],
  {
    wall,
    solid = () => false,
  }: { readonly wall?: Vessel["wall"]; readonly solid?: (content: Content) => boolean } = {},
): HeatCapacity | Missing {
  const parts: { readonly mass: number; readonly law: SpecificHeatLaw }[] = wall
    ? [{ mass: wall.mass, law: { law: "constant", specificHeat: wall.specificHeat } }]
    : [];
  for (const content of contents) {
    const { material, mass } = content;
    const { specificHeat, melting } = material;
    if (specificHeat === undefined) return { missing: `no specific heat of ${material.name}` };
    parts.push({
      mass,
      law:
        melting && solid(content)
          ? { law: "melting", solid: specificHeat, liquid: specificHeat, ...melting }
          : specificHeat,
    });
  }
  const functions = parts.map(({ mass, law }) => ({ mass, of: specificHeatFunction(law) }));
  return {
    at: (temperature) => {
      let sum = 0;
      for (const { mass, of } of functions) sum += mass * of(temperature);
      return sum;
    },
    between: (temperatureStart, temperatureEnd) =>
      parts.reduce((sum, { mass, law }) => sum + mass * enthalpyBetween({ law, temperatureStart, temperatureEnd }), 0),
    kinks: parts.flatMap(({ law }) => specificHeatKinks(law)),
  };
}

/** Whether something is missing. */
export function isMissing(capacity: HeatCapacity | Missing): capacity is Missing {
  return "missing" in capacity;
}
