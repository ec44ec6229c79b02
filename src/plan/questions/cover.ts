import { minimumWorkingVolume, vortexDepthMax } from "../../mixing/index.js";
import type { AssumptionCode } from "../codes/assumptions.js";
import { atLeast, atMost, between, exactly, type Limit } from "../figure.js";
import { placeOf, stirring, turnsOf } from "../parts/turning.js";
import type { Run, Turn } from "../state.js";
import { levelIn, stirredIn } from "../stirred.js";
import { reynoldsMax } from "../stirred-ends.js";
import { stirrerOf } from "../stirrer.js";
import { by, otherwise, stated, unknown, withAssumed } from "../unknown.js";
import { shapeOf } from "../vessel-shape.js";
import { asks, type Question } from "./question.js";

/** Below this Reynolds number no vortex forms: Ludwig 1995, after Rushton. */
const vortexReynoldsMin = 300;
/** What follows the wall may stand out of the charge, unless a cover is asked for; every other stirrer has to be covered. */
function covered(run: Run): readonly Run[] {
  const { kind, cover } = run.job.vessel.stirrer ?? {};
  const followsWall = kind === "anchor" || kind === "helical ribbon";
  return followsWall && cover === undefined ? [] : stirring(run);
}

/** What a flat bottom counts for if none is stated. */
function bottomOf({ job }: Run): readonly AssumptionCode[] {
  return job.vessel.bottom ? [] : ["bottom-taken-as-flat"];
}

/** Whether the charge covers the stirrer, and whether a vortex comes down to it. */
export const coverQuestions: readonly Question[] = [
  asks<Run, Turn>({
    id: "stirrer-covered",
    quantity: "length",
    quantifier: "every",
    subjects: covered,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    figure: (turn, run) => exactly(levelIn(turn), [{ kind: "law", key: "level" }], bottomOf(run)),
    limit: (_turn, { job }) => {
      const { topEdge, cover = 0, kind } = stirrerOf(job);
      return atLeast(stated(topEdge, "stirrer-top-edge", { of: kind }) + cover);
    },
  }),
  asks<Run, Run>({
    id: "minimum-volume",
    quantity: "volume",
    quantifier: "every",
    subjects: covered,
    of: () => ({}),
    states: (run) => [run],
    at: () => ({ place: "vessel" }),
    figure: ({ job }) =>
      exactly(job.vessel.workingVolume.min, [{ kind: "stated", key: "vessel-working-volume", of: job.vessel.name }]),
    limit: (_run, run) => {
      const { topEdge, cover = 0, kind } = stirrerOf(run.job);
      const heightTop = stated(topEdge, "stirrer-top-edge", { of: kind });
      const volume = by("level", () => minimumWorkingVolume({ vessel: shapeOf(run.job.vessel), heightTop, cover }));
      return { min: exactly(volume, [{ kind: "law", key: "level" }], bottomOf(run)) };
    },
  }),
  asks<Run, Turn>({
    id: "no-air-down-the-vortex",
    quantity: "length",
    quantifier: "every",
    subjects: stirring,
    of: () => ({}),
    states: turnsOf,
    at: placeOf,
    // The deepest that there could be is known; the one that there is, is not.
    figure: (turn, { job }) => {
      const { value: creeps, assumed } = withAssumed(() =>
        otherwise(
          () => reynoldsMax(turn) < vortexReynoldsMin,
          () => false,
        ),
      );
      // By a curve that may err either way it may not creep; the bound holds however thick it is.
      if (creeps && assumed.length === 0) return exactly(0, [{ kind: "law", key: "vortex" }]);
      // With baffles the charge does not turn as one, and for what the surface draws in behind them there is no bound.
      if (job.vessel.baffles) return unknown("no-method", { law: "vortex" });
      const impeller = { diameter: stirrerOf(job).diameter };
      const dip = by("vortex", () =>
        vortexDepthMax({ speed: turn.speed(), impeller, vessel: { diameter: job.vessel.diameter } }),
      );
      return between(0, dip, [{ kind: "law", key: "vortex" }]);
    },
    // Whether it is covered at all is another question: there may be any depth above it, or none.
    limit: (turn, { job }) =>
      otherwise<Limit, Limit>(
        () => {
          const { topEdge, kind } = stirrerOf(job);
          const above = levelIn(turn) - stated(topEdge, "stirrer-top-edge", { of: kind });
          return above > 0 ? atMost(above) : { max: between(0, null) };
        },
        () => ({ max: between(0, null) }),
      ),
    beside: (turn) => ({ reynolds: stirredIn(turn).reynolds }),
  }),
];
