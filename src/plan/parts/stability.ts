import type { Interval } from "../../laws/index.js";
import { equivalentStorage, type Transition, temperatureCycles, testPlan } from "../../stability/index.js";
import { samplesOf } from "../samples.js";
import type { Run } from "../state.js";
import { by, orNotKnown, otherwise, type Reason, stated, unknown } from "../unknown.js";
import type { CalendarDay } from "./calendar.js";
import { dayAfter } from "./calendar.js";
import { nominalMass } from "./fill.js";
import { fillingOf, makesMelt } from "./moments.js";

const secondsPerDay = 86_400;

/** A stability test, as it was read. */
type Stability = NonNullable<Run["job"]["stability"]>;

/** Samples to take out on one day. */
export interface PlanPull {
  /** Days after the start. */
  readonly day: number;
  /** The day of the calendar, if the start has one. */
  readonly date?: CalendarDay;
  /** In the caller's words. */
  readonly condition: string;
  /** To take out. */
  readonly samples: number;
}

/** What one storage needs, and what its whole time stands for at the temperature of use. */
export interface PlanStorage {
  readonly condition: string;
  /** [°C]. */
  readonly temperature?: number;
  /** To put in, with those in reserve. */
  readonly samples: number;
  /** Day of the last pull. */
  readonly dayLast: number;
  /** Time at the temperature of use that does the same [s], of chemical change alone. */
  readonly equivalent?: Interval | { readonly notKnown: Reason };
}

/** The stability test of a product. */
export interface PlanStability {
  readonly pulls: readonly PlanPull[];
  readonly storages: readonly PlanStorage[];
  /** Temperature of use for which the times count [°C]. */
  readonly temperatureReference?: number;
  readonly cycles?: {
    /** Cycles. */
    readonly count: number;
    /** That go through them. */
    readonly samples: number;
    /** Of all cycles [s]. */
    readonly duration: number;
    readonly stays: readonly {
      /** [°C]. */
      readonly temperature: number;
      /** [s]. */
      readonly duration: number;
    }[];
    /** How often it goes through each transition, by the caller's name or as `gel-point`. */
    readonly crossings: readonly {
      readonly name: string;
      /** Times. */
      readonly count: number;
    }[];
  };
  /** All samples, those of cycles among them. */
  readonly samples: number;
  /** Product in them [kg]. */
  readonly mass?: number;
  readonly notKnown?: Reason;
}

/** The stability test, if one is stated. */
export function stabilityIn({ job }: Run): Stability {
  return stated(job.stability, "stability");
}

/** Product in one sample [kg]. */
function sampleMass(run: Run): number {
  const { sample } = stabilityIn(run);
  if (sample !== undefined) return sample;
  const { massTarget, packs } = run.scaled;
  return packs === undefined ? nominalMass(run) : massTarget / packs;
}

/** Product that the test takes out of a lot [kg]. */
export function massOfSamples(run: Run): number {
  return samplesOf(stabilityIn(run)) * sampleMass(run);
}

/** Where the gel is another material: between setting and dissolving, and what else the caller states. */
export function transitionsOf(run: Run): readonly Transition[] {
  const own = (stabilityIn(run).transitions ?? []).map(({ name, from, to }) => ({
    name,
    temperatureMin: from,
    temperatureMax: to,
  }));
  if (!makesMelt(run)) return own;
  const { charge } = fillingOf(run).after;
  if (charge.dose() === 0) return own;
  const [sets, dissolves] = [charge.setting().temperature, charge.dissolving().temperature];
  const ends = { temperatureMin: Math.min(sets, dissolves), temperatureMax: Math.max(sets, dissolves) };
  return [{ name: "gel-point", ...ends }, ...own];
}

/** What the time in a storage stands for. */
function equivalentOf(run: Run, temperature: number, days: number): Interval {
  const { ageing } = stabilityIn(run);
  const { reference: temperatureReference, ...kinetics } = stated(ageing, "stability-ageing");
  const transitions = transitionsOf(run);
  const found = by("equivalent-storage", () =>
    equivalentStorage({ temperature, duration: days * secondsPerDay, temperatureReference, kinetics, transitions }),
  );
  if (found.known) return found.duration;
  const [in_] = found.transitions;
  return unknown("outside-range", {
    law: "equivalent-storage",
    quantity: "temperature",
    value: temperature,
    ...(in_ && (temperature > temperatureReference ? { max: in_.temperatureMin } : { min: in_.temperatureMax })),
  });
}

/** What is stored where, pulled when, and what it stands for. */
export function stabilityOf(run: Run, test: Stability): PlanStability {
  const { conditions, start, ageing } = test;
  const plan = by("test-plan", () =>
    testPlan({
      // The mass of a sample is asked for apart, since it may not be known.
      massPack: 1,
      conditions: conditions.map(({ name, pullDays, samplesPerPull, reserve = 0 }) => ({
        ...{ name, pullDays, packsPerPull: samplesPerPull, packsReserve: reserve },
      })),
    }),
  );
  return {
    pulls: plan.pulls.map(({ day, condition, packs }) => ({
      day,
      ...(start !== undefined && { date: dayAfter(start, day) }),
      condition,
      samples: packs,
    })),
    storages: plan.conditions.map(({ condition, packs, dayLast }, i): PlanStorage => {
      const temperature = conditions[i]?.at;
      const hasEquivalent = temperature !== undefined && dayLast > 0 && ageing && temperature !== ageing.reference;
      return {
        condition,
        ...(temperature !== undefined && { temperature }),
        samples: packs,
        dayLast,
        ...(hasEquivalent && {
          equivalent: orNotKnown(() => equivalentOf(run, temperature, dayLast)),
        }),
      };
    }),
    ...(ageing && { temperatureReference: ageing.reference }),
    ...cyclesOf(run, test),
    samples: samplesOf(test),
    ...orNotKnown(() => ({ mass: massOfSamples(run) })),
  };
}

/** The stays of the cycles, and how often the gel melts and sets on the way. */
function cyclesOf(run: Run, { cycles }: Stability): Pick<PlanStability, "cycles"> {
  if (!cycles) return {};
  const stays = cycles.stays.map(({ at: temperature, for: duration }) => ({ temperature, duration }));
  const transitions = otherwise(
    () => transitionsOf(run),
    () => [],
  );
  const { duration, crossings } = by("test-plan", () =>
    temperatureCycles({ stays, cycles: cycles.count, temperatureStart: run.job.process.room, transitions }),
  );
  return { cycles: { count: cycles.count, samples: cycles.samples, duration, stays, crossings } };
}
