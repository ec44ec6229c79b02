import type { Check } from "../../formula/index.js";
import { shearRateOf } from "../impeller.js";
import type { Job, Step, Stirrer } from "../job.js";
import type { Moment } from "../moment.js";
import { say } from "../say.js";
import { movedBy, type Stirred, stirredWith } from "../stirring.js";
import { hasSet, type Turning } from "../turning.js";

/** A gel that has set moves as far as the torque carries: where that is not the wall, nothing becomes even. */
export function checkWallMoves(
  turning: readonly Turning[],
  moments: readonly Moment<Step>[],
  stirrer: Stirrer,
  job: Job,
): readonly Check[] {
  const { vessel, bench } = job;
  const { yieldStress } = bench;
  if (stirrer.byHand) return [];
  return turning.flatMap(({ number, moment: { after }, speed, stirred }) => {
    const dissolved = moments.slice(0, number).some((one) => one.after.onHeat);
    if (!dissolved || !hasSet(after, job)) return [];
    const check = {
      id: `gel-moves-at-wall:${number}`,
      limit: `${say.millimetres(vessel.diameter)}, the vessel's diameter`,
      source: `cavern of Elson and others 1986 (from memory); yield stress from ${bench.source}`,
    };
    const unknown = (why: string): readonly Check[] => [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the gel, which has set, moves at the wall in step ${number} is not known: ${why}.`,
        value: "not known",
      },
    ];
    if (yieldStress === undefined) return unknown("no yield stress of the set gel");
    const min = typeof stirred === "string" ? atYield(after, stirrer, job, speed, yieldStress) : stirred;
    if (typeof min === "string") return unknown(min);
    const { diameter, reachesWall } = movedBy(stirrer, { ...min, yieldStress }, vessel);
    // Its yield stress alone is the least that a gel asks for: with its viscosity it is moved further.
    if (!reachesWall && typeof stirred === "string")
      return unknown(`the yield stress alone moves ${say.millimetres(diameter)} of it, and its viscosity is not known`);
    return [
      {
        ...check,
        verdict: reachesWall ? "met" : "not met",
        statement: reachesWall
          ? `The gel, which has set, moves as far as the wall in step ${number}.`
          : `The gel, which has set, stands still at the wall in step ${number}: what is added there is never even.`,
        value: say.moved({ diameter, reachesWall }),
      },
    ];
  });
}

/** A set gel of which nothing but the yield stress is known, at the mean shear rate of the stirrer. */
function atYield(
  { contents, temperature = Number.NaN }: Moment["after"],
  stirrer: Stirrer,
  job: Job,
  speed: number,
  yieldStress: number,
): Stirred | string {
  if (yieldStress === 0) return "its yield stress is nothing";
  const shearRate = shearRateOf(stirrer, speed);
  return typeof shearRate === "string"
    ? shearRate
    : stirredWith(job, contents, temperature, { law: "newton", viscosity: yieldStress / shearRate }, speed);
}
