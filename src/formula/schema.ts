import {
  array,
  boolean,
  description,
  exactOptional,
  type GenericSchema,
  literal,
  maxValue,
  minLength,
  minValue,
  number,
  picklist,
  pipe,
  record,
  strictObject,
  string,
} from "valibot";
import type { RefractiveIndexDocument } from "./material-document.js";
import { quantity } from "./quantity-field.js";
import type { FormulaDocument } from "./types.js";

const share = quantity("massFraction", "9 %");
const temperature = quantity("temperature", "85 °C");
const density = quantity("density", "918 kg/m³");
const index = exactOptional(pipe(number(), minValue(0), maxValue(1)));

/** The shape of a refractive index. */
export const refractiveIndexSchema: GenericSchema<unknown, RefractiveIndexDocument> = strictObject({
  value: pipe(number(), minValue(1), maxValue(3)),
  at: temperature,
  perKelvin: exactOptional(number()),
});

const line = strictObject({
  material: string(),
  amount: pipe(string(), description('"9 %", "500 ppm", "2 parts", "45 g", or "q.s." on one line')),
  as: exactOptional(picklist(["supplied", "active"])),
});

const lines = pipe(array(line), minLength(1));

const material = strictObject({
  name: string(),
  listingName: exactOptional(string()),
  function: picklist([
    "gel former",
    "oil",
    "antioxidant",
    "particle",
    "fragrance",
    "colourant",
    "water",
    "preservative",
    "other",
  ]),
  strength: exactOptional(share),
  propertiesOf: exactOptional(picklist(["fats and oils", "glycerin", "water"])),
  density: exactOptional(strictObject({ value: density, at: temperature, fallPerKelvin: exactOptional(density) })),
  specificHeat: exactOptional(quantity("specificHeat", "2000 J/(kg·K)")),
  conductivity: exactOptional(quantity("conductivity", "0.17 W/(m·K)")),
  melting: exactOptional(
    strictObject({
      at: temperature,
      latentHeat: quantity("specificEnergy", "180 kJ/kg"),
      over: exactOptional(quantity("temperatureDifference", "4 K")),
    }),
  ),
  refractiveIndex: exactOptional(refractiveIndexSchema),
  ageingKinetics: exactOptional(
    strictObject({
      activationEnergy: exactOptional(quantity("molarEnergy", "90 kJ/mol")),
      q10: exactOptional(number()),
      reference: temperature,
    }),
  ),
  volatile: exactOptional(
    strictObject({
      molarMass: quantity("molarMass", "136.23 g/mol"),
      diffusivity: quantity("kinematicViscosity", "6 mm²/s"),
      antoine: strictObject({
        logarithm: picklist(["decimal", "natural"]),
        a: number(),
        b: number(),
        c: number(),
        from: temperature,
        to: temperature,
      }),
    }),
  ),
  indices: exactOptional(
    strictObject({
      of: picklist(["material as supplied", "active part"]),
      natural: index,
      naturalOrigin: index,
      organic: index,
      organicOrigin: index,
    }),
  ),
  formulationWater: exactOptional(boolean()),
  allergens: exactOptional(array(strictObject({ name: string(), share }))),
  fattyAcids: exactOptional(record(string(), share)),
  limits: exactOptional(
    strictObject({
      temperatureMax: exactOptional(temperature),
      flashPoint: exactOptional(temperature),
      shareMax: exactOptional(share),
    }),
  ),
  heatSensitive: exactOptional(boolean()),
  particle: exactOptional(
    strictObject({
      diameter: quantity("length", "120 µm"),
      density,
      thickness: exactOptional(quantity("length", "25 µm")),
      sphericity: exactOptional(pipe(number(), minValue(0.09), maxValue(1))),
      sizes: exactOptional(pipe(array(strictObject({ diameter: quantity("length", "120 µm"), share })), minLength(1))),
      oilAbsorption: exactOptional(quantity("massFraction", "60 %")),
    }),
  ),
  price: exactOptional(pipe(string(), description("a price per mass, such as 12.50 EUR/kg"))),
  restrictions: exactOptional(array(string())),
  sources: exactOptional(record(string(), string())),
  notes: exactOptional(string()),
});

/** The shape of a formula document, from which its JSON Schema is made. */
export const formulaSchema: GenericSchema<unknown, FormulaDocument> = strictObject({
  version: literal(1),
  name: string(),
  materials: record(string(), material),
  premixes: exactOptional(record(string(), strictObject({ name: string(), lines }))),
  phases: pipe(array(strictObject({ name: string(), lines })), minLength(1)),
  claims: exactOptional(strictObject({ naturalOrigin: exactOptional(share) })),
});
