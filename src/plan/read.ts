import { batchFrom } from "../batch/read.js";
import { aboveZero, type Draft, Findings, join } from "../formula/document.js";
import type { Formula } from "../formula/index.js";
import { formulaFrom } from "../formula/read.js";
import { readColdBench } from "./cold/bench.js";
import type { Bench, Job, Pack, Process } from "./job.js";
import { readVessel } from "./read-vessel.js";
import { readViscosity } from "./read-viscosity.js";
import { jobSchema } from "./schema.js";
import { readSteps } from "./steps.js";
import { readAir, readNozzle, readStrength } from "./strength/read.js";
import type { BenchDocument, PackDocument, ProcessDocument } from "./types.js";

/** Distance below a flash point and above a setting temperature, where the process names none: common practice, no source. */
const usualDistances = { flashPointMargin: 30, settingMargin: 2 };

/** Reads a job document whole: every fault of every part is told at once. */
export function readJob(document: unknown): Job {
  const findings = new Findings();
  const draft = findings.shape(jobSchema, document);
  const formula = formulaFrom(draft?.formula ?? {}, "formula", findings);
  const batch = batchFrom(draft?.batch ?? {}, "batch", findings);
  const { phases } = formula;
  const job = {
    formula,
    batch,
    bench: readBench(draft?.bench ?? {}, formula, findings),
    vessel: readVessel(draft?.vessel ?? {}, findings),
    process: readProcess(draft?.process ?? {}, phases, draft?.vessel?.jacket !== undefined, findings),
    pack: draft?.pack && readPack(draft.pack, findings),
  };
  findings.settle();
  return job as Job;
}

function readBench(draft: Draft<BenchDocument>, { phases, materials }: Formula, findings: Findings): Bench {
  const at = (...keys: (string | number)[]): string => keys.reduce(join, "bench");
  const { oilPerGelFormer: ratio } = draft;
  if (ratio?.min !== undefined && ratio.max !== undefined && ratio.min > ratio.max)
    findings.note(at("oilPerGelFormer", "min"), ratio.min, `no more than ${ratio.max}, the greatest`);
  return {
    source: draft.source ?? "",
    oilPerGelFormer: ratio && { min: ratio.min ?? Number.NaN, max: ratio.max ?? Number.NaN },
    doses: (draft.doses ?? []).map((point, i) => ({
      dose: findings.quantity(point?.gelFormer, "massFraction", at("doses", i, "gelFormer"), aboveZero),
      temperatureSetting: findings.quantity(point?.setsAt, "temperature", at("doses", i, "setsAt")),
      temperatureDissolving: findings.quantity(point?.dissolvesAt, "temperature", at("doses", i, "dissolvesAt")),
    })),
    viscosities: (draft.viscosities ?? []).flatMap((readings, i) =>
      readings ? [readViscosity(readings, at("viscosities", i), phases, findings)] : [],
    ),
    stirrableViscosityMax: findings.optional(
      draft.stirrableViscosityMax,
      "dynamicViscosity",
      at("stirrableViscosityMax"),
      aboveZero,
    ),
    yieldStress: findings.optional(draft.yieldStress, "pressure", at("yieldStress"), 0),
    ...readStrength(draft, findings),
    settlingAllowed: findings.optional(draft.settlingAllowed, "length", at("settlingAllowed"), aboveZero),
    emulsion:
      draft.emulsion && readColdBench(draft.emulsion, new Set(Object.keys(materials)), at("emulsion"), findings),
  };
}

function readProcess(
  draft: Draft<ProcessDocument>,
  phases: readonly string[],
  hasJacket: boolean,
  findings: Findings,
): Process {
  const distance = (key: keyof typeof usualDistances): number =>
    findings.optional(draft[key], "temperatureDifference", `process.${key}`, 0) ?? usualDistances[key];
  const temperatureRoom = findings.quantity(draft.room, "temperature", "process.room");
  const { route = "hot" } = draft;
  return {
    name: draft.name ?? "",
    route,
    temperatureRoom,
    flashPointMargin: distance("flashPointMargin"),
    settingMargin: distance("settingMargin"),
    airVelocity: findings.optional(draft.airVelocity, "velocity", "process.airVelocity", aboveZero),
    air: draft.air && readAir(draft.air, phases, findings),
    workingDay: draft.workingDay && {
      length: findings.quantity(draft.workingDay.length, "time", "process.workingDay.length", 60),
      vessels: draft.workingDay.vessels ?? 1,
      cleaning: findings.optional(draft.workingDay.cleaning, "time", "process.workingDay.cleaning", 0) ?? 0,
    },
    steps: readSteps(draft.steps ?? [], { route, temperatureRoom, phases, hasJacket }, findings),
  } as Process;
}

function readPack(draft: Draft<PackDocument>, findings: Findings): Pack {
  const { content } = draft;
  const at = (key: string): string => `pack.content.${key}`;
  return {
    name: draft.name ?? "",
    conductance: findings.optional(draft.heatLoss, "thermalConductance", "pack.heatLoss", aboveZero),
    content: content && {
      diameter: findings.quantity(content.diameter, "length", at("diameter"), aboveZero),
      height: findings.quantity(content.height, "length", at("height"), aboveZero),
      coefficient: findings.quantity(content.coefficient, "heatTransferCoefficient", at("coefficient"), aboveZero),
      source: content.source ?? "",
    },
    nozzle: draft.nozzle && readNozzle(draft.nozzle, findings),
  };
}
