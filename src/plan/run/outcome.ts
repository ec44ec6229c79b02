import { CalculationError } from "../../error.js";
import type { Job } from "../job.js";
import { type Content, heatCapacityOf, type State } from "../moment.js";

/** What a step does to the vessel. A figure that is left out is not known. */
export interface Outcome {
  readonly duration?: number | undefined;
  readonly temperature?: number | undefined;
  readonly contents?: readonly Content[] | undefined;
  readonly onHeat?: boolean | undefined;
  readonly law: string;
  readonly obstacle?: string | undefined;
}

/** Heat capacity of the charge and of what of the vessel warms with it [J/K]. */
export function capacityWithWall(state: State, { vessel }: Job): ReturnType<typeof heatCapacityOf> {
  const capacity = heatCapacityOf(state.contents);
  return typeof capacity === "object" || !vessel.wall
    ? capacity
    : capacity + vessel.wall.mass * vessel.wall.specificHeat;
}

/** What a kernel said when it refused. */
export function obstacleOf(error: unknown): string {
  if (error instanceof CalculationError) return error.message;
  throw error;
}
