import fc from "fast-check";
import type { Dimension, Unit } from "gelwright/units";
import { ascii, factorsOf } from "../../src/units/unit.js";

export const dimensions: readonly Dimension[] = (
  [
    ["length", "area", "volume", "time", "rotationalSpeed", "shearRate", "velocity"],
    ["mass", "molarMass", "density", "massFraction", "volumeFraction", "pressure"],
    [
      "dynamicViscosity",
      "kinematicViscosity",
      "surfaceTension",
      "torque",
      "temperatureDifference",
      "temperature",
      "energy",
    ],
    [
      "power",
      "specificEnergy",
      "specificHeat",
      "conductivity",
      "heatTransferCoefficient",
      "molarEnergy",
      "thermalConductance",
    ],
  ] as const
).flat();

/** The units of a dimension in the SI spelling, base unit first. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return Object.keys(factorsOf(dimension)) as Unit[];
}

/** Both spellings of each unit of a dimension. */
export function spellingsOf(dimension: Dimension): readonly Unit[] {
  return [...new Set(unitsOf(dimension).flatMap((unit) => [unit, ascii(unit) as Unit]))];
}

/** Any two units of one dimension. */
export const anyPair: fc.Arbitrary<readonly [Dimension, Unit, Unit]> = fc
  .constantFrom(...dimensions)
  .chain((dimension) => {
    const unit = fc.constantFrom(...unitsOf(dimension));
    return fc.tuple(fc.constant(dimension), unit, unit);
  });
