import type { Plan, PlanStep } from "../plan/index.js";

/** Between which temperatures of the vessel something may be done [°C]. */
export interface Between {
  readonly min?: number;
  readonly max?: number;
}

/** Thermometers show tenths: a limit is rounded inwards to one that they show. */
const upToTenth = (temperature: number): number => Math.ceil(10 * temperature - 1e-6) / 10;
const downToTenth = (temperature: number): number => Math.floor(10 * temperature + 1e-6) / 10;

/** The temperatures between which a step may charge its materials; nothing if none of the limits is known. */
export function chargingBetween({ stepLimits }: Plan, { number }: PlanStep): Between {
  const { temperatureMin, temperatureMax } = stepLimits.find(({ step }) => step === number) ?? {};
  const min = temperatureMin === undefined ? undefined : upToTenth(temperatureMin);
  const max = temperatureMax === undefined ? undefined : downToTenth(temperatureMax);
  if (min !== undefined && max !== undefined && min > max) return {};
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) };
}

/** The temperature above which the vessel must never be heated in a step, in whole degrees [°C]; nothing if it is not known. */
export function neverAbove(
  { stepLimits }: Plan,
  { number, temperatureEnd = Number.NaN }: PlanStep,
): number | undefined {
  const { temperatureMax = Number.NaN } = stepLimits.find(({ step }) => step === number) ?? {};
  const max = Math.floor(temperatureMax + 1e-6);
  return max > temperatureEnd ? max : undefined;
}

/** The temperature up to which a charge may be kept warm while it is filled [°C]. */
export function keptWarmMax({ fillingLimits }: Plan): number | undefined {
  return fillingLimits?.temperatureMax === undefined ? undefined : downToTenth(fillingLimits.temperatureMax);
}

/** Below which no pack is filled [°C]. */
export function fillingMin({ fillingLimits }: Plan): number | undefined {
  return fillingLimits && upToTenth(fillingLimits.temperatureMin);
}
