import { chooseBalance, type WeighingTolerance, weighingTolerance } from "../../batch/index.js";
import type { Job } from "../job.js";
import { possibly } from "../masses.js";

/** A part of a line that is weighed by itself. Masses in kg. */
export interface PartWeighing {
  /** To weigh: a whole number of the increments of the balance of its line. */
  readonly mass: number;
  readonly balance: string;
  /** Of the balance [kg]. */
  readonly increment: number;
  /** Between which readings the weighing counts as right. */
  readonly tolerance: WeighingTolerance;
}

type OnBalance = Pick<PartWeighing, "balance" | "increment">;

/** A part of a line on a balance. */
export function weighedOn({ batch }: Job, mass: number, { balance, increment }: OnBalance): PartWeighing {
  return { mass, balance, increment, tolerance: weighingTolerance({ mass, increment, relative: batch.tolerance }) };
}

/** A part of a line on the balance that suits it; nothing where none weighs it at once, and as finely as that of the line. */
export function weighedApart(job: Job, name: string, mass: number, line: OnBalance): PartWeighing | undefined {
  const { balances, tare } = job.batch;
  const chosen = possibly(() => chooseBalance({ name, mass, balances, tare }));
  if (!chosen || chosen.portions > 1 || chosen.increment > line.increment) return undefined;
  return weighedOn(job, mass, { balance: chosen.balance.name, increment: chosen.increment });
}
