import type { Check, Material, Particle } from "../formula/index.js";
import type { Job } from "./job.js";
import type { Content } from "./moment.js";
import { say } from "./say.js";
import type { PlanYieldStress } from "./strength/plan.js";
import { needed } from "./suspended.js";

/** Whether the set gel holds the particles for as long as it stays as it is. */
export function checkSuspended(
  material: Material,
  particle: Particle,
  contents: readonly Content[],
  job: Job,
  held: PlanYieldStress | undefined,
): Check {
  const need = needed(particle, contents, job);
  const id = `particles-stay-suspended:${material.key}`;
  if (!held || !need)
    return {
      id,
      verdict: "not known",
      statement: `Whether the set gel holds ${material.name} is not known: ${held ? "a density is missing" : "no yield stress of the set gel"}.`,
      value: held ? say.pascals(held.value) : "not known",
      limit: "not known",
      source: job.bench.source,
    };
  const verdict = held.min >= need.max ? "met" : held.max < need.min ? "not met" : "not known";
  const statement = {
    met: `The set gel is strong enough to hold ${material.name} at rest, as long as it stays as it is.`,
    "not met": `The set gel is too weak to hold ${material.name}: it will sink in storage.`,
    "not known":
      need.min < need.max
        ? `Published experiments and the yield stress leave it open whether this gel holds ${material.name}.`
        : `The yield stress is not known well enough to say whether this gel holds ${material.name}.`,
  }[verdict];
  return {
    id,
    verdict,
    statement,
    value:
      held.min < held.max
        ? `${say.pascals(held.value)}, ${say.pascals(held.min)} to ${say.pascals(held.max)} at 95 %`
        : say.pascals(held.value),
    limit:
      need.min < need.max
        ? `held from ${say.pascals(need.max)}, lost below ${say.pascals(need.min)}`
        : `held from ${say.pascals(need.max)}`,
    source: `${need.by}; yield stress ${held.from}`,
  };
}
