import { CalculationError } from "../../error.js";
import type { Check } from "../../formula/index.js";
import { blendTime, blendTimeByRevolutions } from "../../mixing/index.js";
import type { Job, Step, Stirrer } from "../job.js";
import type { Moment } from "../moment.js";
import { say } from "../say.js";
import type { Stirred } from "../stirring.js";
import { hasSet, type Turning, turningOf } from "../turning.js";
import { checkMinimumVolume } from "./minimum-volume.js";
import { checkMotor } from "./motor.js";
import { checkCovered, checkVortex } from "./stirrer-level.js";
import { checkWallMoves } from "./wall-moves.js";

/** Every question about the stirrer; none where no stirrer is described. */
export function checkStirring(moments: readonly Moment<Step>[], job: Job): readonly Check[] {
  const { stirrer } = job.vessel;
  if (!stirrer) return [];
  const turning = turningOf(moments, job);
  if (turning.length === 0) return [];
  return [
    ...checkEven(
      turning.filter(({ moment }) => !hasSet(moment.after, job)),
      stirrer,
      job,
    ),
    ...checkWallMoves(turning, moments, stirrer, job),
    ...checkMotor(turning, stirrer),
    ...checkCovered(turning, stirrer, job),
    ...checkMinimumVolume(stirrer, job),
    ...checkVortex(turning, stirrer, job),
  ];
}

/** Whether a stir lasts until what was added is even. */
export function checkEven(turning: readonly Turning[], stirrer: Stirrer, job: Job): readonly Check[] {
  return turning.flatMap(({ number, moment: { step }, speed, stirred }) => {
    if (step.do !== "stir") return [];
    const check = { id: `blended:${number}`, limit: `${say.minutes(step.duration)} of stirring` };
    const unknown = (why: string): readonly Check[] => [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the charge is even after step ${number} is not known: ${why}.`,
        value: "not known",
        source: job.bench.source,
      },
    ];
    if (typeof stirred === "string") return unknown(stirred);
    const found = evenAfter(stirred, stirrer, job, speed);
    if (!found)
      return unknown(`it creeps (Re ${say.number(stirred.reynolds)}), and nobody counted the revolutions until even`);
    const met = step.duration >= found.duration;
    return [
      {
        ...check,
        verdict: met ? "met" : "not met",
        statement: met
          ? `What was added is even when step ${number} ends.`
          : `Step ${number} is too short for what was added to be even.`,
        value: `${say.minutes(Math.ceil(found.duration / 60) * 60)}, Re ${say.number(stirred.reynolds)}`,
        source: found.source,
      },
    ];
  });
}

/** How long until even, by Grenville and Nienow where they measured, else by the revolutions that somebody counted. */
function evenAfter(stirred: Stirred, stirrer: Stirrer, { vessel }: Job, speed: number) {
  const { density, viscosity, powerNumber, level } = stirred;
  const revolutions = stirrer.revolutionsToBlend;
  try {
    const { duration } = blendTime({
      density,
      viscosity,
      powerNumber,
      speed,
      impeller: stirrer,
      vessel: { diameter: vessel.diameter, level },
    });
    return {
      duration,
      source:
        "blend time of Grenville and Nienow (Handbook of Industrial Mixing 2004, read second-hand), measured with baffles",
    };
  } catch (error) {
    if (!(error instanceof CalculationError) || error.code !== "range") throw error;
  }
  if (revolutions === undefined) return undefined;
  return {
    duration: blendTimeByRevolutions({ revolutions, speed }),
    source: `${revolutions} revolutions until even, as stated for the stirrer`,
  };
}
