import {
  type Entry,
  exactly,
  fields,
  kinds,
  listOf,
  maybe,
  quantity,
  text,
  truth,
  whole,
  word,
} from "../formula/entry.js";
import type { AllowanceDocument, BalanceDocument, BatchDocument, StockDocument, TargetDocument } from "./types.js";

const above = { above: 0 } as const;
const mass = quantity("mass", above);
const volume = quantity("volume", above);
const names = maybe("process", listOf(text, 1));

type KeysOfEach<T> = T extends unknown ? keyof T : never;

/** The fields of all targets together. */
export type TargetFields = {
  readonly [Key in KeysOfEach<TargetDocument>]?: Extract<TargetDocument, Readonly<Record<Key, unknown>>>[Key];
};

/** One field of each kind at most: which go together is settled once all are read, with a better message. */
const target = fields<TargetFields>({
  mass: maybe("wish", mass),
  volume: maybe("wish", volume),
  packs: maybe("wish", whole(1)),
  fillMass: maybe("wish", mass),
  fillVolume: maybe("wish", volume),
}) as unknown as Entry<TargetDocument>;

const takesFrom = { materials: names, phases: names, source: maybe("identity", text) };

const allowance = kinds<AllowanceDocument>("kind", [
  fields<Extract<AllowanceDocument, { kind: "share" }>>({
    kind: word("share"),
    name: text,
    share: quantity("massFraction", { min: 0, below: 1 }),
    ...takesFrom,
  }),
  fields<Extract<AllowanceDocument, { kind: "mass" }>>({ kind: word("mass"), name: text, mass, ...takesFrom }),
  fields<Extract<AllowanceDocument, { kind: "samples" }>>({
    kind: word("samples"),
    name: text,
    packs: maybe("process", whole(1)),
    stabilityTest: maybe("process", truth),
    fillChecks: maybe("process", whole(1)),
    source: maybe("identity", text),
  }),
  fields<Extract<AllowanceDocument, { kind: "film" }>>({
    kind: word("film"),
    name: text,
    thickness: maybe("reading", quantity("length", above)),
    source: maybe("identity", text),
  }),
]);

/** Reads a batch. */
export const batch: Entry<BatchDocument> = fields<BatchDocument>({
  version: exactly(1),
  $schema: maybe("identity", text),
  target,
  density: maybe("property", quantity("density", above)),
  lots: maybe("wish", whole(1)),
  allowances: maybe("process", listOf(allowance)),
  balances: listOf(fields<BalanceDocument>({ name: text, increment: mass, capacity: mass, minimumWeight: mass }), 1),
  tare: maybe("property", quantity("mass", { min: 0 })),
  weighingTolerance: maybe("wish", quantity("massFraction", { above: 0, below: 1 })),
  stock: maybe(
    "wish",
    listOf(
      fields<StockDocument>({
        material: text,
        mass: quantity("mass", { min: 0 }),
        source: maybe("identity", text),
      }),
      1,
    ),
  ),
});
