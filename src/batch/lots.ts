import { positive, record, refuse, result } from "../guards.js";
import { stepsDown, stepsUp } from "../numeric/decimal.js";
import * as known from "./known.js";

/**
 * The fewest equal lots in which a batch fits a vessel's working volume.
 *
 * $$n = \left\lceil V / V_\mathrm{max} \right\rceil \qquad V/n \ge V_\mathrm{min}$$
 *
 * @param input.volume - Volume of the batch [m³] at its fullest; or `mass` [kg] and `density` [kg/m³] in its place.
 * @param input.volumeMin - Smallest working volume [m³]: what still covers the stirrer or the heated wall. Above 0.
 * @param input.volumeMax - Largest working volume [m³], not below the smallest one.
 * @returns Number of lots and volume of each [m³].
 * @throws CalculationError `input` where an argument is out of range; `unreachable` where no number of equal lots fits: the message says which volumes would.
 * @source definition
 * @example
 * ```ts
 * import { splitIntoLots } from "gelwright/batch";
 * splitIntoLots({ mass: 100, density: 915, volumeMin: 0.012, volumeMax: 0.04 }).lots; // => 3
 * ```
 */
export function splitIntoLots(
  input: ({ readonly volume: number } | { readonly mass: number; readonly density: number }) & {
    readonly volumeMin: number;
    readonly volumeMax: number;
  },
): { readonly lots: number; readonly volume: number } {
  const given: Partial<Record<"volume" | "mass" | "density" | "volumeMin" | "volumeMax", number>> = record(
    input,
    "input",
    known.splitIntoLots,
  );
  if ((given.volume === undefined) === (given.mass === undefined))
    refuse("input", "volume", given.volume, "either a volume, or a mass and a density");
  const volume =
    given.volume === undefined
      ? result(positive(given.mass, "mass") / positive(given.density, "density"), "volume")
      : positive(given.volume, "volume");
  const max = positive(given.volumeMax, "volumeMax");
  const min = positive(given.volumeMin, "volumeMin");
  if (min > max) refuse("input", "volumeMin", min, `at most volumeMax, ${max} m³`);
  const lots = Math.max(1, stepsUp(result(volume / max, "number of lots")));
  if (lots <= stepsDown(volume / min)) return { lots, volume: volume / lots };
  const fewer = lots > 1 ? `up to ${(lots - 1) * max} m³ in ${lots - 1}, or ` : "";
  return refuse(
    "unreachable",
    "volume",
    `${volume} m³`,
    `${fewer}from ${lots * min} m³ in lots of equal size: ${lots}`,
  );
}
