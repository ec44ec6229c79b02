import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { CheckDocument } from "../step-documents.js";
import { wait } from "../stretch.js";
import { known } from "../unknown.js";
import { type StepKind, unstirred } from "./kind.js";

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
