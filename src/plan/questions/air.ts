import type { LawCode } from "../codes/bases.js";
import type { Ends } from "../contents.js";
import { atMost, between, exactly, type Figure } from "../figure.js";
import { airAsked } from "../parts/bubble.js";
import { type AirSegment, airSegmentsIn, heldBubbles } from "../parts/bubbles.js";
import {
  bubbleUnderPressure,
  clearingWhileDeaerating,
  depthWhileDeaerating,
  heldWhileDeaerating,
  movedWhileDeaerating,
} from "../parts/deaerating.js";
import { gelOf } from "../parts/droplets.js";
import { type MomentOf, makesMelt, momentsOf } from "../parts/moments.js";
import { type Boiling, boilingIn, boilsBelow, foamUnderVacuum, vacuumAsked, vacuumState } from "../parts/vacuum.js";
import type { Run } from "../state.js";
import { otherwise, unknown, where } from "../unknown.js";
import { depthsIn } from "../vessel-shape.js";
import { longer } from "./levers.js";
import { asks, type Question } from "./question.js";

/** A stretch in which the melt stands, or none at all. */
type Standing = AirSegment | undefined;

type Deaerating = MomentOf<"de-aerate">;

/** The depth of what air has to leave. */
function depthFigure(depth: number, { job }: Run): Figure {
  return overEnds(depthsIn(job.vessel, depth), "level");
}

/** A figure by one law, between its ends. */
function overEnds({ min, max }: Ends, key: LawCode): Figure {
  const basis = [{ kind: "law", key }] as const;
  return min === max ? exactly(min, basis) : between(min, max, basis);
}

/** A run that draws a vacuum over the melt. */
function runsWithVacuum(run: Run): readonly Run[] {
  return run.job.process.air?.vacuum ? [run] : [];
}

/** Questions about air: the melt or the gel lets it go in time, and a vacuum neither lifts it over the rim nor boils it. */
export const airQuestions: readonly Question[] = [
  asks<Run, Standing>({
    id: "air-leaves",
    quantity: "length",
    quantifier: "some",
    subjects: (run) => (run.job.process.air && makesMelt(run) ? [run] : []),
    of: () => ({}),
    // In one of them the melt has to stand thin and long enough.
    states: (run) => {
      const segments = airSegmentsIn(run);
      return segments.length > 0 ? segments : [undefined];
    },
    at: (segment) => (segment ? { step: segment.toStep, place: "vessel" } : {}),
    figure: (segment) => (segment ?? unknown("not-done")).distance(),
    limit: (segment, _subject, run) => ({ min: depthFigure((segment ?? unknown("not-done")).depth(), run) }),
    beside: (segment, _subject, run) => ({
      diameter: airAsked(run).bubbleDiameter,
      fromStep: segment?.fromStep,
      ...(segment && where("durationToClear", segment.durationToClear)),
      ...otherwise(
        () => {
          const { charge } = gelOf(run);
          const { min, max } = heldBubbles(run, charge.fluidDensity(run.job.process.room));
          return { ...(min !== null && { suspendedMin: min }), ...(max !== null && { suspendedMax: max }) };
        },
        () => ({}),
      ),
    }),
  }),
  asks<Deaerating, Deaerating>({
    id: "air-is-released",
    quantity: "length",
    quantifier: "every",
    subjects: (run) => momentsOf(run, "de-aerate"),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "vessel" }),
    figure: (moment, _subject, run) => bubbleUnderPressure(moment, run),
    // A bubble as wide as the largest that is held is held.
    limit: (moment, _subject, run) => ({ min: heldWhileDeaerating(moment, run) }),
    beside: (moment, _subject, run) => ({
      ...(moment.speed !== undefined && where("cavern", () => movedWhileDeaerating(moment, run))),
      vesselDiameter: run.job.vessel.diameter,
    }),
  }),
  asks<Deaerating, Deaerating>({
    id: "air-has-time",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) => momentsOf(run, "de-aerate"),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "vessel" }),
    figure: (moment, _subject, run) => clearingWhileDeaerating(moment, run),
    limit: ({ step }) => atMost(step.for),
    levers: (moment) => longer(moment, "longer-de-aeration"),
    beside: (moment) => where("depth", () => depthWhileDeaerating(moment)),
  }),
  asks<Run, Run>({
    id: "vacuum-foam",
    quantity: "length",
    quantifier: "every",
    subjects: runsWithVacuum,
    of: (run) => ({ phase: vacuumAsked(run).afterPhase }),
    states: (run) => [run],
    at: (run) => ({ step: vacuumState(run).number, place: "vessel" }),
    figure: (run) => overEnds(foamUnderVacuum(run), "foam-head"),
    limit: (run) => atMost(vacuumAsked(run).rim, [{ kind: "stated", key: "process-air" }]),
    beside: (run) => ({ pressure: vacuumAsked(run).pressure }),
  }),
  asks<Boiling, Boiling>({
    id: "vacuum-boils",
    quantity: "pressure",
    quantifier: "every",
    subjects: boilingIn,
    of: ({ content: { material }, step }) => ({ material: material.key, ...(step !== undefined && { step }) }),
    states: (boiling) => [boiling],
    at: ({ step }) => (step === undefined ? {} : { step, place: "vessel" }),
    figure: ({ pressure }) => exactly(pressure, [{ kind: "stated", key: "process-air" }]),
    limit: (boiling, _boiling, run) => ({ min: boilsBelow(run, boiling) }),
    beside: (boiling, _boiling, run) => ({
      ...where("temperature", boiling.temperature),
      // How far below the pressure at which it boils.
      ...otherwise(
        () => {
          const { max } = boilsBelow(run, boiling);
          return max !== null && max > boiling.pressure ? { beyond: max - boiling.pressure } : {};
        },
        () => ({}),
      ),
    }),
  }),
];
