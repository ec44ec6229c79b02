import type { Ratio } from "./ratio.js";
import type { Acid } from "./shorthand.js";

/** What follows from a fatty-acid profile alone. */
export interface ProfileValues {
  /** Mean molar mass of the fatty acids, by amount [kg/mol]. */
  readonly molarMassAcids: number;
  /** Mean molar mass of the triglycerides, by amount [kg/mol]. */
  readonly molarMassTriglyceride: number;
  /** Iodine value of the triglycerides by AOCS Cd 1c-85 [g/100 g]. */
  readonly iodineValue: number;
  /** Iodine value of the free fatty acids by AOCS Cd 1c-85 [g/100 g]. */
  readonly iodineValueAcids: number;
  /** Saponification value by AOCS Cd 3a-94, which takes the mean molar mass by mass [mg KOH/g]. */
  readonly saponificationValue: number;
  /** Saponification value with the mean molar mass by amount and triglycerides and potassium hydroxide by their atoms, where the method rounds [mg KOH/g]. */
  readonly saponificationValueMolar: number;
  /** Oxidisability (Cox value), 1 for pure oleic acid. */
  readonly oxidisability: number;
  /** Allylic position equivalent: 2 for each unsaturated acid, times its percentage; the paper's formula names 18:1, 18:2 and 18:3 alone. */
  readonly allylicPositions: number;
  /** Bis-allylic position equivalent: the positions between two double bonds, times the percentage. */
  readonly bisAllylicPositions: number;
  /** Saturated acids [% of the fatty acids]. */
  readonly saturated: number;
  /** Acids with one double bond [% of the fatty acids]. */
  readonly monounsaturated: number;
  /** Acids with two double bonds or more [% of the fatty acids]. */
  readonly polyunsaturated: number;
  /** Double bonds of the triglycerides [mol/kg]. */
  readonly doubleBonds: number;
  /** Ester bonds of the triglycerides [mol/kg]. */
  readonly esterBonds: number;
}

/** What glycerol adds to three fatty acids less the three waters that leave, C3H2 [kg/mol]. */
const glyceryl = (12.011 * 3 + 1.008 * 2) / 1000;
/** Two iodine atoms [g/mol]. */
const iodine = 253.809;
/** Potassium hydroxide as the method rounds it [g/mol]. */
const potashOfMethod = 56.1;
/** Potassium hydroxide by abridged atomic weights, 39.098 + 15.999 + 1.008 [g/mol]. */
const potash = 56.105;

/** Factors as AOCS Cd 1c-85 prints them: for triglycerides, and for free fatty acids. */
const printed: Readonly<Record<string, readonly [triglyceride: number, acid: number]>> = {
  "16:1": [0.95, 0.9976],
  "18:1": [0.86, 0.8986],
  "18:2": [1.732, 1.81],
  "18:3": [2.616, 2.735],
  "20:1": [0.785, 0.8175],
  "22:1": [0.723, 0.7497],
};

const coxFactors: Readonly<Record<string, number>> = { "18:1": 0.01, "18:2": 0.103, "18:3": 0.216 };

const triglycerideOf = ({ molarMass }: Acid) => 3 * molarMass + glyceryl;
const perMole = ({ molarMass }: Acid) => 1 / molarMass;
/** Mass of triglyceride that a kilogram of the acid makes [kg]. */
export const perMass = ({ molarMass }: Acid): number => 1 + glyceryl / (3 * molarMass);
const one = () => 1;

/** Every value of a profile, as what an acid adds to it. */
export const valuesOfAcids: Readonly<Record<keyof ProfileValues, Ratio>> = {
  molarMassAcids: { top: one, bottom: perMole },
  molarMassTriglyceride: { top: (acid) => 3 * perMass(acid), bottom: perMole },
  iodineValue: {
    top: (acid) => printed[acid.kind]?.[0] ?? (3 * acid.doubleBonds * iodine) / 1000 / triglycerideOf(acid),
  },
  iodineValueAcids: {
    top: (acid) => printed[acid.kind]?.[1] ?? (acid.doubleBonds * iodine) / 1000 / acid.molarMass,
  },
  saponificationValue: {
    top: () => 3000 * potashOfMethod,
    bottom: ({ molarMass }) => 3000 * molarMass + 92.09 - 3 * 18,
  },
  saponificationValueMolar: { top: (acid) => potash * perMole(acid), bottom: perMass },
  oxidisability: { top: ({ kind }) => coxFactors[kind] ?? 0 },
  allylicPositions: { top: ({ doubleBonds }) => (doubleBonds ? 2 : 0) },
  bisAllylicPositions: { top: ({ doubleBonds }) => Math.max(doubleBonds - 1, 0) },
  saturated: { top: ({ doubleBonds }) => (doubleBonds ? 0 : 1) },
  monounsaturated: { top: ({ doubleBonds }) => (doubleBonds === 1 ? 1 : 0) },
  polyunsaturated: { top: ({ doubleBonds }) => (doubleBonds > 1 ? 1 : 0) },
  doubleBonds: { top: ({ doubleBonds, molarMass }) => doubleBonds / molarMass, bottom: perMass },
  esterBonds: { top: perMole, bottom: perMass },
};
