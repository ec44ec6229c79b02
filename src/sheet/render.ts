import { CalculationError } from "../error.js";
import { finite, record, refuse } from "../guards.js";
import type { Plan } from "../plan/index.js";

/**
 * Writes a plan that may have come back from JSON: every figure in it has to be finite and every part there, or
 * nothing is written. Half a batch sheet is worse than none.
 */
export function render(plan: Plan, write: (plan: Plan) => string): string {
  finiteThroughout(record(plan, "plan"), "plan");
  try {
    return write(plan);
  } catch (error) {
    if (error instanceof CalculationError) throw error;
    return refuse("input", "plan", "an object with parts missing", "a plan as runPlan gives it");
  }
}

function finiteThroughout(value: unknown, path: string): void {
  if (typeof value === "number") finite(value, path);
  else if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) finiteThroughout(inner, `${path}.${key}`);
}
