import type { StockUse } from "../../batch/index.js";
import type { FormulaLine, Material } from "../../formula/index.js";
import { hadGelFormerInOil, holdsForEmulsion } from "../composition.js";
import { type Ends, expanded } from "../contents.js";
import { atLeast, atMost, between, exactly, type Figure, type Limit } from "../figure.js";
import type { Job } from "../job.js";
import { volumeOfLot } from "../parts/batch.js";
import { timeFigure } from "../parts/durations.js";
import { attendedMoments } from "../parts/lot-order.js";
import { naturalOriginContent } from "../parts/natural-origin.js";
import { stockUsesOf } from "../parts/stock.js";
import { volumeFigure } from "../parts/warmth.js";
import type { Moment, Run, State } from "../state.js";
import { either, stated, unknown } from "../unknown.js";
import { lessOf, moreOf } from "./levers.js";
import { asks, type Lever, type Question } from "./question.js";

/** What of a lot fills the vessel: all of it at 20 °C, or what is in it at its temperature between two steps. */
type Filling = "whole" | { readonly state: State; readonly moment: Moment };

/** Sums and quotients of masses, and shares that were read in %, end in the rounding of doubles: twelve digits are more than any balance gives. */
function twelveDigits(value: number): number {
  return Number(value.toPrecision(12));
}

/** Once, for the whole batch. */
function once(run: Run): readonly Run[] {
  return [run];
}

function ofBatch(): Record<string, never> {
  return {};
}

/** The lines that count as gel former, and those that count as oil into it: of an emulsion the outer phase and what goes into it, particles aside. */
function ratioLines({ formula, bench }: Job): {
  readonly former: readonly FormulaLine[];
  readonly oil: readonly FormulaLine[];
} {
  const { lines, materials } = formula;
  const outer = bench.emulsion?.outerPhase;
  const of = (function_: "gel former" | "oil"): readonly FormulaLine[] =>
    lines.filter(({ material }) => materials[material]?.function === function_);
  if (outer === undefined) return { former: of("gel former"), oil: of("oil") };
  const fluid = lines.filter(({ material }) => !materials[material]?.particle);
  return { former: fluid.filter(({ phase }) => phase === outer), oil: fluid.filter(({ phase }) => phase !== outer) };
}

function massFractionOf(lines: readonly FormulaLine[]): number {
  return lines.reduce((sum, { massFraction }) => sum + massFraction, 0);
}

/** The material that counts as gel former, if it is one line. */
function onlyFormer({ job }: Run): string | undefined {
  const [former, another] = ratioLines(job).former;
  return another ? undefined : former?.material;
}

function lessGelFormer(run: Run): readonly Lever[] {
  return lessOf(run, onlyFormer(run), "less-gel-former");
}

/** Mass of a material as weighed, as a share of the charge [0 to 1]. What evaporates is not counted off. */
function shareWeighed(key: string, { scaled: { lot } }: Run): number {
  const weighed = lot.lines.filter(({ material }) => material === key).reduce((sum, { mass }) => sum + mass, 0);
  return weighed / lot.total;
}

/** Everything that fills the vessel until the packs are filled. */
function fillings({ moments }: Run): readonly Filling[] {
  const states = moments.flatMap((moment, i) => [
    ...(i === 0 ? [{ state: moment.before, moment }] : []),
    { state: moment.after, moment },
  ]);
  return ["whole", ...states.filter(({ state }) => !state.inPacks && state.charge.mass > 0)];
}

function volumeOf(filling: Filling, run: Run): Figure {
  if (filling === "whole") return exactly(volumeOfLot(run), [{ kind: "law", key: "mass-balance" }]);
  const { charge, temperature } = filling.state;
  const isWhole = charge.mass > (1 - 1e-9) * run.scaled.lot.total;
  const volume = (at: number): Ends =>
    either(
      () => charge.volume(at),
      // Where materials lack a density, the batch may state that of the product.
      () => (isWhole ? expanded(volumeOfLot(run), at) : charge.volume(at)),
    );
  return volumeFigure(run, filling.moment, temperature(), volume, [{ kind: "law", key: "mass-balance" }]);
}

/** A whole lot has to cover the impeller; no filling may be more than the vessel takes. */
function workingVolume(filling: Filling, { vessel }: Job): Limit {
  const { min, max } = vessel.workingVolume;
  const basis = [{ kind: "stated", key: "vessel-working-volume", of: vessel.name }] as const;
  return filling === "whole" ? { ...atLeast(min, basis), ...atMost(max, basis) } : atMost(max, basis);
}

/** Smaller lots leave more room in the vessel, down to those that do not cover its stirrer or hold no whole pack. */
function moreLots(run: Run): readonly Lever[] {
  const { lots, packs = Number.POSITIVE_INFINITY } = run.scaled;
  const { min } = run.job.vessel.workingVolume;
  const covering = Math.floor((lots * volumeOfLot(run)) / min);
  const max = Math.min(packs, covering, lots * lotsFactor);
  if (max <= lots) return [];
  return [{ id: "more-lots", whole: true, change: (value) => ({ change: "lots", value }), bracket: [lots, max] }];
}

/** Up to so many times as many lots are looked for. */
const lotsFactor = 4;

/** Questions about what is weighed, what arrives, and how it fits vessel and day. */
export const batchQuestions: readonly Question[] = [
  asks<Run, Job>({
    id: "gel-former-ratio",
    quantity: "ratio",
    quantifier: "every",
    subjects: (run) => (ratioLines(run.job).former.length > 0 ? [run] : []),
    of: ofBatch,
    states: ({ job }) => [job],
    figure: (job) => {
      const { former, oil } = ratioLines(job);
      const mass = massFractionOf(former);
      if (mass === 0) unknown("nothing-there", { field: "bench-oil-per-gel-former" });
      return exactly(twelveDigits(massFractionOf(oil) / mass), [{ kind: "law", key: "mass-balance" }]);
    },
    // Another gel former takes up other amounts of oil, and this one of another oil.
    limit: (job) => {
      const { bench } = job;
      const { min, max } = stated(bench.oilPerGelFormer, "bench-oil-per-gel-former");
      if (!(bench.emulsion ? holdsForEmulsion(job) : hadGelFormerInOil(job)))
        unknown("not-read", { field: "bench-oil-per-gel-former" });
      const basis = [{ kind: "reading", key: "bench-oil-per-gel-former", source: bench.source }] as const;
      return { ...atLeast(min, basis), ...atMost(max, basis) };
    },
    levers: (_subject, run) => [...moreOf(run, onlyFormer(run), "more-gel-former"), ...lessGelFormer(run)],
  }),
  asks<Run, Job>({
    id: "natural-origin-claim",
    quantity: "mass-fraction",
    quantifier: "every",
    subjects: (run) => (run.job.formula.claimNaturalOrigin === undefined ? [] : [run]),
    of: ofBatch,
    states: ({ job }) => [job],
    figure: (job) => {
      const { min, max } = naturalOriginContent(job);
      return between(twelveDigits(min), twelveDigits(max), [{ kind: "law", key: "iso-16128-2" }]);
    },
    limit: ({ formula }) =>
      atLeast(twelveDigits(stated(formula.claimNaturalOrigin, "formula-claim")), [
        { kind: "stated", key: "formula-claim" },
      ]),
    levers: (_subject, run) => lessGelFormer(run),
  }),
  asks<Run, Run>({
    id: "delivered",
    quantity: "mass",
    quantifier: "every",
    subjects: once,
    of: ofBatch,
    states: once,
    figure: ({ scaled: { lot } }) => exactly(twelveDigits(lot.delivered), [{ kind: "law", key: "mass-balance" }]),
    limit: ({ scaled: { massOfLot } }) => atLeast(twelveDigits(massOfLot), [{ kind: "stated", key: "batch-target" }]),
    beside: ({ scaled: { packsOfLot } }) => ({ packs: packsOfLot }),
  }),
  asks<Run, Filling>({
    id: "working-volume",
    quantity: "volume",
    quantifier: "every",
    subjects: once,
    of: ofBatch,
    states: fillings,
    at: (filling) => (filling === "whole" ? { place: "vessel" } : { step: filling.moment.number, place: "vessel" }),
    figure: (filling, _subject, run) => volumeOf(filling, run),
    limit: (filling, _subject, { job }) => workingVolume(filling, job),
    levers: (_subject, run) => moreLots(run),
  }),
  asks<Material, Run>({
    id: "maximum-share",
    quantity: "mass-fraction",
    quantifier: "every",
    subjects: ({ job: { formula } }) =>
      Object.values(formula.materials).filter(
        ({ key, massFractionMax }) =>
          massFractionMax !== undefined && formula.lines.some(({ material }) => material === key),
      ),
    of: ({ key }) => ({ material: key }),
    states: (_material, run) => [run],
    levers: ({ key }, run) => lessOf(run, key, "lower-share"),
    figure: (run, { key }) => exactly(twelveDigits(shareWeighed(key, run)), [{ kind: "law", key: "mass-balance" }]),
    limit: (_run, { key, massFractionMax, sources }) => {
      const { limits: source } = sources;
      const basis = {
        kind: "stated",
        key: "material-share-max",
        of: key,
        ...(source !== undefined && { source }),
      } as const;
      return atMost(twelveDigits(stated(massFractionMax, "material-share-max", { of: key })), [basis]);
    },
  }),
  asks<StockUse, StockUse>({
    id: "stock-suffices",
    quantity: "mass",
    quantifier: "every",
    subjects: (run) => (run.job.batch.stock ? stockUsesOf(run) : []),
    of: ({ material }) => ({ material }),
    states: (use) => [use],
    figure: ({ needed }) => exactly(needed, [{ kind: "law", key: "mass-balance" }]),
    limit: ({ material, inStock }, _subject, { job }) => {
      const source = job.batch.stock?.find((entry) => entry.material === material)?.source;
      const basis = {
        kind: "stated",
        key: "material-stock",
        of: material,
        ...(source !== undefined && { source }),
      } as const;
      return atMost(stated(inStock, "material-stock", { of: material }), [basis]);
    },
    beside: ({ toBuy }) => ({ toBuy }),
  }),
  asks<Run, Moment>({
    id: "lot-fits-the-day",
    quantity: "duration",
    quantifier: "every",
    subjects: (run) => (run.job.process.workingDay ? [run] : []),
    of: ofBatch,
    // The end of any step that lies beyond the day decides, whatever is not known of a later one.
    states: attendedMoments,
    at: ({ number }) => ({ step: number }),
    figure: (moment, _subject, run) => timeFigure(run, moment),
    limit: (_moment, { job }) =>
      atMost(stated(job.process.workingDay, "process-working-day").length, [
        { kind: "stated", key: "process-working-day" },
      ]),
  }),
];
