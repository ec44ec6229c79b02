import type { Material } from "../../formula/index.js";
import { relativeRateFunction, type Segment, type ThermalExposure, thermalExposure } from "../../heat/index.js";
import type { NotKnown } from "../figure.js";
import type { Run } from "../state.js";
import { by, type Cell, cell, otherwise, stated, unknown } from "../unknown.js";
import { isHeated, massOfMaterial, untilFilled } from "./in-vessel.js";

/** From here on an oil counts as warm, for want of a figure of its own [°C]: common practice, no source. */
const warmFrom = 60;

/** How warm a heat-sensitive material was, and for how long. */
export interface Exposed {
  /** How warm it got [°C]. */
  readonly temperatureMax: number;
  /** From its charge to the last pack [s]. */
  readonly duration: number;
  /** How much of that it was above a temperature [s]. */
  readonly durationAbove: number;
  /** That temperature [°C]. */
  readonly temperatureAbove: number;
  /** The time [s] at the temperature of the room [°C] that would have done as much, if its ageing kinetics are stated. */
  readonly equivalent?: { readonly duration: number; readonly temperature: number };
}

/** What one heat-sensitive material went through in the vessel, by its key; or why that is not known. */
export type MaterialExposure = { readonly material: string } & (Exposed | NotKnown);

const found = new WeakMap<Run, Map<string, Cell<ThermalExposure>>>();

/** What a material goes through in the vessel from its charge to the last pack; in a run that starts with the material in the vessel, from that start. */
export function exposureOf(run: Run, material: Material): ThermalExposure {
  const inRun = found.get(run) ?? new Map<string, Cell<ThermalExposure>>();
  found.set(run, inRun);
  const find = inRun.get(material.key) ?? cell(() => exposed(run, material));
  inRun.set(material.key, find);
  return find();
}

function exposed(run: Run, { key, ageingKinetics }: Material): ThermalExposure {
  const segments = segmentsWith(run, key);
  return by("thermal-exposure", () =>
    thermalExposure({
      segments,
      // Without kinetics every moment counts alike, and no equivalent time is given.
      ageingKinetics: ageingKinetics ?? { law: "q10", q10: 1, temperatureReference: warmFrom },
      temperatureAbove: warmFrom,
    }),
  );
}

/** What the charge goes through from the moment a material is in it to the last pack. */
export function segmentsWith(run: Run, key: string): readonly Segment[] {
  const inVessel = untilFilled(run);
  const from = inVessel.findIndex((moment) => massOfMaterial(moment, key) > 0);
  if (from < 0) unknown("nothing-there", { of: key });
  const segments = inVessel.slice(from).flatMap((moment) => moment.segments());
  return segments.length > 0 ? segments : unknown("not-done", { of: key });
}

/**
 * What each heat-sensitive material goes through in the vessel of a process that heats: how warm, how long, and if its
 * kinetics are stated, the time at the temperature of the room that would do as much. It ranks orders of work; it
 * predicts nothing.
 */
export function thermalExposuresOf(run: Run): readonly MaterialExposure[] {
  if (!isHeated(run)) return [];
  const sensitive = new Set(
    untilFilled(run).flatMap(({ after }) =>
      after.charge.contents.flatMap(({ material }) => (material.heatSensitive ? [material] : [])),
    ),
  );
  return [...sensitive].map(
    (material): MaterialExposure =>
      otherwise(
        () => ({ material: material.key, ...shownOf(run, material) }),
        (notKnown) => ({ material: material.key, notKnown }),
      ),
  );
}

/** The time at the room's temperature that does as much as the way of a material [s]: one reference for all, so that their times can be compared. */
export function equivalentOf(run: Run, material: Material): number {
  const kinetics = stated(material.ageingKinetics, "material-ageing-kinetics", { of: material.key });
  const { equivalentTime } = exposureOf(run, material);
  return by("thermal-exposure", () => equivalentTime / relativeRateFunction(kinetics)(run.job.process.room));
}

function shownOf(run: Run, material: Material): Exposed {
  const { temperatureMax, duration, durationAbove = 0 } = exposureOf(run, material);
  return {
    temperatureMax,
    duration,
    temperatureAbove: warmFrom,
    durationAbove,
    ...(material.ageingKinetics && {
      equivalent: { duration: equivalentOf(run, material), temperature: run.job.process.room },
    }),
  };
}
