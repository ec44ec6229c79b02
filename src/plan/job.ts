import type { Batch, BatchDocument } from "../batch/index.js";
import type { Formula, FormulaDocument, FormulaLine } from "../formula/index.js";
import type { Read } from "../formula/read-type.js";
import type { Bench, BenchDocument } from "./documents/bench.js";
import type { ExposureDocument, LabelDocument } from "./documents/label.js";
import type { PackDocument, ProcessFigures } from "./documents/process.js";
import type { StabilityDocument } from "./documents/stability.js";
import type { Vessel, VesselDocument } from "./documents/vessel.js";
import type { Step } from "./step-documents.js";

/** What the gel is filled into, as it was read. */
export type Pack = Read<PackDocument>;

/** A job that was read, without its steps: quantities as numbers in the units of the kernels, names as in the documents. */
export interface Job {
  readonly formula: Formula;
  /** The lines of the formula that was on the bench, for which its readings hold. */
  readonly benchLines: readonly FormulaLine[];
  readonly bench: Bench;
  readonly batch: Batch;
  readonly vessel: Vessel;
  readonly process: Read<ProcessFigures>;
  readonly pack?: Pack | undefined;
  readonly stability?: Read<StabilityDocument> | undefined;
  readonly label?: Read<LabelDocument> | undefined;
  readonly exposure?: Read<ExposureDocument> | undefined;
}

/** The documents that do not depend on what kinds of steps there are. */
export interface JobFigures {
  readonly version: 1;
  /** Address of the JSON Schema, for editors; not read. */
  readonly $schema?: string;
  readonly formula: FormulaDocument;
  readonly bench: BenchDocument;
  readonly batch: BatchDocument;
  readonly vessel: VesselDocument;
  readonly pack?: PackDocument;
  /** A stability test of the product. */
  readonly stability?: StabilityDocument;
  /** What `labelFor` drafts the label for. */
  readonly label?: LabelDocument;
  /** What `exposureFor` is asked by a qualified assessor. */
  readonly exposure?: ExposureDocument;
}

/** Name of each material, by its key. */
export function namesOf({ formula }: Job): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.values(formula.materials).map(({ key, name }) => [key, name]));
}

/** A job that was read, with its steps. */
export interface ReadJob {
  readonly job: Job;
  readonly steps: readonly Step[];
}

/** Distance that the mix keeps above its setting temperature [K], where the process names none: common practice, no source. */
const usualSettingMargin = 2;

/** How far a melt, or a store, keeps away from where the gel sets [K]. */
export function settingMarginOf({ process }: Job): number {
  return process.settingMargin ?? usualSettingMargin;
}
