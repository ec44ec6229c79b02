import { choiOkosFat, liquidGlycerin, liquidWater } from "../laws/index.js";
import { type Draft, type Findings, join } from "./document.js";
import type { MaterialDocument, PropertiesOf } from "./material-document.js";
import type { Read } from "./read-type.js";
import type { Material } from "./types.js";

/** The thermal properties of a material and what else of it follows a law. */
type Properties = Pick<
  Material,
  | "density"
  | "specificHeat"
  | "conductivity"
  | "melting"
  | "ageingKinetics"
  | "volatile"
  | "refractiveIndex"
  | "propertiesOf"
>;

type ReadMaterial = Read<MaterialDocument>;

/** The correlations that a material may name. */
function classOf(name: PropertiesOf | undefined): Pick<Material, "density" | "specificHeat" | "conductivity"> {
  if (name === undefined) return {};
  return { "fats and oils": choiOkosFat, glycerin: liquidGlycerin, water: liquidWater }[name];
}

/** Width of a melting range where none is stated [K]: common practice, no source. */
const usualMeltingRange = 4;

/** The properties of one material: as stated, else of its class where one is named. */
export function propertiesOf(read: ReadMaterial): Properties {
  const ofClass = classOf(read.propertiesOf);
  const { density, specificHeat, conductivity, refractiveIndex, melting, ageingKinetics, volatile } = read;
  return {
    density: density
      ? {
          law: "linear",
          density: density.value,
          temperatureReference: density.at,
          slope: density.fallPerKelvin ?? 0,
        }
      : ofClass.density,
    specificHeat: specificHeat === undefined ? ofClass.specificHeat : { law: "constant", specificHeat },
    conductivity: conductivity === undefined ? ofClass.conductivity : { law: "constant", conductivity },
    propertiesOf: read.propertiesOf,
    refractiveIndex: refractiveIndex && refractiveIndexOf(refractiveIndex),
    melting: melting && meltingOf(melting),
    ageingKinetics: ageingKinetics && ageingKineticsOf(ageingKinetics),
    volatile: volatile && volatileOf(volatile),
  };
}

function refractiveIndexOf({
  value,
  at,
  perKelvin,
}: NonNullable<ReadMaterial["refractiveIndex"]>): Material["refractiveIndex"] {
  return { refractiveIndex: value, temperature: at, ...(perKelvin !== undefined && { perKelvin }) };
}

function meltingOf({
  at,
  latentHeat,
  over = usualMeltingRange,
}: NonNullable<ReadMaterial["melting"]>): Material["melting"] {
  return { temperatureOnset: at - over / 2, temperatureEnd: at + over / 2, latentHeat };
}

function ageingKineticsOf({
  activationEnergy,
  q10,
  reference: temperatureReference,
}: NonNullable<ReadMaterial["ageingKinetics"]>): Material["ageingKinetics"] {
  if (activationEnergy !== undefined) return { law: "arrhenius", activationEnergy, temperatureReference };
  // One of the two is there, else the document was refused.
  return { law: "q10", q10: q10 as number, temperatureReference };
}

function volatileOf({
  molarMass,
  diffusivity,
  antoine: { logarithm, a, b, c, from, to },
}: NonNullable<ReadMaterial["volatile"]>): Material["volatile"] {
  const constants = { constantA: a, constantB: b, constantC: c };
  return {
    molarMass,
    diffusivity,
    vapourPressure: { law: "antoine", logarithm, ...constants, temperatureMin: from, temperatureMax: to },
  };
}

/** What of these properties needs several fields. */
export function checkProperties(draft: Draft<ReadMaterial>, at: string, findings: Findings): void {
  const { ageingKinetics, volatile } = draft;
  const path = join(at, "ageingKinetics");
  if (ageingKinetics && !findings.holds(path)) {
    const { activationEnergy, q10 } = ageingKinetics;
    const isNone = activationEnergy === undefined && q10 === undefined;
    if (isNone) findings.note(path, "neither activationEnergy nor q10", "one of the two", "missing");
    else if (activationEnergy !== undefined && q10 !== undefined)
      findings.note(path, "activationEnergy and q10", "one of the two");
  }
  const { from = Number.NEGATIVE_INFINITY, to = Number.POSITIVE_INFINITY } = volatile?.antoine ?? {};
  if (from >= to)
    findings.note(join(join(join(at, "volatile"), "antoine"), "to"), `${to} °C`, `above ${from} °C`, "contradiction", {
      value: to,
      min: from,
    });
}
