import { list, positive, record, result } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import * as known from "./known.js";
import { type ScaleCriterion, scaleCriteria, speedThatKeeps } from "./scale-criterion.js";
import { compilePlant, type PlantOfScaleUp } from "./scale-plant.js";
import type { StirredBatch } from "./stirring.js";
import { type StirringAtScale, stirringAtScale } from "./stirring-at-scale.js";

/** What a criterion comes to in the plant. */
export interface ScaledStirring extends StirringAtScale {
  /** What is kept. */
  readonly criterion: ScaleCriterion;
  /** The plant's figure over the bench's: the criterion's own is 1. */
  readonly ratios: {
    readonly speed: number;
    readonly tipSpeed: number;
    readonly power: number;
    readonly powerPerVolume: number;
    readonly torquePerVolume: number;
    readonly reynolds: number;
    readonly froude: number;
    /** Left out where the shear rate is not known. */
    readonly shearRate?: number;
    /** Left out where either blend time is not known. */
    readonly blendTime?: number;
  };
}

/** Bench and plant side by side. */
export interface ScaleUp {
  readonly bench: StirringAtScale;
  /** A row a criterion. */
  readonly plant: readonly ScaledStirring[];
}

/**
 * From bench to plant: for each thing that one may keep, the speed that keeps it and what it does to all the others.
 *
 * $$\frac{N_2}{N_1} = s^{-1}\;\text{(tip speed)} \qquad s^{0}\;\text{(shear rate)} \qquad s^{-1/2}\;\text{(Froude)} \qquad s = \frac{D_2}{D_1}$$
 *
 * in a plant of the bench's shape. Power per volume, Reynolds number and blend time are found on the power curve and the
 * flow curve as they are. Where the power number is constant, power per volume gives $s^{-2/3}$; in creeping flow $s^0$.
 * The Reynolds number gives $s^{-2}$, in a power-law gel $s^{-2/(2-n)}$. The blend time gives $s^0$ in turbulent flow, and
 * likewise where the flow creeps at both scales, since the revolutions are the same; a row is left out where its speed is
 * not known. A gel with a yield stress that does not move as far as the wall (`reachesWall`, by `cavern`) has no blend
 * time, at neither scale.
 *
 * A `plant` of another shape has an impeller, a vessel and a volume of its own. Tip speed and Froude number then go with
 * the diameters of the impellers, the shear rate with their constants, $N_2/N_1 = k_{s,1}/k_{s,2}$, and the rest is found
 * on the plant's own power curve. What is known of one of the two alone is left out: a shear rate without a constant, a
 * blend time where the flow creeps, since the revolutions to blend are those of a shape. That a figure is kept does not
 * make the flow alike: a row for an unlike plant says no more than its figures.
 *
 * Nothing can be kept but one of them: look at the row of the criterion, and then at what it costs. Shear rate is the
 * mean one (Metzner and Otto); the shear at the blades goes with the tip speed. The gel is taken to have the same flow
 * curve at both scales, which is so only if it has been sheared and cooled alike.
 *
 * @param input - Impeller, vessel, density and flow curve at the bench, as for `stirring`.
 * @param input.speed - Speed at the bench [rev/s], above 0.
 * @param input.volume - Volume of the batch at the bench [m³], above 0.
 * @param input.plant - A plant of the bench's shape, `{ impeller: { diameter } }` [m] and nothing else; or one of
 *   another shape: impeller, vessel and volume [m³].
 * @param input.criteria - What to keep, a row each; left out for all.
 * @param input.beyond - Outside the Reynolds numbers of the power curve: `"throw"` (default) or `"extend"` it.
 * @returns Bench, and a row a criterion with the ratio of every figure to the bench's.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` if a constant of the impeller is not
 *   known; `range` outside its power curve.
 * @source paul-2004 chapters 6 and 9 from memory for the exponents, which the tests find again
 * @example
 * ```ts
 * import { scaleUp } from "gelwright/mixing";
 * const impeller = { kind: "pitched-blade turbine", diameter: 0.06 } as const;
 * const melt = { density: 900, curve: { law: "newton", viscosity: 20 } } as const;
 * const { plant } = scaleUp({ ...melt, impeller, speed: 5, volume: 0.001, plant: { impeller: { diameter: 0.3 } } });
 * plant.map(({ criterion, speed }) => `${criterion} ${speed.toPrecision(3)}`); // => ["tip-speed 1.00",
 * // "power-per-volume 4.11", "reynolds 0.200", "blend-time 5.00", "shear-rate 5.00", "froude 2.24"]
 * ```
 */
export function scaleUp(
  input: StirredBatch &
    PlantOfScaleUp & {
      readonly speed: number;
      readonly volume: number;
      readonly criteria?: readonly ScaleCriterion[];
      readonly beyond?: Beyond;
    },
): ScaleUp {
  const { criteria = scaleCriteria, beyond } = record(input, "input", known.scaleUp);
  const speed = positive(input.speed, "speed");
  const bench = stirringAtScale(input, positive(input.volume, "volume"), beyond).full(speed);
  const plant = compilePlant(input, beyond);
  const rows = list(criteria, "criteria", 1).flatMap((criterion) => {
    const found = speedThatKeeps(criterion, bench, plant);
    if (found === undefined) return [];
    const row = plant.at.full(positive(found, "speed"));
    if (criterion === "blend-time" && (row.blendTime === undefined) !== (bench.blendTime === undefined)) return [];
    return [{ criterion, ...row, ratios: ratios(row, bench, plant.volumeRatio) }];
  });
  return { bench, plant: rows };
}

function ratios(plant: StirringAtScale, bench: StirringAtScale, volumeRatio: number): ScaledStirring["ratios"] {
  const of = (name: "speed" | "tipSpeed" | "power" | "powerPerVolume" | "reynolds" | "froude"): number =>
    result(plant[name] / bench[name], `ratio of ${name}`);
  return {
    speed: of("speed"),
    tipSpeed: of("tipSpeed"),
    power: of("power"),
    powerPerVolume: of("powerPerVolume"),
    torquePerVolume: result(plant.torque / bench.torque / volumeRatio, "ratio of torque per volume"),
    reynolds: of("reynolds"),
    froude: of("froude"),
    ...(plant.shearRate === undefined || bench.shearRate === undefined
      ? {}
      : { shearRate: plant.shearRate / bench.shearRate }),
    ...(plant.blendTime === undefined || bench.blendTime === undefined
      ? {}
      : { blendTime: plant.blendTime / bench.blendTime }),
  };
}
