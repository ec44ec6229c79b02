import type { SpecificHeatLaw } from "./compile-specific-heat.js";
import type { ConductivityLaw } from "./conductivity.js";
import type { DensityLaw } from "./density.js";

/**
 * Glycerin without water: specific heat from 25 to 110 °C, density from 0 to 60 °C, conductivity from 0 to 90 °C.
 *
 * By the mixture rules, glycerin with water comes out up to 1 % too light, since the two contract, and its specific heat
 * some per cent off: use readings of the mixture where that matters.
 *
 * @source righetti-1998 for specific heat, with 92.09382 g/mol
 * @source volk-kahler-2018 for density
 * @source vdi-heat-atlas-2010 for conductivity
 */
export const liquidGlycerin: {
  /** Specific heat [J/(kg·K)]. */
  readonly specificHeat: Extract<SpecificHeatLaw, { law: "polynomial" }>;
  /** Density [kg/m³]. */
  readonly density: Extract<DensityLaw, { law: "linear" }>;
  /** Thermal conductivity [W/(m·K)]. */
  readonly conductivity: Extract<ConductivityLaw, { law: "polynomial" }>;
} = {
  specificHeat: {
    law: "polynomial",
    coefficients: [2273.7, 4.70716],
    temperatureMin: 25,
    temperatureMax: 110,
  },
  density: {
    law: "linear",
    density: 1273.3,
    temperatureReference: 0,
    slope: 0.6121,
    temperatureMin: 0,
    temperatureMax: 60,
  },
  conductivity: {
    law: "polynomial",
    coefficients: [0.2888488, 1.163775e-4, -1.738e-8],
    temperatureMin: 0,
    temperatureMax: 90,
  },
};
