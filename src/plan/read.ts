import { batchFrom } from "../batch/read.js";
import { batch as batchEntry } from "../batch/schema.js";
import { type Draft, Findings, join } from "../formula/document.js";
import { type Entry, exactly, fields, listOf, maybe, text } from "../formula/entry.js";
import type { Formula, FormulaLine } from "../formula/index.js";
import { formulaFrom } from "../formula/read.js";
import type { Read } from "../formula/read-type.js";
import { formula as formulaEntry } from "../formula/schema.js";
import { shares } from "../formula/shares.js";
import { viscosityFunction } from "../laws/index.js";
import { volumeAtLevel } from "../mixing/index.js";
import { bench } from "./documents/bench.js";
import { type ProcessFigures, pack, processFigures } from "./documents/process.js";
import { vessel } from "./documents/vessel.js";
import type { Bench, Job, JobFigures, Stirrer, Vessel } from "./job.js";
import { lossOf, viscosityLawOf } from "./setting.js";
import { kindOf, type Step, type StepDocument, step } from "./steps/index.js";

/** A process as data. */
export interface ProcessDocument extends ProcessFigures {
  readonly steps: readonly StepDocument[];
}

/** One job: everything that a batch sheet is made from. */
export interface JobDocument extends JobFigures {
  readonly process: ProcessDocument;
}

/** A job that was read, with its steps. */
export interface ReadJob {
  readonly job: Job;
  readonly steps: readonly Step[];
}

const process: Entry<ProcessDocument> = fields<ProcessDocument>({ ...processFigures, steps: listOf(step, 1) });

/**
 * Reads a job.
 *
 * @internal
 */
export const job: Entry<JobDocument> = fields<JobDocument>({
  version: exactly(1),
  $schema: maybe("identity", text),
  formula: formulaEntry,
  bench,
  batch: batchEntry,
  vessel,
  process,
  pack: maybe("identity", pack),
});

/** Reads a job document whole: all faults of all parts are reported together, each with its location. */
export function readJob(document: unknown): ReadJob {
  const findings = new Findings();
  const draft: Draft<Read<JobDocument>> = findings.read(job, document) ?? {};
  const formula = formulaFrom(draft.formula ?? {}, "formula", findings);
  const batch = batchFrom(draft.batch ?? {}, "batch", findings);
  const benchLines = checkBench(draft.bench ?? {}, formula, findings);
  checkVessel(draft.vessel ?? {}, findings);
  checkProcess(draft.process ?? {}, formula, draft.vessel?.jacket !== undefined, findings);
  findings.settle();
  const { steps, ...figures } = draft.process as Read<ProcessDocument>;
  return {
    job: {
      formula,
      benchLines,
      bench: draft.bench as Bench,
      batch,
      vessel: draft.vessel as Vessel,
      process: figures,
      ...(draft.pack && { pack: draft.pack as NonNullable<Job["pack"]> }),
    },
    steps,
  };
}

/** What of the bench needs several fields; and the lines of the formula that was on it. */
function checkBench(draft: Draft<Bench>, formula: Formula, findings: Findings): readonly FormulaLine[] {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, "bench");
  const { phases, materials } = formula;
  const { oilPerGelFormer: ratio, emulsion, viscosities = [] } = draft;
  if (ratio?.min !== undefined && ratio.max !== undefined && ratio.min > ratio.max)
    findings.note(at("oilPerGelFormer", "min"), ratio.min, `no more than ${ratio.max}, the max`);
  viscosities.forEach((reading, i) => {
    if (!reading) return;
    phasesKnown(reading.phases ?? [], at("viscosities", i, "phases"), phases, findings);
    if ((reading.readings === undefined) === (reading.law === undefined) && !findings.holds(at("viscosities", i)))
      findings.note(
        at("viscosities", i),
        reading.readings ? "readings and a law" : "neither readings nor a law",
        "one of the two",
      );
    else if (!findings.holds(at("viscosities", i)))
      findings.attempt(
        () => viscosityFunction(viscosityLawOf(reading as never), { beyond: "extend" }),
        at("viscosities", i, reading.law ? "law" : "readings"),
      );
    if (reading.flowIndex !== undefined && reading.shearRate === 0)
      findings.note(at("viscosities", i, "shearRate"), "0", "a quantity above zero", "out-of-range", {
        value: 0,
        min: 0,
      });
  });
  if (emulsion) checkEmulsion(emulsion, phases, materials, findings);
  return benchLinesOf(draft, formula, findings);
}

function checkEmulsion(
  draft: Draft<NonNullable<Bench["emulsion"]>>,
  phases: readonly string[],
  materials: Formula["materials"],
  findings: Findings,
): void {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, "bench.emulsion");
  const { outerPhase, volumeFractionOilMax, surfactant, thickness, stirring } = draft;
  if (outerPhase !== undefined) phasesKnown([outerPhase], at("outerPhase"), phases, findings);
  if (volumeFractionOilMax === 1)
    findings.note(at("volumeFractionOilMax"), "100 % v/v", "below 100 % v/v", "out-of-range", { value: 1, max: 1 });
  if (surfactant?.material !== undefined && !Object.hasOwn(materials, surfactant.material))
    findings.unknownName(
      at("surfactant", "material"),
      surfactant.material,
      Object.keys(materials),
      "the key of a material of the formula",
    );
  for (const key of ["additionShareMax", "incorporationTime"] as const) rising(draft[key] ?? [], at(key), findings);
  rising(thickness?.readings ?? [], at("thickness", "readings"), findings);
  thickness?.readings?.forEach((reading, i) => {
    const { yieldStress, viscosity } = reading ?? {};
    if (yieldStress === undefined || viscosity === undefined || thickness.shearRate === undefined) return;
    const stress = thickness.shearRate * viscosity;
    if (yieldStress >= stress)
      findings.note(
        at("thickness", "readings", i, "yieldStress"),
        `${yieldStress} Pa`,
        `below ${stress} Pa, the stress at which its viscosity was read`,
      );
  });
  if (!stirring?.stirrer) return;
  if (stirring.stirrer.speed === undefined)
    findings.note(at("stirring", "stirrer", "speed"), undefined, "the speed that it had", "missing");
  checkStirrer(stirring.stirrer, { diameter: stirring.diameter }, at("stirring", "stirrer"), findings);
}

function rising(
  entries: readonly ({ readonly oil?: number | undefined } | undefined)[],
  path: string,
  findings: Findings,
): void {
  entries.forEach((entry, i) => {
    const before = entries[i - 1]?.oil;
    if (entry?.oil !== undefined && before !== undefined && entry.oil <= before)
      findings.note(join(join(path, i), "oil"), `${entry.oil}`, "more oil than in the entry before");
  });
}

function phasesKnown(
  names: readonly (string | undefined)[],
  path: string,
  phases: readonly string[],
  findings: Findings,
): void {
  names.forEach((name, i) => {
    if (name !== undefined && !phases.includes(name))
      findings.unknownName(
        names.length > 1 || path.endsWith("phases") ? join(path, i) : path,
        name,
        phases,
        "the name of a phase of the formula",
      );
  });
}

/** The lines of the formula on the bench: the job's own, unless the bench states another. */
function benchLinesOf({ formula: own }: Draft<Bench>, formula: Formula, findings: Findings): readonly FormulaLine[] {
  if (!own) return formula.lines;
  const path = join("bench", "formula");
  const entries = (own.phases ?? []).flatMap((phase, i) =>
    (phase?.lines ?? []).map((line, j) => ({
      line,
      phase: phase?.name ?? "",
      path: join(join(join(join(path, "phases"), i), "lines"), j),
    })),
  );
  for (const { line, path: place } of entries)
    if (line?.material !== undefined && !Object.hasOwn(formula.materials, line.material))
      findings.unknownName(
        join(place, "material"),
        line.material,
        Object.keys(formula.materials),
        "the key of a material of the job's formula",
      );
  const strengthOf = (line: { readonly as?: string | undefined; readonly material?: string | undefined }): number =>
    line.as === "active" ? (formula.materials[line.material ?? ""]?.strength ?? 1) : 1;
  const { massFractions, rest } = shares(entries, join(path, "phases"), strengthOf, findings);
  return entries.map(({ line, phase }, i) => ({
    material: line?.material ?? "",
    phase,
    massFraction: massFractions[i] ?? 0,
    carrier: i === rest,
  }));
}

/** What of a vessel needs several fields. */
function checkVessel(draft: Draft<Vessel>, findings: Findings): void {
  const at = (...keys: string[]): string => keys.reduce(join, "vessel");
  const { workingVolume, diameter, bottom, baffles, heater, heatedWall, jacket, stirrer, coolingCurve } = draft;
  if (workingVolume?.min !== undefined && workingVolume.max !== undefined && workingVolume.min > workingVolume.max)
    findings.note(
      at("workingVolume", "min"),
      `${workingVolume.min} m³`,
      `no more than ${workingVolume.max} m³, the max`,
    );
  if (bottom && diameter !== undefined && !findings.holds(at("bottom")))
    findings.attempt(() => volumeAtLevel({ vessel: { diameter, bottom: bottom as never }, level: 0 }));
  if (baffles?.width !== undefined && diameter !== undefined && baffles.width >= diameter / 2)
    findings.note(at("baffles", "width"), `${baffles.width} m`, "less than half the diameter of the vessel");
  if (stirrer) checkStirrer(stirrer, draft, at("stirrer"), findings);
  const loss = ["heatLoss", "coolingCurve", "surfaces"].filter((key) => draft[key as keyof typeof draft] !== undefined);
  if (loss.length > 1) findings.note("vessel", loss.join(" and "), "one of heatLoss, coolingCurve and surfaces");
  else if (coolingCurve && !findings.holds("vessel"))
    findings.attempt(() => lossOf(draft as Vessel), at("coolingCurve", "readings"));
  if (heater?.temperatureMax !== undefined && !heatedWall)
    findings.note(
      at("heater", "temperatureMax"),
      `${heater.temperatureMax} °C`,
      "a heatedWall beside it, through which the heat passes",
    );
  if (heatedWall?.coefficient !== undefined && heatedWall.source === undefined)
    findings.note(at("heatedWall", "source"), "nothing", "where the coefficient comes from", "missing");
  if (!jacket) return;
  const { conductance, area, insideCoefficient, outsideCoefficient, source } = jacket;
  if (conductance === undefined && (area === undefined || outsideCoefficient === undefined))
    findings.note(
      at("jacket"),
      "no conductance",
      "a conductance, or area and outsideCoefficient to find it from",
      "missing",
    );
  if ((insideCoefficient ?? outsideCoefficient) !== undefined && source === undefined)
    findings.note(at("jacket", "source"), "nothing", "where the coefficients come from", "missing");
}

/** Lengths of its shape, and which kinds of stirrer have them. */
const shapeFields: { readonly [Kind in Stirrer["kind"]]?: readonly string[] } = {
  anchor: ["armHeight"],
  paddle: ["blades", "bladeWidth"],
  "flat-blade turbine": ["blades", "bladeWidth"],
  "pitched-blade turbine": ["blades", "bladeAngle", "bladeWidth"],
};

/** The stirrer has to fit into its vessel, as far as that is stated. */
function checkStirrer(
  draft: Draft<Stirrer>,
  { diameter, baffles }: Draft<Pick<Vessel, "diameter" | "baffles">>,
  path: string,
  findings: Findings,
): void {
  const { kind, diameter: swept } = draft;
  if (swept !== undefined && diameter !== undefined) {
    const wide = `${swept} m`;
    if (swept > diameter) findings.note(join(path, "diameter"), wide, "no more than the diameter of the vessel");
    else if (baffles?.width !== undefined && swept > diameter - 2 * baffles.width)
      findings.note(join(path, "diameter"), wide, "no more than the room between the baffles");
  }
  if (kind === undefined) return;
  for (const key of ["blades", "bladeAngle", "bladeWidth", "armHeight"] as const)
    if (draft[key] !== undefined && !(shapeFields[kind] ?? []).includes(key))
      findings.note(
        join(path, key),
        `${draft[key]}`,
        `no such field for ${kind}: state its power as laminarPowerConstant and powerNumber`,
        "unknown-field",
        { name: key },
      );
}

/** What no kettle can do: hold without heat, charge what is not there, go on after filling. Whether an order is wise is asked of the plan. */
function checkProcess(
  draft: Draft<Read<ProcessDocument>>,
  { phases }: Formula,
  hasJacket: boolean,
  findings: Findings,
): void {
  const { steps = [], air } = draft;
  if (air?.vacuum?.afterPhase !== undefined && !phases.includes(air.vacuum.afterPhase))
    findings.unknownName(
      "process.air.vacuum.afterPhase",
      air.vacuum.afterPhase,
      phases,
      "the name of a phase of the formula",
    );
  const charged = new Set<string>();
  let onHeat = false;
  let filled = false;
  const sound = steps.filter((one) => one?.do !== undefined);
  steps.forEach((one, i) => {
    if (one?.do === undefined) return;
    const path = join("process.steps", i);
    const needs = (holds: boolean, expected: string): void => {
      if (!holds) findings.note(path, `"${one.do}"`, expected);
    };
    const kind = kindOf(one as Step);
    const need = (name: (typeof kind.needs)[number]): boolean => kind.needs.includes(name);
    if (need("charged")) needs(charged.size > 0, "a charge before it: the vessel is empty");
    if (need("on-heat")) needs(onHeat, 'a "heat" before it');
    if (need("off-heat")) needs(!onHeat, 'a "take off the heat" before it');
    if (need("not-filled")) needs(!filled, 'only "rest" after "fill"');
    if ("with" in one && one.with === "jacket") needs(hasJacket, "a jacket described with the vessel");
    if ("phase" in one && one.phase !== undefined) {
      if (!phases.includes(one.phase))
        findings.unknownName(join(path, "phase"), one.phase, phases, "the name of a phase of the formula");
      if (charged.has(one.phase))
        findings.note(join(path, "phase"), one.phase, "a phase that was not charged before", "duplicate");
      charged.add(one.phase);
    }
    onHeat = kind.onHeat ?? onHeat;
    filled ||= one.do === "fill";
  });
  // Reported only if every step could be read, so that one fault does not breed another.
  if (sound.length < steps.length || steps.length === 0) return;
  const forgotten = phases.filter((phase) => !charged.has(phase));
  if (forgotten.length > 0)
    findings.note(
      "process.steps",
      `no charge of ${forgotten.join(", ")}`,
      "every phase of the formula charged once",
      "missing",
    );
  if (!filled) findings.note("process.steps", 'no "fill"', 'a "fill" at the end', "missing");
}
