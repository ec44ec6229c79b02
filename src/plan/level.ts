import { levelOfVolume } from "../mixing/index.js";
import type { Vessel } from "./job.js";

/** How high a volume stands in the vessel, which is upright and flat-bottomed [m]. */
export function levelOf(volume: number, { diameter }: Vessel): number {
  return levelOfVolume({ vessel: { diameter }, volume });
}
