import { type Entry, fields, listOf } from "../formula/entry.js";
import { type ProcessFigures, processFigures } from "./documents/process.js";
import { type StepDocument, step } from "./steps/index.js";

/** A process as data. */
export interface ProcessDocument extends ProcessFigures {
  readonly steps: readonly StepDocument[];
}

/** Reads a process. */
export const process: Entry<ProcessDocument> = fields<ProcessDocument>({ ...processFigures, steps: listOf(step, 1) });
