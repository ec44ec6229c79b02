import { choiOkosFat } from "../laws/index.js";
import { aboveZero, type Draft, type Findings, join } from "./document.js";
import type { Material, MaterialDocument } from "./types.js";

/** Width of a melting range where none is stated [K]: common practice, no source. */
const usualMeltingRange = 4;

/** The thermal properties of one material: as stated, else of its class where one is named. */
export function readProperties(
  draft: Draft<MaterialDocument>,
  at: string,
  findings: Findings,
): Pick<Material, "density" | "specificHeat" | "conductivity" | "melting" | "heatSensitivity" | "volatile"> {
  const place = (...keys: string[]): string => keys.reduce(join, at);
  const ofClass = draft.propertiesOf === "fats and oils" ? choiOkosFat : undefined;
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
      : ofClass?.density,
    specificHeat: specificHeat === undefined ? ofClass?.specificHeat : { law: "constant", specificHeat },
    conductivity: conductivity === undefined ? ofClass?.conductivity : { law: "constant", conductivity },
    melting: draft.melting && readMelting(draft.melting, place("melting"), findings),
    heatSensitivity:
      draft.heatSensitivity && readSensitivity(draft.heatSensitivity, place("heatSensitivity"), findings),
    volatile: draft.volatile && readVolatile(draft.volatile, place("volatile"), findings),
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

function readSensitivity(
  draft: Draft<NonNullable<MaterialDocument["heatSensitivity"]>>,
  at: string,
  findings: Findings,
): Material["heatSensitivity"] {
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
  const [temperatureLeast, temperatureMost] = [within("from"), within("to")];
  if (temperatureLeast >= temperatureMost)
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
      temperatureLeast,
      temperatureMost,
    },
  };
}
