import { notNegative, positive, refuse, show, temperature, variant } from "../guards.js";
import type { Beyond } from "./beyond.js";
import * as known from "./known.js";
import { checkCoefficients, compileRange, type LawRange, matter, polynomial, shifted } from "./polynomial.js";

/** A specific heat without melting. */
export type SmoothSpecificHeatLaw =
  | {
      readonly law: "constant";
      /** [J/(kg·K)], above 0. */
      readonly specificHeat: number;
    }
  | ({
      /** Specific heat = c₀ + c₁ T + c₂ T² + …, with T in °C. */
      readonly law: "polynomial";
      /** From the constant term up [J/(kg·K)], [J/(kg·K²)] and so on; at least one. */
      readonly coefficients: readonly number[];
    } & LawRange);

/** A specific heat that takes up the latent heat of melting over a range of temperature. */
export interface MeltingSpecificHeatLaw {
  /** Latent heat over a range of temperature. */
  readonly law: "melting";
  /** Specific heat of the solid [J/(kg·K)]; while it melts, it and the liquid's count by the share that has melted. */
  readonly solid: SmoothSpecificHeatLaw;
  /** Specific heat of the liquid [J/(kg·K)]. */
  readonly liquid: SmoothSpecificHeatLaw;
  /** Heat that melting takes up over the whole range [J/kg], 0 or more. */
  readonly latentHeat: number;
  /** Where melting begins [°C]. */
  readonly temperatureOnset: number;
  /** Where melting ends [°C], above the onset. */
  readonly temperatureEnd: number;
}

/** How specific heat depends on temperature, as plain data. */
export type SpecificHeatLaw = SmoothSpecificHeatLaw | MeltingSpecificHeatLaw;

/** One stretch of a law, up to a temperature: a polynomial in (T − origin)/width. */
interface Piece {
  readonly to: number;
  readonly origin: number;
  readonly width: number;
  readonly coefficients: readonly number[];
  /** Gives the temperature back, or refuses it. */
  readonly within: (temperature: number) => number;
}

/** A law that has been checked, ready to be evaluated. */
export interface CompiledSpecificHeat {
  readonly specificHeatOf: (temperature: number) => number;
  /** Heat from one temperature to another [J/kg], negative downwards. */
  readonly heatBetween: (from: number, to: number) => number;
  /** Where a stretch ends [°C], rising. */
  readonly breakpoints: readonly number[];
}

/** The share that has melted, 10x³ − 15x⁴ + 6x⁵, and its slope: both flat at the ends of the melting range. */
const melted: readonly number[] = [0, 0, 0, 10, -15, 6];
const melting: readonly number[] = [0, 0, 30, -60, 30];

function coefficientsOf(law: SmoothSpecificHeatLaw, path: string): readonly number[] {
  variant(law, path, "law", known.smoothSpecificHeat);
  switch (law.law) {
    case "constant":
      return [positive(law.specificHeat, `${path}.specificHeat`)];
    case "polynomial":
      return checkCoefficients(law.coefficients, path);
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), "a specific-heat law");
  }
}

function pieceOf(law: SmoothSpecificHeatLaw, to: number, beyond: Beyond | undefined, path: string): Piece {
  const coefficients = coefficientsOf(law, path);
  const within = compileRange(law.law === "constant" ? {} : law, beyond, path);
  return { to, origin: 0, width: 1, coefficients, within };
}

/** The melting range in x from 0 to 1: solid + share·(liquid − solid) + latent heat·d(share)/dT. */
function melt(solid: readonly number[], liquid: readonly number[], heatPerWidth: number): readonly number[] {
  return Array.from({ length: melted.length + Math.max(solid.length, liquid.length) - 1 }, (_, k) => {
    const latent = heatPerWidth * (melting[k] ?? 0);
    return melted.reduce(
      (terms, share, i) => terms + share * ((liquid[k - i] ?? 0) - (solid[k - i] ?? 0)),
      latent + (solid[k] ?? 0),
    );
  });
}

function piecesOf(law: SpecificHeatLaw, beyond: Beyond | undefined, path: string): readonly Piece[] {
  if (law.law !== "melting") return [pieceOf(law, Number.POSITIVE_INFINITY, beyond, path)];
  const onset = temperature(law.temperatureOnset, `${path}.temperatureOnset`);
  const end = temperature(law.temperatureEnd, `${path}.temperatureEnd`);
  if (end <= onset) refuse("input", `${path}.temperatureEnd`, end, `more than temperatureOnset, ${onset} °C`);
  const solid = pieceOf(law.solid, onset, beyond, `${path}.solid`);
  const liquid = pieceOf(law.liquid, Number.POSITIVE_INFINITY, beyond, `${path}.liquid`);
  const width = end - onset;
  const coefficients = melt(
    shifted(solid.coefficients, onset, width),
    shifted(liquid.coefficients, onset, width),
    notNegative(law.latentHeat, `${path}.latentHeat`) / width,
  );
  return [solid, { to: end, origin: onset, width, coefficients, within: (at) => at }, liquid];
}

/** The integral over one piece about its middle, where odd powers cancel and nothing else does. */
function heatOver({ origin, width, coefficients }: Piece, from: number, to: number): number {
  if (coefficients.length === 1) return (coefficients[0] as number) * (to - from);
  const half = (to - from) / 2;
  const about = shifted(coefficients, ((from + to) / 2 - origin) / width, half / width);
  return 2 * half * about.reduce((sum, coefficient, k) => (k % 2 === 0 ? sum + coefficient / (k + 1) : sum), 0);
}

/** Checks a law, which faults call `path`, and makes it a function that gives a positive specific heat or throws. */
export function compileSpecificHeat(
  law: SpecificHeatLaw,
  path: string,
  beyond?: Beyond | undefined,
): CompiledSpecificHeat {
  const pieces = piecesOf(variant(law, path, "law", known.specificHeat), beyond, path);
  const specificHeatOf = (at: number): number => {
    temperature(at, "temperature");
    let i = 0;
    while (at > (pieces[i] as Piece).to) i += 1;
    const { origin, width, coefficients, within } = pieces[i] as Piece;
    return matter(polynomial(coefficients, (within(at) - origin) / width), at, path, "specific heat");
  };
  const heatBetween = (from: number, to: number): number => {
    specificHeatOf(from);
    specificHeatOf(to);
    const [low, high] = from < to ? [from, to] : [to, from];
    let heat = 0;
    let start = Number.NEGATIVE_INFINITY;
    for (const piece of pieces) {
      const [left, right] = [Math.max(low, start), Math.min(high, piece.to)];
      if (left < right) heat += heatOver(piece, left, right);
      start = piece.to;
    }
    return from < to ? heat : -heat;
  };
  return { specificHeatOf, heatBetween, breakpoints: pieces.slice(0, -1).map(({ to }) => to) };
}
