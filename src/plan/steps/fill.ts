import { fields, maybe, plain, quantity, text, word } from "../../formula/entry.js";
import { warmJacket } from "../jacket.js";
import { longerWhileDrained, packCooling, packsIn } from "../pack.js";
import type { State, Turn } from "../state.js";
import type { FillDocument, RestDocument } from "../step-documents.js";
import { stirringPower } from "../stirred.js";
import { motorPower } from "../stirrer.js";
import { wait } from "../stretch.js";
import { type Cell, cell, known, otherwise } from "../unknown.js";
import { atItsSpeed, type StepKind, unstirred } from "./kind.js";

/** The vessel cools meanwhile or is kept warm, counted as full to the end, and what arrives in the packs is the charge less every allowance. */
export const fill: StepKind<FillDocument> = {
  entries: [
    fields<FillDocument>({
      do: word("fill"),
      for: maybe("process", quantity("time", { above: 0 })),
      packsPerMinute: maybe("process", plain({ above: 0 })),
      held: maybe("process", word("on the heat")),
      jacketAt: maybe("process", quantity("temperature")),
      speed: maybe("process", quantity("rotationalSpeed", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ({ held, jacketAt }) => [
    "charged",
    held === undefined ? "off-heat" : "on-heat",
    "not-filled",
    ...(jacketAt === undefined ? [] : (["jacket"] as const)),
  ],
  oneOf: [
    ["for", "packsPerMinute"],
    ["held", "jacketAt"],
  ],
  onHeat: false,
  speed: (step) => atItsSpeed(step, undefined),
  // The small shift of composition by evaporation is neglected.
  run: ({ for: time = 0, packsPerMinute, jacketAt }, state, { job, number, scaled, speed }) => {
    const duration =
      packsPerMinute === undefined ? known(time) : cell(() => (60 * packsIn(job, scaled)) / packsPerMinute);
    const warmed = jacketAt === undefined ? undefined : cell(() => warmJacket(state, jacketAt, speed));
    const stood = wait(state, duration, speed, warmed);
    // What is stirred is what is still in the vessel, at its fullest: from the first pack to the last.
    const turns =
      speed &&
      [state, { ...state, temperature: stood.temperature }].map((at): Turn => ({ step: number, speed, state: at }));
    // Of what leaves the vessel nothing is taken off its heat balance: no law of its loss says what is lost at which level.
    const changes = (): boolean => stood.temperature() !== state.temperature();
    return {
      ...stood,
      assumptions: cell(() => [
        ...stood.assumptions(),
        ...(otherwise(changes, () => false) ? (["vessel-full-while-filling"] as const) : []),
      ]),
      ...((speed || jacketAt !== undefined) && {
        warmest: cell(() => {
          const own = stood.temperature();
          if (duration() === 0 || state.onHeat) return own;
          // A jacket alone brings it to its own temperature at most; stirring adds to that.
          const byJacket = Math.max(own, jacketAt ?? own);
          if (!speed) return byJacket;
          const longer = longerWhileDrained(state.charge, scaled);
          return (
            longer && byJacket + (longer - (byJacket > own ? 0 : 1)) * warmedByStirring(state, own, speed, duration)
          );
        }),
      }),
      coolest: cell(() => {
        const own = stood.temperature();
        if (duration() === 0 || state.onHeat) return own;
        const longer = longerWhileDrained(state.charge, scaled);
        if (longer === null) return null;
        return Math.min(own, wait(state, known(longer * duration()), speed, warmed).temperature());
      }),
      charge: state.charge.portion(scaled.lot.delivered),
      inPacks: true,
      ...(turns && { turns: known(turns) }),
      ...(jacketAt !== undefined && { warmedBy: jacketAt }),
    };
  },
};

/** How much stirring would warm a full vessel between two temperatures [K], if it lost nothing: by its power, or all that the motor gives. */
function warmedByStirring(state: State, temperatureEnd: number, speed: Cell<number>, duration: Cell<number>): number {
  const { charge } = state;
  const ends = [Math.min(state.temperature(), temperatureEnd), Math.max(state.temperature(), temperatureEnd)] as const;
  const power = otherwise(
    () => Math.max(...ends.map(stirringPower(state, ends, speed()).at)),
    () => motorPower(charge.job).max,
  );
  return (
    (power * duration()) / (charge.mass * Math.min(...ends.map((temperature) => charge.specificHeat(temperature))))
  );
}

/** Packs cool by conduction, or as the lump that a cooling curve of theirs describes. */
export const rest: StepKind<RestDocument> = {
  entries: [
    fields<RestDocument>({ do: word("rest"), for: quantity("time", { above: 0 }), note: maybe("identity", text) }),
  ],
  needs: ["charged", "off-heat"],
  speed: unstirred,
  run: ({ for: duration }, state, { scaled }) => {
    if (!state.inPacks) return wait(state, known(duration));
    const cooling = cell(() => packCooling(state.charge, state.temperature(), scaled));
    const isCool = (): boolean => state.temperature() === state.charge.job.process.room;
    return {
      onHeat: false,
      duration: () => duration,
      temperature: cell(() => (isCool() ? state.temperature() : cooling().temperatureAfter(duration))),
      segments: () => [],
      basis: () => (isCool() ? [] : [cooling().basis]),
      assumptions: () => (isCool() ? [] : cooling().assumptions),
    };
  },
};
