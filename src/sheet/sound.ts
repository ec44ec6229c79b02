import { finite, list, record, refuse } from "../guards.js";
import type { Plan } from "../plan/index.js";

/**
 * Writes plans that may have come back from JSON: every figure in them has to be finite and every part there, or
 * nothing is written. Half a batch sheet is worse than none.
 */
export function soundly<T extends object = Plan>(plans: readonly T[], write: (plans: readonly T[]) => string): string {
  const all = list(plans, "plans", 1);
  for (const plan of all) finiteThroughout(record(plan, "plan"), "plan");
  try {
    return write(all);
  } catch (error) {
    // What is missing, or no figure of a plan, shows when it is read or written; anything else is a fault of ours.
    if (!(error instanceof TypeError || error instanceof RangeError)) throw error;
    return refuse("input", "plan", "an object with parts missing", "a plan as runPlan gives it");
  }
}

function finiteThroughout(value: unknown, path: string): void {
  if (typeof value === "number") finite(value, path);
  else if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) finiteThroughout(inner, `${path}.${key}`);
}
