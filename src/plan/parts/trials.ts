import { type DoseResponse, doseForStrength, type Estimate, fitDoseResponse, strengthAtDose } from "../../gel/index.js";
import { holdsAlongDose, sharesOf } from "../composition.js";
import type { Basis, Figure, NotKnown } from "../figure.js";
import type { Job } from "../job.js";
import { by, orNotKnown, remembered, stated, unknown } from "../unknown.js";

type StrengthTrials = NonNullable<Job["bench"]["strengthTrials"]>;

/** Gel former in the product [0 to 1]. */
export function doseOfProduct({ formula }: Job): number {
  return formula.lines.reduce(
    (sum, { material, massFraction }) =>
      sum + (formula.materials[material]?.function === "gel former" ? massFraction : 0),
    0,
  );
}

/** The yield stress of the set gel [Pa]; its ends are the 95 % limits where trials give it. */
export interface PlanYieldStress extends Figure {
  readonly min: number;
  readonly value: number;
  readonly max: number;
  readonly basis: readonly Basis[];
}

/** The trials as a power of the dose above a threshold. */
const doseResponseOf: (trials: StrengthTrials) => DoseResponse = remembered(({ trials, threshold }) =>
  by(
    "dose-response",
    () =>
      fitDoseResponse({
        trials: trials.map(({ gelFormer: dose, strength }) => ({ dose, strength })),
        ...(threshold !== undefined && { threshold }),
      }),
    { field: "bench-strength-trials" },
  ),
);

export function trialsOf({ bench }: Job): StrengthTrials {
  return stated(bench.strengthTrials, "bench-strength-trials");
}

/** What the trials rest on. */
function basisOfTrials({ bench }: Job): readonly Basis[] {
  return [
    { kind: "reading", key: "bench-strength-trials", source: bench.source },
    { kind: "law", key: "dose-response" },
  ];
}

/** The strength along the dose, as trials found it: in the same rest, to which only the carrier gives way. */
function doseResponseIn(job: Job, shares: ReadonlyMap<string, number> = sharesOf(job.formula.lines)): DoseResponse {
  const trials = trialsOf(job);
  if (!holdsAlongDose(job, shares)) unknown("not-read", { field: "bench-strength-trials", dose: doseOfProduct(job) });
  return doseResponseOf(trials);
}

/** The strength that trials let expect at a dose [Pa], with its 95 % limits. */
function expectedStrength(job: Job, dose: number = doseOfProduct(job), shares?: ReadonlyMap<string, number>): Estimate {
  const fit = doseResponseIn(job, shares);
  return by("dose-response", () => strengthAtDose({ fit, dose }), { field: "bench-strength-trials", dose });
}

/** The same as a figure, whatever strength the trials measured. */
export function strengthByTrials(job: Job, dose?: number, shares?: ReadonlyMap<string, number>): PlanYieldStress {
  const { min, value, max } = expectedStrength(job, dose, shares);
  return { min, value, max, basis: basisOfTrials(job) };
}

/** The dose for the strength that is wanted [0 to 1], with its 95 % limits. */
export function doseForTarget(job: Job): Estimate {
  const strength = stated(trialsOf(job).target, "bench-strength-trials");
  const fit = doseResponseIn(job);
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
    threshold: orNotKnown(() => doseResponseOf(trials).threshold),
    dose: doseOfProduct(job),
    expected: orNotKnown(() => expectedStrength(job)),
    ...(target !== undefined && { target, doseTarget: orNotKnown(() => doseForTarget(job)) }),
  };
}
