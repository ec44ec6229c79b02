import { atMost, type Figure } from "../figure.js";
import { durationToSet, restOfPacks } from "../parts/after-filling.js";
import {
  filledAfter,
  filledAt,
  fillingOf,
  fillingTakesTime,
  makesMelt,
  momentsOf,
  type WhichPack,
} from "../parts/moments.js";
import { coolestIn, temperatureEnds } from "../parts/warmth.js";
import type { Run } from "../state.js";
import { unique } from "../unique.js";
import { longerRest } from "./levers.js";
import { asks, type Question } from "./question.js";

/** Questions about the filled packs. */
export const packQuestions: readonly Question[] = [
  asks<Run, WhichPack>({
    id: "set-at-centre",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) => (makesMelt(run) && restOfPacks(run) > 0 ? [run] : []),
    of: () => ({}),
    states: (run) => (fillingTakesTime(run) ? ["last-pack", "first-pack"] : ["last-pack"]),
    at: (place, run) => {
      const rest = momentsOf(run, "rest").at(-1);
      return { ...(rest && { step: rest.number }), place };
    },
    figure: (place, run) => sinceFilled(run, place),
    limit: (_place, run) => atMost(restOfPacks(run)),
    levers: (run) => longerRest(run),
  }),
];

/** Time from the end of filling until the centre of a pack has set [s]; the first pack has cooled meanwhile. What may have been filled warmer takes longer, and so does what gives off heat as it sets; cooler takes less. */
function sinceFilled(run: Run, place: WhichPack): Figure {
  const filling = fillingOf(run);
  const isFirst = place === "first-pack";
  const cooled = isFirst ? filling.duration() : 0;
  const since = (duration: number): number => Math.max(0, duration - cooled);
  const filled = filledAt(run, place);
  const { value = 0, basis, assumptions = [] } = durationToSet(run, filled);
  const { max: warmest, assumptions: taken = [] } = temperatureEnds(run, filledAfter(run, place), filled);
  const coolest = isFirst ? filled : coolestIn(filling.after, filling);
  const max = warmest === null ? null : durationToSet(run, warmest).max;
  return {
    min: coolest === null ? 0 : since(durationToSet(run, coolest).value ?? 0),
    value: since(value),
    max: max === null ? null : since(max),
    ...(basis && { basis }),
    assumptions: unique([...assumptions, ...taken]),
  };
}
