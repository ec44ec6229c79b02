import type { FormulaLine } from "../formula/index.js";
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

/** All viscosity readings of the bench, ready to be asked. */
export function readingsOf({
  bench,
  benchLines,
}: {
  readonly bench: Bench;
  readonly benchLines: readonly FormulaLine[];
}): readonly Readings[] {
  return (bench.viscosities ?? []).map((reading) => compiledOf(reading)(benchLines));
}

/** What follows from the law of some readings. */
export function alongLaw(
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
export const doseKey = "\u0000dose";

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
