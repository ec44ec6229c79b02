import { finite, list, record, refuse, show } from "../guards.js";
import type { Plan } from "../plan/index.js";
import type { Block } from "./blocks.js";

/**
 * Writes plans that may have come back from JSON: every figure in them has to be finite and every part there, or
 * nothing is written. Half a batch sheet is worse than none.
 */
export function soundly<T extends object = Plan>(plans: readonly T[], write: (plans: readonly T[]) => string): string {
  const all = list(plans, "plans", 1);
  for (const plan of all) finiteThroughout(record(plan, "plan"), "plan");
  return wholly("plan", "a plan as runPlan gives it", () => write(all));
}

/** The same of another result, named in the fault. */
export function soundlyOf<T extends object, Out = string>(of: T, path: string, write: (of: T) => Out): Out {
  finiteThroughout(of, path);
  return wholly(path, "a result as the plan gives it", () => write(of));
}

/** A part that may stand on a sheet beside the plan: whole, and computed from the same documents. */
export function soundPart<T extends { readonly fingerprint: string }>(
  part: T | undefined,
  { name, fingerprint }: { readonly name: string; readonly fingerprint: string },
  write: (part: T) => readonly Block[],
): readonly Block[] {
  if (part === undefined) return [];
  const { fingerprint: own } = record(part, name);
  if (own !== fingerprint)
    refuse("input", `${name}.fingerprint`, show(own), "the fingerprint of the plan, as both are of the same documents");
  return soundlyOf(part, name, write);
}

function wholly<Out>(path: string, expected: string, write: () => Out): Out {
  try {
    return write();
  } catch (error) {
    // What is missing, or no figure of a plan, shows when it is read or written; anything else is a fault of ours.
    if (!(error instanceof TypeError || error instanceof RangeError)) throw error;
    return refuse("input", path, "an object with parts missing", expected);
  }
}

function finiteThroughout(value: unknown, path: string): void {
  if (typeof value === "number") finite(value, path);
  else if (typeof value === "object" && value !== null)
    for (const [key, inner] of Object.entries(value)) finiteThroughout(inner, `${path}.${key}`);
}
