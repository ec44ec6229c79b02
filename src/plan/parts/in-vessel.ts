import { massOf } from "../contents.js";
import type { Moment, Run } from "../state.js";
import { stated } from "../unknown.js";

/** The moments up to the last pack; all of them if the process does not fill. */
export function untilFilled({ moments }: Run): readonly Moment[] {
  const last = moments.findIndex(({ step }) => step.do === "fill");
  return moments.slice(0, last < 0 ? undefined : last + 1);
}

/** Mass of one material in the vessel after a moment [kg]. */
export function massOfMaterial({ after }: Moment, key: string): number {
  return massOf(after.charge.contents.filter(({ material }) => material.key === key));
}

/** The moments in which a material is in the vessel, from its charge to the last pack. */
export function momentsWith(run: Run, key: string): readonly Moment[] {
  return untilFilled(run).filter((moment) => massOfMaterial(moment, key) > 0);
}

/** Whether the vessel is ever on the heat. */
export function isHeated({ moments }: Run): boolean {
  return moments.some(({ after }) => after.onHeat);
}

/**
 * The warmest that a material meets in the charge in one step [°C]. What is poured into a hot melt meets it before it has
 * cooled it; each addition of oil cools a gel that stirring has warmed; a pack comes to the temperature of the room.
 */
export function warmestIn({ number, step, before, after, schedule }: Moment): number {
  const found = [after.temperature()];
  if (before.charge.contents.length > 0) found.push(before.temperature());
  for (const { temperature } of schedule?.().rows ?? [])
    found.push(stated(temperature, "emulsion-incorporation-time", { step: number }));
  if (step.do === "fill") found.push(after.charge.job.process.room);
  return Math.max(...found);
}
