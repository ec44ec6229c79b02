import type { Material } from "../formula/index.js";
import { evaporationCoefficient, evaporationOverRun, type Segment } from "../heat/index.js";
import { airProperties } from "../laws/index.js";
import { attempt } from "./attempt.js";
import type { PlanEvaporation } from "./heat-plan.js";
import type { Job } from "./job.js";
import { type Moment, massOf } from "./moment.js";
import { massOfMaterial, segmentsFrom } from "./thermal-exposure.js";

/** Molar mass of what the volatile part is dissolved in [kg/mol]: triglycerides of plant oils, common practice, no source. */
export const molarMassOfOil = 0.88;

/** The loss of each volatile material over the run: predicted, at the very most, and as the batch document states it. */
export function evaporationOf(job: Job, moments: readonly Moment[]): readonly PlanEvaporation[] {
  const last = moments.findIndex((moment) => moment.step.do === "fill");
  return Object.values(job.formula.materials).flatMap((material): readonly PlanEvaporation[] => {
    const from = moments.findIndex((moment) => massOfMaterial(moment, material.key) > 0);
    const charged = moments[from];
    const { volatile } = material;
    if (!volatile || !charged) return [];
    const { airVelocity } = job.process;
    const segments = segmentsFrom(moments.slice(0, last + 1), from);
    const stated = statedLoss(job, material.key);
    const known = { material: material.name, ...(stated !== undefined && { stated }) };
    if (airVelocity === undefined) return [{ ...known, notKnown: "no speed of the air over the open vessel" }];
    if (!segments || segments.length === 0)
      return [{ ...known, notKnown: "a temperature or a time on the way is not known" }];
    return attempt(
      () => [{ ...known, ...predicted(job, volatile, charged, material.key, segments, airVelocity) }],
      (refusal) => [{ ...known, notKnown: refusal.message }],
    );
  });
}

function predicted(
  { vessel }: Job,
  volatile: NonNullable<Material["volatile"]>,
  charged: Moment,
  key: string,
  segments: readonly Segment[],
  airVelocity: number,
): { readonly predicted: number; readonly max: number; readonly basis: string } {
  const mass = massOfMaterial(charged, key);
  const { kinematicViscosity } = airProperties({
    temperature: charged.after.temperature ?? charged.before.temperature ?? 20,
  });
  const { coefficient } = evaporationCoefficient({
    airVelocity,
    length: vessel.diameter,
    kinematicViscosity,
    diffusivity: volatile.diffusivity,
  });
  const found = evaporationOverRun({
    volatile: { mass, molarMass: volatile.molarMass, vapourPressure: volatile.vapourPressure },
    rest: { mass: massOf(charged.after.contents) - mass, molarMass: molarMassOfOil },
    area: (Math.PI / 4) * vessel.diameter ** 2,
    coefficient,
    segments,
  });
  return { predicted: found.predicted.fraction, max: found.max.fraction, basis: found.predicted.basis };
}

/** The share of a material that the batch document states as lost. */
function statedLoss({ batch }: Job, key: string): number | undefined {
  const kept = batch.allowances.flatMap((allowance) =>
    allowance.kind === "share" && allowance.materials?.includes(key) ? [1 - allowance.fraction] : [],
  );
  return kept.length === 0 ? undefined : 1 - kept.reduce((product, share) => product * share, 1);
}
