import type { Entry } from "../../formula/entry.js";
import { kinds } from "../../formula/entry.js";
import type { Step, StepDocument } from "../step-documents.js";
import { add } from "./add.js";
import { charge } from "./charge.js";
import { check } from "./check.js";
import { cool } from "./cool.js";
import { fill, rest } from "./fill.js";
import { heat } from "./heat.js";
import { hold, match, off } from "./hold.js";
import type { StepKind } from "./kind.js";
import { deaerate, stir } from "./stir.js";

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
