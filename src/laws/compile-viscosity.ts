import { finite, list, positive, record, refuse, show, temperature, variant } from "../guards.js";
import { curveAt, type MonotoneCurve, monotoneCurve } from "../numeric/monotone-curve.js";
import { type Beyond, extending } from "./beyond.js";
import * as known from "./known.js";
import type { MeltLaw, ViscosityLaw, ViscosityReading } from "./viscosity-law.js";

/** Molar gas constant [J/(mol·K)], exact since 2019. */
export const gasConstant = 8.31446261815324;
/** 0 °C in kelvin. */
export const kelvin = 273.15;

/** A law that has been checked, ready to be evaluated. */
export interface CompiledViscosity {
  readonly viscosityOf: (temperature: number) => number;
  /** Temperatures of the readings [°C], rising; empty for a law that has none. */
  readonly readings: readonly number[];
  /** Where the law has a breakpoint or a reading [°C], rising. */
  readonly breakpoints: readonly number[];
}

/** Readings as a curve that rises in ln viscosity over 1/T, so from the warmest to the coldest. */
export function fitReadings(
  points: readonly ViscosityReading[],
  path: string,
): { readonly curve: MonotoneCurve; readonly temperatures: readonly number[] } {
  const sorted = list(points, `${path}.points`, 2)
    .map((point, i) => {
      const at = `${path}.points[${i}]`;
      const { temperature: warmth, viscosity } = record(point, at);
      const x = 1 / (temperature(warmth, `${at}.temperature`) + kelvin);
      return { at, warmth, viscosity, x, y: Math.log(positive(viscosity, `${at}.viscosity`)) };
    })
    .sort((one, other) => other.warmth - one.warmth);
  sorted.reduce((warmer, { at, warmth, viscosity, x, y }) => {
    // Compared as the curve sees them: readings that a double cannot tell apart leave no curve between them.
    if (!(x > warmer.x)) refuse("input", `${at}.temperature`, warmth, "one reading at each temperature");
    const falls = `more than ${warmer.viscosity} as read at ${warmer.warmth} °C: viscosity falls as it warms`;
    if (!(y > warmer.y)) refuse("input", `${at}.viscosity`, viscosity, falls);
    return { at, warmth, viscosity, x, y };
  });
  return {
    curve: monotoneCurve(
      sorted.map(({ x }) => x),
      sorted.map(({ y }) => y),
    ),
    temperatures: sorted.map(({ warmth }) => warmth).reverse(),
  };
}

/** A law without readings and breakpoints. */
function smooth(viscosityOf: CompiledViscosity["viscosityOf"]): CompiledViscosity {
  return { viscosityOf, readings: [], breakpoints: [] };
}

function compileMelt(law: MeltLaw, extended: boolean, path: string): CompiledViscosity {
  switch (law.law) {
    case "constant": {
      const viscosity = positive(law.viscosity, `${path}.viscosity`);
      return smooth(() => viscosity);
    }
    case "andrade": {
      const factor = positive(law.factor, `${path}.factor`);
      const barrier = positive(law.activationEnergy, `${path}.activationEnergy`) / gasConstant;
      return smooth((at) => factor * Math.exp(barrier / (at + kelvin)));
    }
    case "vogel-fulcher-tammann": {
      const lnFactor = finite(law.lnFactor, `${path}.lnFactor`);
      const coefficient = positive(law.coefficient, `${path}.coefficient`);
      const pole = finite(law.temperatureVogel, `${path}.temperatureVogel`);
      return smooth((at) =>
        at > pole
          ? Math.exp(lnFactor + coefficient / (at - pole))
          : refuse("range", "temperature", at, `above the law's pole at ${pole} °C`),
      );
    }
    case "readings": {
      const { curve, temperatures } = fitReadings(law.points, path);
      const coldest = temperatures[0] as number;
      const warmest = temperatures[temperatures.length - 1] as number;
      return {
        readings: temperatures,
        breakpoints: temperatures,
        viscosityOf: (at) =>
          extended || (at >= coldest && at <= warmest)
            ? Math.exp(curveAt(curve, 1 / (at + kelvin)))
            : refuse("range", "temperature", at, `${coldest} to ${warmest} °C as read, or beyond: "extend"`),
      };
    }
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), "a viscosity law");
  }
}

/** Checks a law, which faults call `path`, and makes it a function that gives a positive finite viscosity or throws. */
export function compileViscosity(law: ViscosityLaw, beyond: Beyond | undefined, path: string): CompiledViscosity {
  const extended = extending(beyond);
  variant(law, path, "law", known.viscosity);
  const setting = law.law === "setting";
  const melt = setting
    ? compileMelt(variant(law.melt, `${path}.melt`, "law", known.melt), extended, `${path}.melt`)
    : compileMelt(law, extended, path);
  const temperatureSetting = setting ? temperature(law.temperatureSetting, `${path}.temperatureSetting`) : -kelvin;
  const steepness = setting ? positive(law.steepness, `${path}.steepness`) : 0;
  return {
    readings: melt.readings,
    breakpoints: setting
      ? [...melt.breakpoints, temperatureSetting].sort((one, other) => one - other)
      : melt.breakpoints,
    viscosityOf: (at) => {
      const viscosity = melt.viscosityOf(temperature(at, "temperature"));
      const set = at < temperatureSetting ? viscosity * Math.exp(steepness * (temperatureSetting - at)) : viscosity;
      return set > 0 && set < Number.POSITIVE_INFINITY
        ? set
        : refuse("range", "viscosity", set, `a viscosity that a double can hold, at ${at} °C`);
    },
  };
}
