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
import { massOf } from "./contents.js";
import type { Basis } from "./figure.js";
import type { Job } from "./job.js";
import { along, by, otherwise, remembered, stated } from "./unknown.js";

/** How a filled pack cools: by conduction out of its content, or as one lump. */
export interface PackCooling {
  readonly basis: Basis;
  readonly assumptions: readonly AssumptionCode[];
  /** How many times as long it may take with the heat that setting gives off, at most; `null` where that is not stated of all that sets. */
  readonly slowerMax: number | null;
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

/** Less of a charge is left over by rounding [share]. */
const rounding = 1e-9;

/**
 * How many times as long a full vessel takes to cool as far as what is left for the last pack, if that goes on losing as
 * much heat as the full vessel did: with a mass that falls evenly to the share x, −ln x/(1 − x). The wetted wall shrinks
 * with the level, so this is a bound; no law says how far within it the truth lies. `null` if nothing is left.
 */
export function longerWhileDrained({ job, mass }: Charge, scaled: ScaledBatch): number | null {
  const { delivered, allowances } = scaled.lot;
  const ofPack = otherwise(
    () => delivered / packsIn(job, scaled),
    () => 0,
  );
  // A film that is predicted may be too thick: only a stated one counts among what is left.
  const isPredicted = (called: string): boolean =>
    job.batch.allowances.some((one) => one.kind === "film" && one.name === called && one.thickness === undefined);
  const film = massOf(allowances.filter(({ name, part }) => part !== undefined && isPredicted(name)));
  const left = 1 - (delivered - ofPack + film) / mass;
  if (!(left > rounding)) return null;
  return left < 1 ? -Math.log(left) / (1 - left) : 1;
}

/** Thirty segments leave the path of a particle within a few parts in a million of a hundred's. */
const segmentsInPack = 30;

/** Largest slope of the share that has melted over the melting range, in its middle: of 10x³ − 15x⁴ + 6x⁵. */
const steepest = 15 / 8;

/**
 * A content that gives off all heat of melting as it sets, over as many kelvins as it takes it up, cools no more slowly
 * than one whose specific heat is everywhere the largest that it then has; with that every time grows alike.
 */
function slowerBySetting(charge: Charge, specificHeat: number): number | null {
  if (!charge.meltsBy()) return null;
  const released = charge.contents.reduce((sum, { material: { melting }, mass }) => {
    if (!melting) return sum;
    return sum + (steepest * mass * melting.latentHeat) / (melting.temperatureEnd - melting.temperatureOnset);
  }, 0);
  return 1 + released / charge.mass / specificHeat;
}

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
  const setting = {
    assumptions: charge.dose() > 0 ? (["latent-heat-of-setting-left-out"] as const) : [],
    slowerMax: slowerBySetting(charge, specificHeat),
  };
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
      ...setting,
      basis: { kind: "stated", key: "pack-cooling" },
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
    ...setting,
    basis: { kind: "law", key: "pack-conduction" },
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
