import { convert } from "../../units/index.js";
import type { Job } from "../job.js";
import { massOf } from "../moment.js";
import type { TimelineStep } from "../plan.js";
import { say } from "../say.js";
import { speedIn } from "../stirring.js";
import { stirringIn } from "../timeline.js";
import type { Turning } from "../turning.js";
import { oilFractionOf, phasesOfGel } from "./phases.js";
import type { ColdMoment } from "./run.js";
import type { ColdStep } from "./step.js";

/** The moments of a run on the cold route as the steps of a batch sheet. */
export function coldTimelineOf(
  job: Job,
  moments: readonly ColdMoment[],
  turns: readonly Turning[],
): readonly TimelineStep[] {
  const room = job.process.temperatureRoom;
  return moments.map((moment, i) => {
    const { step, before, after, law } = moment;
    const oil = oilFractionOf(phasesOfGel(job, after.contents), room);
    const inPacks = moments.slice(0, i + 1).some((one) => one.step.do === "fill");
    return {
      number: i + 1,
      instruction: instructionOf(step, moment, { speed: speedIn(step, job), inPacks }),
      timeStart: before.time,
      timeEnd: after.time,
      mass: massOf(after.contents),
      inPacks,
      temperatureStart: before.contents.length > 0 ? before.temperature : room,
      temperatureEnd: after.temperature,
      ...(typeof oil === "number" && { volumeFractionOil: oil }),
      // Of a step with additions, what the last of them asks of the stirrer.
      stirring: stirringIn(turns.filter(({ number }) => number === i + 1).at(-1)),
      basis: law,
      note: step.note,
    };
  });
}

/** What is done, with the speed that the plan counts on: whoever has only the sheet knows no usual speed. */
function instructionOf(
  step: ColdStep,
  { before, after, added }: ColdMoment,
  { speed, inPacks }: { readonly speed: number | undefined; readonly inPacks: boolean },
): string {
  switch (step.do) {
    case "charge": {
      const mass = say.kilograms(massOf(after.contents) - massOf(before.contents));
      return `${before.contents.length === 0 ? "Charge" : "Stir in"} phase ${step.phase} (${mass})${step.duration > 0 ? ` over ${say.minutes(step.duration)}` : ""}${say.atSpeed(before.contents.length === 0 ? step.speed : speed)}`;
    }
    case "add": {
      const mass = say.kilograms(massOf(after.contents) - massOf(before.contents));
      const how = !added
        ? "by the schedule of the bench"
        : added.form === "stream"
          ? "as a stream, as the table of additions says"
          : `in ${added.rows.length} additions, as the table of additions says`;
      return `${speed === undefined ? "Stir in" : `Stir${say.atSpeed(speed)} and add`} phase ${step.phase} (${mass}) ${how}`;
    }
    case "match clarity":
      return "Look through a sample, at the room's temperature and once its air is out: it is to be as clear as the bench's. If it is not, ask whoever owns the formula before you go on";
    case "stir":
      return `Stir for ${say.minutes(step.duration)}${say.atSpeed(speed)}`;
    case "de-aerate": {
      const under =
        step.pressure === undefined ? "" : ` at ${Math.round(convert(step.pressure, "Pa", "mbar"))} mbar absolute`;
      const stirred = step.speed === undefined ? ", without stirring" : `, stirring slowly${say.atSpeed(step.speed)}`;
      return `Let the air out for ${say.minutes(step.duration)}${under}${stirred}`;
    }
    case "fill":
      return `Fill the packs${step.duration > 0 ? `, within ${say.minutes(step.duration)}` : ""}`;
    case "rest":
      return `${inPacks ? "Let the packs rest" : "Stop the stirrer and let it rest"} for ${say.duration(step.duration)}`;
  }
}
