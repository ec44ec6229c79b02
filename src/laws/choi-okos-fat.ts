import type { SpecificHeatLaw } from "./compile-specific-heat.js";
import type { ConductivityLaw } from "./conductivity.js";
import type { DensityLaw } from "./density.js";

/**
 * Fats and oils in general, from −40 to 150 °C, by Choi and Okos: for want of figures of one's own.
 *
 * Density falls by 0.42 kg/(m³·K) here, where that of a liquid oil falls by about 0.64 (common practice, no source):
 * use readings of the oil for a volume change. Some copies misprint the linear term of the specific heat as 1.4733e-4 kJ.
 *
 * @source choi-okos-1986
 */
export const choiOkosFat: {
  /** Specific heat [J/(kg·K)]. */
  readonly specificHeat: Extract<SpecificHeatLaw, { law: "polynomial" }>;
  /** Density [kg/m³]. */
  readonly density: Extract<DensityLaw, { law: "linear" }>;
  /** Thermal conductivity [W/(m·K)]. */
  readonly conductivity: Extract<ConductivityLaw, { law: "polynomial" }>;
} = {
  specificHeat: {
    law: "polynomial",
    coefficients: [1984.2, 1.4733, -4.8008e-3],
    temperatureMin: -40,
    temperatureMax: 150,
  },
  density: {
    law: "linear",
    density: 925.59,
    temperatureReference: 0,
    slope: 0.41757,
    temperatureMin: -40,
    temperatureMax: 150,
  },
  conductivity: {
    law: "polynomial",
    coefficients: [0.18071, -2.7604e-4, -1.7749e-7],
    temperatureMin: -40,
    temperatureMax: 150,
  },
};
