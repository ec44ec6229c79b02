import { exposure, type Stretch } from "../heat/index.js";
import { type Moment, massOf } from "./moment.js";
import type { OilExposure } from "./plan.js";

/** From here on an oil counts as warm, for want of a figure of its own: common practice, no source. */
const warmFrom = 60;

/**
 * What each material that is to be spared went through in the vessel: how warm, how long, and where its sensitivity is
 * known, the time at its reference temperature that would have done as much. It ranks orders of work; it predicts nothing.
 */
export function exposuresOf(moments: readonly Moment[]): readonly OilExposure[] {
  const last = moments.findIndex((moment) => moment.step.do === "fill");
  const inVessel = moments.slice(0, last < 0 ? undefined : last + 1);
  const spared = inVessel.flatMap((moment, from) =>
    moment.after.contents
      .slice(moment.before.contents.length)
      .flatMap(({ material }) => (material.spareFromHeat ? [{ material, from }] : [])),
  );
  return spared.map(({ material, from }) => {
    const stretches = stretchesFrom(inVessel, from);
    const sensitivity = material.heatSensitivity;
    if (!stretches || stretches.length === 0)
      return { material: material.name, notKnown: "a temperature or a time on the way is not known" };
    const { temperatureHighest, duration, timeAbove, equivalentTime } = exposure({
      stretches,
      // Without a sensitivity every moment counts alike, and no equivalent is told.
      sensitivity: sensitivity ?? { law: "q10", q10: 1, temperatureReference: warmFrom },
      temperatureAbove: warmFrom,
    });
    return {
      material: material.name,
      temperatureHighest,
      duration,
      temperatureAbove: warmFrom,
      timeAbove: timeAbove ?? 0,
      ...(sensitivity && { equivalent: { duration: equivalentTime, temperature: sensitivity.temperatureReference } }),
    };
  });
}

/** What the charge went through from a moment on, or nothing where one part of it is not known. */
export function stretchesFrom(moments: readonly Moment[], from: number): readonly Stretch[] | undefined {
  const parts = moments.slice(from).map((moment) => moment.stretches);
  return parts.every((part) => part !== undefined) ? parts.flat() : undefined;
}

/** Mass of one material in the vessel after a moment [kg]. */
export function massOfMaterial({ after }: Moment, key: string): number {
  return massOf(after.contents.filter(({ material }) => material.key === key));
}
