import type { Provenance } from "./standard-oil.js";

/** A carrier that is a single substance, with its physical data. */
export interface Compound {
  /** Its name. */
  readonly name: string;
  /** Its formula. */
  readonly formula: string;
  /** Molar mass [kg/mol]. */
  readonly molarMass: number;
  /** Density [kg/m³] at its temperature [°C]. */
  readonly density: { readonly value: number; readonly temperature: number };
  /** Refractive index at the sodium D line at its temperature [°C]. */
  readonly refractiveIndex: { readonly value: number; readonly temperature: number };
  /** How the figures were had. */
  readonly read: Provenance;
}

/**
 * Squalane, a saturated branched hydrocarbon: no double bond, nothing that oxidises as an oil does.
 *
 * @source wikipedia-squalane, for 25 °C
 */
export const squalane: Compound = {
  name: "squalane",
  formula: "C30H62",
  molarMass: 0.422826,
  density: { value: 810, temperature: 25 },
  refractiveIndex: { value: 1.452, temperature: 25 },
  read: "second-hand",
};

/**
 * Glycerin without water; with water its figures change fast.
 *
 * @source from memory
 */
export const glycerin: Compound = {
  name: "glycerin",
  formula: "C3H8O3",
  molarMass: 0.092094,
  density: { value: 1261, temperature: 20 },
  refractiveIndex: { value: 1.474, temperature: 20 },
  read: "from memory",
};
