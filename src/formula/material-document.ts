import type { Quantity } from "../units/index.js";
import type { PriceText } from "./price.js";

/** What a material does in the gel. Only these words steer a plan; anything finer goes into the notes. */
export type MaterialFunction =
  | "gel former"
  | "oil"
  | "antioxidant"
  | "particle"
  | "fragrance"
  | "colourant"
  | "water"
  | "preservative"
  | "other";

/** An induction time with its temperature. */
export interface InductionDocument {
  readonly at: Quantity<"temperature">;
  readonly time: Quantity<"time">;
}

/** A material as it stands on the shelf, written with units. */
export interface MaterialDocument {
  /** The name on the drum. */
  readonly name: string;
  /** The name for the ingredient list of the label (INCI). */
  readonly listingName?: string;
  readonly function: MaterialFunction;
  /** Active share of the material as supplied; default 100 %. */
  readonly strength?: Quantity<"massFraction">;
  /** Takes what is left out of density, specific heat and conductivity from a correlation for this class or substance. */
  readonly propertiesOf?: PropertiesOf;
  /** Density with the temperature at which it holds, and how much it falls per kelvin. */
  readonly density?: DensityDocument;
  readonly specificHeat?: Quantity<"specificHeat">;
  readonly conductivity?: Quantity<"conductivity">;
  readonly melting?: MeltingDocument;
  /** Refractive index, for a gel that is to be clear. */
  readonly refractiveIndex?: RefractiveIndexDocument;
  /** HLB of a surfactant, 0 or more. */
  readonly hlb?: number;
  /** HLB that an oil asks for to go into water, 0 or more. */
  readonly requiredHlb?: number;
  /** Induction times of an oil, as measured at two temperatures or more. */
  readonly inductionTimes?: readonly InductionDocument[];
  /** How much faster it changes where it is warmer: for the exposure of oils that are to be spared. */
  readonly ageingKinetics?: AgeingKineticsDocument;
  /** What evaporates from it, where the loss over a run is to be predicted. */
  readonly volatile?: VolatileDocument;
  readonly indices?: IndicesDocument;
  /** Water added as such, which ISO 16128-2 lets a figure count or leave out. */
  readonly formulationWater?: boolean;
  /** What it is mixed of, by the names for the label; the shares make up 100 %. Default the one name of the material. */
  readonly ingredients?: readonly { readonly name: string; readonly share: Quantity<"massFraction"> }[];
  /** What a certifier counts it as. */
  readonly certified?: CertifiedDocument;
  /** Fragrance allergens in it, an empty list for none; left out: not stated. */
  readonly allergens?: readonly { readonly name: string; readonly share: Quantity<"massFraction"> }[];
  /** Fatty acids in shorthand (`18:1`) with their share of all fatty acids. */
  readonly fattyAcids?: Readonly<Record<string, Quantity<"massFraction">>>;
  readonly limits?: LimitsDocument;
  /** True for what oxidises or is lost on the heat and is stirred in off it; false for what stands the heat. */
  readonly heatSensitive?: boolean;
  /** Size and density of glitter, scrub or pigment. */
  readonly particle?: ParticleDocument;
  /** Price per mass, with its currency: `"12.50 EUR/kg"`. */
  readonly price?: PriceText;
  /** Rules that a market sets on this material, as the caller knows them; printed as cautions, never judged. */
  readonly restrictions?: readonly string[];
  /** Where the figures come from: field, then source. */
  readonly sources?: Readonly<Record<string, string>>;
  readonly notes?: string;
}

/** What a correlation is known for. Glycerin and water count as themselves in the gel former of the cold route. */
export type PropertiesOf = "fats and oils" | "glycerin" | "water";

/** A refractive index, which means nothing without its temperature. */
export interface RefractiveIndexDocument {
  /** At the sodium D line, 1 to 3. */
  readonly value: number;
  readonly at: Quantity<"temperature">;
  /** Change per kelvin [1/K]; about -0.00038 for plant oils, from memory. Needed for any other temperature. */
  readonly perKelvin?: number;
}

/** A density at a temperature, and how it falls with warmth. */
export interface DensityDocument {
  readonly value: Quantity<"density">;
  readonly at: Quantity<"temperature">;
  /** Fall of the density per kelvin, in kg/m³: `"0.65 kg/m³"`. Constant where it is left out. */
  readonly fallPerKelvin?: Quantity<"density">;
}

/** Melting over a range around its middle. */
export interface MeltingDocument {
  /** Middle of the melting range. */
  readonly at: Quantity<"temperature">;
  /** Heat that melting takes up. */
  readonly latentHeat: Quantity<"specificEnergy">;
  /** Width of the melting range; 4 K where it is left out (common practice, no source). */
  readonly over?: Quantity<"temperatureDifference">;
}

/** By an activation energy or by a factor for 10 K: one of the two, as measured on the material. */
export interface AgeingKineticsDocument {
  /** Of the change that matters. */
  readonly activationEnergy?: Quantity<"molarEnergy">;
  /** Factor of the rate for 10 K more. */
  readonly q10?: number;
  /** Temperature at which the rate counts as 1. */
  readonly reference: Quantity<"temperature">;
}

/** A volatile material: vapour pressure by Antoine, log p = a − b/(T + c) in pascals and kelvins. */
export interface VolatileDocument {
  /** Molar mass. */
  readonly molarMass: Quantity<"molarMass">;
  /** Diffusivity of its vapour in air. */
  readonly diffusivity: Quantity<"kinematicViscosity">;
  /** Constants of the pure substance and the temperatures between which they hold. */
  readonly antoine: {
    readonly logarithm: "decimal" | "natural";
    readonly a: number;
    readonly b: number;
    readonly c: number;
    readonly from: Quantity<"temperature">;
    readonly to: Quantity<"temperature">;
  };
}

/** The four indices of ISO 16128 [0 to 1]. One that is left out is unknown and is never guessed. */
export interface IndicesDocument {
  /** Whether the figures hold for the material as supplied or for its active part only. */
  readonly of: "material as supplied" | "active part";
  readonly natural?: number;
  readonly naturalOrigin?: number;
  readonly organic?: number;
  readonly organicOrigin?: number;
}

/** How the published certification standards for cosmetics count a material. */
export interface CertifiedDocument {
  readonly class:
    | "physically processed agro-ingredient"
    | "chemically processed agro-ingredient"
    | "water"
    | "mineral"
    | "other";
  /** Its organic share, by the standard's own rules. */
  readonly organic?: Quantity<"massFraction">;
  /** Share of moieties of petrochemical origin in it. */
  readonly petrochemical?: Quantity<"massFraction">;
}

/** What a material may not be taken beyond. */
export interface LimitsDocument {
  readonly temperatureMax?: Quantity<"temperature">;
  readonly flashPoint?: Quantity<"temperature">;
  readonly shareMax?: Quantity<"massFraction">;
}

/** The particles of a material that does not dissolve. */
export interface ParticleDocument {
  /** Diameter of the sphere of equal volume. This or, for a flake, its width. */
  readonly diameter?: Quantity<"length">;
  /** Width of a flake as it is sold, beside its thickness, in place of the diameter. */
  readonly width?: Quantity<"length">;
  readonly density: Quantity<"density">;
  /** Thickness, where it is a flake. This or the next, or neither for a ball. */
  readonly thickness?: Quantity<"length">;
  /** Surface of the sphere of equal volume over its own, where it is a grain: 0.09 to 1. */
  readonly sphericity?: number;
  /** A size analysis: each size with its share of the mass. `diameter` then is the size that the window goes by. */
  readonly sizes?: readonly { readonly diameter: Quantity<"length">; readonly share: Quantity<"massFraction"> }[];
  /** What it is made of, as the tests that the law asks for have shown; left out: not stated. */
  readonly nature?: "synthetic polymer" | "natural polymer" | "degradable polymer" | "soluble polymer" | "inorganic";
  /** Oil that wets it, by mass of pigment (ISO 787-5): `"60 %"` is 60 g of oil for 100 g. */
  readonly oilAbsorption?: Quantity<"massFraction">;
}
