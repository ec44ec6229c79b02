import type { Job } from "../job.js";
import { speedIn } from "../stirring.js";
import { type Turning, turnOf } from "../turning.js";
import type { ColdMoment } from "./run.js";

/** The moments in which the stirrer turns: the end of every addition, and of every other step that is stirred. */
export function coldTurnsOf(moments: readonly ColdMoment[], job: Job): readonly Turning[] {
  return moments.flatMap((moment, i): readonly Turning[] => {
    const { step, after, turns } = moment;
    const of = { number: i + 1, moment };
    if (turns) return turns.map((turn) => ({ ...of, ...turn }));
    const speed = speedIn(step, job);
    const takesTime = step.do !== "charge" || step.duration > 0;
    if (speed === undefined || !takesTime || after.contents.length === 0) return [];
    // What the bench read of the gel, it read at the room's temperature.
    const state = { ...after, temperature: job.process.temperatureRoom };
    return [{ ...of, ...turnOf(job, state, speed, `step ${i + 1}`) }];
  });
}
