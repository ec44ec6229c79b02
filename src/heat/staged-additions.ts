import { list, notNegative, record, result, temperature } from "../guards.js";
import type { HeatLossLaw } from "../laws/heat-loss.js";
import type { SegmentEnd } from "../transient/segment.js";
import { type Charge, compilePart, type Part } from "./charge.js";
import type { HeatSource } from "./heat-source.js";
import * as known from "./known.js";
import { mixingTemperature } from "./mixing-temperature.js";
import { vesselSegment } from "./vessel-segment.js";

/** A wait, for a time or until a temperature, and what goes in after it. */
export type Stage = SegmentEnd & {
  /** What goes in at the end of the wait. */
  readonly addition: Charge;
  /** What heats or cools the vessel during the wait; left out if it is left to itself. */
  readonly heatSource?: HeatSource;
};

/** What a stage came to. */
export interface StageResult {
  /** How long the wait was [s]. */
  readonly duration: number;
  /** When the addition goes in [°C]. */
  readonly temperatureBefore: number;
  /** When it has mixed in [°C]. */
  readonly temperatureMixed: number;
  /** Mass in the vessel after it [kg]. */
  readonly mass: number;
}

/** What additions in stages came to. */
export interface StagedAdditions {
  /** One for each stage. */
  readonly stages: readonly StageResult[];
  /** Of all waits together [s]; mixing in takes none. */
  readonly duration: number;
  /** The coldest that the mix became [°C]: compare it with the setting temperature, and a margin. */
  readonly temperatureMin: number;
  /** Lost to the room over all waits [J]. */
  readonly energyLost: number;
}

const off: HeatSource = { kind: "power", power: 0 };

/**
 * How the temperature changes when oils go into a melt in stages and the vessel loses heat to the room between them.
 *
 * $$t_k = \int \frac{C_k(T)}{q_\mathrm{supply} - q_\mathrm{loss}}\,\mathrm dT \qquad \sum_i m_i \int_{T_\mathrm{mix}}^{T_i} c_i\,\mathrm dT = 0$$
 *
 * Each stage is a segment of `vesselSegment`, then a balance of `mixingTemperature`; the heat capacity grows with what has
 * gone in. Every addition dilutes the gel former: take the setting temperature of each mix.
 *
 * @param input.melt - What is in the vessel at the start: mass [kg] and specific heat [J/(kg·K)] or specific-heat law of each part; at least one.
 * @param input.temperatureStart - Its temperature [°C].
 * @param input.heatCapacityVessel - Of the vessel, which follows the melt [J/K], 0 or more; default 0.
 * @param input.heatLoss - Heat-loss law of the vessel.
 * @param input.temperatureAmbient - Temperature of the room [°C].
 * @param input.stages - A wait (`duration` [s] or `temperatureEnd` [°C]) and an addition each; at least one.
 * @returns Temperatures [°C] and times [s] of each stage, and the lowest temperature of all [°C].
 * @throws CalculationError `input` where an argument is no number or out of range; what `vesselSegment` throws for a wait; `range` where a law ends.
 * @source definition, from the balances of `vesselSegment` and `mixingTemperature`
 * @example
 * ```ts
 * import { stagedAdditions } from "gelwright/heat";
 * const oil = { law: "constant", specificHeat: 2000 } as const;
 * const addition = { mass: 10, specificHeat: oil, temperature: 22 };
 * stagedAdditions({
 *   melt: [{ mass: 60, specificHeat: oil }],
 *   temperatureStart: 85,
 *   heatLoss: { law: "newton", conductance: 15 },
 *   temperatureAmbient: 20,
 *   stages: [
 *     { temperatureEnd: 75, addition },
 *     { duration: 600, addition },
 *     { duration: 600, addition },
 *   ],
 * }).temperatureMin; // => 53.13227640691123
 * ```
 */
export function stagedAdditions(input: {
  readonly melt: readonly Part[];
  readonly temperatureStart: number;
  readonly heatCapacityVessel?: number;
  readonly heatLoss: HeatLossLaw;
  readonly temperatureAmbient: number;
  readonly stages: readonly Stage[];
}): StagedAdditions {
  const {
    melt,
    temperatureStart,
    heatCapacityVessel = 0,
    heatLoss,
    temperatureAmbient,
    stages,
  } = record(input, "input", known.stagedAdditions);
  const parts = [...list(melt, "melt", 1)];
  const compiled = parts.map((part, i) => compilePart(part, `melt[${i}]`));
  let mass = compiled.reduce((sum, part) => sum + part.mass, 0);
  const vessel = notNegative(heatCapacityVessel, "heatCapacityVessel");
  if (vessel > 0) {
    // The vessel goes along as a kilogram of its heat capacity.
    const part: Part = { mass: 1, specificHeat: { law: "constant", specificHeat: vessel } };
    parts.push(part);
    compiled.push(compilePart(part, "heatCapacityVessel"));
  }
  let now = temperature(temperatureStart, "temperatureStart");
  let temperatureMin = now;
  let duration = 0;
  let energyLost = 0;
  const results = list(stages, "stages", 1).map((stage, i): StageResult => {
    const { addition, heatSource = off, ...until } = record(stage, `stages[${i}]`);
    const wait = vesselSegment({
      ...until,
      temperatureStart: now,
      heatCapacity: (at) => compiled.reduce((sum, part) => sum + part.mass * part.specificHeatOf(at), 0),
      breakpoints: compiled.flatMap(({ breakpoints }) => breakpoints),
      heatSource,
      heatLoss,
      temperatureAmbient,
    });
    const temperatureBefore = wait.temperatureEnd;
    compiled.push(compilePart(addition, `stages[${i}].addition`));
    now = mixingTemperature({
      charges: [...parts.map((part) => ({ ...part, temperature: temperatureBefore })), addition],
    });
    parts.push(addition);
    mass = result(mass + addition.mass, "mass");
    temperatureMin = Math.min(temperatureMin, temperatureBefore, now);
    duration = result(duration + wait.duration, "duration");
    energyLost = result(energyLost + wait.totals.energyLost, "energyLost");
    return { duration: wait.duration, temperatureBefore, temperatureMixed: now, mass };
  });
  return { stages: results, duration, temperatureMin, energyLost };
}
