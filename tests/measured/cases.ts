import { densityGlycerinWater, refractiveIndexGlycerinWater, waterActivity } from "gelwright/gel";
import { fitConductance, temperatureAfterCooling } from "gelwright/heat";
import { choiOkosFat, densityAt } from "gelwright/laws";
import { profileValues, viscosityByArrhenius } from "gelwright/oils";
import { dragCoefficient, terminalVelocity } from "gelwright/particles";
import { fitWalther, waltherViscosityAt } from "gelwright/rheology";
import { type MeasuredData, type MeasuredPoint, readMeasured } from "./measured.js";

/** A case: measurements of others, each beside our figure. Nothing is tuned to the points that are compared. */
export interface MeasuredCase extends MeasuredData {
  readonly points: readonly MeasuredPoint[];
}

type Row = readonly [number, number, number];
type Named = readonly [string, number, number];

/** Rows that share their first column, each group in its order. */
function groups<R extends readonly unknown[]>(rows: readonly R[]): readonly (readonly R[])[] {
  return [...new Set(rows.map(([first]) => first))].map((name) => rows.filter(([first]) => first === name));
}

const molarMassGlycerin = 92.094;
const molarMassWater = 18.0153;

/** The water activity at the freezing point, from its depression. */
function activityByFreezing(depression: number): number {
  const melting = 273.15;
  const temperature = melting - depression;
  const [enthalpy, heatCapacity, gas] = [6009.5, 38.1, 8.314462618];
  return Math.exp(
    -((enthalpy - heatCapacity * melting) / gas) * (1 / temperature - 1 / melting) +
      (heatCapacity / gas) * Math.log(temperature / melting),
  );
}

function blend(rows: readonly Row[]): readonly MeasuredPoint[] {
  return groups(rows).flatMap((series) => {
    const pure = (share: number) => series.find(([, x]) => x === share)?.[2] ?? Number.NaN;
    return series
      .filter(([, x]) => x > 0 && x < 1)
      .map(([, x, measured]) => {
        const parts = [
          { share: 1 - x, viscosity: pure(0) },
          { share: x, viscosity: pure(1) },
        ];
        return { measured, ours: viscosityByArrhenius({ parts }) };
      });
  });
}

function walther(rows: readonly Named[]): readonly MeasuredPoint[] {
  return groups(rows).flatMap((oil) => {
    const isFitted = ([, temperature]: Named) => [23.9, 60, 110].includes(temperature);
    const points = oil
      .filter(isFitted)
      .map(([, temperature, viscosity]) => ({ temperature, kinematicViscosity: viscosity * 1e-6 }));
    const fitted = fitWalther({ points });
    return oil
      .filter((row) => !isFitted(row))
      .map(([, temperature, measured]) => ({
        measured,
        ours: waltherViscosityAt({ ...fitted, temperature }) * 1e6,
      }));
  });
}

function cooling(rows: readonly (readonly [number, number])[]): readonly MeasuredPoint[] {
  const [start, later, ...rest] = rows.map(([minute, temperature]) => ({ time: minute * 60, temperature }));
  if (!start || !later) return [];
  const room = { temperatureAmbient: 22, heatCapacity: 1000 };
  const { conductance } = fitConductance({ readings: [start, later], ...room });
  return rest.map(({ time, temperature }) => ({
    measured: temperature,
    ours: temperatureAfterCooling({
      ...room,
      conductance,
      temperatureStart: start.temperature,
      duration: time - start.time,
    }),
  }));
}

const methods: Readonly<Record<string, (rows: readonly never[]) => readonly MeasuredPoint[]>> = {
  "oil-density": (rows: readonly Named[]) =>
    rows.map(([, temperature, measured]) => ({
      measured,
      ours: densityAt({ law: choiOkosFat.density, temperature }),
    })),
  "oil-viscosity": walther,
  "glycerin-water-density": (rows: readonly Row[]) =>
    rows.map(([x, temperature, measured]) => {
      const mass = x * molarMassGlycerin;
      const massFractionGlycerin = mass / (mass + (1 - x) * molarMassWater);
      return { measured, ours: densityGlycerinWater({ massFractionGlycerin, temperature }) };
    }),
  "glycerin-water-index": (rows: readonly (readonly [number, number])[]) =>
    rows.map(([massFractionGlycerin, measured]) => ({
      measured,
      ours: refractiveIndexGlycerinWater({ massFractionGlycerin, temperature: 20 }),
    })),
  "glycerin-water-activity": (rows: readonly (readonly [number, number])[]) =>
    rows.map(([massFractionGlycerin, depression]) => ({
      measured: activityByFreezing(depression),
      ours: waterActivity({ massFractionGlycerin, temperature: 0 }).wilson,
    })),
  "blend-squalane": blend,
  "blend-hexadecane": blend,
  "iodine-value": (rows: readonly (readonly [string, Readonly<Record<string, number>>, number])[]) =>
    rows.map(([, profile, measured]) => ({ measured, ours: profileValues({ profile }).iodineValue })),
  "cooling-mug": cooling,
  "sphere-drag": (rows: readonly Named[]) =>
    rows.map(([, reynolds, measured]) => ({
      measured,
      ours: dragCoefficient({ reynolds, drag: { law: "schiller-naumann" }, beyond: "extend" }),
    })),
  "sphere-settling": (rows: readonly Row[]) =>
    rows.map(([densityFluid, viscosity, measured]) => ({
      measured,
      ours: terminalVelocity({
        diameter: 0.015,
        densityParticle: 1120,
        densityFluid,
        viscosity,
        drag: { law: "schiller-naumann" },
      }).velocity,
    })),
};

/** Every measured case, with our figures as the library gives them now. */
export function measuredCases(): readonly MeasuredCase[] {
  return Object.entries(methods).map(([id, method]) => {
    const data = readMeasured(id);
    return { ...data, points: method(data.rows as readonly never[]) };
  });
}
