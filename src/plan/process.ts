import { type Entry, fields, listOf } from "../formula/entry.js";
import { type ProcessFigures, processFigures } from "./documents/process.js";
import { type StepDocument, step } from "./steps/index.js";

/** A process as data. */
export interface ProcessDocument extends ProcessFigures {
  readonly steps: readonly StepDocument[];
}

/** No batch is made in more steps; what a plan says of one step it looks up in all that stand before it. */
const stepsMax = 200;

/** Reads a process. */
export const process: Entry<ProcessDocument> = fields<ProcessDocument>({
  ...processFigures,
  steps: listOf(step, 1, stepsMax),
});
