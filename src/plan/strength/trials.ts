import { doseForStrength, fitDoseResponse, strengthAtDose } from "../../gel/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import type { PlanStrength } from "./plan.js";

/** Share of the product that is gel former. */
function doseOfProduct({ formula }: Job): number {
  return formula.lines.reduce(
    (sum, line) => sum + (formula.materials[line.material]?.function === "gel former" ? line.massFraction : 0),
    0,
  );
}

/** The strength that trials let expect at the dose of the product, and the dose for the strength that is wanted. */
export function strengthByTrials(job: Job): PlanStrength | undefined {
  const { strengthTrials } = job.bench;
  if (!strengthTrials) return undefined;
  const { of, trials, threshold, target } = strengthTrials;
  const dose = doseOfProduct(job);
  const known = { of, dose, ...(target !== undefined && { target }) };
  const basis = `${trials.length} trials, a power of the dose above ${threshold === undefined ? "a fitted" : "the stated"} threshold`;
  const fit = attempt(() => fitDoseResponse({ trials, ...(threshold !== undefined && { threshold }) }));
  if (typeof fit === "string") return { ...known, basis, notKnown: fit };
  const expected = attempt(() => strengthAtDose({ fit, dose }));
  const doseTarget = target === undefined ? undefined : attempt(() => doseForStrength({ fit, strength: target }));
  const missing = [expected, doseTarget].find((found) => typeof found === "string");
  return {
    ...known,
    basis,
    ...(typeof expected === "object" && { expected }),
    ...(typeof doseTarget === "object" && { doseTarget }),
    ...(missing !== undefined && { notKnown: missing as string }),
  };
}
