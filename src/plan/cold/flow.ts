import type { FlowCurve } from "../../laws/index.js";
import { flowCurveAtOil, type OilPoint } from "../../mixing/index.js";
import { kriegerDoughertyViscosity } from "../../rheology/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import type { Content } from "../moment.js";
import { solidShare } from "../suspension.js";
import { oilFractionOf, phasesOfGel } from "./phases.js";

/** By volume, where particles of one size in disorder are packed: common practice, no source. */
const packed = 0.64;

/** The flow curve of what is in the vessel on the cold route, by the bench's readings along the way; or what is missing for it. */
export function flowCurveOf(job: Job, contents: readonly Content[]): FlowCurve | string {
  const { shearRate, viscosity = [], flowIndex = [], yieldStress = [] } = job.bench.coldRoute?.thickness ?? {};
  if (viscosity.length < 2) return "the bench does not say how thick the gel is on its way";
  if (shearRate === undefined) return "the bench does not say at what shear rate its viscosities were read";
  if (flowIndex.length < 2) return "the bench does not say how the gel thins under shear (flowIndex)";
  const oil = oilFractionOf(phasesOfGel(job, contents), job.process.temperatureRoom);
  if (typeof oil === "string") return oil;
  const grains = contents.some(({ material }) => material.particle) ? solidShare(contents) : 0;
  if (Number.isNaN(grains)) return "a density is missing";
  const readings = { shearRate, viscosity, flowIndex, ...(yieldStress.length > 1 && { yieldStress }) };
  const curve = attempt(
    () => flowCurveAtOil({ volumeFractionOil: oil, readings }),
    ({ code }) =>
      code === "range"
        ? `the bench's readings go only ${reachOf([viscosity, flowIndex], yieldStress)}`
        : "the yield stress that the bench read is above the stress of its viscosity there",
  );
  if (typeof curve === "string" || grains === 0) return curve;
  return attempt(
    () => times(curve, kriegerDoughertyViscosity({ volumeFraction: grains, volumeFractionPacked: packed })),
    () => "its particles are packed too closely to flow",
  );
}

/** Between which oil fractions a curve is known: one sentence for all of a step, wherever in it the oil is. */
function reachOf(throughout: readonly (readonly OilPoint[])[], yieldStress: readonly OilPoint[]): string {
  const percent = (oils: readonly (number | undefined)[], pick: (...of: number[]) => number): number =>
    Number((100 * pick(...oils.filter((oil) => oil !== undefined))).toPrecision(3));
  const from = percent(
    throughout.map((points) => points[0]?.volumeFractionOil),
    Math.max,
  );
  const to = percent(
    [...throughout, ...(yieldStress.length > 1 ? [yieldStress] : [])].map((points) => points.at(-1)?.volumeFractionOil),
    Math.min,
  );
  return `from ${from} to ${to} % of oil by volume`;
}

/** All stresses of a curve times a factor. Of a yield stress that is more than particles make of it: a wall that moves then, moves. */
function times(curve: FlowCurve, factor: number): FlowCurve {
  switch (curve.law) {
    case "power-law":
      return { ...curve, consistency: curve.consistency * factor };
    case "herschel-bulkley":
      return { ...curve, consistency: curve.consistency * factor, yieldStress: curve.yieldStress * factor };
    default:
      return curve;
  }
}
