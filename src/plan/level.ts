import { levelOfVolume, type VesselShape } from "../mixing/index.js";
import type { Vessel } from "./job.js";

/** The inside of the vessel as the kernels take it. */
export function shapeOf({ diameter, bottom }: Vessel): VesselShape {
  return { diameter, ...(bottom && { bottom }) };
}

/** How high a volume stands in the vessel, above its lowest point; the bottom is flat unless it says otherwise [m]. */
export function levelOf(volume: number, vessel: Vessel): number {
  return levelOfVolume({ vessel: shapeOf(vessel), volume });
}

/** What a level rests on. A bottom that nobody states is taken as flat, and said to be so. */
export function levelFrom({ bottom, baffles }: Vessel): string {
  const inVessel = {
    flat: "a flat-bottomed vessel",
    cone: "a vessel with a conical bottom",
    ellipsoidal: "a vessel with an ellipsoidal bottom",
    dished: "a vessel with a dished bottom",
  }[bottom?.shape ?? "flat"];
  return `level in ${inVessel}, the room that ${baffles ? "stirrer and baffles take" : "the stirrer takes"} up left out`;
}
