import { positive, record, refuse, result, temperature } from "../guards.js";
import * as known from "./known.js";

/** What natural convection asks of the air, or of another gas near its place. */
export interface AirProperties {
  /** Thermal conductivity [W/(m·K)], above 0. */
  readonly conductivity: number;
  /** Viscosity over density [m²/s], above 0. */
  readonly kinematicViscosity: number;
  /** Prandtl number, above 0. */
  readonly prandtl: number;
}

/** The same for the loss laws, which check their temperatures and pressures themselves. */
export function airAt(at: number, pressure: number): AirProperties {
  if (!(at >= -50 && at <= 150)) refuse("range", "temperature of the air", at, "-50 to 150 °C");
  // Specific gas constant of dry air [J/(kg·K)], of the same source as the rest.
  const gasConstantOfAir = 8314.32 / 28.9644;
  const kelvins = at + 273.15;
  const root = kelvins * Math.sqrt(kelvins);
  const viscosity = (1.458e-6 * root) / (kelvins + 110.4);
  const conductivity = (2.64638e-3 * root) / (kelvins + 245.4 * 10 ** (-12 / kelvins));
  return {
    conductivity,
    kinematicViscosity: (viscosity * gasConstantOfAir * kelvins) / pressure,
    prandtl: (viscosity * 3.5 * gasConstantOfAir) / conductivity,
  };
}

/**
 * Properties of dry air at a temperature, as natural convection needs them.
 *
 * $$\mu = \frac{1.458\cdot10^{-6}\,T^{3/2}}{T + 110.4} \qquad k = \frac{2.64638\cdot10^{-3}\,T^{3/2}}{T + 245.4\cdot10^{-12/T}} \qquad \nu = \frac{\mu R T}{p} \qquad \mathrm{Pr} = \frac{7}{2}\,\frac{R\mu}{k}$$
 *
 * T in kelvin. Within 2 % of a reference equation of state from −50 to 150 °C, the Prandtl number within 4 %.
 *
 * @param input.temperature - Temperature [°C], −50 to 150; that of the film, half-way between surface and room.
 * @param input.pressure - Pressure [Pa], above 0; default 101325.
 * @returns Conductivity [W/(m·K)], kinematic viscosity [m²/s] and Prandtl number.
 * @throws CalculationError `input` where an argument is no number or out of range, `range` outside −50 to 150 °C.
 * @source us-standard-atmosphere-1976 sections 1.3.10 to 1.3.13
 * @example
 * ```ts
 * import { airProperties } from "gelwright/laws";
 * airProperties({ temperature: 27 }).conductivity; // => 0.02626365472586071
 * ```
 */
export function airProperties(input: { readonly temperature: number; readonly pressure?: number }): AirProperties {
  const { temperature: at, pressure = 101325 } = record(input, "input", known.airProperties);
  const air = airAt(temperature(at, "temperature"), positive(pressure, "pressure"));
  result(air.kinematicViscosity, "kinematic viscosity");
  return air;
}
