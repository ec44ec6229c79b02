import type { Ends } from "../contents.js";
import { atLeast, atMost, between, exactly, type Figure, type Limit } from "../figure.js";
import { headSpaceWhenHot, largestFill, massAimed, packOf, packsAt, targetOf, volumeAt } from "../parts/fill.js";
import { filledAfter, filledAt, fillingOf, fillingTakesTime, type WhichPack } from "../parts/moments.js";
import { upToTheWarmest, volumeFigure } from "../parts/warmth.js";
import type { Run } from "../state.js";
import { stated } from "../unknown.js";
import { coolerMelt } from "./levers.js";
import { asks, type Question } from "./question.js";

/** A pack whose label states how much is in it. */
function labelled(run: Run): readonly Run[] {
  return run.job.pack?.nominal ? [run] : [];
}

function ofBatch(): Record<string, never> {
  return {};
}

function ends({ min, max }: Ends, basis: Figure["basis"]): Figure {
  if (min === max) return exactly(min, basis);
  return { ...between(min, max, basis), assumptions: ["expansion-up-to-the-usual"] };
}

/** Questions about what goes into a pack. */
export const fillQuestions: readonly Question[] = [
  asks<Run, Run>({
    id: "fill-by-the-rules",
    quantity: "mass",
    quantifier: "every",
    // Where no fill is stated, the target is what the rules ask for.
    subjects: (run) => (run.job.pack?.fillTarget === undefined ? [] : labelled(run)),
    of: ofBatch,
    states: (run) => [run],
    figure: (run) =>
      exactly(stated(packOf(run).fillTarget, "pack-fill-target"), [{ kind: "stated", key: "pack-fill-target" }]),
    limit: (run) => atLeast(targetOf(run).mass, [{ kind: "law", key: "target-fill" }]),
  }),
  asks<Run, WhichPack>({
    id: "fits-the-brim",
    quantity: "volume",
    quantifier: "every",
    subjects: labelled,
    of: ofBatch,
    states: (run) => (fillingTakesTime(run) ? ["first-pack", "last-pack"] : ["last-pack"]),
    at: (place) => ({ place }),
    figure: (place, run) => {
      const volume = (at: number): Ends => volumeAt(run, largestFill(run), at);
      const moment = filledAfter(run, place);
      return volumeFigure(run, moment, filledAt(run, place), volume, [{ kind: "law", key: "expansion" }]);
    },
    limit: (_place, run): Limit =>
      atMost(stated(packOf(run).brimCapacity, "pack-brim-capacity"), [{ kind: "stated", key: "pack-brim-capacity" }]),
  }),
  asks<Run, WhichPack>({
    id: "pack-stands-the-heat",
    quantity: "temperature",
    quantifier: "every",
    subjects: (run) => (run.job.pack?.temperatureMax === undefined ? [] : [run]),
    of: ofBatch,
    states: (run) => (fillingTakesTime(run) ? ["first-pack", "last-pack"] : ["last-pack"]),
    at: (place) => ({ place }),
    figure: (place, run) => {
      return upToTheWarmest(run, filledAfter(run, place), filledAt(run, place), fillingOf(run).basis?.());
    },
    limit: (_place, run) =>
      atMost(stated(packOf(run).temperatureMax, "pack-temperature-max"), [
        { kind: "stated", key: "pack-temperature-max" },
      ]),
    levers: (run) => coolerMelt(run, fillingOf(run).number),
  }),
  asks<Run, Run>({
    id: "head-space-when-hot",
    quantity: "volume-fraction",
    quantifier: "every",
    subjects: labelled,
    of: ofBatch,
    states: (run) => [run],
    figure: (run) => ends(headSpaceWhenHot(run), [{ kind: "law", key: "head-space" }]),
    limit: (run) => {
      const { headSpaceMin } = packOf(run);
      // Without a wish the product only may not fill the pack.
      return atLeast(
        headSpaceMin ?? 0,
        headSpaceMin === undefined ? [] : [{ kind: "stated", key: "pack-head-space-min" }],
      );
    },
    beside: (run) => ({ temperature: packOf(run).storageTemperatureMax }),
  }),
  asks<Run, Run>({
    id: "whole-packs",
    quantity: "count",
    quantifier: "every",
    subjects: (run) => (run.scaled.packs === undefined ? [] : labelled(run)),
    of: ofBatch,
    states: (run) => [run],
    figure: (run) => exactly(packsAt(run, massAimed(run)).count, [{ kind: "law", key: "packs-from-batch" }]),
    limit: ({ scaled }) => atLeast(stated(scaled.packs, "batch-target"), [{ kind: "stated", key: "batch-target" }]),
    beside: (run) => ({ mass: massAimed(run) }),
  }),
];
