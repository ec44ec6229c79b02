import { aboveZero, type Draft, Findings, join } from "../formula/document.js";
import type { Balance } from "./balance.js";
import { batchSchema } from "./schema.js";
import type {
  AllowanceDocument,
  BalanceDocument,
  Batch,
  BatchAllowance,
  BatchDocument,
  TargetDocument,
} from "./types.js";

/** Relative weighing tolerance where the document names none: common practice, no source. */
const usualTolerance = 0.005;

/**
 * Reads a batch document: what is to arrive, what is lost on the way, and what it is weighed on.
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
  const draft = findings.shape(batchSchema, document);
  const batch = draft && batchFrom(draft, "", findings);
  findings.settle();
  return batch as Batch;
}

/** Second pass over a batch: notes its faults and goes on. */
export function batchFrom(draft: Draft<BatchDocument>, at: string, findings: Findings): Batch {
  const tolerance =
    findings.optional(draft.weighingTolerance, "massFraction", join(at, "weighingTolerance"), aboveZero) ??
    usualTolerance;
  if (tolerance >= 1) findings.note(join(at, "weighingTolerance"), draft.weighingTolerance, "less than 100 %");
  return {
    ...readTarget(draft.target ?? {}, join(at, "target"), findings),
    density: findings.optional(draft.density, "density", join(at, "density"), aboveZero),
    allowances: each(draft.allowances, join(at, "allowances"), (allowance, place) =>
      readAllowance(allowance, place, findings),
    ),
    balances: each(draft.balances, join(at, "balances"), (balance, place) => readBalance(balance, place, findings)),
    tare: findings.optional(draft.tare, "mass", join(at, "tare"), 0) ?? 0,
    tolerance,
  };
}

function each<T, R>(
  members: readonly (T | undefined)[] | undefined,
  at: string,
  read: (member: T, at: string) => R,
): R[] {
  return (members ?? []).flatMap((member, i) => (member === undefined ? [] : [read(member, join(at, i))]));
}

function readTarget(draft: Draft<TargetDocument>, at: string, findings: Findings): Pick<Batch, "target" | "packs"> {
  const { packs, ...amounts } = draft as { readonly packs?: number } & Readonly<Record<string, string>>;
  const [[key, text] = ["mass", undefined], another] = Object.entries(amounts);
  const paired = key.startsWith("fill") === (packs !== undefined);
  // Where the shape has taken a field out, what is left says nothing about which fields were meant.
  if ((text === undefined || another || !paired) && !findings.faults.some(({ path }) => path.startsWith(at)))
    findings.note(
      at,
      Object.keys(draft).join(" and ") || "nothing",
      "mass, or volume, or packs with fillMass, or packs with fillVolume",
    );
  const isMass = key === "mass" || key === "fillMass";
  const amount = (packs ?? 1) * findings.quantity(text, isMass ? "mass" : "volume", join(at, key), aboveZero);
  return { target: isMass ? { mass: amount } : { volume: amount }, packs };
}

function readAllowance(draft: Draft<AllowanceDocument>, at: string, findings: Findings): BatchAllowance {
  const { name = "", source } = draft;
  if (draft.kind === "film")
    return {
      kind: "film",
      name,
      source,
      thickness: findings.optional(draft.thickness, "length", join(at, "thickness"), aboveZero),
    };
  const { materials, phases } = draft as Draft<Exclude<AllowanceDocument, { kind: "film" }>>;
  const from = { name, source, materials: sound(materials), phases: sound(phases) };
  if (draft.kind === "mass")
    return { kind: "mass", ...from, mass: findings.quantity(draft.mass, "mass", join(at, "mass"), aboveZero) };
  const text = draft.kind === "share" ? draft.share : undefined;
  const fraction = findings.quantity(text, "massFraction", join(at, "share"), 0);
  if (fraction >= 1) findings.note(join(at, "share"), text, "less than 100 %");
  return { kind: "share", ...from, fraction };
}

function sound(names: readonly (string | undefined)[] | undefined): readonly string[] | undefined {
  return names?.filter((name) => name !== undefined);
}

function readBalance(draft: Draft<BalanceDocument>, at: string, findings: Findings): Balance {
  const mass = (key: "increment" | "capacity" | "minimumWeight"): number =>
    findings.quantity(draft[key], "mass", join(at, key), aboveZero);
  const balance = {
    name: draft.name ?? "",
    increment: mass("increment"),
    capacity: mass("capacity"),
    minimumWeight: mass("minimumWeight"),
  };
  if (balance.minimumWeight < 2 * balance.increment)
    findings.note(join(at, "minimumWeight"), draft.minimumWeight, `two increments of ${draft.increment} at least`);
  if (balance.minimumWeight > balance.capacity)
    findings.note(join(at, "minimumWeight"), draft.minimumWeight, `no more than the capacity, ${draft.capacity}`);
  return balance;
}
