import type { Basis, NotKnown } from "../figure.js";
import { lossOf } from "../loss.js";
import type { Moment, Run } from "../state.js";
import { stirredIn } from "../stirred.js";
import { otherwise, type Reason, stated, unknown } from "../unknown.js";

/** A step whose heat of stirring is left out of the temperatures, and why. */
export interface LeftOut {
  /** Number of the step, from 1. */
  readonly step: number;
  readonly reason: Reason;
}

/** How warm the gel gets by being stirred. */
export interface PlanWarming {
  /** The warmest that it is in the vessel [°C]; with steps left out it may be warmer. */
  readonly temperatureMax: number | NotKnown;
  readonly leftOut: readonly LeftOut[];
  /** How heat leaves the vessel meanwhile; left out where no loss is stated, and none is counted. */
  readonly loss?: Basis;
}

/** How warm the gel gets in the vessel, and what that leaves out. */
export function warmingOf(run: Run): PlanWarming {
  const { job, moments } = run;
  const filled = moments.findIndex(({ step }) => step.do === "fill");
  const inVessel = filled === -1 ? moments : moments.slice(0, filled);
  const loss = lossOf(job.vessel)?.basis;
  return {
    temperatureMax: otherwise(
      () =>
        // Each addition of oil cools what is there: the warmest may lie between two of them.
        Math.max(job.process.room, ...inVessel.flatMap((one) => [one.after.temperature(), ...alongAdditions(one)])),
      (reason) => ({ notKnown: reason }),
    ),
    leftOut: leftOutIn(run, moments.length),
    ...(loss && { loss }),
  };
}

function alongAdditions({ schedule }: Moment): readonly number[] {
  if (!schedule) return [];
  return schedule().rows.map(
    ({ temperature }) => temperature ?? unknown("not-stated", { field: "emulsion-incorporation-time" }),
  );
}

/** The steps up to a place whose heat of stirring the temperatures leave out. */
export function leftOutIn({ moments, turns }: Run, steps: number): readonly LeftOut[] {
  return moments.slice(0, steps).flatMap((moment): readonly LeftOut[] =>
    otherwise(
      () => {
        // An addition is stirred in even if no speed is stated.
        if (moment.schedule) stated(moment.speed, "vessel-stirrer");
        for (const turn of turns.filter(({ step }) => step === moment.number)) {
          stirredIn(turn);
          turn.state.charge.heatCapacity();
        }
        return [];
      },
      (reason) => [{ step: moment.number, reason }],
    ),
  );
}
