import type { Check } from "../../formula/index.js";
import { ohnesorgeNumber } from "../../rheology/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { say } from "../say.js";
import type { PlanFlow, PlanStrength, PlanYieldStress } from "./plan.js";

/** What is known of the gel's strength and flow. */
interface Known {
  readonly strength: PlanStrength | undefined;
  readonly flow: PlanFlow | undefined;
  readonly yieldStress: PlanYieldStress | undefined;
  /** Density at 20 °C [kg/m³]. */
  readonly density: number | undefined;
}

/** The dose of the product gives the strength that is wanted; a gel that is to be sprayed has no yield stress. */
export function checkStrength(job: Job, known: Known): readonly Check[] {
  return [...checkWanted(known), ...checkSpray(job, known)];
}

function checkWanted({ strength, yieldStress }: Known): readonly Check[] {
  if (strength?.target === undefined) return [];
  const { target, expected, doseTarget, of, basis, dose } = strength;
  const held = of === "yield stress" ? yieldStress : undefined;
  const found = held ?? (expected && { ...expected, from: basis });
  const verdict = !found ? "not known" : found.min >= target ? "met" : found.max < target ? "not met" : "not known";
  const remedy = doseTarget
    ? ` It would take ${say.percent(doseTarget.value)} of gel former (${say.percent(doseTarget.min)} to ${say.percent(doseTarget.max)} at 95 %).`
    : "";
  return [
    {
      id: "gel-strength",
      verdict,
      statement: {
        met: `${say.percent(dose)} of gel former gives the ${of} that is wanted.`,
        "not met": `${say.percent(dose)} of gel former does not give the ${of} that is wanted.${remedy}`,
        "not known": found
          ? `The trials leave it open whether ${say.percent(dose)} of gel former gives the ${of} that is wanted.${remedy}`
          : `The ${of} at ${say.percent(dose)} of gel former is not known: ${strength.notKnown ?? "no trial reaches it"}.`,
      }[verdict],
      value: found
        ? `${say.pascals(found.value)}${found.min < found.max ? `, ${say.pascals(found.min)} to ${say.pascals(found.max)} at 95 %` : ""}`
        : "not known",
      limit: `at least ${say.pascals(target)}`,
      source: found?.from ?? basis,
    },
  ];
}

function checkSpray(job: Job, { flow, yieldStress: held, density }: Known): readonly Check[] {
  const { nozzle } = job.pack ?? {};
  if (nozzle?.surfaceTension === undefined) return [];
  const yields = held !== undefined && held.value > 0;
  const number = yields ? undefined : sprayNumber(nozzle, flow, density);
  return [
    {
      id: "atomises",
      verdict: "not known",
      statement: yields
        ? "No number says whether a gel with a yield stress breaks up into a spray: try it."
        : number === undefined
          ? "Whether it sprays is not known: no flow curve without a yield stress, or no density."
          : "How fine it sprays, the Ohnesorge number alone does not say: try it.",
      value: yields
        ? `yield stress ${say.pascals(held.value)}`
        : number === undefined
          ? "not known"
          : `Oh ${Number(number.toPrecision(2))}`,
      limit: "a fluid without yield stress",
      source: held?.from ?? job.bench.source,
    },
  ];
}

/** The Ohnesorge number at the nozzle, which a curve with a yield stress refuses. */
function sprayNumber(
  { diameter, surfaceTension }: NonNullable<NonNullable<Job["pack"]>["nozzle"]>,
  flow: PlanFlow | undefined,
  density: number | undefined,
): number | undefined {
  const { curve, nozzle } = flow ?? {};
  if (!curve || !nozzle || density === undefined || surfaceTension === undefined) return undefined;
  const number = attempt(() =>
    ohnesorgeNumber({ curve, shearRate: nozzle.shearRate, density, surfaceTension, diameter }),
  );
  return typeof number === "number" ? number : undefined;
}
