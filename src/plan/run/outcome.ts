import {
  type HeatedVessel,
  type HeatSource,
  heatCapacityBreakpoints,
  heatCapacityFunction,
  type Segment,
} from "../../heat/index.js";
import type { HeatLossLaw } from "../../laws/index.js";
import type { Job } from "../job.js";
import type { Content, State } from "../moment.js";
import { partsOf } from "../parts.js";

/** What a step does to the vessel. A figure that is left out is not known. */
export interface Outcome {
  readonly duration?: number | undefined;
  readonly temperature?: number | undefined;
  readonly contents?: readonly Content[] | undefined;
  readonly onHeat?: boolean | undefined;
  readonly law: string;
  readonly obstacle?: string | undefined;
  readonly segments?: readonly Segment[] | undefined;
}

/** The vessel with its charge as the kernels take it, or what is missing for that. */
export function vesselOf(
  { contents, temperature, molten }: State,
  { vessel, process }: Job,
  heatSource: HeatSource | undefined,
  heatLoss: HeatLossLaw | undefined = vessel.loss?.law,
): (HeatedVessel & { readonly breakpoints: readonly number[] }) | string {
  if (temperature === undefined) return "the temperature before is not known";
  if (!heatSource) return "no heater";
  if (!heatLoss) return "no heat loss of the vessel";
  const parts = partsOf(contents, molten, vessel.wall);
  if (typeof parts === "string") return parts;
  return {
    temperatureStart: temperature,
    temperatureAmbient: process.temperatureRoom,
    heatCapacity: heatCapacityFunction({ parts }),
    breakpoints: heatCapacityBreakpoints({ parts }),
    heatLoss,
    heatSource,
  };
}

/** A heat source that gives nothing: the vessel is left to itself. */
export const noHeatSource: HeatSource = { kind: "power", power: 0 };

/** A hold at one temperature, or nothing where that is not known. */
export function held(temperature: number | undefined, duration: number): Outcome["segments"] {
  return temperature === undefined
    ? undefined
    : [{ kind: "ramp", temperatureStart: temperature, temperatureEnd: temperature, duration }];
}
