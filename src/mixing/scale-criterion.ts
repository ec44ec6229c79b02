import { refuse, show } from "../guards.js";
import { root } from "../numeric/root.js";
import { blendReynoldsMin } from "./blend-time.js";
import type { Plant } from "./scale-plant.js";
import type { StirringAtScale } from "./stirring-at-scale.js";

/** What a scale-up may keep. */
export type ScaleCriterion = "tip-speed" | "power-per-volume" | "reynolds" | "blend-time" | "shear-rate" | "froude";

/** All of them, in the order of a table. */
export const scaleCriteria: readonly ScaleCriterion[] = [
  "tip-speed",
  "power-per-volume",
  "reynolds",
  "blend-time",
  "shear-rate",
  "froude",
];

/** The speed at which something that changes with speed becomes `wanted`; undefined where it never does. */
function speedFor(valueAt: (speed: number) => number, wanted: number, near: number): number | undefined {
  const off = (logSpeed: number): number => Math.log(valueAt(Math.exp(logSpeed)) / wanted);
  const middle = Math.log(near);
  for (let reach = 1; reach <= 16; reach *= 2) {
    const [low, high] = [middle - reach, middle + reach];
    const [before, after] = [off(low), off(high)];
    if (before < 0 !== after < 0) return Math.exp(root(off, low, high, "speed", 1e-14));
  }
  return undefined;
}

/** The speed of the plant that keeps a figure of the bench; undefined where that figure is not known for both. */
export function speedThatKeeps(criterion: ScaleCriterion, bench: StirringAtScale, plant: Plant): number | undefined {
  const { search, diameterRatio: s, volumeRatio, sameShape } = plant;
  const { speed } = bench;
  const near = speed / Math.sqrt(s);
  switch (criterion) {
    case "tip-speed":
      return speed / s;
    case "froude":
      return near;
    case "shear-rate": {
      // In the same shape the constant is the same, whether it is known or not.
      if (sameShape) return speed;
      const { shearRate } = search.at(speed);
      return shearRate === undefined || bench.shearRate === undefined
        ? undefined
        : (speed * bench.shearRate) / shearRate;
    }
    case "power-per-volume":
      return speedFor((n) => search.at(n).power, bench.power * volumeRatio, near);
    case "reynolds":
      return speedFor((n) => search.at(n).reynolds, bench.reynolds, near);
    case "blend-time":
      if (bench.blendTime === undefined) return creepsInBoth(bench, plant) ? speed : undefined;
      return speedFor((n) => search.blend(search.at(n)) ?? Number.NaN, bench.blendTime, speed);
    default:
      return refuse("input", "criteria", show(criterion), scaleCriteria.join(", "));
  }
}

/** Whether the revolutions to blend are the same at both scales, as they are where one shape creeps at both, and moves all of the gel. */
function creepsInBoth({ speed, reynolds, reachesWall }: StirringAtScale, { search, sameShape }: Plant): boolean {
  const plant = search.at(speed);
  const creeps = sameShape && reynolds < blendReynoldsMin && plant.reynolds < blendReynoldsMin;
  return creeps && reachesWall !== false && search.reachesWall(plant, speed) === true;
}
