import type { FlowCurve } from "../laws/index.js";
import type { OilLaw, OilPoint } from "../mixing/index.js";
import { flowCurveAtOil } from "../mixing/index.js";
import { kriegerDoughertyViscosity } from "../rheology/index.js";
import type { Bench } from "./documents/bench.js";
import { by, remembered, stated, unknown } from "./unknown.js";

/** What the bench found of an emulsion, as laws along the oil fraction. */
export interface OilLaws {
  readonly share: OilLaw | undefined;
  readonly incorporation: OilLaw | undefined;
  readonly viscosity: readonly OilPoint[];
  readonly flowIndex: readonly OilPoint[];
  readonly yieldStress: readonly OilPoint[];
}

/** What the bench found of an emulsion, along the oil fraction. */
export const oilLawsOf: (bench: Bench) => OilLaws = remembered(({ emulsion }: Bench): OilLaws => {
  const readings = emulsion?.thickness?.readings ?? [];
  type Reading = (typeof readings)[number];
  const along = (key: "viscosity" | "flowIndex" | "yieldStress"): readonly OilPoint[] =>
    readings.flatMap((reading: Reading) => {
      const { [key]: value } = reading;
      return value === undefined ? [] : [{ volumeFractionOil: reading.oil, value }];
    });
  const lawOf = (points: readonly OilPoint[]): OilLaw | undefined => {
    const [first, second] = points;
    return second ? { law: "table", points } : first && { law: "constant", value: first.value };
  };
  return {
    share: lawOf(
      (emulsion?.additionShareMax ?? []).map(({ oil, share }) => ({ volumeFractionOil: oil, value: share })),
    ),
    incorporation: lawOf(
      (emulsion?.incorporationTime ?? []).map(({ oil, time }) => ({ volumeFractionOil: oil, value: time })),
    ),
    viscosity: along("viscosity"),
    flowIndex: along("flowIndex"),
    yieldStress: along("yieldStress"),
  };
});

/** By volume, packed grains of one size in disorder: common practice, no source. */
const packedGrains = 0.64;

/**
 * The flow curve of an emulsion at the room's temperature, by the bench's readings along the oil fraction; particles
 * thicken it.
 *
 * @param volumeFractionOil - Oil in oil and outer phase [0 to 1].
 * @param volumeFraction - Particles in the whole [0 to 1].
 */
export function emulsionCurveOf(bench: Bench, volumeFractionOil: number, volumeFraction: number): FlowCurve {
  const { viscosity, flowIndex, yieldStress } = oilLawsOf(bench);
  if (viscosity.length < 2) unknown("not-stated", { field: "emulsion-thickness" });
  const shearRate = stated(bench.emulsion?.thickness?.shearRate, "emulsion-thickness-shear-rate");
  if (flowIndex.length < 2) unknown("not-stated", { field: "emulsion-thickness-flow-index" });
  // One yield stress is a point and no line.
  const yields = yieldStress.length > 1 ? { yieldStress } : {};
  const curve = by(
    "flow-curve-along-oil",
    () =>
      flowCurveAtOil({
        volumeFractionOil,
        readings: { shearRate, viscosity, flowIndex, ...yields },
      }),
    { field: "emulsion-thickness" },
  );
  if (volumeFraction === 0) return curve;
  const factor = thickenedBy(volumeFraction);
  const consistency = curve.consistency * factor;
  // Of a yield stress that is more than particles make of it: a wall that moves then, moves.
  return curve.law === "power-law"
    ? { ...curve, consistency }
    : { ...curve, consistency, yieldStress: curve.yieldStress * factor };
}

/** By which factor particles thicken it, by their share of the volume [0 to 1]. */
export function thickenedBy(volumeFraction: number): number {
  return by("suspension-viscosity", () =>
    kriegerDoughertyViscosity({ volumeFraction, volumeFractionPacked: packedGrains }),
  );
}
