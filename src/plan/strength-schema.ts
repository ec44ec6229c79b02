import { array, exactOptional, type GenericSchema, minLength, picklist, pipe, strictObject, string } from "valibot";
import { quantity } from "../formula/quantity-field.js";
import type {
  AirDocument,
  FlowCurveDocument,
  IdealSolubilityDocument,
  NozzleDocument,
  StrengthTrialsDocument,
} from "./strength/types.js";

const dose = quantity("massFraction", "9 %");
const stress = quantity("pressure", "25 Pa");
const shearRate = quantity("shearRate", "10 1/s");
const molarMass = quantity("molarMass", "0.88 kg/mol");

export const strengthTrialsSchema: GenericSchema<unknown, StrengthTrialsDocument> = strictObject({
  of: picklist(["yield stress", "modulus"]),
  trials: array(strictObject({ gelFormer: dose, strength: stress })),
  threshold: exactOptional(dose),
  target: exactOptional(stress),
});

export const flowCurveSchema: GenericSchema<unknown, FlowCurveDocument> = strictObject({
  temperature: quantity("temperature", "25 °C"),
  points: pipe(array(strictObject({ shearRate, stress })), minLength(1)),
  yieldStressBy: exactOptional(
    picklist(["herschel-bulkley", "bingham", "casson", "casson-regression", "lowest-rate", "viscosity-maximum"]),
  ),
  uses: exactOptional(array(strictObject({ use: string(), shearRate }))),
});

export const idealSolubilitySchema: GenericSchema<unknown, IdealSolubilityDocument> = strictObject({
  meltingPoint: quantity("temperature", "69 °C"),
  heatOfFusion: quantity("molarEnergy", "61 kJ/mol"),
  molarMassGelFormer: molarMass,
  molarMassOil: molarMass,
});

export const airSchema: GenericSchema<unknown, AirDocument> = strictObject({
  bubbleDiameter: quantity("length", "0.2 mm"),
  surface: exactOptional(picklist(["immobile", "mobile"])),
  clearWithin: exactOptional(quantity("time", "30 min")),
  vacuum: exactOptional(
    strictObject({
      afterPhase: string(),
      pressure: quantity("pressure", "20 kPa"),
      air: quantity("volumeFraction", "3 % v/v"),
      rim: quantity("length", "450 mm"),
    }),
  ),
});

export const nozzleSchema: GenericSchema<unknown, NozzleDocument> = strictObject({
  diameter: quantity("length", "3 mm"),
  volume: quantity("volume", "0.5 mL"),
  within: quantity("time", "1 s"),
  spray: exactOptional(strictObject({ surfaceTension: quantity("surfaceTension", "30 mN/m") })),
});
