import type { Charge } from "../charge.js";
import { atLeast, atMost, type Figure } from "../figure.js";
import {
  glycerinToMatch,
  type Indices,
  indicesAt,
  mismatchMax,
  mismatchSeen,
  temperaturesOfUse,
} from "../parts/clarity.js";
import { gelOf, withOil } from "../parts/droplets.js";
import { leftOutIn } from "../parts/warming.js";
import { upToTheWarmest } from "../parts/warmth.js";
import type { Moment, Run } from "../state.js";
import { otherwise, unknown } from "../unknown.js";
import { asks, type Question } from "./question.js";

/** Closer to room temperature than this, no difference is visible [K]: common practice, no source. */
const asWarm = 0.5;

/** How far the indices of the gel are apart at a temperature, and at another if it may lie anywhere up to that. */
function apartAt(charge: Charge, ...temperatures: readonly [number, ...number[]]): Figure {
  const [own, ...others] = temperatures.map((temperature) => indicesAt(charge, temperature)) as [Indices, ...Indices[]];
  const ends = [own, ...others].flatMap(({ oil, gelFormer, off }) => [oil - gelFormer - off, oil - gelFormer + off]);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const value = Math.abs(own.oil - own.gelFormer);
  return { min: Math.max(0, low, -high), value, max: Math.max(high, -low), basis: own.basis };
}

/** The same in a step. Without a loss or a wall that is stated, what only stirring warms may be as cool as the room, and what was heated warmer. */
function apartIn(moment: Moment, run: Run): Figure {
  const { charge } = moment.after;
  const own = whileMatched(moment, run);
  const { max, assumptions = [] } = upToTheWarmest(run, moment, own);
  if (!assumptions.includes("heat-loss-left-out") && !assumptions.includes("vessel-wall-left-out"))
    return apartAt(charge, own);
  const other = charge.heated ? (max ?? own) : run.job.process.room;
  return { ...apartAt(charge, own, other), assumptions };
}

/** How warm the gel is when it is looked through [°C]: the room's temperature, if it is nearly that. */
function whileMatched({ after, number }: Moment, run: Run): number {
  const [cooler] = leftOutIn(run, number);
  // With the heat of a step left out, it is warmer by an unknown amount.
  if (cooler) {
    const { code, ...reason } = cooler.reason;
    return unknown(code, { ...reason, step: cooler.step });
  }
  const { room } = run.job.process;
  const temperature = after.temperature();
  return Math.abs(temperature - room) < asWarm ? room : temperature;
}

/** Whether oil and gel former bend light alike, so that the gel is clear. */
export const clarityQuestions: readonly Question[] = [
  asks<Run, number>({
    id: "clarity-match",
    quantity: "index-difference",
    quantifier: "every",
    subjects: withOil,
    of: () => ({}),
    // It has to look alike in the room and wherever it is used; between two temperatures it is nowhere worse than at one of them.
    states: temperaturesOfUse,
    figure: (temperature, run) => apartAt(gelOf(run).charge, temperature),
    limit: (_temperature, { job }) => ({ max: mismatchMax(job) }),
    beside: (temperature, run) => {
      const { charge } = gelOf(run);
      const { gelFormer, oil } = indicesAt(charge, temperature);
      const remedy = otherwise(
        () => ({ ...glycerinToMatch(charge, temperature) }),
        () => ({}),
      );
      return { temperature, gelFormer, oil, ...remedy };
    },
  }),
  // Oils lose more index with warmth than glycerin and water do: what is clear in the vessel may not be in the room, and the other way round.
  asks<Moment, Moment>({
    id: "clarity-while-warm",
    quantity: "index-difference",
    quantifier: "every",
    subjects: (run) => withOil(run).flatMap(() => run.moments.filter(({ step }) => step.do === "match clarity")),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "vessel" }),
    figure: (moment, _subject, run) => apartIn(moment, run),
    // It is to look in the vessel as it will in the room, clear or milky.
    limit: ({ after }, _subject, run) => {
      const allowed = mismatchSeen(run.job);
      const { value = 0 } = apartAt(after.charge, run.job.process.room);
      return value <= allowed ? atMost(allowed) : atLeast(allowed);
    },
    beside: (moment, _subject, run) => {
      const temperature = whileMatched(moment, run);
      const { gelFormer, oil } = indicesAt(moment.after.charge, temperature);
      return { temperature, gelFormer, oil };
    },
  }),
];
