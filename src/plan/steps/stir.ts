import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";
import { wait } from "../balance.js";
import { known } from "../unknown.js";
import { atItsSpeed, type StepKind } from "./kind.js";

/** Stirs for a while. */
export interface StirDocument {
  readonly do: "stir";
  readonly for: Quantity<"time">;
  /** Default the stirrer's usual speed. */
  readonly speed?: Quantity<"rotationalSpeed">;
  readonly note?: string;
}

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

/** Lets the air out, under the pressure of the room or less. */
export interface DeaerateDocument {
  readonly do: "de-aerate";
  readonly for: Quantity<"time">;
  /** Absolute pressure over the gel; default the room's. */
  readonly pressure?: Quantity<"pressure">;
  /** Slow stirring, so that the gel yields and lets the bubbles rise; default none. */
  readonly speed?: Quantity<"rotationalSpeed">;
  readonly note?: string;
}

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
