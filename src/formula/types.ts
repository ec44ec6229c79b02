import type { AntoineLaw, ConductivityLaw, DensityLaw, SmoothSpecificHeatLaw } from "../laws/index.js";
import type { Quantity } from "../units/index.js";
import type {
  CertifiedDocument,
  IndicesDocument,
  MaterialDocument,
  MaterialFunction,
  ParticleDocument,
  PropertiesOf,
} from "./material-document.js";
import type { Price } from "./price.js";
import type { Read } from "./read-type.js";

/** A refractive index, which means nothing without its temperature. */
export interface RefractiveIndex {
  /** Refractive index at the sodium D line, 1 to 3. */
  readonly refractiveIndex: number;
  /** Temperature at which it was read [°C]. */
  readonly temperature: number;
  /** Change with temperature [1/K]; about -3.8e-4 for vegetable oils, -4.2e-4 to -3.5e-4 (worked from their expansion). Needed for any other temperature. */
  readonly perKelvin?: number;
}

/** One line of a formula or a premix. */
export interface LineDocument {
  /** Key of a material or a premix. */
  readonly material: string;
  /** `"9 %"`, `"500 ppm"`, `"2 parts"`, `"45 g"`, or `"q.s."` on one line for the rest to 100 %. */
  readonly amount: string;
  /** `"active"` where the amount speaks of the active part and the strength has to be corrected for. */
  readonly as?: "supplied" | "active";
}

/** A mixture that is written once and used as one line; it is opened into its parts. */
export interface PremixDocument {
  readonly name: string;
  readonly lines: readonly LineDocument[];
}

/** A formula as people write it. */
export interface FormulaDocument {
  readonly version: 1;
  /** Address of the JSON Schema, for editors; not read. */
  readonly $schema?: string;
  readonly name: string;
  readonly materials: Readonly<Record<string, MaterialDocument>>;
  readonly premixes?: Readonly<Record<string, PremixDocument>>;
  readonly phases: readonly { readonly name: string; readonly lines: readonly LineDocument[] }[];
  /** The natural-origin content that the product is to claim, formulation water counted. */
  readonly claims?: { readonly naturalOrigin?: Quantity<"massFraction"> };
}

/** A material in the units of the kernels. What the document left out is left out here. */
export interface Material {
  readonly key: string;
  readonly name: string;
  readonly listingName?: string | undefined;
  readonly function: MaterialFunction;
  /** Active share as supplied, above 0 to 1. */
  readonly strength: number;
  /** Density against temperature. */
  readonly density?: DensityLaw | undefined;
  /** Specific heat against temperature, without melting. */
  readonly specificHeat?: SmoothSpecificHeatLaw | undefined;
  /** Thermal conductivity against temperature. */
  readonly conductivity?: ConductivityLaw | undefined;
  readonly propertiesOf?: PropertiesOf | undefined;
  readonly refractiveIndex?: RefractiveIndex | undefined;
  /** HLB of a surfactant. */
  readonly hlb?: number | undefined;
  /** HLB that an oil asks for. */
  readonly requiredHlb?: number | undefined;
  /** Induction times of an oil [s] with their temperatures [°C]. */
  readonly inductionTimes?: readonly { readonly temperature: number; readonly duration: number }[] | undefined;
  /** Melting range [°C] and latent heat [J/kg]. */
  readonly melting?:
    | { readonly temperatureOnset: number; readonly temperatureEnd: number; readonly latentHeat: number }
    | undefined;
  /** Activation energy [J/mol] or factor for 10 K, with the temperature at which the rate counts as 1 [°C]. */
  readonly ageingKinetics?:
    | { readonly law: "arrhenius"; readonly activationEnergy: number; readonly temperatureReference: number }
    | { readonly law: "q10"; readonly q10: number; readonly temperatureReference: number }
    | undefined;
  /** Molar mass [kg/mol], diffusivity in air [m²/s] and Antoine constants [Pa, K] with their range [°C]. */
  readonly volatile?: Volatile | undefined;
  readonly indices?: IndicesDocument | undefined;
  readonly formulationWater: boolean;
  /** What it is mixed of, by the names for the label, with the mass fraction of each. */
  readonly ingredients?: readonly { readonly name: string; readonly massFraction: number }[] | undefined;
  /** What a certifier counts it as; shares as mass fractions. */
  readonly certified?: Read<CertifiedDocument> | undefined;
  /** Whether its allergens are stated, be it that there are none. */
  readonly allergensStated: boolean;
  /** Mass fraction of each allergen in the material. */
  readonly allergens: readonly { readonly name: string; readonly massFraction: number }[];
  /** Mass fraction of each fatty acid among all. */
  readonly fattyAcids: Readonly<Record<string, number>>;
  /** Highest temperature [°C]. */
  readonly temperatureMax?: number | undefined;
  /** Flash point [°C]. */
  readonly temperatureFlash?: number | undefined;
  /** Highest mass fraction in the product. */
  readonly massFractionMax?: number | undefined;
  readonly heatSensitive: boolean;
  /** The particles, where it has any. */
  readonly particle?: Particle | undefined;
  readonly price?: Price | undefined;
  readonly restrictions: readonly string[];
  readonly sources: Readonly<Record<string, string>>;
  readonly notes?: string | undefined;
}

/** Glitter, scrub or pigment, in the units of the kernels. */
export interface Particle {
  /** Of the sphere of equal volume [m]. */
  readonly diameter: number;
  /** [kg/m³]. */
  readonly density: number;
  /** Of a flake [m]. */
  readonly thickness?: number | undefined;
  /** Of a grain. */
  readonly sphericity?: number | undefined;
  /** Diameters [m] and mass fractions, which sum to 1 within a thousandth. */
  readonly sizes?: readonly { readonly diameter: number; readonly massFraction: number }[] | undefined;
  /** What it is made of. */
  readonly nature?: ParticleDocument["nature"] | undefined;
  /** Mass of oil per mass of pigment. */
  readonly oilAbsorption?: number | undefined;
}

/** What evaporates, in the units of the kernels. */
export interface Volatile {
  /** Molar mass [kg/mol]. */
  readonly molarMass: number;
  /** Diffusivity of the vapour in air [m²/s]. */
  readonly diffusivity: number;
  /** Vapour pressure of the pure substance, for pascals and kelvins. */
  readonly vapourPressure: AntoineLaw;
}

/** One line of an opened formula: a material, its phase and its share of the product. */
export interface FormulaLine {
  readonly material: string;
  readonly phase: string;
  /** Mass fraction of the product, as supplied. */
  readonly massFraction: number;
  /** True for the line that takes the rest (q.s.), or for the largest where none is written. */
  readonly carrier: boolean;
}

/** A premix that a phase uses, and what of the phase's opened lines it brings. */
export interface FormulaPremix {
  readonly key: string;
  readonly name: string;
  readonly phase: string;
  /** Its own materials: the share of what the phase holds of each that comes with this premix [0 to 1]. */
  readonly lines: readonly { readonly material: string; readonly shareOfLine: number }[];
  /** Premixes in it: the share of what the phase holds of each that goes into this one [0 to 1]. */
  readonly premixes: readonly { readonly premix: string; readonly shareOfPremix: number }[];
}

/** A formula with every premix opened and every share known; the shares sum to 1. */
export interface Formula {
  readonly name: string;
  readonly materials: Readonly<Record<string, Material>>;
  readonly phases: readonly string[];
  /** In the order written, phase by phase. */
  readonly lines: readonly FormulaLine[];
  /** Premixes that the phases use, phase by phase; one that another holds comes before it. */
  readonly premixes?: readonly FormulaPremix[] | undefined;
  /** Claimed natural-origin content, 0 to 1. */
  readonly claimNaturalOrigin?: number | undefined;
}
