import { tipSpeed, vesselFilling } from "../../mixing/index.js";
import type { Moment, Run, Schedule } from "../state.js";
import { type Stirred, stirredIn } from "../stirred.js";
import { impellerOf, stirrerOf } from "../stirrer.js";
import { by, cell, otherwise, stated, unknown, where } from "../unknown.js";
import { shapeOf } from "../vessel-shape.js";
import { volumeOfLot } from "./batch.js";
import { untilFilled, warmestIn } from "./in-vessel.js";
import { timeToSet } from "./time-to-set.js";

/** What of a run changes with the size of the vessel. What is not known is left out. */
export interface ScaleMetrics {
  /** Wall, bottom and surface of the filling over its volume at 20 °C [1/m]. */
  readonly surfaceToVolume?: number;
  /** All steps that heat [s]. */
  readonly durationHeating?: number;
  /** All steps that cool in the vessel [s]. */
  readonly durationCooling?: number;
  /** From the last charge until it sets in the vessel [s], through the steps as written and left to cool after them. */
  readonly durationToSet?: number;
  /** What of that is left once the packs are full [s]; below 0 if it sets before. */
  readonly durationMargin?: number;
  /** Of the stirrer at its rim, where it turns fastest [m/s]. */
  readonly tipSpeed?: number;
  /** Mean shear rate where it takes most power, of the stirred states that are known [1/s]. */
  readonly shearRate?: number;
  /** From the stirrer into the charge there [W]. */
  readonly power?: number;
  /** At the shaft there [N·m]. */
  readonly torque?: number;
  /** Of how many stirred states that is not known: it may take more there. */
  readonly stirredNotKnown?: number;
  /** If oil is added by a schedule: how many additions there are; 0 if all of it is streamed in. */
  readonly additions?: number;
  /** The first of them [kg]. */
  readonly massFirstAddition?: number;
  /** Oil by volume of oil and gel former before filling [0 to 1]. */
  readonly volumeFractionOil?: number;
  /** From the first addition of a phase until all of it is incorporated, all phases together [s]. */
  readonly durationAdding?: number;
  /** The warmest that stirring makes it [°C]. */
  readonly temperatureMax?: number;
}

/** What of a run changes with the size of the vessel. */
export function scaleMetricsOf(run: Run): ScaleMetrics {
  const { job } = run;
  const toSet = cell(() => timeToSet(run));
  return {
    ...where("surfaceToVolume", () => {
      const volume = volumeOfLot(run);
      return by("level", () => vesselFilling({ vessel: shapeOf(job.vessel), volume }).surfaceToVolume);
    }),
    ...where("durationHeating", () => durationOf(run, "heat")),
    ...where("durationCooling", () => durationOf(run, "cool")),
    ...where("durationToSet", () => toSet().duration),
    ...where("durationMargin", () => toSet().margin),
    ...hardest(run),
    ...alongAdditions(run),
  };
}

/** What the stirrer does where it turns fastest, and where it takes most power of the states that are known. */
function hardest({ job, turns }: Run): ScaleMetrics {
  if (turns.length === 0) return {};
  const known = turns.flatMap((turn) =>
    otherwise(
      (): readonly Stirred[] => [stirredIn(turn)],
      () => [],
    ),
  );
  const [first] = known;
  return {
    ...where("tipSpeed", () => {
      const impeller = impellerOf(stirrerOf(job));
      const speed = Math.max(...turns.map((turn) => turn.speed()));
      return by("scale-up", () => tipSpeed({ impeller, speed }));
    }),
    ...(first && ofStirred(known.reduce((most, one) => (one.power > most.power ? one : most), first))),
    stirredNotKnown: turns.length - known.length,
  };
}

function ofStirred({ shearRate, power, torque }: Stirred): ScaleMetrics {
  return { ...(shearRate !== undefined && { shearRate }), power, torque };
}

/** What of an emulsion changes with the size of the vessel. */
function alongAdditions(run: Run): ScaleMetrics {
  const inVessel = untilFilled(run).filter(({ after }) => !after.inPacks);
  const last = inVessel.at(-1)?.after.charge;
  if (!last?.isEmulsion()) return {};
  return {
    ...ofSchedules(run.moments.filter(({ schedule }) => schedule)),
    ...where("volumeFractionOil", () => last.oilFraction()),
    ...where("temperatureMax", () => Math.max(run.job.process.room, ...inVessel.map(warmestIn))),
  };
}

/** What of the schedules by which oil is added changes. */
function ofSchedules(adding: readonly Moment[]): ScaleMetrics {
  if (adding.length === 0) return {};
  const rows = cell((): Schedule["rows"] =>
    adding.flatMap(({ schedule }) => {
      const { form, rows: own } = stated(schedule, "emulsion-additions")();
      return form === "stream" ? [] : own;
    }),
  );
  return {
    ...where("additions", () => rows().length),
    ...where("massFirstAddition", () => (rows()[0] ?? unknown("not-done")).mass),
    ...where("durationAdding", () => adding.reduce((sum, { duration }) => sum + duration(), 0)),
  };
}

/** All steps of a kind together [s]. */
function durationOf({ moments }: Run, kind: "heat" | "cool"): number {
  const steps = moments.filter(({ step }) => step.do === kind);
  return steps.length === 0 ? unknown("not-done") : steps.reduce((sum, { duration }) => sum + duration(), 0);
}
