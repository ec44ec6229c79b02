import type { ScaledBatch } from "../../batch/index.js";
import { volumeFractionOfOil } from "../../gel/index.js";
import {
  type Addition,
  additionSchedule,
  additionTimes,
  feedAt,
  feedDuration,
  gelAlongAdditions,
  type OilFeed,
  oilLawAt,
  scheduleAtScale,
} from "../../mixing/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { type Content, massOf, portionOf } from "../moment.js";
import type { Thickness } from "./bench.js";
import { densitiesOf, phasesOfGel } from "./phases.js";
import type { ColdAddition, ColdAdditions } from "./plan.js";
import type { AddStep } from "./step.js";
import { type OnTheWay, uptakeFactorOf } from "./uptake-factor.js";

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
  const { shearRate } = bench.thickness;
  const known = {
    phase: step.phase,
    before: step.before,
    form,
    increment,
    keeps: step.keeps,
    ...(shearRate !== undefined && { shearRate }),
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

/** The vessel at an oil fraction, so much of the phase being in [kg]. */
type Way = (volumeFractionOil: number, mass: number) => OnTheWay;

type Timed = Pick<AddedOil, "rows" | "duration" | "timesNotKnown" | "uptakeFactor">;

/** How long uptake takes on this way, or why that is not known. */
function uptakeOn(way: readonly OnTheWay[], step: AddStep, job: Job) {
  const { uptake } = job.bench.coldRoute ?? {};
  if (!uptake) return "the bench states no time of uptake";
  const factor = uptakeFactorOf(step, way, job);
  if (typeof factor === "string") return factor;
  const [first, last] = [way[0], way.at(-1)].map((one) =>
    oilLawAt({ law: factor, volumeFractionOil: one?.volumeFractionOil ?? 0 }),
  ) as [number, number];
  return {
    uptakeFactor: { first, last },
    taken: {
      uptake,
      uptakeFactor: factor,
      ...(step.rateGreatest !== undefined && { rateGreatest: step.rateGreatest }),
    },
  };
}

function timed(additions: readonly Addition[], step: AddStep, way: Way, job: Job): Timed {
  const thickness = along(additions, job.bench.coldRoute?.thickness);
  const [first] = additions;
  const start = first ? first.massOil - first.mass : 0;
  const known = uptakeOn(
    additions.map(({ volumeFractionOil, massOil }) => way(volumeFractionOil, massOil - start)),
    step,
    job,
  );
  const times = typeof known === "string" ? [] : additionTimes({ additions, ...known.taken });
  return {
    rows: additions.map((addition, i) => ({ ...addition, ...times[i], ...thickness[i] })),
    duration: times.at(-1)?.timeEnd,
    ...(typeof known === "string" ? { timesNotKnown: known } : { uptakeFactor: known.uptakeFactor }),
  };
}

function streamed(oil: Omit<OilFeed, "uptake">, step: AddStep, way: Way, job: Job): Timed {
  const start = oil.massOil ?? 0;
  const { massGelFormer, densityOil, densityGelFormer } = oil;
  const onTheWay = Array.from({ length: rowsOfStream + 1 }, (_, i) => {
    const mass = (oil.massToAdd * i) / rowsOfStream;
    const massFractionOil = (start + mass) / (start + mass + massGelFormer);
    return way(volumeFractionOfOil({ massFractionOil, densityOil, densityGelFormer }), mass);
  });
  const known = uptakeOn(onTheWay, step, job);
  if (typeof known === "string") return { rows: [], timesNotKnown: known };
  const feed: OilFeed = { ...oil, ...known.taken };
  const duration = feedDuration(feed);
  const moments = Array.from({ length: rowsOfStream + 1 }, (_, i) => {
    const timeStart = (duration * i) / rowsOfStream;
    return { timeStart, ...feedAt({ ...feed, time: timeStart }) };
  });
  const thickness = along(moments, job.bench.coldRoute?.thickness);
  const rows = moments.map((moment, i): ColdAddition => {
    const { timeStart, rate, massOil, massInVessel, volumeFractionOil } = moment;
    const mass = massOil - (moments[i - 1]?.massOil ?? start);
    return { mass, massOil, massInVessel, volumeFractionOil, timeStart, rate, ...thickness[i] };
  });
  return { rows, duration, uptakeFactor: known.uptakeFactor };
}

/** Viscosity and yield stress where the bench's readings reach; one reading is a point and no line. */
function along(additions: readonly { readonly volumeFractionOil: number }[], thickness: Thickness | undefined) {
  const { viscosity = [], yieldStress = [] } = thickness ?? {};
  return gelAlongAdditions({
    additions,
    ...(viscosity.length > 1 && { viscosity }),
    ...(yieldStress.length > 1 && { yieldStress }),
  });
}
