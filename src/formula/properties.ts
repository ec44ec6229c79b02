import { choiOkosFat, liquidGlycerin, liquidWater } from "../laws/index.js";
import { aboveZero, type Draft, type Findings, join } from "./document.js";
import type { MaterialDocument, PropertiesOf, RefractiveIndexDocument } from "./material-document.js";
import type { Material, RefractiveIndex } from "./types.js";

/** The correlations that a material may name. */
function classOf(name: PropertiesOf | undefined): Pick<Material, "density" | "specificHeat" | "conductivity"> {
  if (name === undefined) return {};
  return { "fats and oils": choiOkosFat, glycerin: liquidGlycerin, water: liquidWater }[name];
}

/** Width of a melting range where none is stated [K]: common practice, no source. */
const usualMeltingRange = 4;

/** The thermal properties of one material: as stated, else of its class where one is named. */
export function readProperties(
  draft: Draft<MaterialDocument>,
  at: string,
  findings: Findings,
): Pick<
  Material,
  | "density"
  | "specificHeat"
  | "conductivity"
  | "melting"
  | "ageingKinetics"
  | "volatile"
  | "refractiveIndex"
  | "propertiesOf"
> {
  const place = (...keys: string[]): string => keys.reduce(join, at);
  const ofClass = classOf(draft.propertiesOf);
  const { density } = draft;
  const specificHeat = findings.optional(draft.specificHeat, "specificHeat", place("specificHeat"), aboveZero);
  const conductivity = findings.optional(draft.conductivity, "conductivity", place("conductivity"), aboveZero);
  return {
    density: density
      ? {
          law: "linear",
          density: findings.quantity(density.value, "density", place("density", "value"), aboveZero),
          temperatureReference: findings.quantity(density.at, "temperature", place("density", "at")),
          slope: findings.optional(density.fallPerKelvin, "density", place("density", "fallPerKelvin"), 0) ?? 0,
        }
      : ofClass.density,
    specificHeat: specificHeat === undefined ? ofClass.specificHeat : { law: "constant", specificHeat },
    conductivity: conductivity === undefined ? ofClass.conductivity : { law: "constant", conductivity },
    propertiesOf: draft.propertiesOf,
    refractiveIndex:
      draft.refractiveIndex && readRefractiveIndex(draft.refractiveIndex, place("refractiveIndex"), findings),
    melting: draft.melting && readMelting(draft.melting, place("melting"), findings),
    ageingKinetics: draft.ageingKinetics && readAgeingKinetics(draft.ageingKinetics, place("ageingKinetics"), findings),
    volatile: draft.volatile && readVolatile(draft.volatile, place("volatile"), findings),
  };
}

/** A refractive index with its temperature. */
export function readRefractiveIndex(
  { value, at: read, perKelvin }: Draft<RefractiveIndexDocument>,
  at: string,
  findings: Findings,
): RefractiveIndex {
  return {
    refractiveIndex: value ?? Number.NaN,
    temperature: findings.quantity(read, "temperature", join(at, "at")),
    ...(perKelvin !== undefined && { perKelvin }),
  };
}

function readMelting(
  draft: Draft<NonNullable<MaterialDocument["melting"]>>,
  at: string,
  findings: Findings,
): Material["melting"] {
  const middle = findings.quantity(draft.at, "temperature", join(at, "at"));
  const width =
    findings.optional(draft.over, "temperatureDifference", join(at, "over"), aboveZero) ?? usualMeltingRange;
  return {
    temperatureOnset: middle - width / 2,
    temperatureEnd: middle + width / 2,
    latentHeat: findings.quantity(draft.latentHeat, "specificEnergy", join(at, "latentHeat"), aboveZero),
  };
}

function readAgeingKinetics(
  draft: Draft<NonNullable<MaterialDocument["ageingKinetics"]>>,
  at: string,
  findings: Findings,
): Material["ageingKinetics"] {
  const { activationEnergy: text, q10 } = draft;
  const temperatureReference = findings.quantity(draft.reference, "temperature", join(at, "reference"));
  const activationEnergy = findings.optional(text, "molarEnergy", join(at, "activationEnergy"), 0);
  if ((text === undefined) === (q10 === undefined))
    findings.note(
      at,
      text === undefined ? "neither activationEnergy nor q10" : "activationEnergy and q10",
      "one of the two",
    );
  if (q10 !== undefined && !(q10 > 0)) findings.note(join(at, "q10"), q10, "a number above 0");
  return activationEnergy === undefined
    ? { law: "q10", q10: q10 ?? Number.NaN, temperatureReference }
    : { law: "arrhenius", activationEnergy, temperatureReference };
}

function readVolatile(
  draft: Draft<NonNullable<MaterialDocument["volatile"]>>,
  at: string,
  findings: Findings,
): Material["volatile"] {
  const { antoine } = draft;
  const within = (key: "from" | "to"): number =>
    findings.quantity(antoine?.[key], "temperature", join(join(at, "antoine"), key));
  const [temperatureMin, temperatureMax] = [within("from"), within("to")];
  if (temperatureMin >= temperatureMax)
    findings.note(join(join(at, "antoine"), "to"), antoine?.to, `above ${antoine?.from}`);
  return {
    molarMass: findings.quantity(draft.molarMass, "molarMass", join(at, "molarMass"), aboveZero),
    diffusivity: findings.quantity(draft.diffusivity, "kinematicViscosity", join(at, "diffusivity"), aboveZero),
    vapourPressure: {
      law: "antoine",
      logarithm: antoine?.logarithm ?? "decimal",
      constantA: antoine?.a ?? Number.NaN,
      constantB: antoine?.b ?? Number.NaN,
      constantC: antoine?.c ?? Number.NaN,
      temperatureMin,
      temperatureMax,
    },
  };
}
