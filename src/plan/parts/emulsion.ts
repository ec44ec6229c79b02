import type { Material } from "../../formula/index.js";
import { surfactantForDroplets } from "../../gel/index.js";
import { densityOf, massOf, volumeOf } from "../contents.js";
import type { NotKnown } from "../figure.js";
import type { Run, Schedule } from "../state.js";
import { by, otherwise, type Reason, stated, unknown, where } from "../unknown.js";
import { type Droplets, dropletsOf, gelOf, modulusByTheory, yieldStressByTheory } from "./droplets.js";
import { clarityOf, type PlanClarity } from "./haze.js";
import { type PlanSpeed, speedsOf } from "./speeds.js";
import { type PlanWarming, warmingOf } from "./warming.js";

// Schedules

/** How one phase of oil goes in by a step. */
export interface PlanSchedule extends Omit<Schedule, "factor"> {
  /** Number of the step, from 1. */
  readonly step: number;
  /** The factor that is put on the bench's times, from the first addition to the last. */
  readonly factor: { readonly first: number; readonly last: number } | NotKnown;
  /** Shear rate of the viscosities in the rows [1/s]. */
  readonly shearRate?: number;
}

/** The schedules by which oil goes in, or why one is not known. */
export function schedulesOf({ job, moments }: Run): readonly (PlanSchedule | (NotKnown & { readonly step: number }))[] {
  const shearRate = job.bench.emulsion?.thickness?.shearRate;
  return moments.flatMap(({ number: step, schedule }) => {
    if (!schedule) return [];
    return [
      otherwise(
        () => {
          const { factor, ...rest } = schedule();
          return {
            step,
            ...rest,
            factor: otherwise(factor, notKnown),
            ...(shearRate !== undefined && { shearRate }),
          };
        },
        (reason) => ({ step, ...notKnown(reason) }),
      ),
    ];
  });
}

// The finished gel

/** What the bench's figures make of the finished gel. */
export interface PlanEmulsionGel {
  /** Of oil in oil and outer phase. */
  readonly volumeFractionOil: number | NotKnown;
  readonly droplets: Droplets | NotKnown;
  /** Shear modulus of the packed droplets, by theory [Pa]. */
  readonly modulusByTheory: number | NotKnown;
  /** Yield stress of the packed droplets, by theory [Pa]. */
  readonly yieldStressByTheory: number | NotKnown;
}

function gelFigures(run: Run): PlanEmulsionGel {
  const { charge } = gelOf(run);
  return {
    volumeFractionOil: otherwise(() => charge.oilFraction(), notKnown),
    droplets: otherwise(() => dropletsOf(charge), notKnown),
    modulusByTheory: otherwise(() => modulusByTheory(charge), notKnown),
    yieldStressByTheory: otherwise(() => yieldStressByTheory(charge), notKnown),
  };
}

/** The surfactant in the finished gel, as supplied [kg]. */
export function surfactantIn(run: Run): number {
  const { charge } = gelOf(run);
  const { material } = stated(charge.job.bench.emulsion?.surfactant, "emulsion-surfactant");
  return massOf(charge.contents.filter((content) => content.material.key === material));
}

/** How much of the surfactant as supplied covers the droplets of the finished gel [kg]; what is dissolved or in micelles comes on top. Smaller droplets need more. */
export function surfactantNeeded(run: Run): { readonly min: number; readonly value: number; readonly max: number } {
  const { charge } = gelOf(run);
  const { job } = charge;
  const { material, areaPerGram } = stated(job.bench.emulsion?.surfactant, "emulsion-surfactant");
  const { diameter: value, min, max } = dropletsOf(charge);
  const oil = charge.oil();
  const volume = volumeOf(oil, job.process.room);
  const strength = (job.formula.materials[material] as Material).strength;
  const around = (diameter: number, volumeOil: number): number =>
    by("surfactant-coverage", () =>
      // One gram on so many square metres.
      surfactantForDroplets({ volumeOil, diameter, adsorption: 1e-3 / areaPerGram, strength }),
    ).asSupplied;
  return {
    min: around(max, volume.min),
    value: around(value, massOf(oil) / densityOf(oil, job.process.room)),
    max: around(min, volume.max),
  };
}

// The result

/** What an emulsion has beside everything that any process has. */
export interface PlanEmulsion {
  readonly schedules: ReturnType<typeof schedulesOf>;
  readonly gel: PlanEmulsionGel;
  /** How clear the finished gel is; left out where there is no oil in it. */
  readonly clarity?: PlanClarity;
  readonly warming: PlanWarming;
  /** The bench's stirrer beside this one, where the bench says how it stirred. */
  readonly speeds?: readonly PlanSpeed[] | NotKnown;
}

/** What of a run is an emulsion's own; nothing where it makes none. */
export function emulsionOf(run: Run): { readonly emulsion?: PlanEmulsion } {
  return where("emulsion", (): PlanEmulsion => {
    if (!gelOf(run).charge.isEmulsion()) unknown("nothing-there");
    return {
      schedules: schedulesOf(run),
      gel: gelFigures(run),
      ...(gelOf(run).charge.oil().length > 0 && { clarity: clarityOf(run) }),
      warming: warmingOf(run),
      ...(run.job.bench.emulsion?.stirring && { speeds: otherwise(() => speedsOf(run), notKnown) }),
    };
  });
}

function notKnown(reason: Reason): NotKnown {
  return { notKnown: reason };
}
