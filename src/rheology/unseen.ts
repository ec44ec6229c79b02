import { refuse } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import type { FlowModel } from "./flow-forms.js";

/** A fall of viscosity by less than this part of it is no fall: no reading is better. */
const finest = 1e-9;

/**
 * Refuses a fit whose parameters no fluid has, or whose plateaus the readings never come near: the readings do not show
 * what the model asks for, and the message says which ones would.
 */
export function refuseUnseen(
  model: FlowModel,
  names: readonly string[],
  parameters: readonly number[] | undefined,
  rates: readonly number[],
): void {
  const value = (name: string): number | undefined => parameters?.[names.indexOf(name)];
  const min = minOf(rates);
  const max = maxOf(rates);
  const missing = (found: string, expected: string): never =>
    refuse("unreachable", "points", found, `for ${model} ${expected}`);
  const [zero, infinite] = [value("viscosityZero"), value("viscosityInfinite")];
  if (zero !== undefined && infinite !== undefined && Math.abs(zero - infinite) <= finest * Math.abs(zero))
    missing("no thinning", "stresses that rise less than the shear rate");
  for (const name of names) {
    const fitted = value(name);
    if (fitted === undefined || fitted > 0) continue;
    if (name === "yieldStress")
      missing("no yield stress", `readings below ${min} 1/s at which the stress levels off, or a model without one`);
    if (name === "viscosityInfinite")
      missing("no plateau at high rates", `readings above ${max} 1/s, or viscosityInfinite given`);
    missing(`${name} ${fitted}`, "stresses that rise with the shear rate");
  }
  if ((infinite ?? 0) > (zero ?? Number.POSITIVE_INFINITY))
    missing("thickening", "stresses that rise less than the shear rate");
  const time = value("timeConstant");
  if (time === undefined) return;
  if (time * min > 1)
    missing("no plateau at rest", `readings below ${min} 1/s, down to where the viscosity no longer rises`);
  if (time * max < 1) missing("no thinning", `readings above ${max} 1/s, up to where it thins, or newton`);
  if ((value("flowIndex") ?? 0) >= 1) missing("no thinning", "stresses that rise less than the shear rate");
}
