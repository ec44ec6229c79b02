import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";
import { wait } from "../balance.js";
import { known } from "../unknown.js";
import { type StepKind, unstirred } from "./kind.js";

/** Checks the charge on the way: what has to be right before the batch goes on. */
export interface CheckDocument {
  readonly do: "check";
  /** What is looked at or measured, such as "thickness with spindle 4 at 20 rpm". */
  readonly what: string;
  /** What it has to be, such as "between 30 and 36 % of the scale". */
  readonly expect?: string;
  /** How long that takes; default no time of its own. */
  readonly for?: Quantity<"time">;
  readonly note?: string;
}

/** The charge stands, or is held on the heat, for as long as the check takes. */
export const check: StepKind<CheckDocument> = {
  entries: [
    fields<CheckDocument>({
      do: word("check"),
      what: text,
      expect: maybe("wish", text),
      for: maybe("process", quantity("time", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ["charged", "not-filled"],
  speed: unstirred,
  run: ({ for: duration = 0 }, state) => wait(state, known(duration)),
};
