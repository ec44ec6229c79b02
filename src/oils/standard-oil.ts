import type { ProfileRanges, Range } from "./profile.js";

/** How a figure was had: read in the standard itself, read in somebody's transcription of it, or from memory. */
export type Provenance = "first-hand" | "second-hand" | "from memory";

/** Limits of a figure that depends on temperature. */
export interface RangeAtTemperature {
  /** Minimum and maximum. */
  readonly range: Range;
  /** Temperature of the oil [°C]; absent where the source that was read does not state it. */
  readonly temperature?: number;
  /** For a relative density, temperature of the water [°C]; absent where the source that was read does not state it. */
  readonly temperatureWater?: number;
}

/** An oil as a published standard limits it. The limits tell what passes under its name, not what a given lot holds. */
export interface StandardOil {
  /** The oil's name, without a maker's. */
  readonly name: string;
  /** The standard, with its edition and where in it the figures stand. */
  readonly standard: string;
  /** Limits of each fatty acid [% of the fatty acids]; "not detectable" is 0, and what is not listed was not read. */
  readonly profile: ProfileRanges;
  /** Limits of the iodine value [g/100 g]. */
  readonly iodineValue: Range;
  /** Limits of the saponification value [mg KOH/g]. */
  readonly saponificationValue: Range;
  /** Limits of the relative density against water. */
  readonly relativeDensity: readonly RangeAtTemperature[];
  /** Limits of the refractive index at the sodium D line. */
  readonly refractiveIndex: readonly RangeAtTemperature[];
  /** Limits of tocopherols and tocotrienols together [mg/kg]. */
  readonly tocols?: Range;
  /** How each of the figures was had. */
  readonly read: {
    readonly profile: Provenance;
    /** Acids whose limits were had in another way than the rest of the profile. */
    readonly acids?: Readonly<Record<string, Provenance>>;
    readonly iodineValue: Provenance;
    readonly saponificationValue: Provenance;
    readonly relativeDensity: Provenance;
    readonly refractiveIndex: Provenance;
    readonly tocols?: Provenance;
  };
  /** What else must be known of the row. */
  readonly note?: string;
}
