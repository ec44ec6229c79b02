import { aboveZero, type Draft, type Findings, join } from "../../formula/document.js";
import type { OilPoint } from "../../mixing/index.js";
import { say } from "../say.js";
import { checkRising, readOil } from "./oil-entries.js";
import type { ThicknessDocument } from "./types.js";

/** How thick the gel was at some oil fractions: shear rate of the viscosities [1/s], viscosity [Pa·s], flow index, yield stress [Pa]. */
export interface Thickness {
  readonly shearRate?: number | undefined;
  readonly viscosity: readonly OilPoint[];
  readonly flowIndex: readonly OilPoint[];
  readonly yieldStress: readonly OilPoint[];
}

/** Second pass over the readings of thickness. */
export function readThickness(
  draft: Draft<ThicknessDocument> | undefined,
  path: string,
  findings: Findings,
): Thickness {
  const { shearRate, readings = [] } = draft ?? {};
  const at = (i: number, key: string): string => join(join(join(path, "readings"), i), key);
  const oils = readings.map((reading, i) => readOil(reading?.oil, at(i, "oil"), findings));
  checkRising(oils, join(path, "readings"), findings);
  const along = (read: (reading: (typeof readings)[number], i: number) => number | undefined): readonly OilPoint[] =>
    readings.flatMap((reading, i) => {
      const value = read(reading, i);
      return value === undefined ? [] : [{ volumeFractionOil: oils[i] ?? Number.NaN, value }];
    });
  const rate = findings.optional(shearRate, "shearRate", join(path, "shearRate"), aboveZero);
  const viscosity = along((reading, i) =>
    findings.optional(reading?.viscosity, "dynamicViscosity", at(i, "viscosity"), aboveZero),
  );
  return {
    shearRate: rate,
    viscosity,
    flowIndex: along((reading, i) => {
      if (reading?.flowIndex === 0) findings.note(at(i, "flowIndex"), "0", "a number above 0");
      return reading?.flowIndex;
    }),
    yieldStress: along((reading, i) => {
      const value = findings.optional(reading?.yieldStress, "pressure", at(i, "yieldStress"), aboveZero);
      const then = viscosity.find(({ volumeFractionOil }) => volumeFractionOil === oils[i]);
      if (value !== undefined && then && rate !== undefined && value >= rate * then.value)
        findings.note(
          at(i, "yieldStress"),
          reading?.yieldStress,
          `below ${say.pascals(rate * then.value)}, the stress at which its viscosity was read`,
        );
      return value;
    }),
  };
}
