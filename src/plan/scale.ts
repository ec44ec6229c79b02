import type { ScaledBatch } from "../batch/index.js";
import { vesselSegment } from "../heat/index.js";
import { tipSpeed, vesselFilling } from "../mixing/index.js";
import { attempt } from "./attempt.js";
import type { ColdAdditions, ColdWarming, ExpectedGel } from "./cold/plan.js";
import { doseTemperature } from "./dose.js";
import type { Job } from "./job.js";
import { shapeOf } from "./level.js";
import type { Moment } from "./moment.js";
import type { ScaleMetrics } from "./plan.js";
import { noHeatSource, vesselOf } from "./run/outcome.js";
import { hardestOf, type Turn } from "./turning.js";

/** What of a run changes with the size of the vessel. */
export function scaleOf(
  job: Job,
  moments: readonly Moment[],
  turns: readonly Turn[],
  { lot, density }: ScaledBatch,
): ScaleMetrics {
  const volume = density === undefined ? undefined : lot.total / density;
  const durationHeating = durationOf(moments, "heat");
  const durationCooling = durationOf(moments, "cool");
  const lastCharge = moments.filter(({ step }) => step.do === "charge").at(-1);
  const durationToSet = lastCharge && timeToSet(lastCharge, job);
  const filled = moments.find(({ step }) => step.do === "fill");
  const [from, to] = [lastCharge?.after.time, filled?.after.time];
  return {
    ...(volume !== undefined && {
      surfaceToVolume: vesselFilling({ vessel: shapeOf(job.vessel), volume }).surfaceToVolume,
    }),
    ...(durationHeating !== undefined && { durationHeating }),
    ...(durationCooling !== undefined && { durationCooling }),
    ...(durationToSet !== undefined && { durationToSet }),
    ...(durationToSet !== undefined &&
      from !== undefined &&
      to !== undefined && { durationMargin: durationToSet - (to - from) }),
    ...hardest(turns, job),
  };
}

/** What the stirrer does where it works hardest, as far as that is known. */
function hardest(turns: readonly Turn[], { vessel }: Job): ScaleMetrics {
  const max = hardestOf(turns, "power");
  if (!max || !vessel.stirrer) return {};
  const { shearRate, power, torque, speed } = max;
  return {
    tipSpeed: tipSpeed({ impeller: vessel.stirrer, speed }),
    ...(shearRate !== undefined && { shearRate }),
    power,
    torque,
  };
}

/** What of the cold route changes with the size of the vessel. */
export function coldScaleOf(additions: readonly ColdAdditions[], gel: ExpectedGel, warming: ColdWarming): ScaleMetrics {
  const steps = additions.filter(({ form }) => form !== "stream");
  const rows = steps.flatMap((one) => one.rows);
  const [first] = rows;
  const spans = additions.map((one) => one.rows.at(-1)?.timeEnd ?? one.rows.at(-1)?.timeStart);
  const known = spans.filter((span) => span !== undefined);
  return {
    ...((first ?? additions.length > steps.length) && { additions: rows.length }),
    ...(first && { massFirstAddition: first.mass }),
    ...(gel.volumeFractionOil !== undefined && { volumeFractionOil: gel.volumeFractionOil }),
    ...(known.length > 0 &&
      known.length === spans.length && { durationAdding: known.reduce((sum, span) => sum + span, 0) }),
    ...(warming.temperatureMax !== undefined && { temperatureMax: warming.temperatureMax }),
  };
}

/** All steps of a kind together; nothing where one of them is not known, or where there is none. */
function durationOf(moments: readonly Moment[], kind: "heat" | "cool"): number | undefined {
  const steps = moments.filter(({ step }) => step.do === kind);
  const known = steps.flatMap(({ before, after }) =>
    before.time === undefined || after.time === undefined ? [] : [after.time - before.time],
  );
  return steps.length === 0 || known.length < steps.length
    ? undefined
    : known.reduce((sum, duration) => sum + duration, 0);
}

/** From a moment until the gel sets, the vessel left to cool. */
function timeToSet({ after }: Moment, job: Job): number | undefined {
  const sets = doseTemperature(job, after.contents, "temperatureSetting");
  const vessel = vesselOf(after, job, noHeatSource);
  if (sets === undefined || after.temperature === undefined || typeof vessel === "string") return undefined;
  if (after.temperature <= sets) return 0;
  // A room that is too warm for the gel to set in, or a law that ends before.
  return attempt(
    () => {
      return vesselSegment({ ...vessel, temperatureEnd: sets }).duration;
    },
    () => undefined,
  );
}
