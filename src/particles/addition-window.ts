import { positive, record } from "../guards.js";
import { compileViscosity } from "../laws/compile-viscosity.js";
import { temperatureAtViscosity } from "../laws/temperature-at-viscosity.js";
import { type CoolingVessel, cool } from "../leg/cooling-leg.js";
import { additionTemperature } from "./addition-temperature.js";
import type { Suspension } from "./velocity-curve.js";

/** Between which temperatures, and how long off the heat, particles may go in. */
export interface AdditionWindow {
  /** Whether there is such a time at all: whether the melt is thick enough before it is too thick. */
  readonly isOpen: boolean;
  /** From here on down the particles settle no further than allowed [°C]. */
  readonly temperatureWarmest: number;
  /** Down to here the melt can be stirred [°C]; never warmer than the start, never colder than the end. */
  readonly temperatureColdest: number;
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
 *   which the gel has set, `settlingAllowed` [m], above 0, and `viscosityStirrable` [Pa·s], above 0: the most that can
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
 *   viscosityStirrable: 5,
 * });
 * window.temperatureWarmest; // => 54.956208404790374
 * window.temperatureColdest; // => 48.42840399711939
 * (window.durationUntilClosed - window.durationUntilOpen) / 60; // => 25.838412945227294
 * ```
 */
export function additionWindow(
  input: Suspension &
    CoolingVessel & {
      readonly temperatureEnd: number;
      readonly settlingAllowed: number;
      readonly viscosityStirrable: number;
    },
): AdditionWindow {
  const { viscosity: law, viscosityStirrable, beyond, temperatureStart, temperatureEnd } = record(input, "input");
  const most = positive(viscosityStirrable, "viscosityStirrable");
  const { temperature: temperatureWarmest, durationUntil: durationUntilOpen } = additionTemperature(input);
  const { viscosityOf } = compileViscosity(law, "extend", "viscosity");
  // Readings that end before the melt is too thick, or begin when it already is, need not be inverted.
  let temperatureColdest = temperatureEnd;
  if (viscosityOf(temperatureStart) >= most) temperatureColdest = temperatureStart;
  else if (viscosityOf(temperatureEnd) > most)
    temperatureColdest = temperatureAtViscosity({ law, viscosity: most, ...(beyond && { beyond }) });
  const durationUntilClosed = cool(input, { temperatureEnd: temperatureColdest }, {}, []).duration;
  const isOpen = temperatureWarmest > temperatureColdest;
  return { isOpen, temperatureWarmest, temperatureColdest, durationUntilOpen, durationUntilClosed };
}
