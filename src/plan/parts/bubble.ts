import type { Bubble } from "../../particles/index.js";
import type { Job } from "../job.js";
import type { Run } from "../state.js";
import { stated } from "../unknown.js";

type Air = NonNullable<Job["process"]["air"]>;

/** The bubbles that the process asks about. */
export function airAsked({ job }: Run): Air {
  return stated(job.process.air, "process-air");
}

/** The bubbles as the kernels take them. */
export function bubbleOf({
  bubbleDiameter: diameter,
  surface,
}: Air): Pick<Bubble, "diameter" | "surface"> & { readonly beyond: "extend" } {
  return { diameter, ...(surface && { surface }), beyond: "extend" };
}
