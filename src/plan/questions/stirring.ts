import { bandAround } from "../../laws/index.js";
import { blendTime, blendTimeBands, blendTimeByRevolutions } from "../../mixing/index.js";
import { atLeast, atMost, between, exactly, type Figure } from "../figure.js";
import { heightMoved, movesAll, widthMoved } from "../parts/moved.js";
import { maySet, placeOf, stirring } from "../parts/turning.js";
import type { Moment, Run, Turn } from "../state.js";
import { levelsIn, type Stirred, stirredIn } from "../stirred.js";
import { stirredEnds } from "../stirred-ends.js";
import { stirrerOf } from "../stirrer.js";
import { by, either, otherwise, stated, unknown } from "../unknown.js";
import { depthsIn } from "../vessel-shape.js";
import { longer } from "./levers.js";
import { asks, type Question } from "./question.js";

/** Diameters of stirrer over vessel between which the blend time was measured (grenville-1992). */
const measured = { min: 1 / 3, max: 1 / 2 };

/** How long a charge has to be stirred until it is blended [s]: by Grenville and Nienow as they measured it, else by the revolutions that were counted; without baffles it takes longer; how much longer is not known. */
function blendedAfter(turn: Turn, run: Run): Figure {
  const { vessel } = run.job;
  const { revolutionsToBlend, kind, diameter } = stirrerOf(run.job);
  // What stands still at the wall or at the surface is never blended.
  if (!movesAll(turn, run)) unknown("no-method", { law: "cavern" });
  const share = diameter / vessel.diameter;
  const byCorrelation = (): Figure => {
    if (share < measured.min || share > measured.max)
      unknown("outside-range", { law: "blend-time", quantity: "diameter-to-vessel", value: share, ...measured });
    const impeller = { diameter };
    const timeOf = ({ density, viscosity, powerNumber, speed, level }: Stirred): ReturnType<typeof blendTime> =>
      by("blend-time", () =>
        blendTime({ density, viscosity, powerNumber, speed, impeller, vessel: { diameter: vessel.diameter, level } }),
      );
    const ends = stirredEnds(turn)
      .map(timeOf)
      .map(({ duration, regime }) => bandAround({ value: duration, band: blendTimeBands[regime] }));
    return {
      min: Math.min(...ends.map(({ min }) => min)),
      // Without baffles it takes longer; how much longer is not known.
      ...(vessel.baffles
        ? { value: timeOf(stirredIn(turn)).duration, max: Math.max(...ends.map(({ max }) => max)) }
        : { max: null }),
      basis: [{ kind: "law", key: "blend-time" }],
    };
  };
  const counted = (): Figure => {
    const revolutions = stated(revolutionsToBlend, "stirrer-revolutions-to-blend", { of: kind });
    const { speed } = stirredIn(turn);
    return exactly(blendTimeByRevolutions({ revolutions, speed }), [{ kind: "law", key: "revolutions-to-blend" }]);
  };
  if (vessel.baffles) return either(byCorrelation, counted);
  return otherwise(counted, ({ code, ...reason }) => otherwise(byCorrelation, () => unknown(code, reason)));
}

/** The steps in which a gel that may have a yield stress is stirred. A stirrer that is moved by hand reaches all of it. */
function mayYield(run: Run): readonly Moment[] {
  if (run.job.vessel.stirrer?.byHand) return [];
  return stirring(run).flatMap(({ moments, turns }) =>
    moments.filter(({ number }) =>
      turns.some((turn) => turn.step === number && (turn.state.charge.isEmulsion() || maySet(turn, true))),
    ),
  );
}

/** Whether a charge is stirred until it is uniform, and whether all of it moves. */
export const stirringQuestions: readonly Question[] = [
  asks<Moment, Turn>({
    id: "blended",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) =>
      stirring(run).flatMap(({ moments, turns }) =>
        moments.filter(
          ({ step, number }) =>
            step.do === "stir" && turns.some((turn) => turn.step === number && !maySet(turn, false)),
        ),
      ),
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => blendedAfter(turn, run),
    limit: (_turn, { step }) => atMost((step as { readonly for: number } & typeof step).for),
    levers: (moment) => longer(moment, "longer-stirring"),
    beside: (turn, _moment, { job }) => ({
      reynolds: stirredIn(turn).reynolds,
      // Where the correlation gives a bound, a counted number would give the time.
      ...(!job.vessel.baffles &&
        stirrerOf(job).revolutionsToBlend === undefined && { lacks: "stirrer-revolutions-to-blend" }),
    }),
  }),
  asks<Moment, Turn>({
    id: "gel-moves-at-wall",
    quantity: "length",
    quantifier: "every",
    subjects: mayYield,
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => widthMoved(turn, run),
    limit: (_turn, _moment, { job }) => atLeast(job.vessel.diameter),
  }),
  asks<Moment, Turn>({
    id: "gel-moves-at-surface",
    quantity: "length",
    quantifier: "every",
    subjects: mayYield,
    of: ({ number }) => ({ step: number }),
    states: ({ number }, run) => run.turns.filter(({ step }) => step === number),
    at: placeOf,
    figure: (turn, _moment, run) => heightMoved(turn, run),
    // In a bottom that is not stated and not flat, the gel stands higher.
    limit: (turn, _moment, { job: { vessel } }) => {
      const { min, max } = levelsIn(turn);
      const basis = [{ kind: "law", key: "level" }] as const;
      const { max: highest } = depthsIn(vessel, max);
      if (min === highest) return { min: exactly(min, basis) };
      // What states no expansion may stand higher too.
      const assumptions = ["expansion-up-to-the-usual"] as const;
      return { min: { ...between(min, highest, basis), ...(min !== max && { assumptions }) } };
    },
  }),
];
