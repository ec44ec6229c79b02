import { aboveZero, type Draft, type Findings, join } from "../formula/document.js";
import { type ViscosityLaw, viscosityFunction } from "../laws/index.js";
import type { Readings } from "./job.js";
import type { ViscosityDocument, ViscosityLawDocument } from "./types.js";

/** Second pass over the viscosity of one composition. */
export function readViscosity(
  draft: Draft<ViscosityDocument>,
  at: string,
  phases: readonly string[],
  findings: Findings,
): Readings {
  const before = findings.faults.length;
  const { phases: names = [], direction = "cooling", shearRate, flowIndex, readings, law: stated } = draft;
  names.forEach((name, i) => {
    if (name !== undefined && !phases.includes(name))
      findings.note(join(join(at, "phases"), i), name, "the name of a phase of the formula");
  });
  const thins = flowIndex !== undefined;
  if (flowIndex === 0) findings.note(join(at, "flowIndex"), "0", "a number above 0");
  const rate = findings.quantity(shearRate, "shearRate", join(at, "shearRate"), thins ? aboveZero : 0);
  // What the shape pass took out was told there; it is not told again as missing.
  const told = findings.faults.some((fault) => fault.path.startsWith(`${at}.`));
  if (!told && (readings === undefined) === (stated === undefined))
    findings.note(at, readings ? "readings and a law" : "neither readings nor a law", "one of the two");
  const law = stated
    ? lawFrom(stated, join(at, "law"), findings)
    : readingsFrom(readings ?? [], join(at, "readings"), findings);
  // The law itself knows what makes a set of readings a curve; what it says is told at the place in the document.
  const viscosityOf =
    told || findings.faults.length > before
      ? undefined
      : findings.attempt(() => viscosityFunction(law, { beyond: "extend" }), join(at, stated ? "law" : "readings"));
  const temperatures = law.law === "readings" ? law.points.map((point) => point.temperature) : [];
  return {
    phases: names.filter((name) => name !== undefined),
    direction,
    shearRate: shearRate ?? "",
    thinning: thins ? { shearRate: rate, flowIndex } : undefined,
    law,
    temperatureMin: temperatures.length > 0 ? Math.min(...temperatures) : Number.NEGATIVE_INFINITY,
    temperatureMax: temperatures.length > 0 ? Math.max(...temperatures) : Number.POSITIVE_INFINITY,
    viscosityOf: viscosityOf ?? (() => Number.NaN),
  };
}

function readingsFrom(
  readings: Draft<NonNullable<ViscosityDocument["readings"]>>,
  at: string,
  findings: Findings,
): ViscosityLaw {
  return {
    law: "readings",
    points: readings.map((point, i) => ({
      temperature: findings.quantity(point?.at, "temperature", join(join(at, i), "at")),
      viscosity: findings.quantity(point?.viscosity, "dynamicViscosity", join(join(at, i), "viscosity"), aboveZero),
    })),
  };
}

function lawFrom(draft: Draft<ViscosityLawDocument>, at: string, findings: Findings): ViscosityLaw {
  const factor = findings.quantity(draft.factor, "dynamicViscosity", join(at, "factor"), aboveZero);
  if (draft.law === "vogel-fulcher-tammann")
    return {
      law: "vogel-fulcher-tammann",
      lnFactor: Math.log(factor),
      coefficient: findings.quantity(draft.coefficient, "temperatureDifference", join(at, "coefficient"), aboveZero),
      temperatureVogel: findings.quantity(draft.temperatureVogel, "temperature", join(at, "temperatureVogel")),
    };
  const text = draft.law === "andrade" ? draft.activationEnergy : undefined;
  return {
    law: "andrade",
    factor,
    activationEnergy: findings.quantity(text, "molarEnergy", join(at, "activationEnergy"), aboveZero),
  };
}
