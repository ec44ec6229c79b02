import type { Answer, Plan, PlanStep } from "../plan/index.js";
import { isKnown } from "./words/number.js";

/** Between which temperatures of the vessel something may be done [°C]. */
export interface Between {
  readonly min?: number;
  readonly max?: number;
}

/** Thermometers show tenths: a limit is rounded inwards to one that they show. */
const upToTenth = (temperature: number): number => Math.ceil(10 * temperature - 1e-6) / 10;
const downToTenth = (temperature: number): number => Math.floor(10 * temperature + 1e-6) / 10;

/** How warm a material may get in the vessel, by the answers of the plan: its own limit, or the flash point with its margin [°C]. */
function warmest({ limit, margin }: Answer): number | undefined {
  const end = limit.max?.min;
  return isKnown(end) ? end - (margin?.max ?? 0) : undefined;
}

/** Between which temperatures a step may charge what it charges: windows of its particles, and limits of its materials in a hot vessel; nothing where none of them is stated. */
export function chargingBetween({ answers, particles, timeline, weighing }: Plan, step: PlanStep): Between {
  const { number, massCharged, mass, step: document } = step;
  const isHot = timeline.some(({ number: one, step: { do: what } }) => one < number && what === "heat");
  if (massCharged === undefined || massCharged === mass || !("phase" in document) || !isHot) return {};
  const windows = particles.flatMap(({ step: own, window }) => (own === number && window?.isOpen ? [window] : []));
  const keys = weighing.lines.filter(({ phase }) => phase === document.phase).map(({ material }) => material);
  const limits = answers
    .filter(({ id, of: { material = "" } }) => id === "maximum-temperature" && keys.includes(material))
    .flatMap((answer) => warmest(answer) ?? []);
  const min = windows.map(({ temperatureMin }) => upToTenth(temperatureMin));
  const max = [...windows.map(({ temperatureMax }) => temperatureMax), ...limits].map(downToTenth);
  const [from, to] = [Math.max(...min), Math.min(...max)];
  if (from > to) return {};
  return { ...(min.length > 0 && { min: from }), ...(max.length > 0 && { max: to }) };
}

/** The limits of a material while it is heated. */
const heatLimits: readonly Answer["id"][] = ["maximum-temperature", "flash-point"];

/**
 * Above which a vessel must never be heated in a step [°C]: there a material reaches its limit in the charge, or at the
 * heated wall, which is as much warmer than the charge as in this step. Nothing where a limit or the wall is not known.
 */
export function neverAbove({ answers, weighing, timeline }: Plan, step: PlanStep): number | undefined {
  const { number, temperatureEnd } = step;
  const phases = timeline.flatMap(({ number: one, step: document, massCharged }) =>
    one <= number && massCharged !== undefined && "phase" in document ? [document.phase] : [],
  );
  const keys = weighing.lines.filter(({ phase }) => phases.includes(phase)).map(({ material }) => material);
  const asked = answers.filter(({ id, of: { material = "" } }) => heatLimits.includes(id) && keys.includes(material));
  const hasWall = asked.some(({ at }) => at.place === "heated-wall");
  if (temperatureEnd === undefined || !hasWall) return undefined;
  const ends = asked.map((answer) => {
    const limit = warmest(answer);
    const { max } = answer.figure;
    if (answer.at.place !== "heated-wall") return limit;
    return limit === undefined || !isKnown(max) || answer.at.step !== number
      ? undefined
      : limit - Math.max(0, max - temperatureEnd);
  });
  const known = ends.filter((end) => end !== undefined);
  const end = Math.floor(Math.min(...known) + 1e-6);
  return known.length < ends.length || end <= temperatureEnd ? undefined : end;
}

/** Up to which a charge may be kept warm while it is filled: its materials stand it, and its particles settle no further than allowed [°C]. */
export function keptWarmMax({ answers, particles }: Plan): number | undefined {
  const limits = answers.flatMap((answer) => (answer.id === "maximum-temperature" ? (warmest(answer) ?? []) : []));
  const windows = particles.flatMap(({ window }) => (window?.isOpen ? [window.temperatureMax] : []));
  const max = downToTenth(Math.min(...limits, ...windows));
  return Number.isFinite(max) ? max : undefined;
}

/** Below which no pack is filled [°C]. */
export function fillingMin({ fillingLimits }: Plan): number | undefined {
  return fillingLimits && upToTenth(fillingLimits.temperatureMin);
}
