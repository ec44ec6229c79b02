import {
  array,
  exactOptional,
  type GenericSchema,
  integer,
  literal,
  maxValue,
  minLength,
  minValue,
  number,
  picklist,
  pipe,
  strictObject,
  string,
  variant,
} from "valibot";
import { batchSchema } from "../batch/schema.js";
import { quantity } from "../formula/quantity-field.js";
import { formulaSchema } from "../formula/schema.js";
import { coldBenchSchema } from "./cold-schema.js";
import { stirrerSchema } from "./stirrer-schema.js";
import {
  airSchema,
  flowCurveSchema,
  idealSolubilitySchema,
  nozzleSchema,
  strengthTrialsSchema,
} from "./strength-schema.js";
import type {
  BenchDocument,
  JobDocument,
  PackDocument,
  ProcessDocument,
  StepDocument,
  ViscosityLawDocument,
} from "./types.js";
import type { BottomDocument, VesselDocument } from "./vessel-document.js";

const temperature = quantity("temperature", "85 °C");
const time = quantity("time", "15 min");
const volume = quantity("volume", "60 L");
const viscosity = quantity("dynamicViscosity", "1.2 Pa·s");
const conductance = quantity("thermalConductance", "18 W/K");
const specificHeat = quantity("specificHeat", "500 J/(kg·K)");
const coefficient = quantity("heatTransferCoefficient", "90 W/(m²·K)");
const area = quantity("area", "0.4 m²");
const rotationalSpeed = quantity("rotationalSpeed", "60 rpm");
const kelvins = quantity("temperatureDifference", "2 K");
const ratio = pipe(number(), minValue(0));
const note = exactOptional(string());

const bottomSchema: GenericSchema<unknown, BottomDocument> = variant("shape", [
  strictObject({ shape: literal("flat") }),
  strictObject({ shape: picklist(["cone", "ellipsoidal"]), depth: quantity("length", "95 mm") }),
  strictObject({
    shape: literal("dished"),
    crownToDiameter: exactOptional(pipe(number(), minValue(0.5), maxValue(2))),
    knuckleToDiameter: exactOptional(ratio),
  }),
]);

const vesselSchema: GenericSchema<unknown, VesselDocument> = strictObject({
  name: string(),
  workingVolume: strictObject({ min: volume, max: volume }),
  diameter: quantity("length", "400 mm"),
  bottom: exactOptional(bottomSchema),
  baffles: exactOptional(
    strictObject({ count: pipe(number(), integer(), minValue(1)), width: quantity("length", "35 mm") }),
  ),
  heater: exactOptional(strictObject({ power: quantity("power", "3 kW"), temperatureMax: exactOptional(temperature) })),
  heatLoss: exactOptional(conductance),
  coolingCurve: exactOptional(
    strictObject({
      content: strictObject({ mass: quantity("mass", "30 kg"), specificHeat }),
      room: temperature,
      readings: pipe(array(strictObject({ after: time, temperature })), minLength(2)),
    }),
  ),
  surfaces: exactOptional(
    strictObject({
      height: quantity("length", "350 mm"),
      emissivity: pipe(number(), minValue(0), maxValue(1)),
      insulation: exactOptional(
        strictObject({
          thickness: quantity("length", "40 mm"),
          conductivity: quantity("conductivity", "0.04 W/(m·K)"),
        }),
      ),
    }),
  ),
  wall: exactOptional(strictObject({ mass: quantity("mass", "18 kg"), specificHeat })),
  stirrer: exactOptional(stirrerSchema),
  heatedWall: exactOptional(
    strictObject({ area, coefficient: exactOptional(coefficient), source: exactOptional(string()) }),
  ),
  jacket: exactOptional(
    strictObject({
      coolant: temperature,
      conductance: exactOptional(conductance),
      capacityFlow: exactOptional(conductance),
      area: exactOptional(area),
      insideCoefficient: exactOptional(coefficient),
      outsideCoefficient: exactOptional(coefficient),
      source: exactOptional(string()),
    }),
  ),
});

const viscosityLaw: GenericSchema<unknown, ViscosityLawDocument> = variant("law", [
  strictObject({
    law: literal("andrade"),
    factor: viscosity,
    activationEnergy: quantity("molarEnergy", "26.4 kJ/mol"),
  }),
  strictObject({
    law: literal("vogel-fulcher-tammann"),
    factor: viscosity,
    coefficient: quantity("temperatureDifference", "810 K"),
    temperatureVogel: temperature,
  }),
]);

const benchSchema: GenericSchema<unknown, BenchDocument> = strictObject({
  source: string(),
  oilPerGelFormer: exactOptional(strictObject({ min: ratio, max: ratio })),
  doses: exactOptional(
    array(strictObject({ gelFormer: quantity("massFraction", "9 %"), setsAt: temperature, dissolvesAt: temperature })),
  ),
  viscosities: exactOptional(
    array(
      strictObject({
        phases: pipe(array(string()), minLength(1)),
        direction: picklist(["heating", "cooling"]),
        shearRate: quantity("shearRate", "10 1/s"),
        flowIndex: exactOptional(pipe(number(), minValue(0), maxValue(2))),
        readings: exactOptional(pipe(array(strictObject({ at: temperature, viscosity })), minLength(2))),
        law: exactOptional(viscosityLaw),
      }),
    ),
  ),
  stirrableViscosityMax: exactOptional(viscosity),
  yieldStress: exactOptional(quantity("pressure", "8 Pa")),
  strengthTrials: exactOptional(strengthTrialsSchema),
  flowCurve: exactOptional(flowCurveSchema),
  idealSolubility: exactOptional(idealSolubilitySchema),
  settlingAllowed: exactOptional(quantity("length", "0.5 mm")),
  emulsion: exactOptional(coldBenchSchema),
});

const stepSchema: GenericSchema<unknown, StepDocument> = variant("do", [
  strictObject({
    do: literal("charge"),
    phase: string(),
    at: exactOptional(temperature),
    for: exactOptional(time),
    speed: exactOptional(rotationalSpeed),
    note,
  }),
  strictObject({ do: literal("heat"), to: temperature, within: exactOptional(time), note }),
  strictObject({ do: literal("hold"), for: time, note }),
  strictObject({ do: literal("take off the heat"), note }),
  strictObject({
    do: literal("cool"),
    to: temperature,
    with: exactOptional(literal("jacket")),
    within: exactOptional(time),
    note,
  }),
  strictObject({ do: literal("cool"), toViscosity: viscosity, note }),
  strictObject({ do: literal("stir"), for: time, speed: exactOptional(rotationalSpeed), note }),
  strictObject({ do: literal("fill"), for: exactOptional(time), note }),
  strictObject({ do: literal("rest"), for: time, note }),
  strictObject({
    do: literal("add"),
    phase: string(),
    additions: exactOptional(picklist(["largest", "equal", "geometric", "as at the bench", "stream"])),
    keeps: exactOptional(picklist(["time", "revolutions", "tip travel", "energy per volume", "strain"])),
    speed: exactOptional(rotationalSpeed),
    pump: exactOptional(strictObject({ mass: quantity("mass", "3 kg"), in: time })),
    increment: exactOptional(quantity("mass", "10 g")),
    proceedWhen: exactOptional(string()),
    note,
  }),
  strictObject({ do: literal("match clarity"), note }),
  strictObject({
    do: literal("de-aerate"),
    for: time,
    pressure: exactOptional(quantity("pressure", "50 mbar")),
    speed: exactOptional(rotationalSpeed),
    note,
  }),
]);

const processSchema: GenericSchema<unknown, ProcessDocument> = strictObject({
  name: string(),
  route: exactOptional(picklist(["hot", "cold"])),
  room: temperature,
  flashPointMargin: exactOptional(kelvins),
  settingMargin: exactOptional(kelvins),
  airVelocity: exactOptional(quantity("velocity", "0.2 m/s")),
  air: exactOptional(airSchema),
  workingDay: exactOptional(
    strictObject({
      length: quantity("time", "8 h"),
      vessels: exactOptional(pipe(number(), minValue(1), integer())),
      cleaning: exactOptional(time),
    }),
  ),
  steps: pipe(array(stepSchema), minLength(1)),
});

const packSchema: GenericSchema<unknown, PackDocument> = strictObject({
  name: string(),
  heatLoss: exactOptional(conductance),
  content: exactOptional(
    strictObject({
      diameter: quantity("length", "40 mm"),
      height: quantity("length", "30 mm"),
      coefficient,
      source: string(),
    }),
  ),
  nozzle: exactOptional(nozzleSchema),
});

/** The shape of a job document, from which its JSON Schema is made. */
export const jobSchema: GenericSchema<unknown, JobDocument> = strictObject({
  version: literal(1),
  formula: formulaSchema,
  bench: benchSchema,
  batch: batchSchema,
  vessel: vesselSchema,
  process: processSchema,
  pack: exactOptional(packSchema),
});
