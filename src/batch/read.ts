import { type Draft, Findings, join } from "../formula/document.js";
import type { Read } from "../formula/read-type.js";
import type { Balance } from "./balance.js";
import { batch as entry, type TargetFields } from "./schema.js";
import type {
  AllowanceDocument,
  BalanceDocument,
  Batch,
  BatchAllowance,
  BatchDocument,
  SamplesDocument,
  Stock,
} from "./types.js";

/** Relative weighing tolerance where the document names none: common practice, no source. */
const usualTolerance = 0.005;

/**
 * Reads a batch document: how much is to be delivered, what is lost on the way, and the balances.
 *
 * @param document - JSON or a `BatchDocument`; quantities as text with their unit.
 * @returns The batch in the units of the kernels.
 * @throws CalculationError `document`, naming every fault with its path at once.
 * @source definition
 * @example
 * ```ts
 * import { readBatch } from "gelwright/batch";
 * const batch = readBatch({
 *   version: 1,
 *   target: { packs: 1200, fillVolume: "15 mL" },
 *   density: "915 kg/m³",
 *   allowances: [{ kind: "mass", name: "samples", mass: "150 g" }],
 *   balances: [{ name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "50 g" }],
 * });
 * batch.target; // => { volume: 0.018 }
 * ```
 */
export function readBatch(document: unknown): Batch {
  const findings = new Findings();
  const draft = findings.read(entry, document);
  const batch = draft && batchFrom(draft, "", findings);
  findings.settle();
  return batch as Batch;
}

/** A batch of what was read: notes the faults of what needs several fields, and goes on. */
export function batchFrom(draft: Draft<Read<BatchDocument>>, at: string, findings: Findings): Batch {
  const { density, lots, stock, tare = 0, weighingTolerance = usualTolerance } = draft;
  const { packs }: Draft<Read<TargetFields>> = draft.target ?? {};
  if (lots !== undefined && packs !== undefined && lots > packs)
    findings.note(join(at, "lots"), lots, `no more lots than packs, ${packs}`, "out-of-range", {
      value: lots,
      max: packs,
    });
  draft.allowances?.forEach((allowance, i) => {
    if (allowance?.kind === "samples") checkSamples(allowance, join(join(at, "allowances"), i), findings);
  });
  draft.balances?.forEach((balance, i) => {
    if (balance) checkBalance(balance, join(join(at, "balances"), i), findings);
  });
  return {
    ...targetOf(draft.target ?? {}, join(at, "target"), findings.took(at), findings),
    density,
    lots,
    allowances: (draft.allowances ?? []).flatMap((one) => (one ? [allowanceOf(one as Read<AllowanceDocument>)] : [])),
    balances: draft.balances as readonly Balance[],
    tare,
    tolerance: weighingTolerance,
    ...(stock && { stock: stock as readonly Stock[] }),
  };
}

function targetOf(
  draft: Draft<Read<TargetFields>>,
  at: string,
  isTaken: boolean,
  findings: Findings,
): Pick<Batch, "target" | "packs"> {
  const { packs, ...amounts } = draft;
  const [[key, amount] = ["mass", undefined], another] = Object.entries(amounts);
  const paired = key.startsWith("fill") === (packs !== undefined);
  // Where a fault has taken a field out, what is left says nothing about which fields were meant.
  if ((amount === undefined || another || !paired) && !isTaken && !findings.holds(at))
    findings.note(
      at,
      Object.keys(draft).join(" and ") || "nothing",
      "mass, or volume, or packs with fillMass, or packs with fillVolume",
      Object.keys(draft).length > 0 ? "contradiction" : "missing",
    );
  const whole = (packs ?? 1) * (amount ?? Number.NaN);
  return { target: key === "mass" || key === "fillMass" ? { mass: whole } : { volume: whole }, packs };
}

function allowanceOf(read: Read<AllowanceDocument>): BatchAllowance {
  if (read.kind !== "share") return read;
  const { share: fraction, ...others } = read;
  return { ...others, fraction };
}

function checkSamples(
  { packs, stabilityTest, fillChecks }: Draft<Read<SamplesDocument>>,
  at: string,
  findings: Findings,
): void {
  if (packs === undefined && stabilityTest !== true && fillChecks === undefined && !findings.holds(at))
    findings.note(at, "no samples", "packs, stabilityTest or fillChecks", "missing");
}

function checkBalance(
  { increment, capacity, minimumWeight }: Draft<Read<BalanceDocument>>,
  at: string,
  findings: Findings,
): void {
  if (minimumWeight === undefined) return;
  const path = join(at, "minimumWeight");
  const found = `${minimumWeight} kg`;
  if (increment !== undefined && minimumWeight < 2 * increment)
    findings.note(path, found, `two increments of ${increment} kg at least`, "contradiction", {
      value: minimumWeight,
      min: 2 * increment,
    });
  if (capacity !== undefined && minimumWeight > capacity)
    findings.note(path, found, `no more than the capacity, ${capacity} kg`, "contradiction", {
      value: minimumWeight,
      max: capacity,
    });
}
