import type { Formula } from "../formula/index.js";
import type { ViscosityLaw } from "../laws/index.js";
import { temperatureByDose } from "./by-dose.js";
import type { Bench } from "./documents/bench.js";
import { alongLaw, doseKey, type Readings } from "./readings.js";

/** Readings of another composition, shifted along the temperature. */
export interface Shift {
  readonly readings: Readings;
  /** [K]. */
  readonly by: number;
  /** Where the composition that was read sets, or on heating dissolves [°C]. */
  readonly from: number;
}

/** Molar gas constant [J/(mol·K)], exact since 2019; absolute zero [°C]. */
const gasConstant = 8.31446261815324;
const absoluteZero = -273.15;

/** Gel former in the beaker of some readings [0 to 1]. */
function doseOf({ shares }: Readings, materials: Formula["materials"]): number {
  const stated = shares.get(doseKey);
  if (stated !== undefined) return stated;
  return [...shares].reduce((sum, [key, share]) => (materials[key]?.function === "gel former" ? sum + share : sum), 0);
}

/** The same curve at temperatures that are so much higher. */
function shiftedLaw(law: ViscosityLaw, by: number): ViscosityLaw {
  switch (law.law) {
    case "readings":
      return {
        law: "readings",
        points: law.points.map(({ temperature, viscosity }) => ({ temperature: temperature + by, viscosity })),
      };
    // Andrade's law with another zero of temperature is that of Vogel, Fulcher and Tammann.
    case "andrade":
      return {
        law: "vogel-fulcher-tammann",
        lnFactor: Math.log(law.factor),
        coefficient: law.activationEnergy / gasConstant,
        temperatureVogel: absoluteZero + by,
      };
    case "vogel-fulcher-tammann":
      return { ...law, temperatureVogel: law.temperatureVogel + by };
    default:
      return law;
  }
}

/** Readings shifted from where their composition sets, or on heating dissolves, to where another does [°C]. */
export function shifted(readings: Readings, to: number, bench: Bench, materials: Formula["materials"]): Shift {
  const which = readings.direction === "cooling" ? "setsAt" : "dissolvesAt";
  const { temperature: from } = temperatureByDose(bench, doseOf(readings, materials), which);
  const by = to - from;
  return { readings: { ...readings, ...alongLaw(shiftedLaw(readings.law, by)) }, by, from };
}
