import type { AssumptionCode } from "../codes/assumptions.js";
import { massOf } from "../contents.js";
import { exactly, type Figure } from "../figure.js";
import type { Moment, Run } from "../state.js";
import { otherwise, stated, unknown } from "../unknown.js";

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

/** The same as a figure, with what is taken for granted in it. */
export function warmestFigure(run: Run, moment: Moment): Figure {
  return exactly(warmestIn(moment), moment.basis?.(), takenForGranted(run, moment));
}

/** What is taken for granted in the temperatures of a step: its own, and that of the steps before it up to the last that came to a temperature which was asked for. */
export function takenForGranted({ moments }: Run, moment: Moment): readonly AssumptionCode[] {
  const until = moments.slice(0, moments.indexOf(moment) + 1);
  const last = until.map(cameToWhatWasAsked).lastIndexOf(true);
  return [...new Set(until.slice(last + 1).flatMap(({ assumptions }) => assumptions?.() ?? []))];
}

/** A step that goes on until a temperature is reached takes longer for what is left out, and comes to the same temperature. */
function cameToWhatWasAsked({ after, reaches }: Moment): boolean {
  return otherwise(
    () => (reaches?.asked() ?? unknown("not-done")) === after.temperature(),
    () => false,
  );
}
