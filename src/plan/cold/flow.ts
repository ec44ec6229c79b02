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
  const { shearRate, viscosity = [], flowIndex = [], yieldStress = [] } = job.bench.emulsion?.thickness ?? {};
  if (viscosity.length < 2) return "the bench does not say how thick the gel is on its way";
  if (shearRate === undefined) return "the bench does not say at what shear rate its viscosities were read";
  if (flowIndex.length < 2) return "the bench does not say how the gel thins under shear (flowIndex)";
  const oil = oilFractionOf(phasesOfGel(job, contents), job.process.temperatureRoom);
  if (typeof oil === "string") return oil;
  const grains = contents.some(({ material }) => material.particle) ? solidShare(contents) : 0;
  if (Number.isNaN(grains)) return "a density is missing";
  // One yield stress is a point and no line.
  const yields = yieldStress.length > 1 ? yieldStress : [];
  const readings = { shearRate, viscosity, flowIndex, ...(yields.length > 0 && { yieldStress: yields }) };
  const curve = attempt(
    () => flowCurveAtOil({ volumeFractionOil: oil, readings }),
    ({ code }) =>
      code === "range"
        ? `the bench's readings go only ${reachOf([viscosity, flowIndex], yields)}`
        : "the yield stress that the bench read is above the stress of its viscosity there",
  );
  if (typeof curve === "string" || grains === 0) return curve;
  return attempt(
    () => times(curve, kriegerDoughertyViscosity({ volumeFraction: grains, volumeFractionPacked: packed })),
    () => "its particles are packed too closely to flow",
  );
}

/** Between which oil fractions a curve is known: one sentence for all of a step. Below its first reading there is no yield stress yet. */
function reachOf(throughout: readonly (readonly OilPoint[])[], yieldStress: readonly OilPoint[]): string {
  const percent = (point: OilPoint | undefined): number =>
    Number((100 * (point?.volumeFractionOil ?? 1)).toPrecision(3));
  const from = Math.max(...throughout.map(([first]) => percent(first)));
  const to = Math.min(...[...throughout, yieldStress].map((points) => percent(points.at(-1))));
  return `from ${from} to ${to} % of oil by volume`;
}

/** All stresses of a curve times a factor. Of a yield stress that is more than particles make of it: a wall that moves then, moves. */
function times(curve: ReturnType<typeof flowCurveAtOil>, factor: number): FlowCurve {
  const consistency = curve.consistency * factor;
  return curve.law === "power-law"
    ? { ...curve, consistency }
    : { ...curve, consistency, yieldStress: curve.yieldStress * factor };
}
