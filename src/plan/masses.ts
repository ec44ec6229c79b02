import { CalculationError, type Fault } from "../error.js";
import { refuse } from "../guards.js";
import type { Change } from "./change.js";
import type { Job } from "./job.js";

/** Runs a job of documents: what leaves nothing to weigh is a fault of theirs. */
export function inDocument<T>(job: Job, run: () => T): T {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    throw new CalculationError(
      "document",
      error.faults.map((fault) => placed(fault, job)),
    );
  }
}

/** The fault of a batch, at its place in the documents, with the fields that would mend it. */
function placed(fault: Fault, job: Job): Fault {
  const { path } = fault;
  if (path.startsWith("process.")) return fault;
  if (path === "density") return noDensity(job);
  if (/^allowances\[\d+\]\.thickness$/.test(path)) {
    // Points that are there and show no yield stress are too few to weigh a model that has one.
    const points = job.bench.flowCurve ? " with more points or its yieldStressBy," : "";
    return {
      path: `batch.${path}`,
      found: fault.found,
      expected: `a thickness, or bench.yieldStress, bench.flowCurve${points} or bench.strengthTrials, from which it follows`,
      rule: "missing",
    };
  }
  if (path === "yieldStress") return { ...fault, path: "bench.yieldStress" };
  return { ...fault, path: `batch.${path}` };
}

/** Without a density of the product it takes one of every material. */
function noDensity({ formula: { lines, materials } }: Job): Fault {
  const without = [...new Set(lines.map(({ material }) => material))].filter((key) => !materials[key]?.density);
  const fields = without.map((key) => `formula.materials.${key}.density or formula.materials.${key}.propertiesOf`);
  return {
    path: "batch.density",
    found: "nothing",
    expected: `a density of the product, or one of every material: ${fields.join(", ")}`,
    rule: "missing",
  };
}

/** Runs a job with changes: where they leave nothing to weigh, the one is named that does. */
export function afterChanges<T>(changes: readonly Change[], runAfter: (changes: readonly Change[]) => T): T {
  try {
    return runAfter(changes);
  } catch (error) {
    if (!(error instanceof CalculationError) || changes.length === 0) throw error;
    const [fault] = error.faults;
    const at = changes.findIndex((_, i) => possibly(() => runAfter(changes.slice(0, i + 1))) === undefined);
    return refuse(
      "unreachable",
      `changes[${at}].value`,
      `${changes[at]?.value}`,
      `a value with which there is a batch to weigh: ${fault?.path} would be ${fault?.found}, expected ${fault?.expected}`,
    );
  }
}

/** What a run gives, or nothing where there is nothing to weigh. */
export function possibly<T>(run: () => T): T | undefined {
  try {
    return run();
  } catch (error) {
    if (error instanceof CalculationError) return undefined;
    throw error;
  }
}
