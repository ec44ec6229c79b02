import { type Entry, fields, listOf } from "../formula/entry.js";
import { type ProcessFigures, processFigures } from "./documents/process.js";
import type { StepDocument } from "./step-documents.js";
import { step } from "./steps/index.js";

/** A process as data. */
export interface ProcessDocument extends ProcessFigures {
  readonly steps: readonly StepDocument[];
}

/** No batch is made in more steps: common practice, no source. Some figures of a step are found from all steps before it, so that many more would take long. */
const stepsMax = 200;

/** Reads a process. */
export const process: Entry<ProcessDocument> = fields<ProcessDocument>({
  ...processFigures,
  steps: listOf(step, 1, stepsMax),
});
