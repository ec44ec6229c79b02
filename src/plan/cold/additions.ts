import type { ScaledBatch } from "../../batch/index.js";
import { additionSchedule, scheduleAtScale } from "../../mixing/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { type Content, massOf, portionOf } from "../moment.js";
import { speedIn } from "../stirring.js";
import { densitiesOf, phasesOfGel } from "./phases.js";
import type { ColdAdditions } from "./plan.js";
import type { AddStep } from "./step.js";
import { streamed, timed, type Way } from "./timed.js";

/** Oil that was added by a schedule; or why none can be made. */
export type AddedOil = Omit<ColdAdditions, "step"> & {
  /** Time that the whole takes [s], where it is known. */
  readonly duration?: number | undefined;
};

/** The schedule of one step: in what portions the phase goes in, when, and what is in the vessel after each. */
export function addOil(
  step: AddStep,
  inside: readonly Content[],
  added: readonly Content[],
  job: Job,
  scaled: ScaledBatch,
): AddedOil | string {
  const bench = job.bench.emulsion;
  if (!bench) return "the bench says nothing about the cold route";
  const form = step.additions ?? (bench.share ? "largest" : "as at the bench");
  const before = phasesOfGel(job, inside);
  const densities = densitiesOf({ ...before, oil: [...before.oil, ...added] }, job.process.temperatureRoom);
  if (typeof densities === "string") return densities;
  const increment = step.increment ?? incrementOf(step.phase, scaled);
  const oil = {
    massGelFormer: massOf(before.gelFormer),
    ...densities,
    massToAdd: massOf(added),
    increment,
    ...(bench.volumeFractionOilMax !== undefined && { volumeFractionOilMax: bench.volumeFractionOilMax }),
  };
  const { shearRate } = bench.thickness;
  const speed = speedIn(step, job);
  const { rateMax } = step;
  const known = {
    phase: step.phase,
    proceedWhen: step.proceedWhen,
    form,
    increment,
    keeps: step.keeps,
    ...(shearRate !== undefined && { shearRate }),
    ...(speed !== undefined && { speed }),
    ...(rateMax !== undefined && { rateMax }),
  };
  const way: Way = (volumeFractionOil, mass) => ({
    volumeFractionOil,
    contents: [...inside, ...portionOf(added, mass)],
  });
  return attempt(() => {
    if (form === "as at the bench") {
      if (!bench.additions) return "the bench states no additions that were taken up";
      if (before.oil.length > 0) return "the bench's additions begin without oil in the vessel";
      return { ...known, ...timed(scheduleAtScale({ ...oil, bench: bench.additions }), step, way, job) };
    }
    const { share } = bench;
    if (!share) return "the bench states no shares that were taken up at once";
    const asked = { ...oil, massOil: massOf(before.oil), share };
    if (form === "stream") return { ...known, ...streamed(asked, step, way, job) };
    return { ...known, ...timed(additionSchedule({ ...asked, form }), step, way, job) };
  });
}

/** The coarsest step among the balances of a phase: on that the vessel with the oil stands while it is poured from. */
function incrementOf(phase: string, { lot }: ScaledBatch): number {
  return Math.max(...lot.lines.filter((line) => line.phase === phase).map((line) => line.increment));
}
