import { volumeFractionOfOil } from "../../gel/index.js";
import {
  type Addition,
  additionTimes,
  feedAt,
  feedDuration,
  gelAlongAdditions,
  interpolateAtOilFraction,
  type OilFeed,
} from "../../mixing/index.js";
import type { Job } from "../job.js";
import { incorporationTimeFactorOf, type OnTheWay } from "./incorporation-time-factor.js";
import type { ColdAddition, ColdAdditions } from "./plan.js";
import type { AddStep } from "./step.js";
import type { Thickness } from "./thickness.js";

/** Rows of a stream: the pump is raised evenly from one to the next. */
const rowsOfStream = 10;

/** The vessel at an oil fraction, so much of the phase being in [kg]. */
export type Way = (volumeFractionOil: number, mass: number) => OnTheWay;

/** Additions with their times, as far as those are known. */
interface Timed extends Pick<ColdAdditions, "rows" | "timesNotKnown" | "incorporationTimeFactor"> {
  /** Time that the whole takes [s]. */
  readonly duration?: number | undefined;
}

/** How long uptake takes on this way, or why that is not known. */
function incorporationTimeOn(way: readonly OnTheWay[], step: AddStep, job: Job) {
  const { incorporationTime } = job.bench.emulsion ?? {};
  if (!incorporationTime) return "the bench states no incorporation time";
  const factor = incorporationTimeFactorOf(step, way, job);
  if (typeof factor === "string") return factor;
  const [first, last] = [way[0], way.at(-1)].map((one) =>
    interpolateAtOilFraction({ law: factor, volumeFractionOil: one?.volumeFractionOil ?? 0 }),
  ) as [number, number];
  return {
    incorporationTimeFactor: { first, last },
    taken: {
      incorporationTime,
      incorporationTimeFactor: factor,
      ...(step.rateMax !== undefined && { rateMax: step.rateMax }),
    },
  };
}

/** When the additions of a schedule go in, and how thick the gel is then. */
export function timed(additions: readonly Addition[], step: AddStep, way: Way, job: Job): Timed {
  const thickness = along(additions, job.bench.emulsion?.thickness);
  const [first] = additions;
  const start = first ? first.massOil - first.mass : 0;
  const known = incorporationTimeOn(
    additions.map(({ volumeFractionOil, massOil }) => way(volumeFractionOil, massOil - start)),
    step,
    job,
  );
  const times = typeof known === "string" ? [] : additionTimes({ additions, ...known.taken });
  return {
    rows: additions.map((addition, i) => ({ ...addition, ...times[i], ...thickness[i] })),
    duration: times.at(-1)?.timeEnd,
    ...(typeof known === "string"
      ? { timesNotKnown: known }
      : { incorporationTimeFactor: known.incorporationTimeFactor }),
  };
}

/** The rows of a stream: how fast to pump, and how thick the gel is then. */
export function streamed(oil: Omit<OilFeed, "incorporationTime">, step: AddStep, way: Way, job: Job): Timed {
  const start = oil.massOil ?? 0;
  const { massGelFormer, densityOil, densityGelFormer } = oil;
  const onTheWay = Array.from({ length: rowsOfStream + 1 }, (_, i) => {
    const mass = (oil.massToAdd * i) / rowsOfStream;
    const massFractionOil = (start + mass) / (start + mass + massGelFormer);
    return way(volumeFractionOfOil({ massFractionOil, densityOil, densityGelFormer }), mass);
  });
  const known = incorporationTimeOn(onTheWay, step, job);
  if (typeof known === "string") return { rows: [], timesNotKnown: known };
  const feed: OilFeed = { ...oil, ...known.taken };
  const duration = feedDuration(feed);
  const moments = Array.from({ length: rowsOfStream + 1 }, (_, i) => {
    const timeStart = (duration * i) / rowsOfStream;
    return { timeStart, ...feedAt({ ...feed, time: timeStart }) };
  });
  const thickness = along(moments, job.bench.emulsion?.thickness);
  const rows = moments.map((moment, i): ColdAddition => {
    const { timeStart, rate, massOil, massInVessel, volumeFractionOil } = moment;
    const mass = massOil - (moments[i - 1]?.massOil ?? start);
    return { mass, massOil, massInVessel, volumeFractionOil, timeStart, rate, ...thickness[i] };
  });
  return { rows, duration, incorporationTimeFactor: known.incorporationTimeFactor };
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
