import { positive, record } from "../guards.js";
import { compileViscosity } from "../laws/compile-viscosity.js";
import { temperatureAtViscosity } from "../laws/temperature-at-viscosity.js";
import { type CoolingVessel, cool } from "../transient/cooling-segment.js";
import { additionTemperature } from "./addition-temperature.js";
import * as known from "./known.js";
import type { Suspension } from "./velocity-curve.js";

/** Between which temperatures, and how long off the heat, particles may go in. */
export interface AdditionWindow {
  /** Whether there is such a time at all: whether the melt is thick enough before it is too thick. */
  readonly isOpen: boolean;
  /** From here on down the particles settle no further than allowed [°C]. */
  readonly temperatureMax: number;
  /** Down to here the melt can be stirred [°C]; never warmer than the start, never colder than the end. */
  readonly temperatureMin: number;
  /** Time from the start until the melt carries the particles [s]. */
  readonly durationUntilOpen: number;
  /** Time from the start until the melt is too thick to stir [s]. */
  readonly durationUntilClosed: number;
}

/**
 * The window for adding particles: from too thin to carry them to too thick to stir them in.
 *
 * $$T_\mathrm{warmest}: \int_{T_\mathrm{set}}^{T}|v|\,\frac{C}{q}\,\mathrm dT' = s_\mathrm{allowed} \qquad T_\mathrm{coldest}: \mu(T) = \mu_\mathrm{stirrable}$$
 *
 * It is closed where the first temperature is not the warmer one; then thicken the melt sooner, take finer or lighter
 * particles, allow more settling, or cool faster. The same call with another vessel's heat capacity and heat loss gives
 * the window at another scale: a larger vessel cools more slowly, so the window opens at a lower temperature.
 *
 * @param input - The suspension (diameter [m], densities [kg/m³], viscosity law, volume fraction, drag law), the vessel
 *   (heat capacity [J/K], heat-loss law, room [°C]), `temperatureStart` [°C] off the heat, `temperatureEnd` [°C] at
 *   which the gel has set, `settlingAllowed` [m], above 0, and `stirrableViscosityMax` [Pa·s], above 0: the most that can
 *   still be stirred and filled.
 * @returns The temperatures [°C] and times [s] between which the particles may go in.
 * @throws CalculationError `input` where an argument is out of range, `range` where the drag law or the readings end,
 *   `unreachable` where the room is too warm for the gel to set.
 * @source stokes-1851, richardson-zaki-1954, bergman-2011 section 5.1
 * @example
 * ```ts
 * import { additionWindow } from "gelwright/particles";
 * const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
 * const window = additionWindow({
 *   diameter: 100e-6,
 *   densityParticle: 1400,
 *   densityFluid: { law: "linear", density: 915, temperatureReference: 20, slope: 0.64 },
 *   viscosity: { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 },
 *   heatCapacity: 90000,
 *   heatLoss: { law: "newton", conductance: 12 },
 *   temperatureAmbient: 20,
 *   temperatureStart: 85,
 *   temperatureEnd: 30,
 *   settlingAllowed: 0.005,
 *   stirrableViscosityMax: 5,
 * });
 * window.temperatureMax; // => 54.956208404790374
 * window.temperatureMin; // => 48.42840399711939
 * (window.durationUntilClosed - window.durationUntilOpen) / 60; // => 25.838412945227294
 * ```
 */
export function additionWindow(
  input: Suspension &
    CoolingVessel & {
      readonly temperatureEnd: number;
      readonly settlingAllowed: number;
      readonly stirrableViscosityMax: number;
    },
): AdditionWindow {
  const { stirrableViscosityMax, ...settling } = record(input, "input", known.additionWindow);
  const { viscosity: law, beyond, temperatureStart, temperatureEnd } = settling;
  const max = positive(stirrableViscosityMax, "stirrableViscosityMax");
  const { temperature: temperatureMax, durationUntil: durationUntilOpen } = additionTemperature(settling);
  const { viscosityOf } = compileViscosity(law, "extend", "viscosity");
  // Readings that end before the melt is too thick, or begin when it already is, need not be inverted.
  let temperatureMin = temperatureEnd;
  if (viscosityOf(temperatureStart) >= max) temperatureMin = temperatureStart;
  else if (viscosityOf(temperatureEnd) > max)
    temperatureMin = temperatureAtViscosity({ law, viscosity: max, ...(beyond && { beyond }) });
  const durationUntilClosed = cool(input, { temperatureEnd: temperatureMin }, {}, []).duration;
  const isOpen = temperatureMax > temperatureMin;
  return { isOpen, temperatureMax, temperatureMin, durationUntilOpen, durationUntilClosed };
}
