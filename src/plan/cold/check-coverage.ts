import type { Check } from "../../formula/index.js";
import { surfactantForDroplets } from "../../gel/index.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";
import { say } from "../say.js";
import { densityOfPhase, phasesOfGel } from "./phases.js";
import type { ExpectedGel } from "./plan.js";

/** There is surfactant enough for the droplets that are made. */
export function checkCoverage(job: Job, contents: readonly Content[], { diameter }: ExpectedGel): Check {
  const { surfactant } = job.bench.emulsion ?? {};
  const check = { id: "surfactant-covers-droplets", source: `area per gram from ${job.bench.source}` };
  const { oil } = phasesOfGel(job, contents);
  const density = densityOfPhase(oil, job.process.temperatureRoom);
  const missing = !surfactant
    ? "the bench does not say what area the surfactant covers"
    : diameter === undefined
      ? "the size of the droplets is not known"
      : typeof density === "string"
        ? density
        : undefined;
  if (missing !== undefined || !surfactant || diameter === undefined || typeof density === "string")
    return {
      ...check,
      verdict: "not known",
      statement: `Whether the surfactant covers all droplets is not known: ${missing}.`,
      value: "not known",
      limit: "not known",
    };
  const material = job.formula.materials[surfactant.material];
  const charged = massOf(contents.filter((content) => content.material.key === surfactant.material));
  const { asSupplied } = surfactantForDroplets({
    volumeOil: massOf(oil) / density,
    diameter,
    adsorption: surfactant.adsorption,
    strength: material?.strength ?? 1,
  });
  const met = charged >= asSupplied;
  return {
    ...check,
    verdict: met ? "met" : "not met",
    statement: met
      ? "There is surfactant enough to cover all droplets; what is dissolved or in micelles comes on top."
      : "There is too little surfactant for droplets so fine: they would run together.",
    value: `${say.kilograms(charged)} of ${material?.name ?? surfactant.material}`,
    limit: `at least ${say.kilograms(asSupplied)} for droplets of ${say.micrometres(diameter)}`,
  };
}
