import type { HeatSource } from "../../heat/index.js";
import type { Job } from "../job.js";
import type { State } from "../moment.js";
import { stirringPower } from "../stirring.js";

/** A heat source with the heat of stirring in it, and the words for that. */
export interface StirredHeatSource {
  readonly heatSource: HeatSource;
  /** Where its power has a breakpoint [°C]. */
  readonly breakpoints: readonly number[];
  /** As the end of a sentence: what stirring gives, or why its heat is left out; nothing where nothing stirs. */
  readonly said: string;
}

/** Adds the power of the stirrer to what heats or cools the charge between two temperatures, where it is known. */
export function withStirring(
  { contents, onHeat }: State,
  job: Job,
  speed: number | undefined,
  beside: HeatSource,
  [from, to]: readonly [number, number],
): StirredHeatSource {
  if (speed === undefined) return { heatSource: beside, breakpoints: [], said: "" };
  const [coolest, warmest] = [Math.min(from, to), Math.max(from, to)];
  const found = stirringPower(job, contents, [coolest, warmest], speed, onHeat ? "heating" : "cooling");
  if (typeof found === "string")
    return { heatSource: beside, breakpoints: [], said: `; heat of stirring left out, ${found}` };
  // The segment looks for its limit beyond its end, where nothing was read.
  const power = (temperature: number): number => found.at(Math.min(warmest, Math.max(coolest, temperature)));
  const [min, max] = [power(warmest), power(coolest)].map((watts) => Number(watts.toPrecision(2)));
  return {
    heatSource: { kind: "stirrer", power, beside },
    breakpoints: found.breakpoints,
    said: `; heat of stirring included, ${min === max ? max : `${min} to ${max}`} W`,
  };
}
