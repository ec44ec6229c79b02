import { packedStrengthBand } from "../../gel/index.js";
import { bandAround } from "../../laws/index.js";
import { gelAlongAdditions } from "../../mixing/index.js";
import { maxOf, minOf } from "../../numeric/extremes.js";
import type { Charge } from "../charge.js";
import { holdsFor, holdsForEmulsion, sharesOf } from "../composition.js";
import type { Basis } from "../figure.js";
import type { Job } from "../job.js";
import { oilLawsOf } from "../oil-laws.js";
import type { Run } from "../state.js";
import { by, otherwise, type Reason, remembered, stated, unknown } from "../unknown.js";
import { gelOf, yieldStressByTheory } from "./droplets.js";
import { yieldStressOfPoints } from "./flow.js";
import { doseOfProduct, type PlanYieldStress, strengthByTrials, trialsOf } from "./trials.js";

/** One way to a yield stress. */
type Way = () => PlanYieldStress;

/**
 * The yield stress of the set gel of a run, the one that everything goes by: as stated, else as its flow curve shows it,
 * else as trials let expect at its dose; of an emulsion else between the readings along the oil fraction, else by the
 * theory of packed droplets.
 */
export const yieldStressFigure: (run: Run) => PlanYieldStress = remembered((run: Run) => {
  const { charge } = gelOf(run);
  return firstOf([...waysOf(run.job, doseOfProduct(run.job), charge.shares()), ...waysOfEmulsion(charge)]);
});

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
      return strengthByTrials(job, dose, shares);
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
      if (!holdsForEmulsion(charge.job)) unknown("not-read", { field: "emulsion-thickness-yield-stress" });
      const volumeFractionOil = charge.oilFraction();
      const [then] = by("flow-curve-along-oil", () =>
        gelAlongAdditions({ additions: [{ volumeFractionOil }], yieldStress: readings }),
      );
      const oils = readings.map((reading) => reading.volumeFractionOil);
      const [min, max] = [minOf(oils), maxOf(oils)];
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
    () => ({
      ...bandAround({ value: yieldStressByTheory(charge), band: packedStrengthBand }),
      basis: [{ kind: "law", key: "packed-droplets" }],
    }),
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
