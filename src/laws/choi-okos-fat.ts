import type { Band } from "./band.js";
import type { SpecificHeatLaw } from "./compile-specific-heat.js";
import type { ConductivityLaw } from "./conductivity.js";
import type { DensityLaw } from "./density.js";

/**
 * Fats and oils in general, from −40 to 150 °C, by Choi and Okos: for want of figures of one's own.
 *
 * Density falls by 0.42 kg/(m³·K) here, where seven liquid oils fall by 0.65 to 0.70, 0.67 on the mean
 * (noureddini-1992, second-hand): use readings of the oil, or that slope, for a volume change. The specific heat is at
 * the low end of its sources when hot: 2075 J/(kg·K) at 85 °C, where lines through twelve measured oils lie from 2019 to
 * 2862 (fasina-colley-2008, second-hand) and cottonseed at 2036, so that heating and cooling may take up to 18 % longer
 * than it says. A reading of the oil wins. Some copies misprint the linear term of the specific heat as 1.4733e-4 kJ.
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

/** How sure each of them is for a liquid vegetable oil, from 20 to 110 °C: `choiOkosFatBands.density` with the law as it stands. */
export const choiOkosFatBands: Readonly<Record<"specificHeat" | "density" | "conductivity", Band>> = {
  specificHeat: {
    by: "factor",
    min: 0.97,
    max: 1.18,
    basis: "spread",
    sources: ["fasina-colley-2008", "hirschberg-1999"],
  },
  density: { by: "factor", min: 0.965, max: 1.017, basis: "spread", sources: ["noureddini-1992"] },
  conductivity: { by: "factor", min: 0.9, max: 1.1, basis: "judgement", sources: ["choi-okos-1986"] },
};
