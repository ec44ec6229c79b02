import { atMost, exactly, type Figure } from "../figure.js";
import { durationToSet, restOfPacks } from "../parts/after-filling.js";
import { fillingOf, fillingTakesTime, makesMelt, momentsOf } from "../parts/moments.js";
import type { Run } from "../state.js";
import { longerRest } from "./levers.js";
import { asks, type Question } from "./question.js";

/** The pack that is looked at: the first is filled hottest, the last has the shortest time. */
type WhichPack = "first-pack" | "last-pack";

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

/** Time from the end of filling until the centre of a pack has set [s]; the first pack has cooled meanwhile. */
function sinceFilled(run: Run, place: WhichPack): Figure {
  const { value = 0, basis, assumptions } = durationToSet(run, place);
  const cooled = place === "first-pack" ? fillingOf(run).duration() : 0;
  return exactly(Math.max(0, value - cooled), basis, assumptions);
}
