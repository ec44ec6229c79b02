import type { Entry } from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import type { Outcome, State, Work } from "../state.js";
import { type Cell, known } from "../unknown.js";

/** What the order of the steps has to be for a step to make sense. */
export type Need = "charged" | "on-heat" | "off-heat" | "jacket" | "not-filled";

/** A kind of step: its document, whether it stirs, and what it does to the state. One entry of the table in `index.ts`. */
export interface StepKind<Document extends { readonly do: string }> {
  /** What reads it: one entry, or one for each of its forms. */
  readonly entries: readonly Entry<Document>[];
  /** What the order of the steps has to be; of a kind whose fields decide that, by the step. */
  readonly needs: readonly Need[] | ((step: Read<Document>) => readonly Need[]);
  /** Fields of which a step states one at most. */
  readonly oneOf?: readonly (readonly string[])[];
  /** Faults of a step that one field alone does not show: the field, what is there, and what is expected. */
  readonly check?: (step: Read<Document>, note: (field: string, found: string, expected: string) => void) => void;
  /** Whether the vessel is on the heat after it; default unchanged. */
  readonly onHeat?: boolean;
  /** The speed of the stirrer in it [rev/s], by the stirrer's usual one; undefined where it does not turn, or where there is none. */
  readonly speed: (step: Read<Document>, usual: Cell<number> | undefined) => Cell<number> | undefined;
  /** What it does to the vessel. */
  readonly run: (step: Read<Document>, state: State, work: Work) => Outcome;
}

/** Where nothing stirs. */
export function unstirred(): undefined {
  return undefined;
}

/** Stirred at the usual speed. */
export function asUsual(_step: unknown, usual: Cell<number> | undefined): Cell<number> | undefined {
  return usual;
}

/** Stirred at the speed of the step, or at the usual one. */
export function atItsSpeed(
  step: { readonly speed?: number | undefined },
  usual: Cell<number> | undefined,
): Cell<number> | undefined {
  return step.speed === undefined ? usual : known(step.speed);
}
