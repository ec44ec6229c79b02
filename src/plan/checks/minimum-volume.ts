import type { Check } from "../../formula/index.js";
import { minimumWorkingVolume } from "../../mixing/index.js";
import type { Job, Stirrer } from "../job.js";
import { levelFrom } from "../level.js";
import { say } from "../say.js";

/** The stated least working volume covers the stirrer. Asked where the bottom is stated: else the volume below it is anyone's. */
export function checkMinimumVolume({ topEdge, cover }: Stirrer, { vessel }: Job): readonly Check[] {
  const { diameter, bottom, volumeMin } = vessel;
  if (bottom === undefined || topEdge === undefined) return [];
  const needed = minimumWorkingVolume({ vessel: { diameter, bottom }, heightTop: topEdge, cover });
  const met = volumeMin >= needed;
  return [
    {
      id: "minimum-volume",
      verdict: met ? "met" : "not met",
      statement: met
        ? "The least working volume that is stated covers the stirrer."
        : "The least working volume that is stated does not cover the stirrer: fill more, set the stirrer lower, or state what does.",
      value: say.litres(volumeMin),
      limit: `at least ${say.litres(needed)}`,
      source: levelFrom(vessel),
    },
  ];
}
