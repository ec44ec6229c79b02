import type { VesselShape } from "../mixing/index.js";
import type { Ends } from "./contents.js";
import type { Vessel } from "./documents/vessel.js";

/** The inside of the vessel as the kernels take it. */
export function shapeOf({ diameter, bottom }: Pick<Vessel, "diameter" | "bottom">): VesselShape {
  return { diameter, ...(bottom && { bottom }) };
}

/** By this share of the vessel's diameter a charge stands higher in an ellipsoidal bottom, a quarter of the diameter deep, than on a flat one: a third of that depth, by the volume of the bottom. */
const riseInBowl = 1 / 12;

/** The depths between which a charge lies that would be this deep over a flat bottom [m]: a bottom that is not stated may be a bowl. */
export function depthsIn({ bottom, diameter }: Vessel, depth: number): Ends {
  return { min: depth, max: bottom ? depth : depth + riseInBowl * diameter };
}
