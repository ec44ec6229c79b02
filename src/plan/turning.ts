import { doseTemperature } from "./dose.js";
import type { Job, Step } from "./job.js";
import { doseOf, type Moment } from "./moment.js";
import { fillingThen, type Stirred, speedIn, stirredAt } from "./stirring.js";

/** A step in which the stirrer turns. */
export interface Turning {
  /** Its place in the process, from 1. */
  readonly number: number;
  readonly moment: Moment<Step>;
  readonly speed: number;
  /** The charge at the end of the step, or why that is not known. */
  readonly stirred: Stirred | string;
  /** Its level above the bottom of the vessel then [m], or why that is not known. */
  readonly level: number | string;
}

/** The steps in which the stirrer turns, with what it does at the end of each. */
export function turningOf(moments: readonly Moment<Step>[], job: Job): readonly Turning[] {
  return moments.flatMap((moment, i): readonly Turning[] => {
    const speed = speedIn(moment.step, job);
    const { contents, temperature, onHeat } = moment.after;
    if (speed === undefined || contents.length === 0) return [];
    const at = { number: i + 1, moment, speed };
    if (temperature === undefined) {
      const unknown = `the temperature after step ${i + 1} is not known`;
      return [{ ...at, stirred: unknown, level: unknown }];
    }
    const filling = fillingThen(job, contents, temperature);
    return [
      {
        ...at,
        stirred: stirredAt(job, contents, temperature, speed, onHeat ? "heating" : "cooling"),
        level: typeof filling === "string" ? filling : filling.level,
      },
    ];
  });
}

/** Whether a gel that was on the heat has set: off it, and below its setting temperature; undefined where that is not known. */
export function hasSet({ contents, temperature, onHeat }: Moment["after"], job: Job): boolean | undefined {
  if (onHeat || doseOf(contents) === 0) return false;
  const sets = doseTemperature(job, contents, "temperatureSetting");
  return sets === undefined || temperature === undefined ? undefined : temperature <= sets;
}
