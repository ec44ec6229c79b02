import type { ScaledBatch } from "../batch/index.js";
import { scaleFormula } from "../batch/index.js";
import { densityOf, isGlycerin, isWater } from "./contents.js";
import type { Job } from "./job.js";
import { withSamples } from "./samples.js";
import { remembered } from "./unknown.js";

/** The batch that the formula is scaled to, with the vessel it is made in. */
export function scaledBatch(job: Job, yieldStress: number | undefined): ScaledBatch {
  return scaleFormula(scalingInput(job, yieldStress));
}

/** What the batch of a job is scaled by. */
export function scalingInput(job: Job, yieldStress: number | undefined): Parameters<typeof scaleFormula>[0] {
  const { formula, vessel } = job;
  const batch = withSamples(job);
  const { name, workingVolume, diameter, bottom } = vessel;
  const density = batch.density ?? contractedDensity(formula);
  return {
    formula,
    batch: density === undefined ? batch : { ...batch, density },
    vessel: { name, volumeMin: workingVolume.min, volumeMax: workingVolume.max, diameter, bottom },
    ...(yieldStress !== undefined && { yieldStress }),
  };
}

/** Density of a product at 20 °C in which glycerin and water contract [kg/m³]; of another its materials' volumes add up in the batch. */
const contractedDensity: (formula: Job["formula"]) => number | undefined = remembered(({ lines, materials }) => {
  const contents = lines.flatMap(({ material: key, massFraction: mass, phase }) => {
    const material = materials[key];
    return material && mass > 0 ? [{ material, mass, phase }] : [];
  });
  const contracts = contents.some(isGlycerin) && contents.some(isWater);
  return contracts && contents.every(({ material }) => material.density) ? densityOf(contents, 20) : undefined;
});
