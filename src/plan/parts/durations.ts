import type { AssumptionCode } from "../codes/assumptions.js";
import type { Figure } from "../figure.js";
import type { Moment, Run } from "../state.js";
import { unique } from "../unique.js";

/** What makes a step take longer than was found, by an amount that is not known: a wall warms and cools along; what stirring gives is to be taken away; what is lost is to be made up for; what melts takes up heat; a coolant warms on its way. */
const lengthens: Readonly<Record<string, readonly AssumptionCode[]>> = {
  heat: ["vessel-wall-left-out", "heat-loss-left-out", "heat-of-melting-left-out"],
  cool: ["vessel-wall-left-out", "heat-of-stirring-left-out", "coolant-as-at-its-inlet"],
};

/** How long a step takes [s]: by how sure the wall is that its heat passes, and at least that long where something that lengthens it was left out. */
export function durationFigure({ step, duration, durationEnds, basis, assumptions }: Moment): Figure {
  const value = duration();
  const { min, max } = durationEnds?.() ?? { min: value, max: value };
  const assumed = assumptions?.() ?? [];
  const isLonger = assumed.some((code) => lengthens[step.do]?.includes(code));
  const isBound = isLonger || assumed.includes("wall-as-thick-as-read");
  return {
    min,
    max: isLonger ? null : max,
    ...(!isBound && { value }),
    ...(basis && { basis: basis() }),
    ...(assumed.length > 0 && { assumptions: assumed }),
  };
}

/** When a step has ended [s since the start], with every step before it between the ends of its own time. */
export function timeFigure({ moments }: Run, moment: Moment): Figure {
  const figures = moments.slice(0, moments.indexOf(moment) + 1).map(durationFigure);
  const sum = (end: "min" | "max"): number | null =>
    figures.reduce<number | null>((time, { [end]: own }) => (time === null || own === null ? null : time + own), 0);
  const bounds = figures.filter(({ value }) => value === undefined);
  const assumptions = unique(bounds.flatMap(({ assumptions: taken = [] }) => taken));
  const { basis } = moment;
  return {
    min: sum("min"),
    max: sum("max"),
    ...(bounds.length === 0 && { value: moment.after.time() }),
    ...(basis && { basis: basis() }),
    ...(assumptions.length > 0 && { assumptions }),
  };
}
