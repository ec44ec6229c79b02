import { finite, fraction, positive, record, refuse, temperature } from "../guards.js";
import type { Band } from "../laws/band.js";
import { kelvin } from "../laws/compile-viscosity.js";
import { root } from "../numeric/root.js";
import * as known from "./known.js";

/** Molar mass of water [kg/mol]. */
export const water = 0.0180153;
/** Molar mass of glycerin [kg/mol]. */
const glycerin = 0.092094;

/** One quantity by two published laws. */
export interface ByTwoLaws {
  /** By Norrish's law, which holds for water activities above 0.85; below 0.6 it makes a gel former too dry. */
  readonly norrish: number;
  /** By the law of Zhang, Grace and Sun, of Wilson's form. */
  readonly wilson: number;
}

/**
 * How sure the water activity by the law of Wilson's form is, from 0.25 to 1, as a difference.
 *
 * Against the formula of ASTM D5032 it is 0.026 above at 0.7 and 0.023 below at 0.3, against that of Forney and Brandl
 * 0.030 below at 0.3; both formulas from memory. Freezing points of up to 40 % glycerin (rumble-2021) leave 0.01.
 * Norrish's law has no band of its own: it is low by 0.035 to 0.1 between 0.5 and 0.3.
 */
export const waterActivityBand: Band = {
  by: "difference",
  min: -0.03,
  max: 0.03,
  basis: "spread",
  sources: ["zhang-2022", "astm-d5032", "forney-brandl-1992", "rumble-2021"],
};

/** A law of water activity, by mole fraction of glycerin. */
type Law = (moleFractionGlycerin: number) => number;

/** Both laws at a temperature. */
export function laws(warmth: number, constant: number | undefined): { norrish: Law; wilson: Law } {
  const at = temperature(warmth, "temperature") + kelvin;
  if (at < kelvin || at > kelvin + 100) refuse("range", "temperature", warmth, "0 to 100 °C");
  const norrishConstant = constant === undefined ? -1.16 : finite(constant, "norrishConstant");
  if (norrishConstant > 0 || norrishConstant < -10)
    refuse("input", "norrishConstant", norrishConstant, "a number from -10 to 0");
  const volumes = 0.08685 / 0.0188311;
  const first = volumes * Math.exp(-(0.89924067 + 127.07511 / at));
  const second = Math.exp(1.9173013 - 91.465969 / at) / volumes;
  return {
    norrish: (x) => (1 - x) * Math.exp(norrishConstant * x * x),
    wilson: (x) => {
      const y = 1 - x;
      const own = y + first * x;
      return (y / own) * Math.exp((first * x) / own - (first * x) / (x + second * y));
    },
  };
}

/** Mole fraction of glycerin in glycerin and water. */
export function moles(massFractionGlycerin: number): number {
  const ofGlycerin = massFractionGlycerin / glycerin;
  return ofGlycerin / (ofGlycerin + (1 - massFractionGlycerin) / water);
}

/**
 * The water activity of a gel former of glycerin and water, by two published laws side by side.
 *
 * $$a_w = (1 - x)\,e^{K x^2} \qquad a_w = \frac{1 - x}{1 - x + \Lambda_1 x}\,\exp\left(\frac{\Lambda_1 x}{1 - x + \Lambda_1 x} - \frac{\Lambda_1 x}{x + \Lambda_2 (1 - x)}\right)$$
 *
 * x is the mole fraction of glycerin; $\Lambda_1 = (v_2/v_1)\,e^{-(a_{12} + b_{12}/T)}$ and
 * $\Lambda_2 = (v_1/v_2)\,e^{-(a_{21} + b_{21}/T)}$. The laws agree to 0.012 up to 60 % glycerin. Norrish's K was fitted for
 * foods above a water activity of 0.85; a gel former of 80 to 95 % glycerin lies at 0.5 to 0.2, where that K is no
 * constant and his law too low, by 0.035 at 0.5 and by 0.1 at 0.3. Take `wilson` there, with `waterActivityBand`, and
 * not the two laws as a range. A measured value is better than both. Salt and surfactant lower it further.
 *
 * @param input.massFractionGlycerin - Glycerin in glycerin and water together, by mass, 0 to 1.
 * @param input.temperature - Temperature [°C], 0 to 100; Norrish has none.
 * @param input.norrishConstant - Norrish's K, -10 to 0; default -1.16 for glycerin.
 * @returns The water activity by each law, 0 to 1.
 * @throws CalculationError `input` where an argument is out of range; `range` outside 0 to 100 °C.
 * @source norrish-1966 from memory, the law
 * @source makinen-2010 K for glycerin, table 3
 * @source zhang-2022 second-hand: constants and form as a public library carries them
 * @example
 * ```ts
 * import { waterActivity } from "gelwright/gel";
 * const { norrish, wilson } = waterActivity({ massFractionGlycerin: 0.8, temperature: 25 });
 * [norrish.toFixed(2), wilson.toFixed(2)]; // => ["0.45", "0.50"]
 * ```
 */
export function waterActivity(input: {
  readonly massFractionGlycerin: number;
  readonly temperature: number;
  readonly norrishConstant?: number;
}): ByTwoLaws {
  const { massFractionGlycerin, temperature: warmth, norrishConstant } = record(input, "input", known.waterActivity);
  const { norrish, wilson } = laws(warmth, norrishConstant);
  const x = moles(fraction(massFractionGlycerin, "massFractionGlycerin"));
  return { norrish: norrish(x), wilson: wilson(x) };
}

/**
 * The glycerin in glycerin and water that is in equilibrium with the humidity of a room: it neither takes up water nor dries.
 *
 * $$a_w(w) = \mathrm{RH}$$
 *
 * @param input.relativeHumidity - Relative humidity of the air, 0 to 1.
 * @param input.temperature - Temperature of air and gel [°C], 0 to 100.
 * @param input.norrishConstant - Norrish's K, -10 to 0; default -1.16 for glycerin.
 * @returns The mass fraction of glycerin by each law, 0 to 1.
 * @throws CalculationError `input` where an argument is out of range; `range` outside 0 to 100 °C.
 * @source makinen-2010 and zhang-2022, as for the water activity
 * @example
 * ```ts
 * import { glycerinAtHumidity } from "gelwright/gel";
 * const { norrish, wilson } = glycerinAtHumidity({ relativeHumidity: 0.5, temperature: 25 });
 * [norrish.toFixed(2), wilson.toFixed(2)]; // => ["0.77", "0.80"]
 * ```
 */
export function glycerinAtHumidity(input: {
  readonly relativeHumidity: number;
  readonly temperature: number;
  readonly norrishConstant?: number;
}): ByTwoLaws {
  const { relativeHumidity, temperature: warmth, norrishConstant } = record(input, "input", known.glycerinAtHumidity);
  const { norrish, wilson } = laws(warmth, norrishConstant);
  const humidity = fraction(relativeHumidity, "relativeHumidity");
  const solved = (law: Law): number => root((w) => law(moles(w)) - humidity, 0, 1, "glycerin", 1e-15);
  return { norrish: solved(norrish), wilson: solved(wilson) };
}

/**
 * The water that an open gel takes up from the air of a room until equilibrium; below 0 the water that it gives off.
 *
 * $$\Delta m = m_\mathrm{glycerin}\,\frac{1 - w}{w} - m_\mathrm{water}$$
 *
 * `uptakeDuration` says how soon. The refractive index changes with it, so that a clear gel may become hazy.
 *
 * @param input.massGlycerin - Glycerin [kg], above 0.
 * @param input.massWater - Water in the gel former [kg], 0 or more.
 * @param input.relativeHumidity - Relative humidity of the air, above 0 and below 1.
 * @param input.temperature - Temperature of air and gel [°C], 0 to 100.
 * @param input.norrishConstant - Norrish's K, -10 to 0; default -1.16 for glycerin.
 * @returns The water taken up by each law [kg].
 * @throws CalculationError `input` where an argument is out of range; `range` outside 0 to 100 °C.
 * @source makinen-2010 and zhang-2022, as for the water activity
 * @example
 * ```ts
 * import { waterTakenUp } from "gelwright/gel";
 * waterTakenUp({ massGlycerin: 9, massWater: 1, relativeHumidity: 0.5, temperature: 25 }).norrish > 0; // => true
 * ```
 */
export function waterTakenUp(input: {
  readonly massGlycerin: number;
  readonly massWater: number;
  readonly relativeHumidity: number;
  readonly temperature: number;
  readonly norrishConstant?: number;
}): ByTwoLaws {
  const { massGlycerin, massWater, ...room } = record(input, "input", known.waterTakenUp);
  const { relativeHumidity } = room;
  const held = positive(massGlycerin, "massGlycerin");
  const had = finite(massWater, "massWater");
  if (had < 0) refuse("input", "massWater", had, "0 or more");
  if (!(positive(relativeHumidity, "relativeHumidity") < 1))
    refuse("input", "relativeHumidity", relativeHumidity, "below 1: in saturated air there is no end");
  const atRest = glycerinAtHumidity(room);
  const gain = (share: number): number => {
    const taken = held * ((1 - share) / share) - had;
    return Number.isFinite(taken) ? taken : refuse("range", "relativeHumidity", relativeHumidity, "further from 1");
  };
  return { norrish: gain(atRest.norrish), wilson: gain(atRest.wilson) };
}
