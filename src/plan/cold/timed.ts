import { volumeFractionOfOil } from "../../gel/index.js";
import {
  type Addition,
  additionTimes,
  feedAt,
  feedDuration,
  gelAlongAdditions,
  type OilFeed,
  oilLawAt,
} from "../../mixing/index.js";
import type { Job } from "../job.js";
import type { ColdAddition, ColdAdditions } from "./plan.js";
import type { AddStep } from "./step.js";
import type { Thickness } from "./thickness.js";
import { type OnTheWay, uptakeFactorOf } from "./uptake-factor.js";

/** Rows of a stream: the pump is raised evenly from one to the next. */
const rowsOfStream = 10;

/** The vessel at an oil fraction, so much of the phase being in [kg]. */
export type Way = (volumeFractionOil: number, mass: number) => OnTheWay;

/** Additions with their times, as far as those are known. */
interface Timed extends Pick<ColdAdditions, "rows" | "timesNotKnown" | "uptakeFactor"> {
  /** Time that the whole takes [s]. */
  readonly duration?: number | undefined;
}

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

/** When the additions of a schedule go in, and how thick the gel is then. */
export function timed(additions: readonly Addition[], step: AddStep, way: Way, job: Job): Timed {
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

/** The rows of a stream: how fast to pump, and how thick the gel is then. */
export function streamed(oil: Omit<OilFeed, "uptake">, step: AddStep, way: Way, job: Job): Timed {
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
