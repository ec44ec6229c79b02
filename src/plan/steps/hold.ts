import { fields, maybe, quantity, text, word } from "../../formula/entry.js";
import { balanceOf, noSource } from "../balance.js";
import { warmJacket } from "../jacket.js";
import { heldAt } from "../segments.js";
import type { Outcome, State } from "../state.js";
import type { HoldDocument, MatchDocument, OffDocument } from "../step-documents.js";
import { until, wait } from "../stretch.js";
import { cell, known, otherwise } from "../unknown.js";
import { type StepKind, unstirred } from "./kind.js";

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
    basis: () => [...waits(run.basis), { kind: "law", key: "held-as-stated" }],
    assumptions: () => waits(run.assumptions),
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

/** Takes no time of its own. */
export const off: StepKind<OffDocument> = {
  entries: [fields<OffDocument>({ do: word("take off the heat"), note: maybe("identity", text) })],
  needs: ["charged", "on-heat", "not-filled"],
  onHeat: false,
  speed: unstirred,
  run: (_step, { temperature }) => ({ onHeat: false, duration: () => 0, temperature, segments: () => [] }),
};

/** Takes no time of its own. */
export const match: StepKind<MatchDocument> = {
  entries: [fields<MatchDocument>({ do: word("match clarity"), note: maybe("identity", text) })],
  needs: ["charged", "not-filled"],
  speed: unstirred,
  run: (_step, { temperature }) => ({ duration: () => 0, temperature, segments: () => [] }),
};
