import type { Supply } from "../../heat/index.js";
import type { Job } from "../job.js";
import type { State } from "../moment.js";
import { stirringPower } from "../stirring.js";

/** A supply with the heat of stirring in it, and the words for that. */
export interface StirredSupply {
  readonly supply: Supply;
  /** Where its power has a kink [°C]. */
  readonly kinks: readonly number[];
  /** As the end of a sentence: what stirring gives, or why its heat is left out; nothing where nothing stirs. */
  readonly said: string;
}

/** Adds the power of the stirrer to what heats or cools the charge between two temperatures, where it is known. */
export function withStirring(
  { contents, onHeat }: State,
  job: Job,
  speed: number | undefined,
  beside: Supply,
  [from, to]: readonly [number, number],
): StirredSupply {
  if (speed === undefined) return { supply: beside, kinks: [], said: "" };
  const [coolest, warmest] = [Math.min(from, to), Math.max(from, to)];
  const found = stirringPower(job, contents, [coolest, warmest], speed, onHeat ? "heating" : "cooling");
  if (typeof found === "string") return { supply: beside, kinks: [], said: `; heat of stirring left out, ${found}` };
  // The leg looks for its limit beyond its end, where nothing was read.
  const power = (temperature: number): number => found.at(Math.min(warmest, Math.max(coolest, temperature)));
  const [least, most] = [power(warmest), power(coolest)].map((watts) => Number(watts.toPrecision(2)));
  return {
    supply: { supply: "stirrer", power, beside },
    kinks: found.kinks,
    said: `; heat of stirring included, ${least === most ? most : `${least} to ${most}`} W`,
  };
}
