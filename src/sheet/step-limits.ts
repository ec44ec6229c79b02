import type { Plan, PlanStep } from "../plan/index.js";

/** Between which temperatures of the vessel something may be done [°C]. */
export interface Between {
  readonly min?: number;
  readonly max?: number;
}

/** Thermometers show tenths: a limit is rounded inwards to one that they show. */
const upToTenth = (temperature: number): number => Math.ceil(10 * temperature - 1e-6) / 10;
const downToTenth = (temperature: number): number => Math.floor(10 * temperature + 1e-6) / 10;

/** Between which temperatures a step may charge what it charges; nothing if none of its limits is known. */
export function chargingBetween({ stepLimits }: Plan, { number }: PlanStep): Between {
  const { temperatureMin, temperatureMax } = stepLimits.find(({ step }) => step === number) ?? {};
  const min = temperatureMin === undefined ? undefined : upToTenth(temperatureMin);
  const max = temperatureMax === undefined ? undefined : downToTenth(temperatureMax);
  if (min !== undefined && max !== undefined && min > max) return {};
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) };
}

/** Above which a vessel must never be heated in a step, in whole degrees [°C]; nothing if that is not known. */
export function neverAbove(
  { stepLimits }: Plan,
  { number, temperatureEnd = Number.NaN }: PlanStep,
): number | undefined {
  const { temperatureMax = Number.NaN } = stepLimits.find(({ step }) => step === number) ?? {};
  const max = Math.floor(temperatureMax + 1e-6);
  return max > temperatureEnd ? max : undefined;
}

/** Up to which a charge may be kept warm while it is filled [°C]. */
export function keptWarmMax({ fillingLimits }: Plan): number | undefined {
  return fillingLimits?.temperatureMax === undefined ? undefined : downToTenth(fillingLimits.temperatureMax);
}

/** Below which no pack is filled [°C]. */
export function fillingMin({ fillingLimits }: Plan): number | undefined {
  return fillingLimits && upToTenth(fillingLimits.temperatureMin);
}
