import { orderLots } from "../../batch/index.js";
import type { NotKnown } from "../figure.js";
import type { Moment, Run } from "../state.js";
import { by, orNotKnown, unknown } from "../unknown.js";

/** A longer list is of no use. */
const lotsMax = 1000;

/** When each lot is made. */
export interface LotOrder {
  /** By lot, and within it by time. */
  readonly entries: readonly {
    /** From 1. */
    readonly lot: number;
    /** Number of the step, from 1, and what it does. */
    readonly step: number;
    readonly do: string;
    /** From 1. */
    readonly day: number;
    /** Since the day's work began [s]. */
    readonly start: number;
    /** Since the day's work began [s]; beyond the day for packs at rest. */
    readonly end: number;
  }[];
  /** Working days for all lots. */
  readonly days: number;
  /** Length of the working day [s]; left out if none is stated, and lots follow round the clock. */
  readonly workingDay?: number;
}

/** The steps for which somebody has to be there: all but packs at rest. */
export function attendedMoments({ moments }: Run): readonly Moment[] {
  return moments.filter((moment) => !isAlone(moment));
}

/** Packs at rest need no operator. */
function isAlone({ step, after }: Moment): boolean {
  return after.inPacks && step.do === "rest";
}

/** When each lot is made, by how long each step of one takes; nothing for a single lot without a working day. */
export function lotOrderOf(run: Run): LotOrder | NotKnown | undefined {
  if (run.scaled.lots === 1 && !run.job.process.workingDay) return undefined;
  return orNotKnown((): LotOrder | NotKnown => orderOf(run));
}

function orderOf(run: Run): LotOrder {
  const { workingDay } = run.job.process;
  const { lots } = run.scaled;
  if (lots > lotsMax)
    unknown("outside-range", { law: "lot-order", quantity: "lots", value: lots, min: 1, max: lotsMax });
  const stages = run.moments.flatMap((moment) => {
    const { step, number, after } = moment;
    const duration = moment.duration();
    if (duration === 0) return [];
    const needs = after.inPacks ? (step.do === "fill" ? ["vessel", "filler"] : []) : ["vessel"];
    return [{ name: `${number}`, duration, needs, alone: isAlone(moment) }];
  });
  if (stages.length === 0) unknown("not-done");
  const { entries, days, notFitting } = by("lot-order", () =>
    orderLots({
      lots,
      stages,
      resources: { vessel: workingDay?.vessels ?? 1, filler: 1 },
      turnover: { vessel: workingDay?.cleaning ?? 0 },
      ...(workingDay && { workingDay: workingDay.length }),
    }),
  );
  if (notFitting.length > 0) {
    const max = workingDay?.length ?? null;
    unknown("outside-range", { law: "lot-order", quantity: "duration", value: attendedTime(run), min: 0, max });
  }
  return {
    entries: entries.map(({ lot, stage, day, start, end }) => {
      const number = Number(stage);
      const moment = run.moments.find((one) => one.number === number) ?? unknown("not-done", { step: number });
      return { lot, step: number, do: moment.step.do, day, start, end };
    }),
    days,
    ...(workingDay && { workingDay: workingDay.length }),
  };
}

/** From the start of a lot to the end of the last step for which somebody has to be there [s]. */
function attendedTime(run: Run): number {
  const last = attendedMoments(run).at(-1) ?? unknown("not-done");
  return last.after.time();
}
