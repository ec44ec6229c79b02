import type { Check } from "../../formula/index.js";
import { checkSuspended } from "../check-suspended.js";
import type { Job } from "../job.js";
import { say } from "../say.js";
import { dragOf } from "./drag.js";
import type { PlanYieldStress } from "./plan.js";
import type { Suspended } from "./suspended.js";

/** Particles go in late enough not to sink, early enough to be stirred in, and stay up in the set gel. */
export function checkParticles(
  all: readonly Suspended[],
  job: Job,
  held: PlanYieldStress | undefined,
): readonly Check[] {
  return all.flatMap((suspended) => [
    checkWindow(suspended, job),
    checkSettling(suspended, job),
    checkSuspended(suspended.material, suspended.particle, suspended.moment.after.contents, job, held),
  ]);
}

/** Between which temperatures the particles may go in: thick enough to carry them, thin enough to stir. */
function checkWindow({ material, particle, moment, place, window }: Suspended, job: Job): Check {
  const { temperature } = moment.before;
  const check = {
    id: `particles-go-in:${material.key}`,
    value: temperature === undefined ? "not known" : `${say.celsius(temperature)} before it goes in`,
    source: `${dragOf(particle).name}, hindered, over the cooling of the vessel; ${job.bench.source}`,
  };
  if (typeof window === "string" || temperature === undefined)
    return {
      ...check,
      verdict: "not known",
      statement: `When ${material.name} may go in is not known: ${typeof window === "string" ? window : "the temperature before it is not known"}.`,
      limit: "not known",
    };
  const { isOpen, temperatureFrom, temperatureTo, timeFrom, timeTo } = window;
  const early = temperature > temperatureFrom;
  const late = temperature < temperatureTo;
  const times =
    timeFrom === undefined || timeTo === undefined
      ? ""
      : `, ${Math.round(timeFrom / 60)} to ${say.minutes(timeTo)} after the heat is off`;
  return {
    ...check,
    verdict: early || late ? "not met" : "met",
    statement: early
      ? `${material.name} goes in too early, in step ${place + 1}: it would sink before the gel sets. Let it cool further.`
      : late
        ? `${material.name} goes in too late, in step ${place + 1}: the gel is too thick to stir it in.`
        : `${material.name} goes in when the gel is thick enough to carry it and thin enough to stir.`,
    limit: isOpen
      ? `from ${say.celsius(temperatureFrom)} down to ${say.celsius(temperatureTo)}${times}`
      : `none: too thin down to ${say.celsius(temperatureFrom)}, too thick from ${say.celsius(temperatureTo)}`,
  };
}

/** How far the particles settle on the way of this very plan, as if nothing were stirred but where a step says so. */
function checkSettling({ material, particle, settled, massFractionBeyond: share }: Suspended, job: Job): Check {
  const { settlingAllowed, source } = job.bench;
  const check = {
    id: `particles-settle:${material.key}`,
    limit: settlingAllowed === undefined ? "not stated" : `at most ${say.millimetres(settlingAllowed)}`,
    source: `${dragOf(particle).name}, hindered, over the cooling of vessel and pack; ${source}`,
  };
  const unknown = (why: string): Check => ({
    ...check,
    verdict: "not known",
    statement: `How far ${material.name} settles is not known: ${why}.`,
    value: "not known",
  });
  if (settlingAllowed === undefined) return unknown("nothing says how far it may settle");
  if (typeof settled === "string") return unknown(settled);
  const { inVessel, inPack } = settled;
  const far = Math.abs(inVessel + (inPack ?? 0)) > settlingAllowed;
  if (inPack === undefined && !far) return unknown("nothing says how the filled pack cools");
  if (typeof share === "string") return unknown(share);
  const met = share === undefined ? !far : share === 0;
  const some = share === undefined ? "" : `, ${say.percent(share)} of its mass too far`;
  return {
    ...check,
    verdict: met ? "met" : "not met",
    statement: met
      ? `${material.name} settles no further than allowed before the gel sets.`
      : `${material.name} settles too far before the gel sets: add it cooler, fill sooner, or keep stirring.`,
    value: `${say.millimetres(Math.abs(inVessel))} in the vessel${inPack === undefined ? "" : `, ${say.millimetres(Math.abs(inPack))} in the pack`}${some}`,
  };
}
