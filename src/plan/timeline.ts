import { convert } from "../units/index.js";
import type { Job, Step } from "./job.js";
import { type Moment, massOf } from "./moment.js";
import type { TimelineStep } from "./plan.js";
import { say } from "./say.js";
import { speedIn } from "./stirring.js";
import { hasSet, type Turn, turningOf } from "./turning.js";
import { viscosityThen } from "./viscosity.js";

/** The moments of a run as the steps of a batch sheet. */
export function timelineOf(job: Job, moments: readonly Moment<Step>[]): readonly TimelineStep[] {
  const turning = turningOf(moments, job);
  return moments.map((moment, i) => {
    const { step, before, after, law } = moment;
    const dissolved = moments.slice(0, i + 1).some((one) => one.after.onHeat);
    const set = dissolved ? hasSet(after, job) : undefined;
    return {
      number: i + 1,
      instruction: instructionOf(step, moment, speedIn(step, job)),
      timeStart: before.time,
      timeEnd: after.time,
      mass: massOf(after.contents),
      inPacks: step.do === "fill" || step.do === "rest",
      temperatureStart: before.contents.length > 0 ? before.temperature : undefined,
      temperatureEnd: after.temperature,
      set,
      viscosity: set ? undefined : viscosityThen(job, after, after.onHeat ? "heating" : "cooling"),
      stirring: stirringIn(turning.find(({ number }) => number === i + 1)),
      basis: law,
      note: step.note,
    };
  });
}

/** What the stirrer does, for the sheet. */
export function stirringIn(turning: Turn | undefined): TimelineStep["stirring"] {
  if (!turning || typeof turning.stirred === "string") return undefined;
  const { speed, power, torque, reynolds, regime } = turning.stirred;
  return { speed, power, torque, reynolds, regime };
}

/** What is done, with the speed that the plan counts on: whoever has only the sheet knows no usual speed. */
function instructionOf(step: Step, { before, after }: Moment<Step>, speed: number | undefined): string {
  const stirred = speed === undefined ? "" : `, stirring${say.atSpeed(speed)}`;
  switch (step.do) {
    case "charge": {
      const mass = say.kilograms(massOf(after.contents) - massOf(before.contents));
      return `${before.contents.length === 0 ? "Charge" : "Stir in"} phase ${step.phase} (${mass}, at ${say.celsius(step.temperature)})${step.duration > 0 ? ` over ${say.minutes(step.duration)}` : ""}${say.atSpeed(before.contents.length === 0 ? step.speed : speed)}`;
    }
    case "heat":
      return `Heat to ${say.celsius(step.temperature)}${stirred}`;
    case "hold":
      return `Hold for ${say.minutes(step.duration)}`;
    case "take off the heat":
      return "Take off the heat";
    case "cool":
      return step.temperature === undefined
        ? `Let cool until it has thickened to ${say.pascalSeconds(step.viscosity)}${stirred}`
        : `Let cool to ${say.celsius(step.temperature)}${stirred}`;
    case "stir":
      return `Stir for ${say.minutes(step.duration)}${say.atSpeed(speed)}`;
    case "fill":
      return `Fill the packs${step.duration > 0 ? `, within ${say.minutes(step.duration)}` : ""}`;
    case "rest":
      return `Let the packs rest for ${Number(convert(step.duration, "s", "h").toPrecision(3))} h`;
  }
}
