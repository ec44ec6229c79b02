import { positive, temperature } from "../guards.js";
import { compileHeatLoss, type HeatLossLaw } from "../laws/heat-loss.js";
import { root } from "../numeric/root.js";
import { type CompiledHeatSource, compileHeatSource, type HeatSource } from "./heat-source.js";

/** What a vessel is given and what it loses. */
export interface HeatBalance {
  /** What heats or cools it. */
  readonly heatSource: HeatSource;
  /** How fast it loses heat to the room. */
  readonly heatLoss: HeatLossLaw;
  /** Temperature of the room [°C]. */
  readonly temperatureAmbient: number;
}

/** Supply and loss as functions of temperature [°C], checked. */
export interface CompiledHeatBalance extends Pick<CompiledHeatSource, "breakpoints" | "medium"> {
  /** Heat supplied [W]. */
  readonly sourceAt: (temperature: number) => number;
  /** Heat lost to the room [W]. */
  readonly lossAt: (temperature: number) => number;
  /** Heat that is left to warm the vessel [W]. */
  readonly netAt: (temperature: number) => number;
  /** Temperature of the room [°C]. */
  readonly ambient: number;
}

/** Checks heat source, loss and room. */
export function compileHeatBalance({ heatSource, heatLoss, temperatureAmbient }: HeatBalance): CompiledHeatBalance {
  const { flowAt, breakpoints, medium } = compileHeatSource(heatSource);
  const lossOf = compileHeatLoss(heatLoss, "heatLoss");
  const ambient = temperature(temperatureAmbient, "temperatureAmbient");
  // Net flow and loss are asked for at one temperature after another, and convection costs more than all else in a segment.
  let last = Number.NaN;
  let lost = Number.NaN;
  const lossAt = (at: number): number => {
    if (at !== last) {
      lost = lossOf(at, ambient);
      last = at;
    }
    return lost;
  };
  return { sourceAt: flowAt, lossAt, netAt: (at) => flowAt(at) - lossAt(at), ambient, breakpoints, medium };
}

/**
 * Where heat source and loss hold each other, between two temperatures at which the net flow has opposite signs, or where
 * it is nothing at one of them.
 */
export function balanceBetween(netAt: (temperature: number) => number, one: number, other: number): number {
  return one === other ? one : root(netAt, one, other, "steady temperature", 1e-12);
}

/** Heat capacity as a function of temperature [°C], as a segment takes it. */
export function capacityFunction(
  heatCapacity: number | ((temperature: number) => number),
): (temperature: number) => number {
  if (typeof heatCapacity === "function") return heatCapacity;
  const capacity = positive(heatCapacity, "heatCapacity");
  return () => capacity;
}
