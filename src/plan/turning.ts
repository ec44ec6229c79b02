import { doseTemperature } from "./dose.js";
import type { Job } from "./job.js";
import { doseOf, type Moment, type State } from "./moment.js";
import { fillingThen, type Stirred, speedIn, stirredAt } from "./stirring.js";

/** A moment in which the stirrer turns. */
export interface Turn {
  /** In words for the sheet. */
  readonly where: string;
  readonly speed: number;
  /** The charge then, or why that is not known. */
  readonly stirred: Stirred | string;
  /** Its level above the bottom of the vessel then [m], or why that is not known. */
  readonly level: number | string;
}

/** The same with the step that it belongs to. */
export interface Turning extends Turn {
  /** Its place in the process, from 1. */
  readonly number: number;
  readonly moment: Moment;
}

/** What the stirrer does with the charge of a moment. */
export function turnOf(job: Job, { contents, temperature, onHeat }: State, speed: number, where: string): Turn {
  if (temperature === undefined) {
    const unknown = `the temperature after ${where} is not known`;
    return { where, speed, stirred: unknown, level: unknown };
  }
  const filling = fillingThen(job, contents, temperature);
  return {
    where,
    speed,
    stirred: stirredAt(job, contents, temperature, speed, onHeat ? "heating" : "cooling"),
    level: typeof filling === "string" ? filling : filling.level,
  };
}

/** The steps in which the stirrer turns, with what it does at the end of each. */
export function turningOf(moments: readonly Moment[], job: Job): readonly Turning[] {
  return moments.flatMap((moment, i): readonly Turning[] => {
    const speed = speedIn(moment.step, job);
    if (speed === undefined || moment.after.contents.length === 0) return [];
    return [{ number: i + 1, moment, ...turnOf(job, moment.after, speed, `step ${i + 1}`) }];
  });
}

/** Where the stirrer works hardest, or turns hardest; undefined where neither is known of any moment. */
export function hardestOf(
  turns: readonly Turn[],
  by: "power" | "torque",
): (Stirred & { readonly where: string }) | undefined {
  return turns
    .flatMap(({ where, stirred }) => (typeof stirred === "string" ? [] : [{ ...stirred, where }]))
    .reduce<(Stirred & { readonly where: string }) | undefined>(
      (max, one) => (max && max[by] >= one[by] ? max : one),
      undefined,
    );
}

/** Whether a gel that was on the heat has set: off it, and below its setting temperature; undefined where that is not known. */
export function hasSet({ contents, temperature, onHeat }: Moment["after"], job: Job): boolean | undefined {
  if (onHeat || doseOf(contents) === 0) return false;
  const sets = doseTemperature(job, contents, "temperatureSetting");
  return sets === undefined || temperature === undefined ? undefined : temperature <= sets;
}
