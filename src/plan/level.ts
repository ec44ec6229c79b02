import { levelOfVolume } from "../mixing/index.js";
import type { Charge } from "./charge.js";
import type { Ends } from "./contents.js";
import { along, by, remembered } from "./unknown.js";
import { shapeOf } from "./vessel-shape.js";

/** How high a charge stands above the lowest point of the vessel at a temperature [m]. */
export function levelAt(charge: Charge, temperature: number): number {
  return levelAlong(charge)(temperature);
}

const levelAlong = remembered((charge: Charge) =>
  along((temperature) => levelOf(charge, charge.mass / charge.density(temperature))),
);

/** Between which levels it stands [m]: what states no expansion expands by nothing, or by the most that is usual. */
export function levelsAt(charge: Charge, temperature: number): Ends {
  const { min, max } = charge.volume(temperature);
  return { min: levelOf(charge, min), max: levelOf(charge, max) };
}

function levelOf({ job }: Charge, volume: number): number {
  return by("level", () => levelOfVolume({ vessel: shapeOf(job.vessel), volume }));
}
