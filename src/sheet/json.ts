import { record } from "../error.js";
import type { Plan } from "../plan/index.js";
import { render } from "./render.js";
import { version } from "./version.js";

/**
 * A plan as JSON for another program: all figures in the units of the kernels at full precision, with the library's version.
 *
 * @param input.plan - A plan as `runPlan` gives it.
 * @returns JSON, indented by two spaces, ending in a line feed.
 * @throws CalculationError `input` for a plan with parts missing or a figure that is not finite.
 * @source definition
 * @example
 * ```ts
 * import { toJson } from "gelwright/sheet";
 * import { plan } from "../../docs/examples/cuticle-gel/plan.js";
 * JSON.parse(toJson({ plan })).library; // => gelwright 0.1.0
 * ```
 */
export function toJson(input: { readonly plan: Plan }): string {
  return render(
    record(input, "input").plan,
    (plan) => `${JSON.stringify({ library: `gelwright ${version}`, ...plan }, null, 2)}\n`,
  );
}
