import { type Draft, type Findings, join } from "../formula/document.js";
import type { Formula, FormulaLine } from "../formula/index.js";
import { shares } from "../formula/shares.js";
import { viscosityFunction } from "../laws/index.js";
import type { Bench } from "./documents/bench.js";
import { checkStirrer } from "./read-stirrer.js";
import { viscosityLawOf } from "./readings.js";
import { cylinderReadings, type Taken } from "./taken.js";

/** What of the bench needs several fields; and the lines of the formula that was on it. */
export function checkBench(draft: Draft<Bench>, formula: Formula, findings: Findings): readonly FormulaLine[] {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, "bench");
  const { phases, materials } = formula;
  const { oilPerGelFormer: ratio, emulsion, viscosities = [], inUse } = draft;
  if (ratio?.min !== undefined && ratio.max !== undefined && ratio.min > ratio.max)
    findings.note(at("oilPerGelFormer", "min"), ratio.min, `no more than ${ratio.max}, the max`);
  viscosities.forEach((reading, i) => {
    if (!reading) return;
    phasesKnown(reading.phases ?? [], at("viscosities", i, "phases"), phases, findings);
    checkReading(reading, at("viscosities", i), findings);
    if (reading.flowIndex !== undefined && reading.shearRate === 0)
      findings.note(at("viscosities", i, "shearRate"), "0", "a quantity above zero", "out-of-range", {
        value: 0,
        min: 0,
      });
  });
  if (inUse) checkInUse(inUse, findings);
  if (emulsion) checkEmulsion(emulsion, phases, materials, findings);
  return benchLinesOf(draft, formula, findings);
}

function checkInUse(
  { temperature, transmittanceMin, opened }: Draft<NonNullable<Bench["inUse"]>>,
  findings: Findings,
): void {
  const at = (...keys: string[]): string => keys.reduce<string>(join, "bench.inUse");
  if (temperature?.min !== undefined && temperature.max !== undefined && temperature.min > temperature.max)
    findings.note(at("temperature", "min"), temperature.min, `no more than ${temperature.max}, the max`);
  for (const [value, path] of [
    [transmittanceMin, at("transmittanceMin")],
    [opened?.relativeHumidity, at("opened", "relativeHumidity")],
  ] as const)
    if (value === 0 || value === 1) findings.note(path, value, "between 0 and 1");
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
      ["formula.materials"],
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

/** Readings, a law or torques as they were taken: one of the three, with the shear rate unless that follows. */
function checkReading(
  reading: NonNullable<NonNullable<Draft<Bench>["viscosities"]>[number]>,
  at: string,
  findings: Findings,
): void {
  if (findings.holds(at)) return;
  const given = (["readings", "law", "taken"] as const).filter((key) => reading[key] !== undefined);
  const [form] = given;
  if (form === undefined || given.length > 1)
    findings.note(at, given.join(" and ") || "neither readings nor a law", "one of readings, law and taken");
  else if (form === "taken" && reading.shearRate !== undefined)
    findings.note(join(at, "shearRate"), "a shear rate", "none: it follows from the cylinder and its speed");
  else if (form !== "taken" && reading.shearRate === undefined)
    findings.note(join(at, "shearRate"), "nothing", "the shear rate at which it was measured", "missing");
  else if (
    form !== "taken" ||
    findings.attempt(() => cylinderReadings(reading.taken as Taken), join(join(at, "taken"), "cylinder"))
  )
    findings.attempt(
      () => viscosityFunction(viscosityLawOf(reading as never), { beyond: "extend" }),
      form === "taken" ? join(join(at, form), "readings") : join(at, form),
    );
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
        ["formula.phases"],
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
        ["formula.materials"],
      );
  const strengthOf = (line: { readonly as?: string | undefined; readonly material?: string | undefined }): number =>
    line.as === "active" ? (formula.materials[line.material ?? ""]?.strength ?? 1) : 1;
  const { massFractions, rest } = shares(entries, join(path, "phases"), strengthOf, findings);
  return entries.map(({ line, phase }, i) => ({
    material: line?.material ?? "",
    phase,
    massFraction: massFractions[i] as number,
    carrier: i === rest,
  }));
}
