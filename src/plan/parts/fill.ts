import { vapourPressureAt, vapourPressures } from "../../laws/index.js";
import {
  type BatchTest,
  batchTestFor,
  type FillLimits,
  fillLimits,
  fillMass,
  headSpace,
  packsFromBatch,
  targetByRules,
  targetFill,
  tolerableError,
} from "../../packing/index.js";
import type { fillLimitCodes } from "../codes/words.js";
import { type Ends, isWater } from "../contents.js";
import type { Pack } from "../job.js";
import { usualSampleSize } from "../samples.js";
import type { Run } from "../state.js";
import { by, remembered, stated, unknown } from "../unknown.js";
import { fillingOf } from "./moments.js";

/**
 * Standard deviations between the mean and the largest fill that is looked at: common practice, no source.
 *
 * @internal
 */
export const deviationsToLargest = 3;

/** What is aimed at, and what sets it. */
export interface FillTarget {
  /** Mean content [kg]. */
  readonly mass: number;
  /** Share of batches that fail the test at that mean [0 to 1]. */
  readonly shareRejected: number;
  readonly limitedBy: (typeof fillLimitCodes)[number];
}

/** What is filled into, as far as it is stated. */
export function packOf({ job }: Run): Pack {
  return stated(job.pack, "pack");
}

/** Density of the product at 20 °C [kg/m³], to which a volume on a label refers. */
function density20({ scaled }: Run): number {
  return stated(scaled.density, "material-density");
}

/** The mass that the nominal quantity stands for [kg]. */
export function nominalMass(run: Run): number {
  const { mass, volume } = stated(packOf(run).nominal, "pack-nominal");
  if (mass !== undefined) return mass;
  const density = { law: "constant", density: density20(run) } as const;
  return by("fill-mass", () => fillMass({ volume: stated(volume, "pack-nominal"), density }));
}

/** How far short a single pack may be [kg], by the caller's table, with the act and how that was read. */
export function errorOf(run: Run): { readonly mass: number; readonly act: string; readonly grade: string } {
  const { mass, volume } = stated(packOf(run).nominal, "pack-nominal");
  const { tolerableErrors: table } = stated(packOf(run).averageQuantity, "pack-average-quantity");
  const { error, act, grade } = by("tolerable-error", () =>
    mass === undefined
      ? tolerableError({ table, nominal: stated(volume, "pack-nominal"), by: "volume" })
      : tolerableError({ table, nominal: mass, by: "mass" }),
  );
  return { mass: mass === undefined ? error * density20(run) : error, act, grade };
}

/** The test that the batch faces, by the packs that were asked for, or else by those that it fills at the nominal quantity. */
function testOf(run: Run): BatchTest {
  const { batchTests: table } = stated(packOf(run).averageQuantity, "pack-average-quantity");
  const packs = run.scaled.packs ?? packsAt(run, nominalMass(run)).count;
  return by("batch-test", () => batchTestFor({ table, packs }));
}

/** Whole packs that all lots fill at a mean content, each lot for itself, and what is left over of them [kg]. */
export function packsAt(
  { scaled: { lot, lots } }: Run,
  massFill: number,
): { readonly count: number; readonly massLeft: number } {
  const { packs, massLeft } = by("packs-from-batch", () => packsFromBatch({ massBatch: lot.delivered, massFill }));
  return { count: packs * lots, massLeft: massLeft * lots };
}

/** The standard deviation of the content [kg]. */
function spreadOf(run: Run): number {
  return stated(packOf(run).fillSpread, "pack-fill-spread");
}

/** The mean that the rules ask for: by the test that the batch faces, and by what the packs themselves have to be. */
export const targetOf: (run: Run) => FillTarget = remembered((run: Run): FillTarget => {
  const { shareRejectedMax, shareBeyondOneMax, shareBeyondTwoMax } = stated(
    packOf(run).averageQuantity,
    "pack-average-quantity",
  );
  const pack = { nominal: nominalMass(run), tolerableError: errorOf(run).mass, spread: spreadOf(run) };
  const test = testOf(run);
  return by("target-fill", (): FillTarget => {
    const { mass, shareRejected, limitedBy } = targetFill({ ...pack, test, shareRejectedMax });
    const rules =
      shareBeyondOneMax === undefined || shareBeyondTwoMax === undefined
        ? 0
        : targetByRules({ ...pack, shareBeyondOneMax, shareBeyondTwoMax });
    if (rules > mass) return { mass: rules, shareRejected, limitedBy: "shares-of-packs" };
    return { mass, shareRejected, limitedBy: limitedBy === "single packs" ? "single-packs" : limitedBy };
  });
});

/** The mean that is aimed at [kg]: what the filler is set to, or the target by the rules. */
export function massAimed(run: Run): number {
  return packOf(run).fillTarget ?? targetOf(run).mass;
}

/** The largest content that is to be expected [kg]. */
export function largestFill(run: Run): number {
  return massAimed(run) + deviationsToLargest * spreadOf(run);
}

/** Volume of some product at a temperature [m³]: what states no expansion is taken to expand by nothing, or by the most that is usual. */
export function volumeAt(run: Run, mass: number, temperature: number): Ends {
  const { charge } = fillingOf(run).after;
  const volume = mass / density20(run);
  if (temperature === 20) return { min: volume, max: volume };
  const { min, max } = charge.volume(temperature);
  const cold = charge.mass / charge.density(20);
  return { min: (volume * min) / cold, max: (volume * max) / cold };
}

/** The temperatures of the product in the filler, of the last pack and of the first [°C]. */
export function fillingTemperatures(run: Run): Ends {
  const { before, after } = fillingOf(run);
  const ends = [before.temperature(), after.temperature()];
  return { min: Math.min(...ends), max: Math.max(...ends) };
}

/** Share of the pack that is left at the hottest storage, with the largest fill in it. */
export function headSpaceWhenHot(run: Run): Ends {
  const { storageTemperatureMax, brimCapacity } = packOf(run);
  const hot = stated(storageTemperatureMax, "pack-storage-temperature-max");
  const brim = stated(brimCapacity, "pack-brim-capacity");
  const { min, max } = volumeAt(run, largestFill(run), hot);
  return { min: 1 - max / brim, max: 1 - min / brim };
}

/** Pressure above the atmosphere at the hottest storage [Pa], in a pack that neither gives nor leaks. */
export function overpressureWhenHot(run: Run): Ends {
  const { storageTemperatureMax, brimCapacity, closingTemperature = run.job.process.room } = packOf(run);
  const temperatureMax = stated(storageTemperatureMax, "pack-storage-temperature-max");
  const volumePack = stated(brimCapacity, "pack-brim-capacity");
  const mass = largestFill(run);
  const closed = volumeAt(run, mass, closingTemperature);
  const hot = volumeAt(run, mass, temperatureMax);
  const isWet = fillingOf(run).after.charge.contents.some(isWater);
  // Over what holds water the air takes up its vapour, of pure water at most.
  const vapour = isWet ? vapourPressureAt({ law: vapourPressures.water, temperature: temperatureMax }) : 0;
  const over = (end: "min" | "max", vapourPressureMax: number): number =>
    by("head-space", () => {
      const density = mass / closed[end];
      const slope =
        temperatureMax > closingTemperature ? (density - mass / hot[end]) / (temperatureMax - closingTemperature) : 0;
      const law = { law: "linear", density, temperatureReference: closingTemperature, slope } as const;
      const { overpressureHot } = headSpace({
        ...{ volumePack, mass, density: law, temperatureClosing: closingTemperature, temperatureMax },
        vapourPressureMax,
      });
      // A pack that the product fills has no gas whose pressure could be given.
      return overpressureHot ?? unknown("nothing-there", { field: "pack-brim-capacity" });
    });
  return { min: over("min", 0), max: over("max", vapour) };
}

/** Between which readings a filling is left alone [kg], with the tare. */
export function limitsWhileFilling(run: Run): FillLimits & { readonly sampleSize: number } {
  const { tare, sampleSize = usualSampleSize } = packOf(run);
  const { mass: massTare, spread: spreadTare = 0 } = stated(tare, "pack-tare");
  const fill = { massFill: massAimed(run), spread: spreadOf(run) };
  return { sampleSize, ...by("target-fill", () => fillLimits({ ...fill, sampleSize, massTare, spreadTare })) };
}
