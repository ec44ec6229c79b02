import { list, positive, record, refuse, result, show } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { root } from "../numeric/root.js";
import { leastBlendReynolds } from "./blend-time.js";
import type { StirredBatch, StirredState } from "./stirring.js";
import { type StirringAtScale, sameShape, stirringAtScale } from "./stirring-at-scale.js";

/** What a scale-up may keep. */
export type ScaleCriterion = "tip-speed" | "power-per-volume" | "reynolds" | "blend-time" | "shear-rate" | "froude";

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

const all: readonly ScaleCriterion[] = [
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

/**
 * From bench to plant in the same shape: for each thing that one may keep, the speed that keeps it and what it does to
 * all the others.
 *
 * $$\frac{N_2}{N_1} = s^{-1}\;\text{(tip speed)} \qquad s^{0}\;\text{(shear rate)} \qquad s^{-1/2}\;\text{(Froude)} \qquad s = \frac{D_2}{D_1}$$
 *
 * Power per volume, Reynolds number and blend time are found on the power curve and the flow curve as they are. Where
 * the power number is constant, power per volume gives $s^{-2/3}$; in creeping flow $s^0$. The Reynolds number gives
 * $s^{-2}$, in a power-law gel $s^{-2/(2-n)}$. The blend time gives $s^0$ in turbulent flow, and likewise where the flow
 * creeps at both scales, since the revolutions are the same; a row is left out where its speed is not known.
 *
 * Nothing can be kept but one of them: look at the row of the criterion, and then at what it costs. Shear rate is the
 * mean one (Metzner and Otto); the shear at the blades goes with the tip speed. The gel is taken to have the same flow
 * curve at both scales, which is so only if it has been sheared and cooled alike.
 *
 * @param input - Impeller, vessel, density and flow curve at the bench, as for `stirring`.
 * @param input.speed - Speed at the bench [rev/s], above 0.
 * @param input.volume - Volume of the batch at the bench [m³], above 0.
 * @param input.diameterImpellerPlant - Diameter of the impeller in the plant [m], above 0.
 * @param input.criteria - What to keep, a row each; left out for all.
 * @param input.beyond - Outside the Reynolds numbers of the power curve: `"throw"` (default) or `"extend"` it.
 * @returns Bench, and a row a criterion with the ratio of every figure to the bench's.
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where a constant of the impeller is
 *   known to nobody; `range` outside its power curve.
 * @source paul-2004 chapters 6 and 9 from memory for the exponents, which the tests find again
 * @example
 * ```ts
 * import { scaleUp } from "gelwright/mixing";
 * const impeller = { kind: "pitched-blade", diameter: 0.06 } as const;
 * const melt = { density: 900, curve: { law: "newton", viscosity: 20 } } as const;
 * const { plant } = scaleUp({ ...melt, impeller, speed: 5, volume: 0.001, diameterImpellerPlant: 0.3 });
 * plant.map(({ criterion, speed }) => `${criterion} ${speed.toPrecision(3)}`); // => ["tip-speed 1.00",
 * // "power-per-volume 4.11", "reynolds 0.200", "blend-time 5.00", "shear-rate 5.00", "froude 2.24"]
 * ```
 */
export function scaleUp(
  input: StirredBatch & {
    readonly speed: number;
    readonly volume: number;
    readonly diameterImpellerPlant: number;
    readonly criteria?: readonly ScaleCriterion[];
    readonly beyond?: Beyond;
  },
): ScaleUp {
  const { impeller, vessel, density, curve, criteria = all, beyond } = record(input, "input");
  const speed = positive(input.speed, "speed");
  const volume = positive(input.volume, "volume");
  const bench = stirringAtScale(input, volume, beyond).full(speed);
  const s = positive(input.diameterImpellerPlant, "diameterImpellerPlant") / impeller.diameter;
  const [large, around] = sameShape(impeller, vessel, result(s, "scale"));
  const batch = { impeller: large, density, curve, ...(around === undefined ? {} : { vessel: around }) };
  const plant = stirringAtScale(batch, result(volume * s ** 3, "volume"), beyond);
  // The search may look beyond a law's range on its way; its answer may not.
  const search = stirringAtScale(batch, volume, "extend");
  const near = speed / Math.sqrt(s);
  const speedOf = (criterion: ScaleCriterion): number | undefined => {
    switch (criterion) {
      case "tip-speed":
        return speed / s;
      case "shear-rate":
        return speed;
      case "froude":
        return near;
      case "power-per-volume":
        return speedFor((n) => search.at(n).power, bench.power * s ** 3, near);
      case "reynolds":
        return speedFor((n) => search.at(n).reynolds, bench.reynolds, near);
      case "blend-time":
        if (bench.blendTime === undefined) return creeps(bench, search.at(speed)) ? speed : undefined;
        return speedFor((n) => search.blend(search.at(n)) ?? Number.NaN, bench.blendTime, speed);
      default:
        return refuse("input", "criteria", show(criterion), all.join(", "));
    }
  };
  const rows = list(criteria, "criteria", 1).flatMap((criterion) => {
    const found = speedOf(criterion);
    if (found === undefined) return [];
    const row = plant.full(positive(found, "speed"));
    if (criterion === "blend-time" && (row.blendTime === undefined) !== (bench.blendTime === undefined)) return [];
    return [{ criterion, ...row, ratios: ratios(row, bench, s) }];
  });
  return { bench, plant: rows };
}

/** Whether the revolutions until even are the same at both scales. */
const creeps = (bench: StirredState, plant: StirredState): boolean =>
  bench.reynolds < leastBlendReynolds && plant.reynolds < leastBlendReynolds;

function ratios(plant: StirringAtScale, bench: StirringAtScale, s: number): ScaledStirring["ratios"] {
  const of = (name: "speed" | "tipSpeed" | "power" | "powerPerVolume" | "reynolds" | "froude"): number =>
    result(plant[name] / bench[name], `ratio of ${name}`);
  return {
    speed: of("speed"),
    tipSpeed: of("tipSpeed"),
    power: of("power"),
    powerPerVolume: of("powerPerVolume"),
    torquePerVolume: result(plant.torque / bench.torque / s ** 3, "ratio of torque per volume"),
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
