import {
  type Entry,
  exactly,
  fields,
  listOf,
  maybe,
  named,
  plain,
  price,
  quantity,
  text,
  truth,
  word,
} from "./entry.js";
import type {
  AgeingKineticsDocument,
  DensityDocument,
  IndicesDocument,
  LimitsDocument,
  MaterialDocument,
  MeltingDocument,
  ParticleDocument,
  RefractiveIndexDocument,
  VolatileDocument,
} from "./material-document.js";
import type { FormulaDocument, LineDocument, PremixDocument } from "./types.js";

const above = { above: 0 };
const share = quantity("massFraction", { min: 0, max: 1 });
const temperature = quantity("temperature");
const density = quantity("density", above);
const length = quantity("length", above);
const index = maybe(plain({ min: 0, max: 1 }));

/** Reads a refractive index. */
export const refractiveIndex: Entry<RefractiveIndexDocument> = fields<RefractiveIndexDocument>({
  value: plain({ min: 1, max: 3 }),
  at: temperature,
  perKelvin: maybe(plain()),
});

/** Reads one line; its amount is read together with those of the other lines. */
export const line: Entry<LineDocument> = fields<LineDocument>({
  material: text,
  amount: text,
  as: maybe(word("supplied", "active")),
});

const particle = fields<ParticleDocument>({
  diameter: length,
  density,
  thickness: maybe(length),
  sphericity: maybe(plain({ min: 0.09, max: 1 })),
  sizes: maybe(
    listOf(
      fields<NonNullable<ParticleDocument["sizes"]>[number]>({
        diameter: length,
        share: quantity("massFraction", { min: 0 }),
      }),
      1,
    ),
  ),
  oilAbsorption: maybe(quantity("massFraction", above)),
});

const volatile = fields<VolatileDocument>({
  molarMass: quantity("molarMass", above),
  diffusivity: quantity("kinematicViscosity", above),
  antoine: fields<VolatileDocument["antoine"]>({
    logarithm: word("decimal", "natural"),
    a: plain(),
    b: plain(),
    c: plain(),
    from: temperature,
    to: temperature,
  }),
});

/** Reads a material. */
const material: Entry<MaterialDocument> = fields<MaterialDocument>({
  name: text,
  listingName: maybe(text),
  function: word(
    "gel former",
    "oil",
    "antioxidant",
    "particle",
    "fragrance",
    "colourant",
    "water",
    "preservative",
    "other",
  ),
  strength: maybe(quantity("massFraction", { above: 0, max: 1 })),
  propertiesOf: maybe(word("fats and oils", "glycerin", "water")),
  density: maybe(
    fields<DensityDocument>({
      value: density,
      at: temperature,
      fallPerKelvin: maybe(quantity("density", { min: 0 })),
    }),
  ),
  specificHeat: maybe(quantity("specificHeat", above)),
  conductivity: maybe(quantity("conductivity", above)),
  melting: maybe(
    fields<MeltingDocument>({
      at: temperature,
      latentHeat: quantity("specificEnergy", above),
      over: maybe(quantity("temperatureDifference", above)),
    }),
  ),
  refractiveIndex: maybe(refractiveIndex),
  ageingKinetics: maybe(
    fields<AgeingKineticsDocument>({
      activationEnergy: maybe(quantity("molarEnergy", { min: 0 })),
      q10: maybe(plain(above)),
      reference: temperature,
    }),
  ),
  volatile: maybe(volatile),
  indices: maybe(
    fields<IndicesDocument>({
      of: word("material as supplied", "active part"),
      natural: index,
      naturalOrigin: index,
      organic: index,
      organicOrigin: index,
    }),
  ),
  formulationWater: maybe(truth),
  allergens: maybe(listOf(fields<NonNullable<MaterialDocument["allergens"]>[number]>({ name: text, share }))),
  fattyAcids: maybe(named(share)),
  limits: maybe(
    fields<LimitsDocument>({
      temperatureMax: maybe(temperature),
      flashPoint: maybe(temperature),
      shareMax: maybe(share),
    }),
  ),
  heatSensitive: maybe(truth),
  particle: maybe(particle),
  price: maybe(price),
  restrictions: maybe(listOf(text)),
  sources: maybe(named(text)),
  notes: maybe(text),
});

const lines = listOf(line, 1);

/** Reads a formula. */
export const formula: Entry<FormulaDocument> = fields<FormulaDocument>({
  version: exactly(1),
  $schema: maybe(text),
  name: text,
  materials: named(material),
  premixes: maybe(named(fields<PremixDocument>({ name: text, lines }))),
  phases: listOf(fields<FormulaDocument["phases"][number]>({ name: text, lines }), 1),
  claims: maybe(fields<NonNullable<FormulaDocument["claims"]>>({ naturalOrigin: maybe(share) })),
});
