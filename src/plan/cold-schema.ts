import {
  array,
  exactOptional,
  type GenericSchema,
  maxValue,
  minLength,
  minValue,
  number,
  pipe,
  strictObject,
  string,
} from "valibot";
import { quantity } from "../formula/quantity-field.js";
import { refractiveIndexSchema } from "../formula/schema.js";
import type { EmulsionDocument } from "./cold/types.js";
import { stirrerSchema } from "./stirrer-schema.js";

const oil = quantity("volumeFraction", "60 % v/v");
const mass = quantity("mass", "2.5 g");
const time = quantity("time", "90 s");
const viscosity = quantity("dynamicViscosity", "12 Pa·s");
const shearRate = quantity("shearRate", "60 1/s");

/** The shape of what the bench found on the cold route. */
export const coldBenchSchema: GenericSchema<unknown, EmulsionDocument> = strictObject({
  volumeFractionOilMax: exactOptional(oil),
  additionShareMax: exactOptional(
    pipe(array(strictObject({ oil, share: quantity("massFraction", "5 %") })), minLength(1)),
  ),
  additions: exactOptional(strictObject({ gelFormer: mass, oil: pipe(array(mass), minLength(1)) })),
  incorporationTime: exactOptional(pipe(array(strictObject({ oil, time })), minLength(1))),
  stirring: exactOptional(
    strictObject({
      stirrer: stirrerSchema,
      diameter: exactOptional(quantity("length", "85 mm")),
      gelFormer: exactOptional(mass),
    }),
  ),
  thickness: exactOptional(
    strictObject({
      shearRate: exactOptional(shearRate),
      readings: pipe(
        array(
          strictObject({
            oil,
            viscosity: exactOptional(viscosity),
            flowIndex: exactOptional(pipe(number(), minValue(0), maxValue(2))),
            yieldStress: exactOptional(quantity("pressure", "8 Pa")),
          }),
        ),
        minLength(1),
      ),
    }),
  ),
  dropletDiameter: exactOptional(quantity("length", "6 µm")),
  interfacialTension: exactOptional(quantity("surfaceTension", "5 mN/m")),
  shear: exactOptional(strictObject({ rate: shearRate, viscosityOil: viscosity, viscosityEmulsion: viscosity })),
  surfactant: exactOptional(strictObject({ material: string(), areaPerGram: quantity("area", "500 m²") })),
  gelFormerIndex: exactOptional(refractiveIndexSchema),
  mismatchAllowed: exactOptional(pipe(number(), minValue(0))),
  waterActivity: exactOptional(pipe(number(), minValue(0), maxValue(1))),
  air: exactOptional(strictObject({ bubbleDiameter: quantity("length", "0.3 mm"), viscosity })),
});
