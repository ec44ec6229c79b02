import { refractiveIndex } from "../formula/refraction.js";
import { positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";
import { mieEfficiency } from "./mie.js";

/** Droplets or bubbles, and the light that meets them. */
export interface Scatterer {
  /** Diameter [m], above 0. */
  readonly diameter: number;
  /** Refractive index of the droplet, 1 to 3; 1 for air. */
  readonly refractiveIndexDroplet: number;
  /** Refractive index of the outer phase at the same temperature, 1 to 3. */
  readonly refractiveIndexOuter: number;
  /** Wavelength in vacuum [m], above 0; 589.3 nm, the sodium line, unless given. */
  readonly wavelength?: number;
}

/** The three theories of light scattered by a sphere, each with its sizes. */
export type ScatteringTheory = "rayleigh" | "mie" | "anomalous diffraction";

/** Sizes, as circumference over wavelength, between which Mie's series is summed. */
const mieFrom = 1e-3;
const mieTo = 1e4;

/** Circumference over the wavelength in the outer phase, and the ratio of the indices. */
export function sizeOf(input: Scatterer): { size: number; ratio: number; wave: number } {
  const { diameter, refractiveIndexDroplet, refractiveIndexOuter, wavelength } = record(input, "input");
  const outer = refractiveIndex(refractiveIndexOuter, "refractiveIndexOuter");
  const wave = (2 * Math.PI * outer) / positive(wavelength ?? 589.3e-9, "wavelength");
  return {
    size: positive((wave * positive(diameter, "diameter")) / 2, "diameter over wavelength"),
    ratio: refractiveIndex(refractiveIndexDroplet, "refractiveIndexDroplet") / outer,
    wave,
  };
}

function rayleigh(size: number, ratio: number): number {
  const square = ratio * ratio;
  return (8 / 3) * size ** 4 * ((square - 1) / (square + 2)) ** 2;
}

function anomalous(size: number, ratio: number): number {
  const lag = 2 * size * Math.abs(ratio - 1);
  // The closed form loses its digits where the lag is small, and a series holds them.
  if (lag < 0.05) return lag * lag * (1 / 2 - ((lag * lag) / 36) * (1 - (lag * lag) / 40));
  return 2 - (4 / lag) * Math.sin(lag) + (4 / (lag * lag)) * (1 - Math.cos(lag));
}

/**
 * How much light one droplet scatters, as a multiple of the light that falls on it.
 *
 * $$Q_\mathrm{Rayleigh} = \frac83\,x^4\left(\frac{m^2 - 1}{m^2 + 2}\right)^2 \qquad Q_\mathrm{van\,de\,Hulst} = 2 - \frac4p\sin p + \frac4{p^2}(1 - \cos p),\quad p = 2x\,|m - 1|$$
 *
 * x is the circumference over the wavelength in the outer phase, m the ratio of the indices. Mie's series is exact for
 * spheres and is used from x of 0.001 to 10 000; below, Rayleigh's form; above, for indices within 10 %, van de Hulst's.
 *
 * @param input.diameter - Diameter [m], above 0.
 * @param input.refractiveIndexDroplet - Refractive index of the droplet, 1 to 3.
 * @param input.refractiveIndexOuter - Refractive index of the outer phase, 1 to 3.
 * @param input.wavelength - Wavelength in vacuum [m]; default 589.3 nm.
 * @param input.theory - One theory by name, whatever the size; default by size.
 * @returns The scattering efficiency; 0 where the indices are equal.
 * @throws CalculationError `input` where an argument is out of range; `range` where the size is beyond the theory.
 * @source bohren-huffman-1983 from memory: Rayleigh, Mie
 * @source van-de-hulst-1957 from memory: anomalous diffraction
 * @example
 * ```ts
 * import { scatteringEfficiency } from "gelwright/gel";
 * scatteringEfficiency({ diameter: 1.05e-6, refractiveIndexDroplet: 1.55, refractiveIndexOuter: 1, wavelength: 632.8e-9 }).toFixed(5); // => "3.10543"
 * ```
 */
export function scatteringEfficiency(input: Scatterer & { readonly theory?: ScatteringTheory }): number {
  record(input, "input", known.scatteringEfficiency);
  const { size, ratio } = sizeOf(input);
  const { theory } = input;
  const chosen = theory ?? (size < mieFrom ? "rayleigh" : size <= mieTo ? "mie" : "anomalous diffraction");
  switch (chosen) {
    case "rayleigh":
      return result(rayleigh(size, ratio), "efficiency");
    case "mie":
      if (size < mieFrom || size > mieTo) refuse("range", "diameter", `a size of ${size}`, `${mieFrom} to ${mieTo}`);
      return ratio === 1 ? 0 : result(mieEfficiency(size, ratio), "efficiency");
    case "anomalous diffraction":
      if (theory === undefined && Math.abs(ratio - 1) > 0.1)
        refuse("range", "diameter", `a size of ${size}`, `at most ${mieTo}, or indices within 10 %`);
      return result(anomalous(size, ratio), "efficiency");
    default:
      return refuse("input", "theory", theory, '"rayleigh", "mie" or "anomalous diffraction"');
  }
}
