import { positive, record, refuse, result } from "../guards.js";
import * as known from "./known.js";

/**
 * What is kept from bench to plant while the gel takes up an addition of oil. None of them is proven: the caller
 * chooses. Speeds [rev/s], tip speeds [m/s], powers per volume [W/m³] and shear rates [1/s], each above 0.
 */
export type IncorporationTimeScale =
  /** The time that the bench measured. */
  | { readonly keeps: "time" }
  /** The revolutions of the impeller. */
  | { readonly keeps: "revolutions"; readonly speedBench: number; readonly speedPlant: number }
  /** The way of the impeller's tip. */
  | { readonly keeps: "tip travel"; readonly tipSpeedBench: number; readonly tipSpeedPlant: number }
  /** The energy put into a volume. */
  | {
      readonly keeps: "energy per volume";
      readonly powerPerVolumeBench: number;
      readonly powerPerVolumePlant: number;
    }
  /** The strain at the impeller. */
  | { readonly keeps: "strain"; readonly shearRateBench: number; readonly shearRatePlant: number };

/**
 * How much longer an addition takes in the plant than at the bench, by what is to be kept.
 *
 * $$\frac{t_\mathrm{plant}}{t_\mathrm{bench}} = \frac{x_\mathrm{bench}}{x_\mathrm{plant}}$$
 *
 * x is the rate of what is kept: 1 for time itself, revolutions, tip travel, energy per volume or strain, each per
 * second. Incorporation is measured at the bench and is no blend time; no law says which of these carries over to a
 * larger vessel, so watch the first additions in the plant instead of timing them.
 *
 * @param input - What is kept: `"time"`, `"revolutions"`, `"tip travel"`, `"energy per volume"` or `"strain"`, with its two figures, each above 0.
 * @returns The factor on the bench's times.
 * @throws CalculationError `input` where an argument is out of range.
 * @source common practice, no source
 * @example
 * ```ts
 * import { incorporationTimeScale } from "gelwright/mixing";
 * incorporationTimeScale({ keeps: "revolutions", speedBench: 8, speedPlant: 2 }); // => 4
 * incorporationTimeScale({ keeps: "time" }); // => 1
 * ```
 */
export function incorporationTimeScale(input: IncorporationTimeScale): number {
  const scale = record(input, "input", known.incorporationTimeScale);
  switch (scale.keeps) {
    case "time":
      return 1;
    case "revolutions":
      return quotient(scale.speedBench, scale.speedPlant, "speed");
    case "tip travel":
      return quotient(scale.tipSpeedBench, scale.tipSpeedPlant, "tipSpeed");
    case "energy per volume":
      return quotient(scale.powerPerVolumeBench, scale.powerPerVolumePlant, "powerPerVolume");
    case "strain":
      return quotient(scale.shearRateBench, scale.shearRatePlant, "shearRate");
    default:
      return refuse(
        "input",
        "keeps",
        (scale as IncorporationTimeScale).keeps,
        '"time", "revolutions", "tip travel", "energy per volume" or "strain"',
      );
  }
}

function quotient(bench: number, plant: number, what: string): number {
  return positive(
    result(positive(bench, `${what}Bench`) / positive(plant, `${what}Plant`), "factor"),
    "factor on the bench's times",
  );
}
