import { kriegerDoughertyViscosity, packedFraction, wettingOil } from "../../rheology/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { largest, needed } from "../suspended.js";
import { solidShare } from "../suspension.js";
import { dragOf } from "./drag.js";
import type { PlanParticle, PlanYieldStress } from "./plan.js";
import type { Suspended } from "./suspended.js";
import { heatOff, sinceOff } from "./window.js";

/** What stands on the sheet of each kind of particle: when to stir it in, and whether it stays up. */
export function particlesOf(
  all: readonly Suspended[],
  job: Job,
  moments: readonly Moment[],
  held: PlanYieldStress | undefined,
): readonly PlanParticle[] {
  return all.map((suspended) => {
    const { material, particle, moment, place, window, massFractionBeyond: beyond } = suspended;
    const { temperature, time } = moment.before;
    const { contents } = moment.after;
    const need = needed(particle, contents, job);
    const largestSuspended = held && largest(particle, contents, held.min, job);
    return {
      material: material.name,
      drag: dragOf(particle).name,
      ...(typeof window === "string" ? { notKnown: window } : { window }),
      ...(temperature !== undefined && {
        goesIn: { temperature, time: sinceOff(time, heatOff(moments, place)?.time) },
      }),
      ...(typeof beyond === "number" && { massFractionBeyond: beyond }),
      ...(need && { yieldStressNeeded: { min: need.min, max: need.max } }),
      ...(largestSuspended && { largestSuspended }),
      ...pigmentOf(suspended),
    };
  });
}

/** The oil that wets a pigment, and how much it thickens the melt, where its oil absorption is stated. */
function pigmentOf({ material, particle, moment }: Suspended): Pick<PlanParticle, "wettingOil" | "thickening"> {
  const { contents } = moment.after;
  const massPigment = contents.find((one) => one.material === material)?.mass;
  if (particle.oilAbsorption === undefined || massPigment === undefined) return {};
  const oilAbsorption = 100 * particle.oilAbsorption;
  const thickening = attempt(() =>
    kriegerDoughertyViscosity({
      volumeFraction: solidShare(contents),
      volumeFractionPacked: packedFraction({ oilAbsorption, densityPigment: particle.density }),
    }),
  );
  return {
    wettingOil: wettingOil({ massPigment, oilAbsorption }),
    ...(typeof thickening === "number" && { thickening }),
  };
}
