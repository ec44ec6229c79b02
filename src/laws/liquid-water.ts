import type { SpecificHeatLaw } from "./compile-specific-heat.js";
import type { ConductivityLaw } from "./conductivity.js";
import type { DensityLaw } from "./density.js";

/**
 * Liquid water at 101325 Pa, from 0 to 100 °C: for jackets, and for what stands in them.
 *
 * Polynomials of ours through values of IAPWS-95 and of the IAPWS formulation of 2011 for conductivity, both as given by
 * CoolProp 8.0.0. They are off by at most 0.024 % (specific heat), 0.003 % (density) and 0.024 % (conductivity).
 *
 * @source iapws-95
 */
export const liquidWater: {
  /** Specific heat [J/(kg·K)]. */
  readonly specificHeat: Extract<SpecificHeatLaw, { law: "polynomial" }>;
  /** Density [kg/m³]. */
  readonly density: Extract<DensityLaw, { law: "polynomial" }>;
  /** Thermal conductivity [W/(m·K)]. */
  readonly conductivity: Extract<ConductivityLaw, { law: "polynomial" }>;
} = {
  specificHeat: {
    law: "polynomial",
    coefficients: [4218.46, -2.90565, 7.22456e-2, -7.22562e-4, 2.88485e-6],
    temperatureMin: 0,
    temperatureMax: 100,
  },
  density: {
    law: "polynomial",
    coefficients: [999.873, 5.16511e-2, -7.51519e-3, 4.13708e-5, -1.29266e-7],
    temperatureMin: 0,
    temperatureMax: 100,
  },
  conductivity: {
    law: "polynomial",
    coefficients: [0.555778, 2.48818e-3, -2.11428e-5, 1.28155e-7, -4.42117e-10],
    temperatureMin: 0,
    temperatureMax: 100,
  },
};
