import type { Interval } from "../laws/interval.js";

/**
 * How the refractive index of a triglyceride oil changes with temperature [1/K].
 *
 * From the expansion of seven oils by Lorentz and Lorenz: at constant refractivity -3.9e-4 to -4.2e-4, and a little
 * less since refractivity rises with temperature; squalane has -4.1e-4 likewise. Mid-ranges of the standard's two temperatures lie
 * at -2.3e-4 for walnut and -4.0e-4 for high-oleic safflower, but ranges are no oil. Not measured here.
 *
 * @source noureddini-1992 second-hand, the expansion; lorentz-lorenz-1880 from memory, the equation; the ends ours
 */
export const oilRefractiveIndexPerKelvin: Interval = { min: -4.2e-4, value: -3.8e-4, max: -3.5e-4 };

/**
 * How the density of a triglyceride oil changes with temperature [kg/(m³·K)]: seven oils from 24 to 110 °C.
 *
 * @source noureddini-1992 second-hand: slopes by regression of the tabled densities
 */
export const oilDensityPerKelvin: Interval = { min: -0.7, value: -0.67, max: -0.65 };
