import type { ScaledBatch } from "../../batch/index.js";
import {
  type Addition,
  additionSchedule,
  additionTimes,
  feedAt,
  feedDuration,
  gelAlongAdditions,
  type OilFeed,
  scheduleAtScale,
  uptakeScale,
} from "../../mixing/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";
import type { ColdBench } from "./bench.js";
import { densitiesOf, phasesOfGel } from "./phases.js";
import type { ColdAddition, ColdAdditions } from "./plan.js";
import type { AddStep } from "./step.js";

/** Oil that was added by a schedule; or why none can be made. */
export type AddedOil = Omit<ColdAdditions, "step"> & {
  /** Time that the whole takes [s], where it is known. */
  readonly duration?: number | undefined;
};

/** Rows of a stream: the pump is raised evenly from one to the next. */
const rowsOfStream = 10;

/** The schedule of one step: in what portions the phase goes in, when, and what is in the vessel after each. */
export function addOil(
  step: AddStep,
  inside: readonly Content[],
  added: readonly Content[],
  job: Job,
  scaled: ScaledBatch,
): AddedOil | string {
  const bench = job.bench.coldRoute;
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
    ...(bench.ceiling !== undefined && { volumeFractionGreatest: bench.ceiling }),
  };
  const factor = uptakeFactorOf(step, bench, job);
  const known = {
    phase: step.phase,
    before: step.before,
    form,
    increment,
    keeps: step.keeps,
    ...(typeof factor === "number" && { uptakeFactor: factor }),
  };
  return attempt(() => {
    if (form === "as at the bench") {
      if (!bench.additions) return "the bench states no additions that were taken up";
      if (before.oil.length > 0) return "the bench's additions begin without oil in the vessel";
      return { ...known, ...timed(scheduleAtScale({ ...oil, bench: bench.additions }), step, bench, factor) };
    }
    const { share } = bench;
    if (!share) return "the bench states no shares that were taken up at once";
    const asked = { ...oil, massOil: massOf(before.oil), share };
    if (form === "stream") return { ...known, ...streamed(asked, step, bench, factor) };
    return { ...known, ...timed(additionSchedule({ ...asked, form }), step, bench, factor) };
  });
}

/** The coarsest step among the balances of a phase: on that the vessel with the oil stands while it is poured from. */
function incrementOf(phase: string, { lot }: ScaledBatch): number {
  return Math.max(...lot.lines.filter((line) => line.phase === phase).map((line) => line.increment));
}

/** The factor on the bench's times, or what is missing for it. */
function uptakeFactorOf({ keeps, speed: own }: AddStep, { stirring }: ColdBench, { vessel }: Job): number | string {
  if (keeps === "time") return 1;
  const speed = own ?? vessel.stirrer?.speed;
  if (!stirring) return "nothing says how the bench was stirred";
  if (speed === undefined) return "no speed of the stirrer";
  if (keeps === "revolutions") return uptakeScale({ keeps, speedBench: stirring.speed, speedPlant: speed });
  if (!vessel.stirrer) return "no diameter of the stirrer";
  // The tip goes π N D in a second; π falls out of the quotient.
  return uptakeScale({
    keeps,
    tipSpeedBench: stirring.speed * stirring.diameter,
    tipSpeedPlant: speed * vessel.stirrer.diameter,
  });
}

function timed(
  additions: readonly Addition[],
  step: AddStep,
  bench: ColdBench,
  factor: number | string,
): Pick<AddedOil, "rows" | "duration" | "timesNotKnown"> {
  const thickness = along(additions, bench);
  const { uptake } = bench;
  const missing = uptake ? (typeof factor === "string" ? factor : undefined) : "the bench states no time of uptake";
  const times =
    uptake && typeof factor === "number"
      ? additionTimes({
          additions,
          uptake,
          uptakeFactor: factor,
          ...(step.rateGreatest !== undefined && { rateGreatest: step.rateGreatest }),
        })
      : [];
  return {
    rows: additions.map((addition, i) => ({ ...addition, ...times[i], ...thickness[i] })),
    duration: times.at(-1)?.timeEnd,
    timesNotKnown: missing,
  };
}

function streamed(
  oil: Omit<OilFeed, "uptake">,
  step: AddStep,
  bench: ColdBench,
  factor: number | string,
): Pick<AddedOil, "rows" | "duration" | "timesNotKnown"> {
  const { uptake } = bench;
  if (!uptake || typeof factor === "string")
    return { rows: [], timesNotKnown: uptake ? `${factor}` : "the bench states no time of uptake" };
  const feed: OilFeed = {
    ...oil,
    uptake,
    uptakeFactor: factor,
    ...(step.rateGreatest !== undefined && { rateGreatest: step.rateGreatest }),
  };
  const duration = feedDuration(feed);
  const start = oil.massOil ?? 0;
  const moments = Array.from({ length: rowsOfStream + 1 }, (_, i) => {
    const timeStart = (duration * i) / rowsOfStream;
    return { timeStart, ...feedAt({ ...feed, time: timeStart }) };
  });
  const thickness = along(moments, bench);
  const rows = moments.map((moment, i): ColdAddition => {
    const { timeStart, rate, massOil, massInVessel, volumeFractionOil } = moment;
    const mass = massOil - (moments[i - 1]?.massOil ?? start);
    return { mass, massOil, massInVessel, volumeFractionOil, timeStart, rate, ...thickness[i] };
  });
  return { rows, duration };
}

/** Viscosity and yield stress where the bench's readings reach; one reading is a point and no line. */
function along(additions: readonly { readonly volumeFractionOil: number }[], { viscosity, yieldStress }: ColdBench) {
  return gelAlongAdditions({
    additions,
    ...(viscosity.length > 1 && { viscosity }),
    ...(yieldStress.length > 1 && { yieldStress }),
  });
}
