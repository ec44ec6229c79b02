import { packingOf } from "../../gel/index.js";
import { Charge } from "../charge.js";
import { ofEmulsion } from "../composition.js";
import { type Content, volumeOf } from "../contents.js";
import { atLeast, atMost, exactly } from "../figure.js";
import type { Margin } from "../judge.js";
import { dropletsOf, gelOf, withOil, withOuter } from "../parts/droplets.js";
import { surfactantIn, surfactantNeeded } from "../parts/emulsion.js";
import { waterActivityOf, waterInOuterPhase } from "../parts/water-activity.js";
import type { Moment, Run } from "../state.js";
import { where } from "../unknown.js";
import { moreOf } from "./levers.js";
import { asks, type Question } from "./question.js";

/** Below this ISO 29621 counts a product among those of low microbiological risk (second-hand). It waives no test. */
const waterActivityMax = 0.75;

/** Distance that the oil fraction keeps below the bench's maximum, by volume, where the process names none: common practice, no source. */
const usualOilFractionMargin = 0.01;

/** A figure that has to stay below its limit may not lie on it. */
const below: Margin = { max: 1e-9 };

/** The moments that change what is in an emulsion. */
function filling({ moments }: Run): readonly Moment[] {
  const holding = moments.filter(({ after }) => after.charge.isEmulsion() && after.charge.oil().length > 0);
  return holding.filter(({ before, after }) => after.charge.mass !== before.charge.mass);
}

/** Whether a step leaves gel former in the vessel and no oil yet. */
function outerAlone({ after: { charge, inPacks } }: Moment): boolean {
  return !inPacks && charge.isEmulsion() && charge.oil().length === 0;
}

/** Questions about oil that is stirred into a gel former as droplets. */
export const emulsionQuestions: readonly Question[] = [
  asks<Run, Moment>({
    id: "maximum-oil-fraction",
    quantity: "volume-fraction",
    quantifier: "every",
    subjects: withOil,
    of: () => ({}),
    states: filling,
    at: ({ number }) => ({ step: number, place: "vessel" }),
    // It has to hold for whoever weighs the oil as heavy and the gel former as light as the tolerances let him.
    figure: ({ after }, _subject, run) =>
      exactly(oilFractionMax(after.charge, run), [{ kind: "law", key: "mass-balance" }]),
    limit: (_moment, _subject, { job }) => {
      const { source } = job.bench;
      return atMost(ofEmulsion(job, job.bench.emulsion?.volumeFractionOilMax, "emulsion-oil-max"), [
        { kind: "reading", key: "emulsion-oil-max", source },
      ]);
    },
    margin: ({ job }) => ({ max: job.process.oilFractionMargin ?? usualOilFractionMargin }),
    beside: ({ after }) => {
      const planned = after.charge.oilFraction();
      const { aboveRandom, aboveClosest } = packingOf({ volumeFractionOil: planned });
      return { planned, aboveRandom, aboveClosest };
    },
  }),
  asks<Run, Run>({
    id: "surfactant-covers-droplets",
    quantity: "mass",
    quantifier: "every",
    subjects: withOil,
    // One answer a run, whether the bench says which material it is or not.
    of: () => ({}),
    states: (run) => [run],
    figure: (run) => exactly(surfactantIn(run), [{ kind: "law", key: "mass-balance" }]),
    limit: (run) => ({
      min: {
        ...surfactantNeeded(run),
        basis: [
          { kind: "law", key: "surfactant-coverage" },
          { kind: "reading", key: "emulsion-surfactant", source: run.job.bench.source },
        ],
      },
    }),
    levers: (run) => moreOf(run, run.job.bench.emulsion?.surfactant?.material, "more-surfactant"),
    beside: (run) => ({
      material: run.job.bench.emulsion?.surfactant?.material,
      ...where("diameter", () => dropletsOf(gelOf(run).charge).diameter),
    }),
  }),
  asks<Moment, Moment>({
    id: "gel-former-covers-impeller",
    quantity: "volume",
    quantifier: "every",
    // The gel former is stirred alone before the first oil goes in.
    subjects: (run) => (run.job.vessel.stirrer ? run.moments.filter(outerAlone) : []).slice(0, 1),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "vessel" }),
    figure: ({ after: { charge } }, _subject, { job }) =>
      exactly(charge.mass / charge.density(job.process.room), [{ kind: "law", key: "level" }]),
    limit: (_moment, _subject, { job: { vessel } }) =>
      atLeast(vessel.workingVolume.min, [{ kind: "stated", key: "vessel-working-volume", of: vessel.name }]),
  }),
  asks<Run, Run>({
    id: "water-activity",
    quantity: "activity",
    quantifier: "every",
    subjects: (run) => withOuter(run).filter((one) => waterInOuterPhase(one) > 0),
    of: () => ({}),
    states: (run) => [run],
    figure: waterActivityOf,
    limit: () => atMost(waterActivityMax, [{ kind: "practice", key: "iso-29621" }]),
    margin: () => below,
  }),
];

/** A charge with each line weighed as heavy or as light as its tolerance lets it be. */
function weighedAt(charge: Charge, { scaled }: Run, end: (content: Content) => "min" | "max"): Charge {
  const contents = charge.contents.map((content) => {
    const line = scaled.lot.lines.find(
      ({ phase, material }) => phase === content.phase && material === content.material.key,
    );
    return line ? { ...content, mass: (content.mass * line.tolerance[end(content)]) / line.mass } : content;
  });
  return new Charge(charge.job, contents, charge.molten, charge.heated);
}

/** The oil fraction with all oil weighed as heavy and the gel former as light as the tolerances let them be, and the oil as wide as it may be where no expansion is stated. */
function oilFractionMax(charge: Charge, run: Run): number {
  const { bench, process } = charge.job;
  const outer = bench.emulsion?.outerPhase;
  const weighed = weighedAt(charge, run, ({ phase }) => (phase === outer ? "min" : "max"));
  const oil = volumeOf(weighed.oil(), process.room).max;
  return oil / (oil + volumeOf(weighed.outer(), process.room).min);
}
