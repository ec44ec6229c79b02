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
  CertifiedDocument,
  DensityDocument,
  IndicesDocument,
  InductionDocument,
  LimitsDocument,
  MaterialDocument,
  MeltingDocument,
  ParticleDocument,
  RefractiveIndexDocument,
  VolatileDocument,
} from "./material-document.js";
import type { FormulaDocument, LineDocument, PremixDocument } from "./types.js";

const above = { above: 0 } as const;
const share = quantity("massFraction", { min: 0, max: 1 });
const temperature = quantity("temperature");
const density = quantity("density", above);
const length = quantity("length", above);
const index = maybe("property", plain({ min: 0, max: 1 }));

/** Reads a refractive index. */
export const refractiveIndex: Entry<RefractiveIndexDocument> = fields<RefractiveIndexDocument>({
  value: plain({ min: 1, max: 3 }),
  at: temperature,
  perKelvin: maybe("property", plain()),
});

/** Reads one line; its amount is read together with those of the other lines. */
export const line: Entry<LineDocument> = fields<LineDocument>({
  material: text,
  amount: text,
  as: maybe("identity", word("supplied", "active")),
});

const particle = fields<ParticleDocument>({
  diameter: maybe("property", length),
  width: maybe("property", length),
  density,
  thickness: maybe("property", length),
  sphericity: maybe("property", plain({ min: 0.09, max: 1 })),
  sizes: maybe(
    "reading",
    listOf(
      fields<NonNullable<ParticleDocument["sizes"]>[number]>({
        diameter: length,
        share: quantity("massFraction", { min: 0 }),
      }),
      1,
    ),
  ),
  nature: maybe(
    "property",
    word("synthetic polymer", "natural polymer", "degradable polymer", "soluble polymer", "inorganic"),
  ),
  oilAbsorption: maybe("property", quantity("massFraction", above)),
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
  listingName: maybe("identity", text),
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
  strength: maybe("identity", quantity("massFraction", { above: 0, max: 1 })),
  propertiesOf: maybe("property", word("fats and oils", "glycerin", "water")),
  density: maybe(
    "property",
    fields<DensityDocument>({
      value: density,
      at: temperature,
      fallPerKelvin: maybe("property", quantity("density", { min: 0 })),
    }),
  ),
  specificHeat: maybe("property", quantity("specificHeat", above)),
  conductivity: maybe("property", quantity("conductivity", above)),
  melting: maybe(
    "property",
    fields<MeltingDocument>({
      at: temperature,
      latentHeat: quantity("specificEnergy", above),
      over: maybe("property", quantity("temperatureDifference", above)),
    }),
  ),
  refractiveIndex: maybe("property", refractiveIndex),
  hlb: maybe("property", plain({ min: 0 })),
  requiredHlb: maybe("property", plain({ min: 0 })),
  inductionTimes: maybe(
    "reading",
    listOf(fields<InductionDocument>({ at: temperature, time: quantity("time", above) }), 1),
  ),
  ageingKinetics: maybe(
    "property",
    fields<AgeingKineticsDocument>({
      activationEnergy: maybe("property", quantity("molarEnergy", { min: 0 })),
      q10: maybe("property", plain(above)),
      reference: temperature,
    }),
  ),
  volatile: maybe("identity", volatile),
  indices: maybe(
    "property",
    fields<IndicesDocument>({
      of: word("material as supplied", "active part"),
      natural: index,
      naturalOrigin: index,
      organic: index,
      organicOrigin: index,
    }),
  ),
  formulationWater: maybe("identity", truth),
  ingredients: maybe(
    "property",
    listOf(fields<NonNullable<MaterialDocument["ingredients"]>[number]>({ name: text, share }), 1),
  ),
  certified: maybe(
    "property",
    fields<CertifiedDocument>({
      class: word(
        "physically processed agro-ingredient",
        "chemically processed agro-ingredient",
        "water",
        "mineral",
        "other",
      ),
      organic: maybe("property", share),
      petrochemical: maybe("property", share),
    }),
  ),
  allergens: maybe(
    "property",
    listOf(fields<NonNullable<MaterialDocument["allergens"]>[number]>({ name: text, share })),
  ),
  fattyAcids: maybe("property", named(share)),
  limits: maybe(
    "wish",
    fields<LimitsDocument>({
      temperatureMax: maybe("wish", temperature),
      flashPoint: maybe("property", temperature),
      shareMax: maybe("wish", share),
    }),
  ),
  heatSensitive: maybe("identity", truth),
  particle: maybe("identity", particle),
  price: maybe("property", price),
  restrictions: maybe("wish", listOf(text)),
  sources: maybe("identity", named(text)),
  notes: maybe("identity", text),
});

const lines = listOf(line, 1);

/** Reads a formula. */
export const formula: Entry<FormulaDocument> = fields<FormulaDocument>({
  version: exactly(1),
  $schema: maybe("identity", text),
  name: text,
  materials: named(material),
  premixes: maybe("identity", named(fields<PremixDocument>({ name: text, lines }))),
  phases: listOf(fields<FormulaDocument["phases"][number]>({ name: text, lines }), 1),
  claims: maybe("wish", fields<NonNullable<FormulaDocument["claims"]>>({ naturalOrigin: maybe("wish", share) })),
});
