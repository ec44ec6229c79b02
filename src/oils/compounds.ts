import type { Provenance } from "./standard-oil.js";

/** A property of a substance, which means nothing without its temperature. */
export interface CompoundProperty {
  /** The figure, in the unit of the field that holds it. */
  readonly value: number;
  /** Its temperature [°C]. */
  readonly temperature: number;
  /** Its change with temperature, in its unit over K; left out where none was read. */
  readonly perKelvin?: number;
  /** Its standard uncertainty, in its unit: of the measurement where that is stated, else ours. */
  readonly standardUncertainty: number;
}

/** A carrier that is a single substance, with its physical data. */
export interface Compound {
  /** Its name. */
  readonly name: string;
  /** Its formula. */
  readonly formula: string;
  /** Molar mass [kg/mol]. */
  readonly molarMass: number;
  /** Density [kg/m³] at its temperature [°C]. */
  readonly density: CompoundProperty;
  /** Refractive index at the sodium D line at its temperature [°C]. */
  readonly refractiveIndex: CompoundProperty;
  /** How the figures were had. */
  readonly read: Provenance;
}

/**
 * Squalane, a saturated branched hydrocarbon: no double bond, nothing that oxidises as an oil does.
 *
 * The density and its slope were measured from 25 to 35 °C, and meet the handbook's 811.5 at 15 °C to 0.1. The index is
 * the handbook's at 15 °C; its slope is that of the density by Lorentz and Lorenz, so that 25 °C has 1.4489, and not the
 * 1.452 that wikipedia-squalane gives there.
 *
 * @source dubey-sharma-2008 density
 * @source chemicals-2024 refractive index, after the CRC Handbook
 */
export const squalane: Compound = {
  name: "squalane",
  formula: "C30H62",
  molarMass: 0.422826,
  density: { value: 805.1, temperature: 25, perKelvin: -0.641, standardUncertainty: 0.2 },
  refractiveIndex: { value: 1.453, temperature: 15, perKelvin: -4.1e-4, standardUncertainty: 0.0005 },
  read: "second-hand",
};

/**
 * Glycerin without water; with water its figures change fast.
 *
 * @source rumble-2021 second-hand, the row of 100 %; the uncertainties ours
 */
export const glycerin: Compound = {
  name: "glycerin",
  formula: "C3H8O3",
  molarMass: 0.092094,
  density: { value: 1261.1, temperature: 20, standardUncertainty: 0.3 },
  refractiveIndex: { value: 1.4735, temperature: 20, standardUncertainty: 0.0004 },
  read: "second-hand",
};
