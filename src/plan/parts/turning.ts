import type { Run, State, Turn } from "../state.js";
import { otherwise } from "../unknown.js";

/** One subject where a stirrer is described and turns in some step. */
export function stirring(run: Run): readonly Run[] {
  return run.job.vessel.stirrer && run.turns.length > 0 ? [run] : [];
}

/** Every stirred state. */
export function turnsOf({ turns }: Run): readonly Turn[] {
  return turns;
}

/** Where a stirred state stands in the run. */
export function placeOf({ step, addition }: Turn): {
  readonly step: number;
  readonly addition?: number;
  readonly place: "vessel";
} {
  return { step, ...(addition !== undefined && { addition }), place: "vessel" };
}

/** Whether a charge that melted has set: off the heat and below its setting temperature. */
export function hasSet({ charge, onHeat, temperature }: State): boolean {
  return charge.heated && !onHeat && charge.dose() > 0 && temperature() <= charge.setting().temperature;
}

/** Where it is not known whether it has set, it may have, and may not. */
export function maySet({ state }: Turn, whereUnknown: boolean): boolean {
  return otherwise(
    () => hasSet(state),
    () => whereUnknown,
  );
}
