import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import type { Quantity } from "../../units/index.js";
import { balanceOf, heldAt, noSource, until, wait } from "../balance.js";
import type { Outcome, State } from "../state.js";
import { cell, known, otherwise } from "../unknown.js";
import { warmJacket } from "../warm-jacket.js";
import { type StepKind, unstirred } from "./kind.js";

/** Holds the charge: on the heat, or off it at a temperature or on a warm jacket. */
export interface HoldDocument {
  readonly do: "hold";
  readonly for: Quantity<"time">;
  /** The temperature at which it is kept off the heat, once it has cooled to it. Without it and without `jacketAt` the heater holds it. */
  readonly at?: Quantity<"temperature">;
  /** Temperature of the medium in the jacket, if that keeps it warm off the heat. */
  readonly jacketAt?: Quantity<"temperature">;
  readonly note?: string;
}

/** Held by the heater, at a stated temperature, or by what a warm jacket passes against the loss. */
export const hold: StepKind<HoldDocument> = {
  entries: [
    fields<HoldDocument>({
      do: word("hold"),
      for: quantity("time", { above: 0 }),
      at: maybe("process", quantity("temperature")),
      jacketAt: maybe("process", quantity("temperature")),
      note: maybe("identity", text),
    }),
  ],
  needs: ({ at, jacketAt }) => [
    "charged",
    at === undefined && jacketAt === undefined ? "on-heat" : "off-heat",
    "not-filled",
    ...(jacketAt === undefined ? [] : (["jacket"] as const)),
  ],
  oneOf: [["at", "jacketAt"]],
  speed: unstirred,
  run: ({ for: duration, at, jacketAt }, state) => {
    if (at !== undefined) return keptAt(state, at, duration);
    if (jacketAt === undefined) return wait(state, known(duration));
    const warmed = cell(() => warmJacket(state, jacketAt, undefined));
    return { ...wait(state, known(duration), undefined, warmed), warmedBy: jacketAt };
  },
};

/** Kept at a temperature. What is warmer cools to it by itself first; what is cooler stays so, for nothing warms it. */
function keptAt(state: State, at: number, duration: number): Outcome {
  const isWarmer = cell(() => state.temperature() > at);
  const run = until(
    known(at),
    cell(() => balanceOf(state, noSource)),
  );
  const temperature = cell(() => Math.min(at, state.temperature()));
  const waits = <T>(find: () => readonly T[]): readonly T[] => (isWarmer() ? find() : []);
  return {
    duration: cell(() => duration + (isWarmer() ? run.duration() : 0)),
    temperature: cell(() => {
      // What does not cool that far has no time to be kept there.
      if (isWarmer()) run.duration();
      return temperature();
    }),
    segments: cell(() => [...waits(run.segments), ...heldAt(temperature(), duration)]),
    basis: () => [...waits(() => run.basis?.() ?? []), { kind: "law", key: "held-as-stated" }],
    assumptions: () => waits(() => run.assumptions?.() ?? []),
    reaches: {
      direction: otherwise(isWarmer, () => true) ? "cooling" : "heating",
      asked: known(at),
      reached: cell(() => {
        if (!isWarmer()) return state.temperature();
        return otherwise(
          () => {
            run.duration();
            return at;
          },
          (reason) => (reason.law === "heat-balance" ? Math.max(at, state.charge.job.process.room) : run.duration()),
        );
      }),
    },
  };
}

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
