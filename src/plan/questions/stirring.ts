import { blendTime, blendTimeByRevolutions } from "../../mixing/index.js";
import { atLeast, atMost, exactly, type Figure } from "../figure.js";
import { movedIn } from "../parts/moved.js";
import { maySet, placeOf, stirring } from "../parts/turning.js";
import type { Moment, Run, Turn } from "../state.js";
import { movedBy, stirredIn, stirrerOf } from "../stirred.js";
import { by, either, stated, unknown } from "../unknown.js";
import { asks, type Question } from "./question.js";

/** How long a charge has to be stirred until it is blended [s]: by Grenville and Nienow in the range of their measurements, else by the revolutions that were counted. */
function blendedAfter(turn: Turn, { job }: Run): Figure {
  const stirrer = stirrerOf(job);
  const stirred = stirredIn(turn);
  const { yieldStress } = stirred;
  // What stands still at the wall is never blended.
  if (yieldStress && !movedBy(job, stirrer, { ...stirred, yieldStress }).reachesWall)
    unknown("no-method", { law: "cavern" });
  const { density, viscosity, powerNumber, level, speed } = stirred;
  return either(
    () =>
      exactly(
        by("blend-time", () =>
          blendTime({
            density,
            viscosity,
            powerNumber,
            speed,
            impeller: { diameter: stirrer.diameter },
            vessel: { diameter: job.vessel.diameter, level },
          }),
        ).duration,
        [{ kind: "law", key: "blend-time" }],
      ),
    () => {
      const revolutions = stated(stirrer.revolutionsToBlend, "stirrer-revolutions-to-blend", { of: stirrer.kind });
      return exactly(blendTimeByRevolutions({ revolutions, speed }), [{ kind: "law", key: "revolutions-to-blend" }]);
    },
  );
}
/** Whether a charge is stirred until it is uniform, and whether all of it moves. */
export const stirringQuestions: readonly Question[] = [
  asks<Moment, Turn>({
    id: "blended",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) =>
      stirring(run).length === 0
        ? []
        : run.moments.filter(
            ({ step, number }) =>
              step.do === "stir" && run.turns.some((turn) => turn.step === number && !maySet(turn, false)),
          ),
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => blendedAfter(turn, run),
    limit: (_turn, { step }) => atMost((step as { readonly for: number } & typeof step).for),
    levers: ({ number, step }) => {
      const { for: duration } = step as { readonly for: number } & typeof step;
      return [
        {
          id: "longer-stirring",
          change: (value) => ({ change: "step", step: number, field: "for", value }),
          bracket: [duration, 100 * duration],
        },
      ];
    },
    beside: (turn) => ({ reynolds: stirredIn(turn).reynolds }),
  }),
  asks<Moment, Turn>({
    id: "gel-moves-at-wall",
    quantity: "length",
    quantifier: "every",
    // A stirrer that is moved by hand reaches the wall.
    subjects: (run) =>
      run.job.vessel.stirrer?.byHand || stirring(run).length === 0
        ? []
        : run.moments.filter(({ number }) =>
            run.turns.some((turn) => turn.step === number && (turn.state.charge.isEmulsion() || maySet(turn, true))),
          ),
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => movedIn(turn, run),
    limit: (_turn, _moment, { job }) => atLeast(job.vessel.diameter),
  }),
];
