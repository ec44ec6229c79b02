import { positive, record, refuse, temperature } from "../guards.js";
import { curvePlace } from "../numeric/monotone-curve.js";
import { root } from "../numeric/root.js";
import { type Beyond, extending } from "./beyond.js";
import { compileViscosity, fitReadings, gasConstant, kelvin } from "./compile-viscosity.js";
import * as known from "./known.js";
import type { MeltLaw, ViscosityLaw } from "./viscosity-law.js";

/**
 * The temperature at which a melt or a gel has a viscosity: how far to cool until it is thick enough.
 *
 * $$\mu(T) = \mu \qquad\text{e.g.}\qquad T = \frac{E_a}{R\,\ln(\mu/A)}$$
 *
 * @param input.law - The viscosity law, as plain data.
 * @param input.viscosity - The viscosity wanted [Pa·s], above 0.
 * @param input.beyond - Outside the readings: `"throw"` (default) or `"extend"`.
 * @returns Temperature [°C].
 * @throws CalculationError `input` for a law that is not whole, `range` where the temperature lies outside the readings,
 *   `unreachable` where the law has this viscosity at no temperature.
 * @source definition (the viscosity law, solved for temperature)
 * @example
 * ```ts
 * import { temperatureAtViscosity } from "gelwright/laws";
 * const law = { law: "andrade", factor: 1.3e-6, activationEnergy: 26400 } as const;
 * temperatureAtViscosity({ law, viscosity: 0.05 }); // => 27.604537723923954
 * ```
 */
export function temperatureAtViscosity(input: {
  readonly law: ViscosityLaw;
  readonly viscosity: number;
  readonly beyond?: Beyond;
}): number {
  const { law, viscosity, beyond } = record(input, "input", known.temperatureAtViscosity);
  const { viscosityOf, readings } = compileViscosity(law, beyond, "law");
  const wanted = Math.log(positive(viscosity, "viscosity"));
  if (law.law !== "setting") return ofMelt(law, wanted, extending(beyond));
  const { melt, temperatureSetting, steepness } = law;
  const excess = wanted - Math.log(viscosityOf(temperatureSetting));
  if (excess <= 0) return ofMelt(melt, wanted, extending(beyond));
  // Cooled this far, the setting term alone reaches the viscosity, and so would the melt alone: the answer is warmer.
  const bySetting = temperatureSetting - excess / steepness;
  if (melt.law === "constant") return found(bySetting);
  const bounded = melt.law === "readings" && !extending(beyond);
  const byMelt = bounded ? (readings[0] as number) : ofMelt(melt, wanted, true);
  const min = Math.max(bySetting, byMelt);
  const off = (at: number): number => Math.log(viscosityOf(at)) - wanted;
  // The bound stands to rounding only, so an answer that lies on it must not fail for want of a sign.
  if (off(min) < 0) return off(min) > -1e-12 ? min : outside(wanted, viscosityOf(min));
  return root(off, min, temperatureSetting, "temperature", 1e-12);
}

function ofMelt(law: MeltLaw, wanted: number, extended: boolean): number {
  switch (law.law) {
    case "constant":
      return refuse("unreachable", "viscosity", Math.exp(wanted), "a law whose viscosity changes with temperature");
    case "andrade": {
      const thicker = wanted - Math.log(law.factor);
      return thicker > 0 ? found(law.activationEnergy / gasConstant / thicker - kelvin) : never(wanted, law.factor);
    }
    case "vogel-fulcher-tammann": {
      const thicker = wanted - law.lnFactor;
      return thicker > 0
        ? found(law.temperatureVogel + law.coefficient / thicker)
        : never(wanted, Math.exp(law.lnFactor));
    }
    case "readings": {
      const { curve, temperatures } = fitReadings(law.points, "law");
      const [thinnest, thickest] = [curve.y[0] as number, curve.y[curve.y.length - 1] as number];
      const place = curvePlace(curve, wanted);
      if (extended) return place > 0 ? found(1 / place - kelvin) : never(wanted, Math.exp(thinnest));
      if (wanted < thinnest) outside(wanted, Math.exp(thinnest));
      if (wanted > thickest) outside(wanted, Math.exp(thickest));
      // The way through 1/T may round over an end that the viscosity has not passed.
      return Math.min(
        temperatures[temperatures.length - 1] as number,
        Math.max(temperatures[0] as number, 1 / place - kelvin),
      );
    }
  }
}

/** A temperature that came out of a law, if there is such a temperature. */
function found(at: number): number {
  return temperature(at, "temperature");
}

function never(wanted: number, thinnest: number): never {
  return refuse("unreachable", "viscosity", Math.exp(wanted), `more than ${thinnest}, which no heat brings it below`);
}

function outside(wanted: number, end: number): never {
  return refuse(
    "range",
    "viscosity",
    Math.exp(wanted),
    `within the readings, which end at ${end}, or beyond: "extend"`,
  );
}
