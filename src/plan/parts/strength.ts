import {
  type DoseResponse,
  doseForStrength,
  type Estimate,
  fitDoseResponse,
  fitGelPoint,
  type GelPointLine,
  gelPointAtDose,
  strengthAtDose,
} from "../../gel/index.js";
import { gelAlongAdditions } from "../../mixing/index.js";
import { ohnesorgeNumber } from "../../rheology/index.js";
import type { ByDose, Charge } from "../charge.js";
import type { NoteCode } from "../codes.js";
import type { Basis, Figure, NotKnown } from "../figure.js";
import type { Bench, Job } from "../job.js";
import { oilLawsOf, remembered } from "../setting.js";
import type { Run } from "../state.js";
import { by, type Cell, cell, otherwise, type Reason, stated, unknown, where } from "../unknown.js";
import { gelOf, yieldStressByTheory } from "./droplets.js";
import { flowChoiceOf, throughNozzle, yieldStressOfPoints } from "./flow.js";

type StrengthTrials = NonNullable<Bench["strengthTrials"]>;
type Doses = NonNullable<Bench["doses"]>;

/** How far the share of a material may be from the bench's, unless the bench states it: common practice, no source. */
const usualTolerance = 0.005;

/** Gel former in the product [0 to 1]. */
export function doseOfProduct({ formula }: Job): number {
  return formula.lines.reduce(
    (sum, { material, massFraction }) =>
      sum + (formula.materials[material]?.function === "gel former" ? massFraction : 0),
    0,
  );
}

// Trials of dose against strength

/** The trials as a power of the dose above a threshold. */
const doseResponseOf: (trials: StrengthTrials) => Cell<DoseResponse> = remembered(({ trials, threshold }) =>
  cell(() =>
    by(
      "dose-response",
      () =>
        fitDoseResponse({
          trials: trials.map(({ gelFormer: dose, strength }) => ({ dose, strength })),
          ...(threshold !== undefined && { threshold }),
        }),
      { field: "bench-strength-trials" },
    ),
  ),
);

function trialsOf({ bench }: Job): StrengthTrials {
  return stated(bench.strengthTrials, "bench-strength-trials");
}

/** What the trials rest on. */
function basisOfTrials({ bench }: Job): readonly Basis[] {
  return [
    { kind: "reading", key: "bench-strength-trials", source: bench.source },
    { kind: "law", key: "dose-response" },
  ];
}

/** The strength that trials let expect at a dose [Pa], with its 95 % limits. */
function expectedStrength(job: Job, dose: number = doseOfProduct(job)): Estimate {
  const fit = doseResponseOf(trialsOf(job))();
  return by("dose-response", () => strengthAtDose({ fit, dose }), { field: "bench-strength-trials", dose });
}

/** The same as a figure, whatever strength the trials measured. */
export function strengthByTrials(job: Job, dose: number = doseOfProduct(job)): PlanYieldStress {
  const { min, value, max } = expectedStrength(job, dose);
  return { min, value, max, basis: basisOfTrials(job) };
}

/** The dose for the strength that is wanted [0 to 1], with its 95 % limits. */
export function doseForTarget(job: Job): Estimate {
  const trials = trialsOf(job);
  const strength = stated(trials.target, "bench-strength-trials");
  const fit = doseResponseOf(trials)();
  return by("dose-response", () => doseForStrength({ fit, strength }), { field: "bench-strength-trials" });
}

/** The strength of the set gel by trials, and the dose for another. */
export interface PlanStrength {
  readonly of: StrengthTrials["of"];
  /** How many trials there are. */
  readonly trials: number;
  /** Dose that just makes no gel [0 to 1], as stated, or as fitted with its 95 % limits. */
  readonly threshold: Estimate | NotKnown;
  /** Gel former in the product [0 to 1]. */
  readonly dose: number;
  /** At that dose [Pa], with its 95 % limits. */
  readonly expected: Estimate | NotKnown;
  /** Strength that is wanted [Pa], and the dose for it [0 to 1] with its 95 % limits. */
  readonly target?: number;
  readonly doseTarget?: Estimate | NotKnown;
}

/** What trials say of the dose of the product; not known without trials. */
export function strengthOf(job: Job): PlanStrength {
  const trials = trialsOf(job);
  const { of, target } = trials;
  return {
    of,
    trials: trials.trials.length,
    threshold: otherwise(() => doseResponseOf(trials)().threshold, notKnown),
    dose: doseOfProduct(job),
    expected: otherwise(() => expectedStrength(job), notKnown),
    ...(target !== undefined && { target, doseTarget: otherwise(() => doseForTarget(job), notKnown) }),
  };
}

// The yield stress of the set gel

/** The yield stress of the set gel [Pa]; its ends are the 95 % limits where trials give it. */
export interface PlanYieldStress extends Figure {
  readonly min: number;
  readonly value: number;
  readonly max: number;
  readonly basis: readonly Basis[];
}

/** One way to a yield stress. */
type Way = () => PlanYieldStress;

/**
 * The yield stress of the set gel of a run, the one that everything goes by: as stated, else as its flow curve shows it,
 * else as trials let expect at its dose; of an emulsion else between the readings along the oil fraction, else by the
 * theory of packed droplets.
 */
export function yieldStressFigure(run: Run): PlanYieldStress {
  return foundIn(run)();
}

const foundIn: (run: Run) => Cell<PlanYieldStress> = remembered((run: Run) =>
  cell(() => {
    const { charge } = gelOf(run);
    return firstOf([...waysOf(run.job, doseOfProduct(run.job), charge.shares()), ...waysOfEmulsion(charge)]);
  }),
);

/** The yield stress before anything is run, at a dose of gel former: as stated, else by the flow curve, else by trials. */
export function yieldStressOf(job: Job, dose: number = doseOfProduct(job)): PlanYieldStress {
  return firstOf(waysOf(job, dose, sharesOf(job.formula.lines)));
}

function waysOf(job: Job, dose: number, shares: ReadonlyMap<string, number>): readonly Way[] {
  const { bench } = job;
  const { source } = bench;
  const ofBench = (field: "bench-yield-stress" | "bench-flow-curve"): void => {
    if (!holdsFor(job, shares, () => true)) unknown("not-read", { field, dose });
  };
  return [
    () => {
      const value = stated(bench.yieldStress, "bench-yield-stress");
      ofBench("bench-yield-stress");
      return at(value, [{ kind: "stated", key: "bench-yield-stress", source }]);
    },
    () => {
      const value = yieldStressOfPoints(stated(bench.flowCurve, "bench-flow-curve")).value;
      ofBench("bench-flow-curve");
      return at(value, [
        { kind: "reading", key: "bench-flow-curve", source },
        { kind: "law", key: "flow-curve-fit" },
      ]);
    },
    () => {
      // Trials of a modulus say nothing of a yield stress.
      if (trialsOf(job).of !== "yield stress") unknown("not-stated", { field: "bench-yield-stress" });
      // They go along the dose, to which the carrier gives way: what has to be the bench's is the rest.
      const carriers = job.formula.lines.filter(({ carrier }) => carrier).map(({ material }) => material);
      const isRest = (key: string): boolean =>
        job.formula.materials[key]?.function !== "gel former" && !carriers.includes(key);
      if (!holdsFor(job, shares, isRest)) unknown("not-read", { field: "bench-strength-trials", dose });
      return strengthByTrials(job, dose);
    },
  ];
}

function waysOfEmulsion(charge: Charge): readonly Way[] {
  if (!charge.isEmulsion()) return [];
  const { bench } = charge.job;
  return [
    () => {
      const readings = oilLawsOf(bench).yieldStress;
      // One yield stress is a point and no line.
      if (readings.length < 2) unknown("not-stated", { field: "emulsion-thickness-yield-stress" });
      const volumeFractionOil = charge.oilFraction();
      const [then] = by("flow-curve-along-oil", () =>
        gelAlongAdditions({ additions: [{ volumeFractionOil }], yieldStress: readings }),
      );
      const oils = readings.map((reading) => reading.volumeFractionOil);
      const [min, max] = [Math.min(...oils), Math.max(...oils)];
      const beyond = {
        law: "flow-curve-along-oil",
        quantity: "volume-fraction-oil",
        value: volumeFractionOil,
        min,
        max,
      } as const;
      const value =
        then?.yieldStress ?? unknown("outside-range", { ...beyond, field: "emulsion-thickness-yield-stress" });
      return at(value, [{ kind: "reading", key: "emulsion-thickness-yield-stress", source: bench.source }]);
    },
    () => at(yieldStressByTheory(charge), [{ kind: "law", key: "packed-droplets" }]),
  ];
}

function at(value: number, basis: readonly Basis[]): PlanYieldStress {
  return { min: value, value, max: value, basis };
}

/** The first that is known. If none is, what was stated and did not hold says why, before what was not stated. */
function firstOf([way, ...others]: readonly Way[], reasons: readonly Reason[] = []): PlanYieldStress {
  if (!way) {
    const { code, ...parameters } = reasons.find((reason) => reason.code !== "not-stated") ?? notStated;
    return unknown(code, parameters);
  }
  return otherwise(way, (reason) => firstOf(others, [...reasons, reason]));
}

const notStated: Reason = { code: "not-stated", field: "bench-yield-stress" };

/** Whether the bench measured such a composition, as far as its materials count. */
function holdsFor(
  { bench, benchLines }: Job,
  shares: ReadonlyMap<string, number>,
  counts: (material: string) => boolean,
): boolean {
  const there = sharesOf(benchLines);
  const keys = [...new Set([...shares.keys(), ...there.keys()])].filter(counts);
  const { tolerance = usualTolerance } = bench;
  return keys.every((key) => Math.abs((shares.get(key) ?? 0) - (there.get(key) ?? 0)) <= tolerance);
}

function sharesOf(lines: Job["benchLines"]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const { material, massFraction } of lines) shares.set(material, (shares.get(material) ?? 0) + massFraction);
  return shares;
}

// Setting and dissolving

/** A temperature at which the finished gel sets or dissolves, by its dose. */
export interface PlanGelPoint {
  readonly what: "sets" | "dissolves";
  /** Gel former in the finished gel [0 to 1]. */
  readonly dose: number;
  /** [°C]. */
  readonly temperature: number;
  /** Measured at this dose, read between doses, or computed by ideal solubility. */
  readonly by: ByDose["by"];
  readonly basis: Basis;
  /** 95 % limits [°C] of the line through all doses, if it was read between them and there are four or more. */
  readonly line?: Estimate;
}

/** The lines through the doses. */
const linesOf: (doses: Doses) => Readonly<Record<"setsAt" | "dissolvesAt", Cell<GelPointLine>>> = remembered(
  (doses) => {
    const lineOf = (which: "setsAt" | "dissolvesAt"): Cell<GelPointLine> =>
      cell(() =>
        by("setting-line", () =>
          fitGelPoint({ points: doses.map((point) => ({ dose: point.gelFormer, temperature: point[which] })) }),
        ),
      );
    return { setsAt: lineOf("setsAt"), dissolvesAt: lineOf("dissolvesAt") };
  },
);

/** Where the finished gel sets and dissolves, as far as that is known. */
export function gelPointsOf(run: Run): readonly PlanGelPoint[] {
  return otherwise(
    () => {
      const { charge } = gelOf(run);
      return [...gelPoint(charge, "setsAt", "sets"), ...gelPoint(charge, "dissolvesAt", "dissolves")];
    },
    () => [],
  );
}

function gelPoint(
  charge: Charge,
  which: "setsAt" | "dissolvesAt",
  what: PlanGelPoint["what"],
): readonly PlanGelPoint[] {
  const dose = charge.dose();
  const { doses = [] } = charge.job.bench;
  return otherwise(
    () => {
      const found = which === "setsAt" ? charge.setting() : charge.dissolving();
      const hasLine = found.by === "between" && doses.length >= 4;
      const line = hasLine
        ? where("line", () => {
            const fitted = linesOf(doses)[which]();
            return by("setting-line", () => gelPointAtDose({ line: fitted, dose }));
          })
        : {};
      return [{ what, dose, ...found, ...line }];
    },
    () => [],
  );
}

// Notes

/** What is to be said of the gel's strength without a verdict: a code, and what numbers there are. */
export interface StrengthNote {
  readonly code: NoteCode;
  /** [Pa]. */
  readonly yieldStress?: number;
  /** At the wall of the nozzle [-]. */
  readonly ohnesorge?: number;
}

/** A gel that is to be sprayed: no number says whether one with a yield stress breaks up, and without one not how fine. */
export function strengthNotes(run: Run): readonly StrengthNote[] {
  const { nozzle } = run.job.pack ?? {};
  const { spray } = nozzle ?? {};
  if (!nozzle || !spray) return [];
  const held = otherwise(
    () => yieldStressFigure(run).value,
    () => 0,
  );
  if (held > 0) return [{ code: "atomises-by-trial", yieldStress: held }];
  const ohnesorge = (): number => {
    const { best } = flowChoiceOf(stated(run.job.bench.flowCurve, "bench-flow-curve"))();
    const { shearRate } = throughNozzle(run.job);
    const density = stated(run.scaled.density, "material-density");
    const { diameter } = nozzle;
    return by("ohnesorge", () => ohnesorgeNumber({ curve: best.curve, shearRate, density, ...spray, diameter }));
  };
  return [{ code: "atomises-by-trial", ...where("ohnesorge", ohnesorge) }];
}

function notKnown(reason: Reason): NotKnown {
  return { notKnown: reason };
}
