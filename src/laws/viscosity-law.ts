/** A viscosity that was read at a temperature. */
export interface ViscosityReading {
  /** Temperature of the reading [°C]. */
  readonly temperature: number;
  /** Viscosity read [Pa·s], above 0. */
  readonly viscosity: number;
}

/**
 * How the viscosity of a melt depends on temperature, as plain data. It is a Newtonian viscosity, or that at one shear
 * rate which the caller keeps in mind: a reading carries its composition, its shear rate and its direction.
 */
export type MeltLaw =
  | {
      readonly law: "constant";
      /** [Pa·s], above 0. */
      readonly viscosity: number;
    }
  | {
      /** Viscosity = factor · exp(activationEnergy/(R·T)). */
      readonly law: "andrade";
      /** [Pa·s], above 0. */
      readonly factor: number;
      /** [J/mol], above 0. */
      readonly activationEnergy: number;
    }
  | {
      /** ln viscosity = lnFactor + coefficient/(T − temperatureVogel), above temperatureVogel only. */
      readonly law: "vogel-fulcher-tammann";
      /** Natural logarithm of a viscosity in Pa·s. */
      readonly lnFactor: number;
      /** [K], above 0. */
      readonly coefficient: number;
      /** The temperature at which the law has its pole [°C], far below all readings; a fit may put it below −273.15. */
      readonly temperatureVogel: number;
    }
  | {
      /** A monotone curve through ln viscosity against 1/T. */
      readonly law: "readings";
      /** At least two, in any order; the viscosity falls as the temperature rises. */
      readonly points: readonly ViscosityReading[];
    };

/**
 * A melt that thickens below its setting temperature: ln viscosity rises by steepness · (temperatureSetting − T).
 * This is an interpolation of ours between a melt and a gel, with no source: fit it to your own readings.
 */
export interface SettingLaw {
  readonly law: "setting";
  /** The viscosity of the melt. */
  readonly melt: MeltLaw;
  /** Where the melt begins to thicken [°C]. */
  readonly temperatureSetting: number;
  /** [1/K], above 0. */
  readonly steepness: number;
}

/** How viscosity depends on temperature. */
export type ViscosityLaw = MeltLaw | SettingLaw;
