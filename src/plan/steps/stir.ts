import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { DeaerateDocument, StirDocument } from "../step-documents.js";
import { wait } from "../stretch.js";
import { known } from "../unknown.js";
import { atItsSpeed, type StepKind } from "./kind.js";

/** On the heat it is held, off it it cools, against what stirring gives. */
export const stir: StepKind<StirDocument> = {
  entries: [
    fields<StirDocument>({
      do: word("stir"),
      for: quantity("time", { above: 0 }),
      speed: maybe("process", quantity("rotationalSpeed", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ["charged", "not-filled"],
  speed: atItsSpeed,
  run: ({ for: duration }, state, { speed }) => wait(state, known(duration), speed),
};

/** Stands, or is stirred slowly, for as long as it says. */
export const deaerate: StepKind<DeaerateDocument> = {
  entries: [
    fields<DeaerateDocument>({
      do: word("de-aerate"),
      for: quantity("time", { above: 0 }),
      pressure: maybe("process", quantity("pressure", { above: 0 })),
      speed: maybe("process", quantity("rotationalSpeed", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ["charged", "not-filled"],
  speed: (step) => atItsSpeed(step, undefined),
  run: ({ for: duration }, state, { speed }) => wait(state, known(duration), speed),
};
