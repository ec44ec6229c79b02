import type { Material } from "../formula/index.js";
import { type Segment, type ThermalExposure, thermalExposure } from "../heat/index.js";
import type { OilThermalExposure } from "./heat-plan.js";
import { type Moment, massOf } from "./moment.js";

/** From here on an oil counts as warm, for want of a figure of its own: common practice, no source. */
const warmFrom = 60;

/** What one material went through in the vessel from its charge to the last pack, or why that is not known. */
export type Exposed = (material: Material) => ThermalExposure | string;

/** Sums the way of a material up when it is first asked for, and only then. */
export function exposedIn(moments: readonly Moment[]): Exposed {
  const inVessel = untilFilled(moments);
  const found = new Map<Material, ThermalExposure | string>();
  return (material) => {
    const known = found.get(material) ?? thermalExposureOf(material, inVessel);
    found.set(material, known);
    return known;
  };
}

function thermalExposureOf(material: Material, inVessel: readonly Moment[]): ThermalExposure | string {
  const from = inVessel.findIndex((moment) => massOfMaterial(moment, material.key) > 0);
  const segments = from < 0 ? undefined : segmentsFrom(inVessel, from);
  if (!segments || segments.length === 0) return "a temperature or a time on the way is not known";
  return thermalExposure({
    segments,
    // Without a sensitivity every moment counts alike, and no equivalent is told.
    ageingKinetics: material.ageingKinetics ?? { law: "q10", q10: 1, temperatureReference: warmFrom },
    temperatureAbove: warmFrom,
  });
}

/** The moments up to the last pack. */
export function untilFilled(moments: readonly Moment[]): readonly Moment[] {
  const last = moments.findIndex((moment) => moment.step.do === "fill");
  return moments.slice(0, last < 0 ? undefined : last + 1);
}

/**
 * What each material that is to be spared went through in the vessel: how warm, how long, and where its sensitivity is
 * known, the time at its reference temperature that would have done as much. It ranks orders of work; it predicts nothing.
 */
export function thermalExposuresOf(moments: readonly Moment[], exposed: Exposed): readonly OilThermalExposure[] {
  const spared = untilFilled(moments).flatMap((moment) =>
    moment.after.contents
      .slice(moment.before.contents.length)
      .flatMap(({ material }) => (material.heatSensitive ? [material] : [])),
  );
  return [...new Set(spared)].map((material) => {
    const found = exposed(material);
    if (typeof found === "string") return { material: material.name, notKnown: found };
    const { temperatureMax, duration, durationAbove, equivalentTime } = found;
    const ageingKinetics = material.ageingKinetics;
    return {
      material: material.name,
      temperatureMax,
      duration,
      temperatureAbove: warmFrom,
      durationAbove: durationAbove ?? 0,
      ...(ageingKinetics && {
        equivalent: { duration: equivalentTime, temperature: ageingKinetics.temperatureReference },
      }),
    };
  });
}

/** What the charge went through from a moment on, or nothing where one part of it is not known. */
export function segmentsFrom(moments: readonly Moment[], from: number): readonly Segment[] | undefined {
  const parts = moments.slice(from).map((moment) => moment.segments);
  return parts.every((part) => part !== undefined) ? parts.flat() : undefined;
}

/** Mass of one material in the vessel after a moment [kg]. */
export function massOfMaterial({ after }: Moment, key: string): number {
  return massOf(after.contents.filter(({ material }) => material.key === key));
}
