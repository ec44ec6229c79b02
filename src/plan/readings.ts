import type { Formula, FormulaLine } from "../formula/index.js";
import { gasConstant, kelvin } from "../laws/compile-viscosity.js";
import { type ViscosityLaw, viscosityBreakpoints, viscosityFunction } from "../laws/index.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import type { Bench } from "./documents/bench.js";
import { cylinderReadings, shearRateTaken } from "./taken.js";
import { remembered } from "./unknown.js";

/** Viscosity readings of one composition in one direction. */
export interface Readings {
  readonly direction: "heating" | "cooling";
  /** Shear rate at which they were read [1/s]. */
  readonly shearRate: number;
  readonly flowIndex?: number | undefined;
  readonly law: ViscosityLaw;
  readonly breakpoints: readonly number[];
  /** Where they end [°C]; infinite for a law. */
  readonly temperatureMin: number;
  readonly temperatureMax: number;
  /** Viscosity [Pa·s] at a temperature [°C], the law continued beyond its ends. */
  readonly at: (temperature: number) => number;
  /** What was in the beaker: share of each material, by its key. */
  readonly shares: ReadonlyMap<string, number>;
}

type ViscosityReadings = NonNullable<Bench["viscosities"]>[number];

/** The law of viscosity readings. */
export const viscosityLawOf: (readings: ViscosityReadings) => ViscosityLaw = remembered(
  ({ readings, law, taken }: ViscosityReadings): ViscosityLaw => {
    if (taken) return { law: "readings", points: cylinderReadings(taken) };
    if (!law)
      return {
        law: "readings",
        points: (readings as NonNullable<typeof readings>).map(({ at, viscosity }) => ({ temperature: at, viscosity })),
      };
    if (law.law === "andrade") return law;
    const { factor, coefficient, temperatureVogel } = law;
    return { law: "vogel-fulcher-tammann", lnFactor: Math.log(factor), coefficient, temperatureVogel };
  },
);

/** The bench's readings, and the formula that was on it. */
interface OnBench {
  readonly bench: Bench;
  readonly benchLines: readonly FormulaLine[];
}

/** All viscosity readings of the bench, ready to be asked. */
export function readingsOf({ bench, benchLines }: OnBench): readonly Readings[] {
  return (bench.viscosities ?? []).map((reading) => compiledOf(reading)(benchLines));
}

/** What follows from the law of some readings. */
function alongLaw(
  law: ViscosityLaw,
): Pick<Readings, "law" | "breakpoints" | "temperatureMin" | "temperatureMax" | "at"> {
  const temperatures = law.law === "readings" ? law.points.map((point) => point.temperature) : [];
  return {
    law,
    breakpoints: viscosityBreakpoints(law),
    temperatureMin: temperatures.length > 0 ? minOf(temperatures) : Number.NEGATIVE_INFINITY,
    temperatureMax: temperatures.length > 0 ? maxOf(temperatures) : Number.POSITIVE_INFINITY,
    at: viscosityFunction(law, { beyond: "extend" }),
  };
}

/** Stands among the shares of a reading for the gel former that it states, whichever material that is. */
const doseKey = "\u0000dose";

/** One set of readings, ready to be asked: compiled once, whatever the formula of the run. */
const compiledOf: (reading: ViscosityReadings) => (lines: readonly FormulaLine[]) => Readings = remembered(
  (reading: ViscosityReadings) =>
    remembered((benchLines: readonly FormulaLine[]): Readings => {
      const { direction, taken, flowIndex } = reading;
      const shearRate = taken ? shearRateTaken(taken) : (reading.shearRate as number);
      const shares = sharesOf(reading, benchLines);
      return { direction, shearRate, flowIndex, shares, ...alongLaw(viscosityLawOf(reading)) };
    }),
);

/** What was in the beaker of a reading: the lines of its phases, and another dose of gel former if it states one. */
function sharesOf(
  { phases, gelFormer }: ViscosityReadings,
  lines: readonly FormulaLine[],
): ReadonlyMap<string, number> {
  const inside = lines.filter(({ phase }) => phases.includes(phase));
  const whole = inside.reduce((sum, line) => sum + line.massFraction, 0);
  const shares = new Map<string, number>();
  for (const { material, massFraction } of inside)
    shares.set(material, (shares.get(material) ?? 0) + massFraction / whole);
  // The dose that a reading states goes by material when it is compared with a charge.
  if (gelFormer !== undefined) shares.set(doseKey, gelFormer);
  return shares;
}

/** What is in a vessel, as compositions are compared. */
export interface Composition {
  /** Share of each material [0 to 1]. */
  readonly shares: ReadonlyMap<string, number>;
  /** Share that is gel former [0 to 1]. */
  readonly dose: number;
}

/** Readings, and by how much their composition differs from another. */
export interface Near {
  readonly reading: Readings;
  /** Largest difference in the share of any material. */
  readonly apart: number;
}

/** Of the viscosity readings in a direction those whose composition is nearest; none where nothing was read. */
export function nearestReadings(
  job: OnBench,
  composition: Composition,
  direction: Readings["direction"],
): Near | undefined {
  return readingsOf(job)
    .filter((reading) => reading.direction === direction)
    .map((reading) => ({ reading, apart: apart(composition, reading.shares) }))
    .sort((one, other) => one.apart - other.apart)[0];
}

function apart({ shares: own, dose }: Composition, shares: ReadonlyMap<string, number>): number {
  const read = shares.get(doseKey);
  // A reading that states its own dose is not of the bench's formula: there its dose alone counts.
  if (read !== undefined) return Math.abs(read - dose);
  const keys = new Set([...own.keys(), ...shares.keys()]);
  return Math.max(0, ...[...keys].map((key) => Math.abs((own.get(key) ?? 0) - (shares.get(key) ?? 0))));
}

/** Readings of another composition, shifted along the temperature. */
export interface Shift {
  readonly readings: Readings;
  /** [K]. */
  readonly by: number;
  /** Where the composition that was read sets, or on heating dissolves [°C]. */
  readonly from: number;
}

/** Gel former in the beaker of some readings [0 to 1]. */
export function doseRead({ shares }: Readings, materials: Formula["materials"]): number {
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
        temperatureVogel: by - kelvin,
      };
    case "vogel-fulcher-tammann":
      return { ...law, temperatureVogel: law.temperatureVogel + by };
    default:
      return law;
  }
}

/** Readings shifted from where their composition sets, or on heating dissolves, to where another does [°C]. */
export function shifted(readings: Readings, from: number, to: number): Shift {
  const by = to - from;
  return { readings: { ...readings, ...alongLaw(shiftedLaw(readings.law, by)) }, by, from };
}
