import { packingOf } from "../../gel/index.js";
import { interpolateAtOilFraction } from "../../mixing/index.js";
import type { Charge } from "../charge.js";
import { massOf } from "../contents.js";
import { atLeast, atMost, exactly, type Figure, type Limit } from "../figure.js";
import type { Margin } from "../judge.js";
import { glycerinToMatch, indicesAt } from "../parts/clarity.js";
import { dropletsOf, gelOf } from "../parts/droplets.js";
import { surfactantIn, surfactantNeeded, waterActivityOf, waterInOuterPhase } from "../parts/emulsion.js";
import { leftOutIn } from "../parts/warming.js";
import { oilLawsOf } from "../setting.js";
import type { Moment, Run } from "../state.js";
import { by, otherwise, type Reason, stated, unknown, where } from "../unknown.js";
import { moreOf } from "./levers.js";
import { asks, type Question } from "./question.js";

/** Below this ISO 29621 counts a product among those of low microbiological risk (from memory). It waives no test. */
const waterActivityMax = 0.75;

/** A figure that has to stay below its limit may not lie on it. */
const below: Margin = { max: 1e-9 };

/** Masses and shares carry the noise of doubles. */
const slack = 1e-12;

/** Nearer to the room than this, nobody sees a difference [K]: common practice, no source. */
const asWarm = 0.5;

/** One subject where the finished gel holds an outer phase. */
function withOuter(run: Run): readonly Run[] {
  return otherwise(
    () => (gelOf(run).charge.isEmulsion() ? [run] : []),
    () => [],
  );
}

/** One subject where the finished gel is an emulsion with oil in it. */
function withOil(run: Run): readonly Run[] {
  return withOuter(run).filter((one) => gelOf(one).charge.oil().length > 0);
}

/** The moments that change what is in an emulsion; the last one if it was there from the start. */
function filling({ moments }: Run): readonly Moment[] {
  const holding = moments.filter(({ after }) => after.charge.isEmulsion() && after.charge.oil().length > 0);
  const changing = holding.filter(({ before, after }) => after.charge.mass !== before.charge.mass);
  return changing.length > 0 ? changing : holding.slice(-1);
}

// Shares

/** One addition of oil, or the whole of a phase that goes in by no schedule. */
interface AtOnce {
  readonly step: number;
  readonly addition?: number;
  /** Its mass [kg]. */
  readonly mass: () => number;
  /** As a share of what was in the vessel. */
  readonly share: () => number;
  /** The largest share that was taken up there. */
  readonly shareMax: () => number;
}

/** The phases of oil in the finished gel, by whatever step they came. */
function oilPhases(run: Run): readonly string[] {
  return withOil(run).flatMap(() => [
    ...new Set(
      gelOf(run)
        .charge.oil()
        .map(({ phase }) => phase),
    ),
  ]);
}

/** What of a phase of oil goes in at once. */
function additionsOf(phase: string, run: Run): readonly AtOnce[] {
  const massIn = (charge: Charge): number => massOf(charge.oil().filter((content) => content.phase === phase));
  const found = run.moments
    .filter(({ before, after }) => massIn(after.charge) > massIn(before.charge))
    .flatMap((moment) => (moment.schedule ? scheduled(moment) : [unscheduled(moment, run)]));
  return found.length > 0 ? found : [unseen({ code: "not-done", of: phase }, 1)];
}

function scheduled({ number: step, schedule }: Moment): readonly AtOnce[] {
  return otherwise(
    () => {
      const { form, rows, phase } = stated(schedule, "emulsion-additions")();
      // Whether the gel takes a stream as it took the additions of the bench, the bench has to show.
      if (form === "stream" || rows.length === 0) unknown("no-method", { of: phase });
      return rows.map(
        ({ mass, share, shareMax }, i): AtOnce => ({
          step,
          addition: i + 1,
          mass: () => mass,
          share: () => stated(share, "emulsion-share-max"),
          shareMax: () => stated(shareMax, "emulsion-share-max"),
        }),
      );
    },
    (reason) => [unseen(reason, step)],
  );
}

/** In what portions it goes in is not known. */
function unseen({ code, ...reason }: Reason, step: number): AtOnce {
  const never = (): never => unknown(code, { ...reason, step });
  return { step, mass: never, share: never, shareMax: never };
}

/** All of a phase at once: into the gel that is there, or met at once by an outer phase that comes after it. */
function unscheduled({ number: step, before, after }: Moment, { job, moments }: Run): AtOnce {
  const { charge } = before;
  const isThere = charge.isEmulsion();
  const later = moments.find((moment) => moment.after.charge.isEmulsion())?.after.charge ?? after.charge;
  const mass = isThere ? massOf(after.charge.oil()) - massOf(charge.oil()) : massOf(later.oil());
  const into = isThere ? massOf(charge.outer()) + massOf(charge.oil()) : massOf(later.outer());
  return {
    step,
    mass: () => mass,
    share: () => mass / into,
    shareMax: () => {
      const law = stated(oilLawsOf(job.bench).share, "emulsion-share-max");
      const volumeFractionOil = isThere ? charge.oilFraction() : 0;
      return by("addition-schedule", () => interpolateAtOilFraction({ law, volumeFractionOil }), {
        field: "emulsion-share-max",
      });
    },
  };
}

// Clarity

function mismatchMax({ job }: Run): number {
  return stated(job.bench.emulsion?.mismatchAllowed, "emulsion-mismatch-max");
}

/** How far the indices of the finished gel are apart at a temperature. */
function apartAt(charge: Charge, temperature: number): Figure {
  const { oil, gelFormer, basis } = indicesAt(charge, temperature);
  return exactly(Math.abs(oil - gelFormer), basis);
}

/** How warm the gel is when it is looked through [°C]: the room's temperature, if it is nearly that. */
function whileMatched({ after, number }: Moment, run: Run): number {
  const [cooler] = leftOutIn(run, number);
  // With the heat of a step left out it is warmer by nobody knows how much.
  if (cooler) {
    const { code, ...reason } = cooler.reason;
    return unknown(code, { ...reason, step: cooler.step });
  }
  const { room } = run.job.process;
  const temperature = after.temperature();
  return Math.abs(temperature - room) < asWarm ? room : temperature;
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
    figure: ({ after }) => exactly(after.charge.oilFraction()),
    limit: (_moment, _subject, { job }) => {
      const { source } = job.bench;
      return atMost(stated(job.bench.emulsion?.volumeFractionOilMax, "emulsion-oil-max"), [
        { kind: "reading", key: "emulsion-oil-max", source },
      ]);
    },
    margin: () => below,
    beside: ({ after }) => {
      const { aboveRandom, aboveClosest } = packingOf({ volumeFractionOil: after.charge.oilFraction() });
      return { aboveRandom, aboveClosest };
    },
  }),
  asks<string, AtOnce>({
    id: "additions-within-share",
    quantity: "mass-fraction",
    quantifier: "every",
    subjects: oilPhases,
    of: (phase) => ({ phase }),
    states: additionsOf,
    at: ({ step, addition }) => ({ step, ...(addition !== undefined && { addition }), place: "vessel" }),
    figure: ({ share }) => exactly(share()),
    limit: ({ shareMax }, _phase, { job }): Limit => {
      const { source } = job.bench;
      return atMost(shareMax() * (1 + slack), [{ kind: "reading", key: "emulsion-share-max", source }]);
    },
    beside: (_state, phase, run) => {
      const masses = additionsOf(phase, run).map(({ mass }) => mass());
      return { additions: masses.length, massFirst: masses[0], massMax: Math.max(...masses) };
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
    limit: (run) =>
      atLeast(surfactantNeeded(run), [
        { kind: "law", key: "surfactant-coverage" },
        { kind: "reading", key: "emulsion-surfactant", source: run.job.bench.source },
      ]),
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
    id: "clarity-match",
    quantity: "index-difference",
    quantifier: "every",
    subjects: withOil,
    of: () => ({}),
    states: (run) => [run],
    figure: (run) => apartAt(gelOf(run).charge, run.job.process.room),
    limit: (run) =>
      atMost(mismatchMax(run), [{ kind: "reading", key: "emulsion-mismatch-max", source: run.job.bench.source }]),
    beside: (run) => {
      const { charge } = gelOf(run);
      const temperature = run.job.process.room;
      const { gelFormer, oil } = indicesAt(charge, temperature);
      const remedy = otherwise(
        () => ({ ...glycerinToMatch(charge, temperature) }),
        () => ({}),
      );
      return { temperature, gelFormer, oil, ...remedy };
    },
  }),
  // Oils lose more index with warmth than glycerin and water do: what is clear in the vessel may not be in the room, and the other way round.
  asks<Moment, Moment>({
    id: "clarity-while-warm",
    quantity: "index-difference",
    quantifier: "every",
    subjects: (run) => withOil(run).flatMap(() => run.moments.filter(({ step }) => step.do === "match clarity")),
    of: ({ number }) => ({ step: number }),
    states: (moment) => [moment],
    at: ({ number }) => ({ step: number, place: "vessel" }),
    figure: (moment, _subject, run) => apartAt(moment.after.charge, whileMatched(moment, run)),
    // It is to look in the vessel as it will in the room, clear or milky.
    limit: ({ after }, _subject, run) => {
      const allowed = mismatchMax(run);
      const { value = 0 } = apartAt(after.charge, run.job.process.room);
      return value <= allowed ? atMost(allowed) : atLeast(allowed);
    },
    beside: (moment, _subject, run) => {
      const temperature = whileMatched(moment, run);
      const { gelFormer, oil } = indicesAt(moment.after.charge, temperature);
      return { temperature, gelFormer, oil };
    },
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
