import type { ScaledBatch } from "../batch/index.js";
import {
  type CoolingPack,
  coolingTime,
  packCoolingCurve,
  packCoolingTime,
  packTemperature,
  temperatureAfterCooling,
} from "../heat/index.js";
import { packsFromBatch } from "../packing/index.js";
import type { Charge } from "./charge.js";
import type { AssumptionCode } from "./codes/assumptions.js";
import type { Basis } from "./figure.js";
import type { Job } from "./job.js";
import { along, by, remembered, stated } from "./unknown.js";

/** How a filled pack cools: by conduction out of its content, or as one lump. */
export interface PackCooling {
  readonly basis: Basis;
  readonly assumptions: readonly AssumptionCode[];
  /** Temperature (at the centre, where heat is conducted) after a time [°C]. */
  readonly temperatureAfter: (duration: number) => number;
  /** Time until it (the centre, where heat is conducted) has cooled to a temperature [s]. */
  readonly timeUntil: (temperature: number) => number;
  /** Time until the middle of its surface has cooled to a temperature [s]; a lump is as warm there as anywhere. */
  readonly timeUntilSurface: (temperature: number) => number;
  /** Its cooling until a temperature, for what settles in it meanwhile. */
  readonly curve: (temperatureEnd: number) => {
    readonly times: readonly number[];
    readonly temperatures: readonly number[];
  };
}

/** Whole packs that one lot fills: those that were asked for, or as many as a mean content makes of what arrives. */
export function packsIn({ pack }: Job, { packsOfLot, lot: { delivered }, density }: ScaledBatch): number {
  if (packsOfLot !== undefined) return packsOfLot;
  const { fillTarget, nominal } = stated(pack, "pack");
  const massFill =
    fillTarget ?? nominal?.mass ?? stated(nominal?.volume, "pack-packs") * stated(density, "material-density");
  return by("packs-from-batch", () => packsFromBatch({ massBatch: delivered, massFill })).packs;
}

/** Thirty segments leave the path of a particle within a few parts in a million of a hundred's. */
const segmentsInPack = 30;

/** The cooling of one pack that was filled at a temperature. */
export function packCooling(charge: Charge, temperature: number, scaled: ScaledBatch): PackCooling {
  return coolingAlong(charge)(scaled)(temperature);
}

const coolingAlong = remembered((charge: Charge) =>
  remembered((scaled: ScaledBatch) => along((temperature) => coolingFrom(charge, temperature, scaled))),
);

function coolingFrom(charge: Charge, temperature: number, { massOfLot, packsOfLot }: ScaledBatch): PackCooling {
  const { pack, process } = charge.job;
  const { content, heatLoss } = stated(pack, "pack");
  const room = process.room;
  const between = { temperatureStart: temperature, temperatureAmbient: room };
  if (!content && heatLoss === undefined) return stated<PackCooling>(undefined, "pack-cooling");
  // One set of figures for the whole fall: those of its middle.
  const middle = (temperature + room) / 2;
  const specificHeat = charge.specificHeat(middle);
  if (!content) {
    const conductance = stated(heatLoss, "pack-cooling");
    const lump = {
      ...between,
      heatCapacity: specificHeat * (massOfLot / stated(packsOfLot, "pack-packs")),
      conductance,
    };
    const temperatureAfter = (duration: number): number => temperatureAfterCooling({ ...lump, duration });
    const timeUntil = along((temperatureEnd) => by("pack-lump", () => coolingTime({ ...lump, temperatureEnd })));
    return {
      basis: { kind: "stated", key: "pack-cooling" },
      assumptions: [],
      temperatureAfter,
      timeUntil,
      timeUntilSurface: timeUntil,
      curve: along((temperatureEnd) => {
        const whole = timeUntil(temperatureEnd);
        const times = Array.from({ length: 101 }, (_, i) => (whole * i) / 100);
        return { times, temperatures: times.map(temperatureAfter) };
      }),
    };
  }
  const { diameter, height, coefficient } = content;
  const conducting: CoolingPack = {
    pack: { shape: "cylinder", diameter, height },
    density: charge.density(middle),
    conductivity: charge.conductivity(middle),
    specificHeat,
    heatTransferCoefficient: coefficient,
    ...between,
  };
  return {
    basis: { kind: "law", key: "pack-conduction" },
    assumptions: ["latent-heat-of-setting-left-out"],
    temperatureAfter: along((duration) => by("pack-conduction", () => packTemperature({ ...conducting, duration }))),
    timeUntil: along((temperatureEnd) =>
      by("pack-conduction", () => packCoolingTime({ ...conducting, temperatureEnd })),
    ),
    timeUntilSurface: along((temperatureEnd) =>
      by("pack-conduction", () =>
        packCoolingTime({ ...conducting, where: { radial: 0, axial: height / 2 }, temperatureEnd }),
      ),
    ),
    curve: along((temperatureEnd) =>
      by("pack-conduction", () => packCoolingCurve({ ...conducting, temperatureEnd, segments: segmentsInPack })),
    ),
  };
}
