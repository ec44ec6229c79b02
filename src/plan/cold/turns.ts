import type { Job } from "../job.js";
import { speedIn } from "../stirring.js";
import { type Turn, turnOf } from "../turning.js";
import type { ColdMoment } from "./run.js";

/** A moment in which the stirrer turns on the cold route, and the step that it belongs to, from 1. */
export interface ColdTurn extends Turn {
  readonly step: number;
}

/** The moments in which the stirrer turns: the end of every addition, and of every other step that is stirred. */
export function coldTurnsOf(moments: readonly ColdMoment[], job: Job): readonly ColdTurn[] {
  return moments.flatMap(({ step, after, turns }, i): readonly ColdTurn[] => {
    if (turns) return turns.map((turn) => ({ step: i + 1, ...turn }));
    const speed = speedIn(step, job);
    const takesTime = step.do !== "charge" || step.duration > 0;
    if (speed === undefined || !takesTime || after.contents.length === 0) return [];
    // What the bench read of the gel, it read at the room's temperature.
    const state = { ...after, temperature: job.process.temperatureRoom };
    return [{ step: i + 1, ...turnOf(job, state, speed, `step ${i + 1}`) }];
  });
}
