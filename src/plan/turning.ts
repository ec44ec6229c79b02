import { doseTemperature } from "./dose.js";
import type { Job, Step } from "./job.js";
import { doseOf, type Moment } from "./moment.js";
import { levelThen, type Stirred, speedIn, stirredAt } from "./stirring.js";

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
    return [
      {
        ...at,
        stirred: stirredAt(job, contents, temperature, speed, onHeat ? "heating" : "cooling"),
        level: levelThen(job, contents, temperature),
      },
    ];
  });
}

/** Once it was on the heat, a gel sets off it and below its setting temperature. */
export function hasSetBy({ contents, temperature, onHeat }: Moment["after"], job: Job): boolean {
  const sets = doseTemperature(job, contents, "temperatureSetting");
  return !onHeat && doseOf(contents) > 0 && sets !== undefined && temperature !== undefined && temperature <= sets;
}
