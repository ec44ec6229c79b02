import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";
import { wait } from "../balance.js";
import { known } from "../unknown.js";
import { type StepKind, unstirred } from "./kind.js";

/** Holds the charge on the heat. */
export interface HoldDocument {
  readonly do: "hold";
  readonly for: Quantity<"time">;
  readonly note?: string;
}

/** Held by the heater. */
export const hold: StepKind<HoldDocument> = {
  entries: [
    fields<HoldDocument>({ do: word("hold"), for: quantity("time", { above: 0 }), note: maybe("identity", text) }),
  ],
  needs: ["charged", "on-heat", "not-filled"],
  speed: unstirred,
  run: ({ for: duration }, state) => wait(state, known(duration)),
};

/** Takes the vessel off the heat. */
export interface OffDocument {
  readonly do: "take off the heat";
  readonly note?: string;
}

/** Takes no time of its own. */
export const off: StepKind<OffDocument> = {
  entries: [fields<OffDocument>({ do: word("take off the heat"), note: maybe("identity", text) })],
  needs: ["charged", "on-heat", "not-filled"],
  onHeat: false,
  speed: unstirred,
  run: (_step, { temperature }) => ({ onHeat: false, duration: () => 0, temperature, segments: () => [] }),
};

/** Compares oil and gel former through the gel. */
export interface MatchDocument {
  readonly do: "match clarity";
  readonly note?: string;
}

/** Takes no time of its own. */
export const match: StepKind<MatchDocument> = {
  entries: [fields<MatchDocument>({ do: word("match clarity"), note: maybe("identity", text) })],
  needs: ["charged", "not-filled"],
  speed: unstirred,
  run: (_step, { temperature }) => ({ duration: () => 0, temperature, segments: () => [] }),
};
