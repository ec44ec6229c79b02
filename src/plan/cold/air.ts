import type { Check } from "../../formula/index.js";
import { clearingTime, largestSuspendedDiameter } from "../../particles/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { levelOf } from "../level.js";
import { massOf } from "../moment.js";
import { say } from "../say.js";
import { densityOfAir, fluidDensity } from "../suspension.js";
import type { Turning } from "../turning.js";
import type { ExpectedGel } from "./plan.js";
import type { ColdMoment } from "./run.js";
import { movedMin } from "./stirring-checks.js";

/** Pressure under which the bubbles were measured: that of the room [Pa]. */
const roomPressure = 101_325;

type Airing = Extract<ColdMoment["step"], { do: "de-aerate" }>;

/** Whether the air that was stirred in leaves while the gel is let stand for it. */
export function checkAir(
  moments: readonly ColdMoment[],
  turns: readonly Turning[],
  job: Job,
  expected: ExpectedGel,
): readonly Check[] {
  return moments.flatMap((moment, i) => {
    const { step } = moment;
    if (step.do !== "de-aerate") return [];
    const { stirrer } = job.vessel;
    const moved = stirrer && movedMin(turns, i + 1, stirrer, job);
    return [airOf(step, moment, moved, job, expected)];
  });
}

function airOf(
  step: Airing,
  { after, before }: ColdMoment,
  moved: ReturnType<typeof movedMin>,
  job: Job,
  expected: ExpectedGel,
): Check {
  const bubbles = job.bench.emulsion?.air;
  const check = {
    id: "air-leaves",
    source: `bubbles as rigid spheres, ${job.bench.source}; held as by Beris and others 1985`,
  };
  const unknown = (why: string): Check => ({
    ...check,
    verdict: "not known",
    statement: `Whether the air leaves is not known: ${why}.`,
    value: "not known",
    limit: say.minutes(step.duration),
  });
  const density = fluidDensity(before.contents, job.process.temperatureRoom);
  if (!bubbles) return unknown("the bench says nothing about the bubbles");
  if (density === undefined) return unknown("a density is missing");
  const pressure = step.pressure ?? roomPressure;
  const grown = bubbles.diameter * Math.cbrt(roomPressure / pressure);
  const strength = expected.yieldStress ?? expected.yieldStressByTheory ?? 0;
  const held = strength > 0 ? heldOf(grown, strength, density) : undefined;
  if (held && step.speed === undefined) return { ...check, ...held };
  if (held && !moved)
    return unknown("the gel at rest may hold it, and how far slow stirring moves the gel is not known");
  if (held && moved && !moved.reachesWall)
    return {
      ...check,
      verdict: held.verdict,
      statement:
        "Stirred so slowly, the gel at the wall stands still and may hold its air: stir faster, or take a stirrer that follows the wall.",
      value: say.moved(moved),
      limit: `${say.millimetres(job.vessel.diameter)}, the vessel's diameter`,
    };
  const depth = levelOf(massOf(after.contents) / density, job.vessel);
  return attempt(
    () => {
      const duration = clearingTime({
        diameter: bubbles.diameter,
        viscosity: bubbles.viscosity,
        densityFluid: density,
        depth,
        ...(step.pressure !== undefined && { pressure: step.pressure }),
      });
      const met = duration <= step.duration;
      return {
        ...check,
        verdict: met ? "met" : "not met",
        statement: met
          ? "The air has time to leave the gel."
          : "The air has not left by then: give it longer, pull more vacuum, or draw less air in.",
        value: `${say.minutes(duration)} from a depth of ${say.millimetres(depth)}`,
        limit: say.minutes(step.duration),
      };
    },
    (refusal) => unknown(refusal.message),
  );
}

/** What is to be said of bubbles that a gel at rest holds, or may hold; undefined where it lets them go. Stirred, it yields and lets go. */
function heldOf(
  diameter: number,
  yieldStress: number,
  densityFluid: number,
): Pick<Check, "verdict" | "statement" | "value" | "limit"> | undefined {
  const { min, max } = largestSuspendedDiameter({ yieldStress, densityParticle: densityOfAir, densityFluid });
  if (diameter > max) return undefined;
  const figures = { value: `${say.millimetres(diameter)} wide`, limit: `held up to ${say.millimetres(min)}` };
  return diameter <= min
    ? {
        ...figures,
        verdict: "not met",
        statement: "The gel at rest holds its air for good: stir slowly meanwhile, draw less air in, or pull a vacuum.",
      }
    : {
        ...figures,
        verdict: "not known",
        statement: "Published criteria differ on whether the gel at rest lets its air go.",
      };
}
