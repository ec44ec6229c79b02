import { aboveZero, type Draft, type Findings, join } from "../../formula/document.js";
import { shearRatesInUse } from "../../rheology/index.js";
import type { Air, FlowPoints, Nozzle, StrengthBench, StrengthTrials } from "./job.js";
import type {
  AirDocument,
  FlowCurveDocument,
  IdealSolubilityDocument,
  NozzleDocument,
  StrengthTrialsDocument,
} from "./types.js";

/** Uses that a sheet tells where the bench names none of its own. */
const usual = ["pouring", "brushing on", "rubbing in"];

/** Second pass over what the bench says of strength and flow. */
export function readStrength(
  draft: Draft<{
    readonly strengthTrials?: StrengthTrialsDocument;
    readonly flowCurve?: FlowCurveDocument;
    readonly idealSolubility?: IdealSolubilityDocument;
  }>,
  findings: Findings,
): StrengthBench {
  const { strengthTrials, flowCurve, idealSolubility } = draft;
  return {
    strengthTrials: strengthTrials && readTrials(strengthTrials, "bench.strengthTrials", findings),
    flowCurve: flowCurve && readFlow(flowCurve, "bench.flowCurve", findings),
    idealSolubility: idealSolubility && readPair(idealSolubility, "bench.idealSolubility", findings),
  };
}

function readTrials(draft: Draft<StrengthTrialsDocument>, at: string, findings: Findings): StrengthTrials {
  const place = (i: number, key: string): string => join(join(join(at, "trials"), i), key);
  return {
    of: draft.of ?? "yield stress",
    trials: (draft.trials ?? []).map((trial, i) => ({
      dose: findings.quantity(trial?.gelFormer, "massFraction", place(i, "gelFormer"), aboveZero),
      strength: findings.quantity(trial?.strength, "pressure", place(i, "strength"), aboveZero),
    })),
    threshold: findings.optional(draft.threshold, "massFraction", join(at, "threshold"), 0),
    target: findings.optional(draft.target, "pressure", join(at, "target"), aboveZero),
  };
}

function readFlow(draft: Draft<FlowCurveDocument>, at: string, findings: Findings): FlowPoints {
  const place = (list: string, i: number, key: string): string => join(join(join(at, list), i), key);
  return {
    temperature: findings.quantity(draft.temperature, "temperature", join(at, "temperature")),
    points: (draft.points ?? []).map((point, i) => ({
      shearRate: findings.quantity(point?.shearRate, "shearRate", place("points", i, "shearRate"), aboveZero),
      stress: findings.quantity(point?.stress, "pressure", place("points", i, "stress"), aboveZero),
    })),
    yieldStressBy: draft.yieldStressBy,
    uses: draft.uses
      ? draft.uses.map((one, i) => ({
          use: one?.use ?? "",
          shearRate: findings.quantity(one?.shearRate, "shearRate", place("uses", i, "shearRate"), aboveZero),
        }))
      : shearRatesInUse.filter(({ use }) => usual.includes(use)),
  };
}

function readPair(
  draft: Draft<IdealSolubilityDocument>,
  at: string,
  findings: Findings,
): StrengthBench["idealSolubility"] {
  const molarMass = (key: "molarMassGelFormer" | "molarMassOil"): number =>
    findings.quantity(draft[key], "molarMass", join(at, key), aboveZero);
  return {
    temperatureMelting: findings.quantity(draft.meltingPoint, "temperature", join(at, "meltingPoint")),
    heatOfFusion: findings.quantity(draft.heatOfFusion, "molarEnergy", join(at, "heatOfFusion"), aboveZero),
    molarMassGelFormer: molarMass("molarMassGelFormer"),
    molarMassOil: molarMass("molarMassOil"),
  };
}

/** Second pass over the air in the melt. */
export function readAir(draft: Draft<AirDocument>, phases: readonly string[], findings: Findings): Air {
  const at = (...keys: string[]): string => keys.reduce(join, "process.air");
  const { vacuum } = draft;
  if (vacuum?.afterPhase !== undefined && !phases.includes(vacuum.afterPhase))
    findings.note(at("vacuum", "afterPhase"), vacuum.afterPhase, "the name of a phase of the formula");
  const air = findings.optional(vacuum?.air, "volumeFraction", at("vacuum", "air"), 0);
  if (air !== undefined && air >= 1) findings.note(at("vacuum", "air"), vacuum?.air, "less than the whole");
  return {
    diameter: findings.quantity(draft.bubbleDiameter, "length", at("bubbleDiameter"), aboveZero),
    surface: draft.surface,
    clearWithin: findings.optional(draft.clearWithin, "time", at("clearWithin"), aboveZero),
    vacuum: vacuum && {
      afterPhase: vacuum.afterPhase ?? "",
      pressure: findings.quantity(vacuum.pressure, "pressure", at("vacuum", "pressure"), aboveZero),
      air: air ?? Number.NaN,
      rim: findings.quantity(vacuum.rim, "length", at("vacuum", "rim"), aboveZero),
    },
  };
}

/** Second pass over what the gel is pressed through in use. */
export function readNozzle(draft: Draft<NozzleDocument>, findings: Findings): Nozzle {
  const at = (...keys: string[]): string => keys.reduce(join, "pack.nozzle");
  const volume = findings.quantity(draft.volume, "volume", at("volume"), aboveZero);
  return {
    diameter: findings.quantity(draft.diameter, "length", at("diameter"), aboveZero),
    flowRate: volume / findings.quantity(draft.within, "time", at("within"), aboveZero),
    surfaceTension: findings.optional(
      draft.spray?.surfaceTension,
      "surfaceTension",
      at("spray", "surfaceTension"),
      aboveZero,
    ),
  };
}
