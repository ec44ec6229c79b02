import type { ScaledBatch } from "../../batch/index.js";
import { CalculationError } from "../../error.js";
import type { Check, Material } from "../../formula/index.js";
import {
  additionTemperature,
  additionWindow,
  settlingOverCooling,
  settlingOverCurve,
  yieldStressToHold,
} from "../../particles/index.js";
import type { Job } from "../job.js";
import type { Content, Moment } from "../moment.js";
import { curveInPack, packCooling } from "../pack.js";
import { say } from "../say.js";
import { type CoolingSuspension, fluidDensity, suspensionOf } from "../suspension.js";

/** What the settling of one kind of particle is computed from, once it is in the vessel. */
interface Suspended {
  readonly material: Material;
  readonly particle: NonNullable<Material["particle"]>;
  /** The moment at which it goes in, and its place. */
  readonly moment: Moment;
  readonly place: number;
}

/** Particles go in late enough not to sink, early enough to be stirred in, and stay up in the set gel. */
export function checkParticles(moments: readonly Moment[], job: Job, scaled: ScaledBatch): readonly Check[] {
  const all = moments.flatMap((moment, place) => {
    if (moment.step.do !== "charge") return [];
    const added = moment.after.contents.slice(moment.before.contents.length);
    return added.flatMap(({ material }) =>
      material.particle ? [{ material, particle: material.particle, moment, place }] : [],
    );
  });
  return all.flatMap((suspended) => {
    const cooling = suspensionOf(suspended.moment.after.contents, suspended.particle, job);
    return [
      checkWindow(suspended, cooling, moments, job),
      checkSettling(suspended, cooling, moments, job, scaled),
      checkHeld(suspended, job),
    ];
  });
}

/** Between which temperatures the particles may go in: thick enough to carry them, thin enough to stir. */
function checkWindow(
  { material, moment, place }: Suspended,
  cooling: CoolingSuspension | string,
  moments: readonly Moment[],
  job: Job,
): Check {
  const { temperature } = moment.after;
  const check = {
    id: `particles-go-in:${material.key}`,
    source: `Stokes over the cooling of the vessel, ${job.bench.source}`,
  };
  const unknown = (why: string): Check => ({
    ...check,
    verdict: "not known",
    statement: `When ${material.name} may go in is not known: ${why}.`,
    value: temperature === undefined ? "not known" : say.celsius(temperature),
    limit: "not known",
  });
  const { settlingAllowed, viscosityStirrable } = job.bench;
  const offHeat = moments.find((one) => one.step.do === "take off the heat" && one.after.temperature !== undefined)
    ?.after.temperature;
  if (typeof cooling === "string") return unknown(cooling);
  if (temperature === undefined) return unknown("the temperature at which it goes in is not known");
  if (settlingAllowed === undefined) return unknown("nothing says how far it may settle");
  if (offHeat === undefined || offHeat <= cooling.sets)
    return unknown("the vessel does not come off the heat above the setting temperature");
  try {
    const leg = { ...cooling, temperatureStart: offHeat, temperatureEnd: cooling.sets, settlingAllowed };
    const { temperatureWarmest: warmest, temperatureColdest: coolest } =
      viscosityStirrable === undefined
        ? { temperatureWarmest: additionTemperature(leg).temperature, temperatureColdest: cooling.sets }
        : additionWindow({ ...leg, viscosityStirrable });
    const early = temperature > warmest;
    const late = temperature < coolest;
    return {
      ...check,
      verdict: early || late ? "not met" : "met",
      statement: early
        ? `${material.name} goes in too early, in step ${place + 1}: it would sink before the gel sets. Let it cool further.`
        : late
          ? `${material.name} goes in too late, in step ${place + 1}: the gel is too thick to stir it in.`
          : `${material.name} goes in when the gel is thick enough to carry it and thin enough to stir.`,
      value: say.celsius(temperature),
      limit:
        warmest < coolest
          ? `none: too thin down to ${say.celsius(warmest)}, too thick from ${say.celsius(coolest)}`
          : `from ${say.celsius(warmest)} down to ${say.celsius(coolest)}`,
    };
  } catch (error) {
    return unknown(reasonOf(error));
  }
}

/** How far the particles settle on the way of this very plan, as if nothing were stirred but where a step says so. */
function checkSettling(
  { material, moment, place }: Suspended,
  cooling: CoolingSuspension | string,
  moments: readonly Moment[],
  job: Job,
  scaled: ScaledBatch,
): Check {
  const { settlingAllowed, source } = job.bench;
  const check = {
    id: `particles-settle:${material.key}`,
    limit: settlingAllowed === undefined ? "not stated" : `at most ${say.millimetres(settlingAllowed)}`,
    source: `Stokes with hindered settling over the cooling of vessel and pack, ${source}`,
  };
  const unknown = (why: string): Check => ({
    ...check,
    verdict: "not known",
    statement: `How far ${material.name} settles is not known: ${why}.`,
    value: "not known",
  });
  const { contents } = moment.after;
  if (typeof cooling === "string") return unknown(cooling);
  if (settlingAllowed === undefined) return unknown("nothing says how far it may settle");
  const suspension = { ...cooling, beyond: "extend" as const };
  const { sets } = cooling;
  try {
    let inVessel = 0;
    for (const { step, before, after } of moments.slice(place + 1)) {
      if (step.do === "rest" || step.do === "stir") continue;
      if (before.temperature === undefined || after.temperature === undefined)
        return unknown("a temperature on the way is not known");
      if (after.temperature < before.temperature && before.temperature > sets)
        inVessel += settlingOverCooling({
          ...suspension,
          temperatureStart: before.temperature,
          temperatureEnd: Math.max(after.temperature, sets),
        }).distance;
    }
    const filling = moments.find((one) => one.step.do === "fill");
    const inPack = settledInPack(filling?.after.temperature, suspension, cooling.sets, contents, job, scaled);
    const least = Math.abs(inVessel);
    if (inPack === undefined && least <= settlingAllowed) return unknown("nothing says how the filled pack cools");
    const whole = Math.abs(inVessel + (inPack ?? 0));
    return {
      ...check,
      verdict: whole <= settlingAllowed ? "met" : "not met",
      statement:
        whole <= settlingAllowed
          ? `${material.name} settles no further than allowed before the gel sets.`
          : `${material.name} settles too far before the gel sets: add it cooler, fill sooner, or keep stirring.`,
      value: `${say.millimetres(least)} in the vessel${inPack === undefined ? "" : `, ${say.millimetres(Math.abs(inPack))} in the pack`}`,
    };
  } catch (error) {
    return unknown(reasonOf(error));
  }
}

/** How far the particles settle in the pack until it has set; nothing where its cooling is not known. */
function settledInPack(
  filled: number | undefined,
  suspension: CoolingSuspension & { readonly beyond: "extend" },
  sets: number,
  contents: readonly Content[],
  job: Job,
  scaled: ScaledBatch,
): number | undefined {
  if (filled !== undefined && filled <= sets) return 0;
  const cooling = packCooling(contents, filled, job, scaled);
  return typeof cooling === "string"
    ? undefined
    : settlingOverCurve({ ...suspension, ...curveInPack(cooling, sets) }).distance;
}

/** Whether the set gel holds the particles for as long as it stays as it is. */
function checkHeld({ material, particle, moment }: Suspended, job: Job): Check {
  const { yieldStress, source } = job.bench;
  const check = {
    id: `particles-stay-up:${material.key}`,
    source: `Beris and others 1985 with the spread of published experiments; yield stress from ${source}`,
  };
  const fluid = fluidDensity(moment.after.contents, job.process.temperatureRoom);
  if (yieldStress === undefined || fluid === undefined)
    return {
      ...check,
      verdict: "not known",
      statement: `Whether the set gel holds ${material.name} is not known: ${yieldStress === undefined ? "no yield stress of the set gel" : "a density is missing"}.`,
      value: "not known",
      limit: "not known",
    };
  const { least, greatest } = yieldStressToHold({
    diameter: particle.diameter,
    densityParticle: particle.density,
    densityFluid: fluid,
  });
  const verdict = yieldStress >= greatest ? "met" : yieldStress < least ? "not met" : "not known";
  return {
    ...check,
    verdict,
    statement: {
      met: `The set gel is strong enough to hold ${material.name} at rest, as long as it stays as it is.`,
      "not met": `The set gel is too weak to hold ${material.name}: it will sink in storage.`,
      "not known": `Published experiments disagree on whether this gel holds ${material.name}.`,
    }[verdict],
    value: say.pascals(yieldStress),
    limit: `held from ${say.pascals(greatest)}, lost below ${say.pascals(least)}`,
  };
}

function reasonOf(error: unknown): string {
  if (error instanceof CalculationError) return error.message;
  throw error;
}
