import type { Batch } from "../batch/index.js";
import { batchFrom } from "../batch/read.js";
import { batch as batchEntry } from "../batch/schema.js";
import { type Draft, Findings, join } from "../formula/document.js";
import { type Entry, exactly, fields, maybe, text } from "../formula/entry.js";
import type { Formula } from "../formula/index.js";
import { formulaFrom } from "../formula/read.js";
import type { Read } from "../formula/read-type.js";
import { formula as formulaEntry } from "../formula/schema.js";
import { productContent } from "../natural-origin/index.js";
import type { Bench } from "./documents/bench.js";
import { bench } from "./documents/bench.js";
import { checkExposure, checkLabel, exposure, label } from "./documents/label.js";
import { checkPack } from "./documents/packing.js";
import { pack } from "./documents/process.js";
import { checkStability, stability } from "./documents/stability.js";
import type { Vessel } from "./documents/vessel.js";
import { vessel } from "./documents/vessel.js";
import type { Job, JobFigures, ReadJob } from "./job.js";
import { checkBench } from "./read-bench.js";
import { checkProcess, process } from "./read-steps.js";
import { checkVessel } from "./read-vessel.js";
import { checkSamples } from "./samples.js";
import type { ProcessDocument } from "./step-documents.js";

/** One job: everything that a batch sheet is made from. */
export interface JobDocument extends JobFigures {
  readonly process: ProcessDocument;
}

/**
 * Reads a job.
 *
 * @internal
 */
export const job: Entry<JobDocument> = fields<JobDocument>({
  version: exactly(1),
  $schema: maybe("identity", text),
  formula: formulaEntry,
  bench,
  batch: batchEntry,
  vessel,
  process,
  pack: maybe("identity", pack),
  stability: maybe("wish", stability),
  label: maybe("wish", label),
  exposure: maybe("wish", exposure),
});

/** Reads a job document whole: all faults of all parts are reported together, each with its location. */
export function readJob(document: unknown): ReadJob {
  const findings = new Findings();
  const draft: Draft<Read<JobDocument>> | undefined = findings.read(job, document);
  // What is no document, or too large, has one fault and breeds no other.
  if (draft === undefined) return findings.refuse();
  const formula = formulaFrom(draft.formula ?? {}, "formula", findings);
  const batch = batchFrom(draft.batch ?? {}, "batch", findings);
  const benchLines = checkBench(draft.bench ?? {}, formula, findings);
  checkIndices(formula, findings);
  checkStock(batch, formula, findings);
  checkSamples(batch, draft.stability, findings);
  checkVessel(draft.vessel ?? {}, findings);
  if (draft.pack) checkPack(draft.pack, "pack", findings);
  const { stability: test, label: ofLabel, exposure: asked } = draft;
  if (ofLabel) checkLabel(ofLabel, findings);
  if (asked) checkExposure(asked, Object.keys(formula.materials), findings);
  if (test) checkStability(test, batch.allowances, findings);
  checkProcess(draft.process ?? {}, formula, draft.vessel?.jacket !== undefined, findings);
  findings.settle();
  const { steps, ...figures } = draft.process as Read<ProcessDocument>;
  return {
    job: {
      formula,
      benchLines,
      bench: draft.bench as Bench,
      batch,
      vessel: draft.vessel as Vessel,
      process: figures,
      ...(draft.pack && { pack: draft.pack as NonNullable<Job["pack"]> }),
      ...(ofLabel && { label: ofLabel as NonNullable<Job["label"]> }),
      ...(asked && { exposure: asked as NonNullable<Job["exposure"]> }),
      ...(test && { stability: test as NonNullable<Job["stability"]> }),
    },
    steps,
  };
}

/** A stock list names materials: premixes are opened into theirs. */
function checkStock({ stock = [] }: Draft<Batch>, { materials }: Formula, findings: Findings): void {
  const keys = Object.keys(materials);
  stock.forEach((entry, i) => {
    const { material } = entry ?? {};
    if (material !== undefined && !keys.includes(material))
      findings.unknownName(
        ["stock", i, "material"].reduce<string>(join, "batch"),
        material,
        keys,
        "the key of a material of the formula, not of a premix",
        ["formula.materials"],
      );
  });
}

/** Indices of one material may contradict one another, such as more that is natural than of natural origin. */
function checkIndices({ materials }: Formula, findings: Findings): void {
  for (const { key, indices } of Object.values(materials)) {
    if (!indices) continue;
    const { of: _, ...known } = indices;
    const at = ["materials", key, "indices"].reduce(join, "formula");
    if (!findings.holds(at)) findings.attempt(() => productContent({ ingredients: [{ mass: 1, ...known }] }), at);
  }
}
