import type { Entry } from "../../formula/entry.js";
import { kinds } from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import { type AddDocument, add } from "./add.js";
import { type ChargeDocument, charge } from "./charge.js";
import { type CheckDocument, check } from "./check.js";
import { type CoolDocument, cool } from "./cool.js";
import { type FillDocument, fill, type RestDocument, rest } from "./fill.js";
import { type HeatDocument, heat } from "./heat.js";
import { type HoldDocument, hold, type MatchDocument, match, type OffDocument, off } from "./hold.js";
import type { StepKind } from "./kind.js";
import { type DeaerateDocument, deaerate, type StirDocument, stir } from "./stir.js";

/** What is done at the kettle, in order. */
export type StepDocument =
  | ChargeDocument
  | HeatDocument
  | HoldDocument
  | OffDocument
  | CoolDocument
  | StirDocument
  | AddDocument
  | MatchDocument
  | CheckDocument
  | DeaerateDocument
  | FillDocument
  | RestDocument;

/** A step that was read. */
export type Step = Read<StepDocument>;

/** Every kind of step. */
const table: { readonly [Kind in StepDocument["do"]]: StepKind<Extract<StepDocument, { readonly do: Kind }>> } = {
  charge,
  heat,
  hold,
  "take off the heat": off,
  cool,
  stir,
  add,
  "match clarity": match,
  check,
  "de-aerate": deaerate,
  fill,
  rest,
};

/** Reads one step. */
export const step: Entry<StepDocument> = kinds<StepDocument>(
  "do",
  Object.values(table).flatMap(({ entries }): readonly object[] => entries),
);

/** The kind of a step. */
export function kindOf(one: Step): StepKind<StepDocument> {
  return table[one.do] as unknown as StepKind<StepDocument>;
}
