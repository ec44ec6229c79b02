import type { Ends } from "./contents.js";
import type { Vessel } from "./job.js";

/** So much of the vessel's diameter a charge stands higher in an ellipsoidal bottom a quarter of it deep than on a flat one: a third of that depth, by its volume. */
const riseInBowl = 1 / 12;

/** Between which depths a charge is that is so deep over a flat bottom [m]: a bottom that nobody stated may be a bowl. */
export function depthsIn({ bottom, diameter }: Vessel, depth: number): Ends {
  return { min: depth, max: bottom ? depth : depth + riseInBowl * diameter };
}
