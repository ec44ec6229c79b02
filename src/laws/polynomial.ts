import { finite, list, refuse, temperature } from "../guards.js";
import { type Beyond, extending } from "./beyond.js";
import { kelvin } from "./compile-viscosity.js";

/** The temperatures between which a law was measured. Left out, it holds wherever it gives a positive figure. */
export interface LawRange {
  /** Lowest temperature [°C]. */
  readonly temperatureMin?: number;
  /** Highest temperature [°C]. */
  readonly temperatureMax?: number;
}

/** The sum of the coefficients, from the constant term up, times the powers of x. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k -= 1) sum = sum * x + (coefficients[k] as number);
  return sum;
}

/** The same polynomial in y, where x = origin + width·y. */
export function shifted(coefficients: readonly number[], origin: number, width: number): number[] {
  const moved = [...coefficients];
  for (let i = 0; i < moved.length; i += 1)
    for (let k = moved.length - 2; k >= i; k -= 1) (moved[k] as number) += origin * (moved[k + 1] as number);
  return moved.map((coefficient, k) => coefficient * width ** k);
}

/** The coefficients of a law, if there are any and all are numbers. */
export function checkCoefficients(coefficients: readonly number[], path: string): readonly number[] {
  return list(coefficients, `${path}.coefficients`, 1).map((value, i) => finite(value, `${path}.coefficients[${i}]`));
}

/** Gives the temperature back where it lies within the range of a law, or where that may be left. */
export function compileRange(law: LawRange, beyond: Beyond | undefined, path: string): (temperature: number) => number {
  const extended = extending(beyond);
  const { temperatureMin = -kelvin, temperatureMax } = law;
  const min = finite(temperatureMin, `${path}.temperatureMin`);
  const max =
    temperatureMax === undefined ? Number.POSITIVE_INFINITY : temperature(temperatureMax, `${path}.temperatureMax`);
  if (min >= max) refuse("input", `${path}.temperatureMin`, min, `less than ${max} °C`);
  return (at) => {
    temperature(at, "temperature");
    return extended || (at >= min && at <= max)
      ? at
      : refuse("range", "temperature", at, `${min} to ${max} °C, or beyond: "extend"`);
  };
}

/** A property of matter at a temperature, if it is above zero. */
export function matter(value: number, at: number, path: string, what: string): number {
  return value > 0 && value < Number.POSITIVE_INFINITY
    ? value
    : refuse("range", path, value, `a ${what} above 0 at ${at} °C`);
}

/** A property as a polynomial of T − origin, within its range. */
export function compilePolynomial(
  coefficients: readonly number[],
  origin: number,
  law: LawRange,
  beyond: Beyond | undefined,
  path: string,
  what: string,
): (temperature: number) => number {
  const within = compileRange(law, beyond, path);
  return (at) => matter(polynomial(coefficients, within(at) - origin), at, path, what);
}
