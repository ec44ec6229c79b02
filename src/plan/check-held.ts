import type { Check, Material, Particle } from "../formula/index.js";
import { needed } from "./held.js";
import type { Job } from "./job.js";
import type { Content } from "./moment.js";
import { say } from "./say.js";
import type { PlanYieldStress } from "./strength/plan.js";

/** Whether the set gel holds the particles for as long as it stays as it is. */
export function checkHeld(
  material: Material,
  particle: Particle,
  contents: readonly Content[],
  job: Job,
  held: PlanYieldStress | undefined,
): Check {
  const need = needed(particle, contents, job);
  const id = `particles-stay-up:${material.key}`;
  if (!held || !need)
    return {
      id,
      verdict: "not known",
      statement: `Whether the set gel holds ${material.name} is not known: ${held ? "a density is missing" : "no yield stress of the set gel"}.`,
      value: held ? say.pascals(held.value) : "not known",
      limit: "not known",
      source: job.bench.source,
    };
  const verdict = held.least >= need.greatest ? "met" : held.greatest < need.least ? "not met" : "not known";
  const statement = {
    met: `The set gel is strong enough to hold ${material.name} at rest, as long as it stays as it is.`,
    "not met": `The set gel is too weak to hold ${material.name}: it will sink in storage.`,
    "not known":
      need.least < need.greatest
        ? `Published experiments and the yield stress leave it open whether this gel holds ${material.name}.`
        : `The yield stress is not known well enough to say whether this gel holds ${material.name}.`,
  }[verdict];
  return {
    id,
    verdict,
    statement,
    value:
      held.least < held.greatest
        ? `${say.pascals(held.value)}, ${say.pascals(held.least)} to ${say.pascals(held.greatest)} at 95 %`
        : say.pascals(held.value),
    limit:
      need.least < need.greatest
        ? `held from ${say.pascals(need.greatest)}, lost below ${say.pascals(need.least)}`
        : `held from ${say.pascals(need.greatest)}`,
    source: `${need.by}; yield stress ${held.from}`,
  };
}
