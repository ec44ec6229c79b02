import type { ScaledBatch } from "../batch/index.js";
import {
  type CoolingPack,
  coolingTime,
  packCoolingCurve,
  packCoolingTime,
  packTemperature,
  temperatureAfterCooling,
} from "../heat/index.js";
import { bulkProperties, specificHeatOf } from "./bulk-properties.js";
import type { Job } from "./job.js";
import type { Content } from "./moment.js";

/** How a filled pack cools: by conduction out of its content, or as one lump. */
export type PackCooling = {
  readonly from: string;
  readonly temperatureStart: number;
  readonly temperatureAmbient: number;
} & (
  | { readonly by: "conduction"; readonly pack: CoolingPack }
  | { readonly by: "lump"; readonly heatCapacity: number; readonly conductance: number }
);

/** The cooling of one pack filled at a temperature, or what is missing to know it. */
export function packCooling(
  contents: readonly Content[],
  temperature: number | undefined,
  { pack, process }: Job,
  { massTarget, packs }: ScaledBatch,
): PackCooling | string {
  if (temperature === undefined) return "the temperature at which it was filled is not known";
  if (!pack?.content && pack?.conductance === undefined) return "nothing says how the filled pack cools";
  const room = process.temperatureRoom;
  const between = { temperatureStart: temperature, temperatureAmbient: room };
  // One set of figures for the whole fall: those of its middle.
  const middle = (temperature + room) / 2;
  const specificHeat = specificHeatOf(contents, middle);
  if (typeof specificHeat === "string") return specificHeat;
  if (!pack.content) {
    if (packs === undefined || pack.conductance === undefined) return "nothing says what is in one pack";
    return {
      ...between,
      by: "lump",
      heatCapacity: specificHeat * (massTarget / packs),
      conductance: pack.conductance,
      from: "cooling as one lump by the pack's stated loss",
    };
  }
  const properties = bulkProperties(contents, middle);
  if (typeof properties === "string") return properties;
  const { diameter, height, coefficient } = pack.content;
  return {
    ...between,
    by: "conduction",
    pack: {
      pack: { shape: "cylinder", diameter, height },
      ...properties,
      specificHeat,
      heatTransferCoefficient: coefficient,
      ...between,
    },
    from: "conduction out of the pack's centre, the latent heat of setting left out",
  };
}

/** Temperature of the pack (at its centre, where heat is conducted) after a time [°C]. */
export function temperatureInPack(cooling: PackCooling, duration: number): number {
  return cooling.by === "lump"
    ? temperatureAfterCooling({ ...cooling, duration })
    : packTemperature({ ...cooling.pack, duration });
}

/** Time until the pack (its centre, where heat is conducted) has cooled to a temperature [s]. */
export function timeInPack(cooling: PackCooling, temperatureEnd: number): number {
  return cooling.by === "lump"
    ? coolingTime({ ...cooling, temperatureEnd })
    : packCoolingTime({ ...cooling.pack, temperatureEnd });
}

/** The cooling of the pack until a temperature, for what settles in it meanwhile. */
export function curveInPack(
  cooling: PackCooling,
  temperatureEnd: number,
): { readonly times: readonly number[]; readonly temperatures: readonly number[] } {
  // Thirty stretches leave the way of a particle within a few parts in a million of a hundred's.
  if (cooling.by === "conduction") return packCoolingCurve({ ...cooling.pack, temperatureEnd, segments: 30 });
  const whole = timeInPack(cooling, temperatureEnd);
  const times = Array.from({ length: 101 }, (_, i) => (whole * i) / 100);
  return { times, temperatures: times.map((duration) => temperatureInPack(cooling, duration)) };
}
