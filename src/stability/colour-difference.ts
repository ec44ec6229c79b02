import { finite, positive, record, result } from "../guards.js";
import * as known from "./known.js";

/** A colour as a spectrophotometer gives it, in the CIE 1976 L*a*b* space. */
export interface LabColour {
  /** L*, 0 for black to 100 for white. */
  readonly lightness: number;
  /** a*, green below 0, red above. */
  readonly a: number;
  /** b*, blue below 0, yellow above. */
  readonly b: number;
}

function labOf(colour: LabColour, path: string): LabColour {
  const { lightness, a, b } = record(colour, path);
  return {
    lightness: finite(lightness, `${path}.lightness`),
    a: finite(a, `${path}.a`),
    b: finite(b, `${path}.b`),
  };
}

/**
 * The colour difference by CIE 1976: the distance in L*a*b* space.
 *
 * $$\Delta E^*_{ab} = \sqrt{(\Delta L^*)^2 + (\Delta a^*)^2 + (\Delta b^*)^2}$$
 *
 * Of a clear gel the figure depends on the thickness of the cell and on what stands behind it: measure both alike. How
 * large a difference customers see is a matter of panels, not of this number.
 *
 * @param input.first - L*, a* and b* of the one.
 * @param input.second - L*, a* and b* of the other, under the same illuminant and observer.
 * @returns The difference, 0 for one colour.
 * @throws CalculationError `input` where an argument is no number, `range` where a double cannot hold the result.
 * @source cie-15-2004 from memory
 * @example
 * ```ts
 * import { colourDifference1976 } from "gelwright/stability";
 * const fresh = { lightness: 92, a: -1.5, b: 8 };
 * colourDifference1976({ first: fresh, second: { lightness: 90, a: -0.5, b: 10 } }); // => 3
 * ```
 */
export function colourDifference1976(input: { readonly first: LabColour; readonly second: LabColour }): number {
  const { first, second } = record(input, "input", known.colourDifference1976);
  const one = labOf(first, "first");
  const other = labOf(second, "second");
  return result(Math.hypot(other.lightness - one.lightness, other.a - one.a, other.b - one.b), "colour difference");
}

const degrees = Math.PI / 180;

/** How much a chroma counts at its size: 0 for greys, 1 for vivid colours. */
const vividness = (chroma: number): number => Math.sqrt(1 / (1 + (25 / chroma) ** 7));

/** Hue in degrees from 0 to 360. */
function hueOf(a: number, b: number): number {
  const hue = Math.atan2(b, a) / degrees;
  return hue < 0 ? hue + 360 : hue;
}

/**
 * The colour difference by CIEDE2000, which follows the eye better than the distance of 1976, most of all near grey and in blue.
 *
 * $$\Delta E_{00} = \sqrt{\left(\frac{\Delta L'}{k_L S_L}\right)^2 + \left(\frac{\Delta C'}{k_C S_C}\right)^2 + \left(\frac{\Delta H'}{k_H S_H}\right)^2 + R_T\,\frac{\Delta C'}{k_C S_C}\,\frac{\Delta H'}{k_H S_H}}$$
 *
 * Of a clear gel the figure depends on the thickness of the cell and on what stands behind it: measure both alike.
 *
 * @param input.first - L*, a* and b* of the one.
 * @param input.second - L*, a* and b* of the other, under the same illuminant and observer.
 * @param input.weights - Parametric factors of lightness, chroma and hue, above 0; default 1 each.
 * @returns The difference, 0 for one colour.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` where a double cannot hold the result.
 * @source sharma-2005 the equations from memory, the test data read in transcriptions
 * @example
 * ```ts
 * import { colourDifference2000 } from "gelwright/stability";
 * const first = { lightness: 50, a: 2.5, b: 0 };
 * colourDifference2000({ first, second: { lightness: 61, a: -5, b: 29 } }).toFixed(4); // => "22.8977"
 * ```
 */
export function colourDifference2000(input: {
  readonly first: LabColour;
  readonly second: LabColour;
  readonly weights?: {
    /** k_L. */
    readonly lightness?: number;
    /** k_C. */
    readonly chroma?: number;
    /** k_H. */
    readonly hue?: number;
  };
}): number {
  const { first, second, weights = {} } = record(input, "input", known.colourDifference2000);
  const one = labOf(first, "first");
  const other = labOf(second, "second");
  const { lightness: kL = 1, chroma: kC = 1, hue: kH = 1 } = record(weights, "weights", known.weights);
  const chromaMean = (Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2;
  const stretch = 1 + 0.5 * (1 - vividness(chromaMean));
  const [aOne, aOther] = [stretch * one.a, stretch * other.a];
  const [cOne, cOther] = [Math.hypot(aOne, one.b), Math.hypot(aOther, other.b)];
  const [hOne, hOther] = [hueOf(aOne, one.b), hueOf(aOther, other.b)];
  // A grey has no hue, and needs none: whatever stands for it here is multiplied by its chroma, which is 0.
  const apart = hOther - hOne;
  const turn = apart > 180 ? apart - 360 : apart < -180 ? apart + 360 : apart;
  const sum = hOne + hOther;
  const hue = Math.abs(apart) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  const lightness = (one.lightness + other.lightness) / 2 - 50;
  const chroma = (cOne + cOther) / 2;
  const cosine = (times: number, offset: number): number => Math.cos((times * hue + offset) * degrees);
  const t = 1 - 0.17 * cosine(1, -30) + 0.24 * cosine(2, 0) + 0.32 * cosine(3, 6) - 0.2 * cosine(4, -63);
  const byLightness = 1 + (0.015 * lightness ** 2) / Math.sqrt(20 + lightness ** 2);
  const dL = (other.lightness - one.lightness) / (positive(kL, "weights.lightness") * byLightness);
  const dC = (cOther - cOne) / (positive(kC, "weights.chroma") * (1 + 0.045 * chroma));
  const wide = 2 * Math.sqrt(cOne * cOther) * Math.sin((turn / 2) * degrees);
  const dH = wide / (positive(kH, "weights.hue") * (1 + 0.015 * chroma * t));
  const bend = 30 * Math.exp(-(((hue - 275) / 25) ** 2));
  const rotation = -2 * vividness(chroma) * Math.sin(2 * bend * degrees);
  return result(Math.sqrt(Math.max(0, dL ** 2 + dC ** 2 + dH ** 2 + rotation * dC * dH)), "colour difference");
}
