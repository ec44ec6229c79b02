import { airLines } from "./air-lines.js";
import { batchLines } from "./batch-lines.js";
import { emulsionLines } from "./emulsion-lines.js";
import { figureLines } from "./figure-lines.js";
import { gelLines } from "./gel-lines.js";
import { heatLines } from "./heat-lines.js";
import { kettleLines } from "./kettle-lines.js";
import { labelLines } from "./label-lines.js";
import { measureLines } from "./measure-lines.js";
import { packLines } from "./pack-lines.js";
import { scaleLines } from "./scale-lines.js";
import { stabilityLines } from "./stability-lines.js";
import { sweepLines } from "./sweep-lines.js";

/** Sentences of the sheet with numbers in them, by section and key. */
export interface Lines {
  readonly batch: typeof batchLines;
  readonly heat: typeof heatLines;
  readonly gel: typeof gelLines;
  readonly air: typeof airLines;
  readonly emulsion: typeof emulsionLines;
  readonly packs: typeof packLines;
  readonly stability: typeof stabilityLines;
  readonly kettle: typeof kettleLines;
  readonly figures: typeof figureLines;
  readonly label: typeof labelLines;
  readonly scales: typeof scaleLines;
  readonly measure: typeof measureLines;
  readonly sweep: typeof sweepLines;
}

/** The same in English. */
export const lines: Lines = {
  batch: batchLines,
  heat: heatLines,
  gel: gelLines,
  air: airLines,
  emulsion: emulsionLines,
  packs: packLines,
  stability: stabilityLines,
  kettle: kettleLines,
  figures: figureLines,
  label: labelLines,
  scales: scaleLines,
  measure: measureLines,
  sweep: sweepLines,
};
