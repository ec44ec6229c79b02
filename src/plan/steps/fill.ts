import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";
import { wait } from "../balance.js";
import { packCooling } from "../pack.js";
import { cell } from "../unknown.js";
import { type StepKind, unstirred } from "./kind.js";

/** Fills the packs. */
export interface FillDocument {
  readonly do: "fill";
  /** Default no time of its own. */
  readonly for?: Quantity<"time">;
  readonly note?: string;
}

/** The vessel cools meanwhile, and what arrives in the packs is the charge less every allowance. */
export const fill: StepKind<FillDocument> = {
  entries: [
    fields<FillDocument>({
      do: word("fill"),
      for: maybe("process", quantity("time", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ["charged", "off-heat", "not-filled"],
  speed: unstirred,
  // The small shift of composition by evaporation is neglected.
  run: ({ for: duration = 0 }, state, { scaled }) => ({
    ...wait(state, duration),
    charge: state.charge.portion(scaled.lot.delivered),
    inPacks: true,
  }),
};

/** Lets the packs rest, or the charge stand in the vessel without stirring. */
export interface RestDocument {
  readonly do: "rest";
  readonly for: Quantity<"time">;
  readonly note?: string;
}

/** Packs cool by conduction, or as the lump that a cooling curve of theirs describes. */
export const rest: StepKind<RestDocument> = {
  entries: [
    fields<RestDocument>({ do: word("rest"), for: quantity("time", { above: 0 }), note: maybe("identity", text) }),
  ],
  needs: ["charged", "off-heat"],
  speed: unstirred,
  run: ({ for: duration }, state, { scaled }) => {
    if (!state.inPacks) return wait(state, duration);
    const cooling = cell(() => packCooling(state.charge, state.temperature(), scaled));
    const isCool = (): boolean => state.temperature() === state.charge.job.process.room;
    return {
      duration: () => duration,
      temperature: cell(() => (isCool() ? state.temperature() : cooling().temperatureAfter(duration))),
      segments: () => [],
      basis: () => (isCool() ? [] : [cooling().basis]),
      assumptions: () => (isCool() ? [] : cooling().assumptions),
    };
  },
};
