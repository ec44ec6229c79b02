import type { ScaledBatch } from "../../batch/index.js";
import { moleFraction } from "../../heat/index.js";
import {
  boilingPressure,
  clearingOverCooling,
  clearingTime,
  foamHead,
  largestSuspendedDiameter,
  pressureToClear,
  riseOverCooling,
  settlingOverCurve,
  temperatureToClear,
} from "../../particles/index.js";
import { attempt } from "../attempt.js";
import { molarMassOfOil } from "../evaporation.js";
import type { Job } from "../job.js";
import { levelOf } from "../level.js";
import { type Content, type Moment, massOf } from "../moment.js";
import { curveInPack, packCooling } from "../pack.js";
import { densityOfAir, fluidDensity, meltOf } from "../suspension.js";
import { readingsFor, viscosityThen } from "../viscosity.js";
import type { Air } from "./job.js";
import type { PlanAir, PlanAirSegment, PlanYieldStress } from "./plan.js";

/** Whether the air that was stirred in leaves: the melt, the packs, or never. Nothing where no bubble is asked about. */
export function airOf(
  job: Job,
  moments: readonly Moment[],
  scaled: ScaledBatch,
  known: PlanYieldStress | undefined,
): PlanAir | undefined {
  const asked = job.process.air;
  if (!asked) return undefined;
  const segments = segmentsOf(job, moments, asked);
  const inPack = risenInPack(job, moments, scaled, asked);
  const yieldStress = known?.min;
  const filled = moments.find(({ step }) => step.do === "fill")?.after.contents;
  const densityFluid = filled && fluidDensity(filled, job.process.temperatureRoom);
  const suspended =
    yieldStress !== undefined && densityFluid !== undefined
      ? largestSuspendedDiameter({ yieldStress, densityParticle: densityOfAir, densityFluid })
      : undefined;
  const [first] = segments;
  const target = first && toClear(job, moments, asked, first);
  const vacuum = asked.vacuum && underVacuum(job, moments, asked, asked.vacuum);
  return {
    diameter: asked.diameter,
    segments,
    ...(inPack && { inPack }),
    ...(suspended && { suspended: { min: suspended.min, max: suspended.max } }),
    ...(target && { toClear: target }),
    ...(typeof vacuum === "object" && { vacuum }),
    ...(segments.length === 0
      ? { notKnown: "no viscosity readings on cooling of what is in the vessel, or no temperature" }
      : typeof vacuum === "string" && { notKnown: vacuum }),
  };
}

/** Each time that the melt cools off the heat without an addition or stirring that a step speaks of. */
function segmentsOf(job: Job, moments: readonly Moment[], asked: Air): readonly PlanAirSegment[] {
  const found: PlanAirSegment[] = [];
  moments.forEach(({ step }, place) => {
    if (step.do !== "cool" && step.do !== "fill") return;
    const rest = moments
      .slice(0, place)
      .map((one) => one.step.do !== "cool")
      .lastIndexOf(true);
    // Only the last of several coolings in a row: it began where the first did.
    if (moments[place + 1]?.step.do === "cool") return;
    const before = moments[rest + 1]?.before;
    const after = moments[place]?.after;
    const one = before && after && risen(job, before, after.temperature, asked);
    if (one) found.push({ fromStep: rest + 1, toStep: place + 1, ...one });
  });
  return found;
}

function risen(
  job: Job,
  { contents, temperature }: Moment["before"],
  end: number | undefined,
  { diameter, surface }: Air,
): Pick<PlanAirSegment, "depth" | "distance" | "durationToClear"> | undefined {
  const melt = meltOf(contents, job);
  const density = temperature === undefined ? undefined : fluidDensity(contents, temperature);
  if (typeof melt === "string" || temperature === undefined || end === undefined || density === undefined) return;
  const { sets, ...vessel } = melt;
  const temperatureEnd = Math.max(end, sets);
  if (temperatureEnd >= temperature) return;
  const depth = levelOf(massOf(contents) / density, job.vessel);
  const bubble = {
    ...vessel,
    diameter,
    ...(surface && { surface }),
    temperatureStart: temperature,
    temperatureEnd,
    beyond: "extend" as const,
  };
  const distance = attempt(() => riseOverCooling(bubble).distance);
  if (typeof distance === "string") return;
  const clear = distance < depth ? undefined : attempt(() => clearingOverCooling({ ...bubble, depth }).duration);
  return { depth, distance, ...(typeof clear === "number" && { durationToClear: clear }) };
}

/** How far bubbles rise in the filled pack before it has set, as stiff spheres as light as air. */
function risenInPack(
  job: Job,
  moments: readonly Moment[],
  scaled: ScaledBatch,
  { diameter }: Air,
): PlanAir["inPack"] | undefined {
  const filled = moments.find(({ step }) => step.do === "fill");
  const depth = job.pack?.content?.height;
  if (!filled || depth === undefined) return undefined;
  const { contents, temperature } = filled.after;
  const melt = meltOf(contents, job);
  const cooling = packCooling(contents, temperature, job, scaled);
  if (typeof melt === "string" || typeof cooling === "string" || temperature === undefined) return undefined;
  if (temperature <= melt.sets) return { distance: 0, depth };
  const bubble = { ...melt, diameter, densityParticle: densityOfAir, beyond: "extend" as const };
  const way = attempt(() => settlingOverCurve({ ...bubble, ...curveInPack(cooling, melt.sets) }).distance);
  return typeof way === "string" ? undefined : { distance: Math.abs(way), depth };
}

/** How warm, or under which vacuum, the first melt that can clear does so in the time wanted. */
function toClear(
  job: Job,
  moments: readonly Moment[],
  { diameter, surface, clearWithin: duration }: Air,
  { fromStep, depth }: PlanAirSegment,
): PlanAir["toClear"] | undefined {
  const state = moments[fromStep - 1]?.after;
  if (duration === undefined || state?.temperature === undefined) return undefined;
  const readings = readingsFor(job.bench.viscosities, state.contents, "cooling");
  const densityFluid = fluidDensity(state.contents, state.temperature);
  const thick = viscosityThen(job, state, "cooling");
  if (!readings || !thick || densityFluid === undefined) return undefined;
  const bubble = { diameter, ...(surface && { surface }), densityFluid, depth, duration, beyond: "extend" as const };
  const temperature = attempt(() => temperatureToClear({ ...bubble, viscosity: readings.law }));
  const pressure = attempt(() => pressureToClear({ ...bubble, viscosity: thick.viscosity }));
  return {
    fromStep,
    within: duration,
    ...(typeof temperature === "number" && { temperature }),
    ...(typeof pressure === "number" && { pressure }),
  };
}

/** What a vacuum does to the melt once a phase is in, at the temperature that it then has. */
function underVacuum(
  job: Job,
  moments: readonly Moment[],
  { diameter, surface }: Air,
  { afterPhase, pressure, air: share }: NonNullable<Air["vacuum"]>,
): PlanAir["vacuum"] | string {
  const moment = moments.find(({ step }) => step.do === "charge" && step.phase === afterPhase);
  if (!moment) return `phase ${afterPhase} is not charged`;
  const { contents, temperature, onHeat } = moment.after;
  const densityFluid = temperature === undefined ? undefined : fluidDensity(contents, temperature);
  if (temperature === undefined || densityFluid === undefined)
    return "the temperature or a density under vacuum is not known";
  const depth = levelOf(massOf(contents) / densityFluid, job.vessel);
  const thick = viscosityThen(job, moment.after, onHeat ? "heating" : "cooling");
  const duration =
    thick &&
    attempt(() =>
      clearingTime({
        diameter,
        ...(surface && { surface }),
        densityFluid,
        viscosity: thick.viscosity,
        depth,
        pressure,
        beyond: "extend",
      }),
    );
  const foam = attempt(() => foamHead({ level: depth / (1 - share), volumeFractionGas: share, pressure }));
  if (typeof foam === "string") return foam;
  const boiling = boilingOf(contents, temperature);
  return { pressure, ...(typeof duration === "number" && { duration }), foam, ...(boiling && { boiling }) };
}

/** What boils first, and below which pressure: each volatile part by its share in moles of an ideal solution. */
function boilingOf(
  contents: readonly Content[],
  temperature: number,
): NonNullable<PlanAir["vacuum"]>["boiling"] | undefined {
  const whole = massOf(contents);
  return contents
    .flatMap(({ material, mass }) => {
      const { volatile, name } = material;
      if (!volatile) return [];
      const { molarMass, vapourPressure } = volatile;
      const pressure = attempt(() =>
        boilingPressure({
          vapourPressure,
          moleFraction: moleFraction({ massFraction: mass / whole, molarMass, molarMassRest: molarMassOfOil }),
          temperature,
        }),
      );
      return typeof pressure === "number" ? [{ material: name, pressure }] : [];
    })
    .sort((one, other) => other.pressure - one.pressure)[0];
}
