import { convert } from "../../units/index.js";
import type { Job } from "../job.js";
import { massOf } from "../moment.js";
import type { TimelineStep } from "../plan.js";
import { say } from "../say.js";
import { stirringIn } from "../timeline.js";
import { oilFractionOf, phasesOfGel } from "./phases.js";
import type { ColdMoment } from "./run.js";
import type { ColdStep } from "./step.js";
import type { ColdTurn } from "./turns.js";

/** The moments of a run on the cold route as the steps of a batch sheet. */
export function coldTimelineOf(
  job: Job,
  moments: readonly ColdMoment[],
  turns: readonly ColdTurn[],
): readonly TimelineStep[] {
  const room = job.process.temperatureRoom;
  return moments.map((moment, i) => {
    const { step, before, after, law } = moment;
    const oil = oilFractionOf(phasesOfGel(job, after.contents), room);
    return {
      number: i + 1,
      instruction: instructionOf(step, moment),
      timeStart: before.time,
      timeEnd: after.time,
      mass: massOf(after.contents),
      inPacks: moments.slice(0, i + 1).some((one) => one.step.do === "fill"),
      temperatureStart: before.contents.length > 0 ? before.temperature : room,
      temperatureEnd: after.temperature,
      ...(typeof oil === "number" && { volumeFractionOil: oil }),
      // Of a step with additions, what the last of them asks of the stirrer.
      stirring: stirringIn(turns.filter((turn) => turn.step === i + 1).at(-1)),
      law,
      note: step.note,
    };
  });
}

function instructionOf(step: ColdStep, { before, after, added }: ColdMoment): string {
  switch (step.do) {
    case "charge": {
      const mass = say.kilograms(massOf(after.contents) - massOf(before.contents));
      return `${before.contents.length === 0 ? "Charge" : "Stir in"} phase ${step.phase} (${mass})${step.duration > 0 ? ` over ${say.minutes(step.duration)}` : ""}${say.atSpeed(step.speed)}`;
    }
    case "add": {
      const mass = say.kilograms(massOf(after.contents) - massOf(before.contents));
      const how = !added
        ? "by the schedule of the bench"
        : added.form === "stream"
          ? "as a stream, by the table of additions"
          : `in ${added.rows.length} additions, by the table of additions`;
      return `Add phase ${step.phase} (${mass}) ${how}${say.atSpeed(step.speed)}`;
    }
    case "match clarity":
      return "Look through a sample, at the room's temperature and once its air is out: it is as clear as the bench's";
    case "stir":
      return `Stir for ${say.minutes(step.duration)}${say.atSpeed(step.speed)}`;
    case "de-aerate": {
      const under =
        step.pressure === undefined ? "" : ` under ${Math.round(convert(step.pressure, "Pa", "mbar"))} mbar`;
      const stirred = step.speed === undefined ? ", without stirring" : `, stirring slowly${say.atSpeed(step.speed)}`;
      return `Let the air out for ${say.minutes(step.duration)}${under}${stirred}`;
    }
    case "fill":
      return `Fill the packs${step.duration > 0 ? `, within ${say.minutes(step.duration)}` : ""}`;
    case "rest":
      return `Let it rest for ${say.duration(step.duration)}`;
  }
}
