import { type FillLimits, fillerVolume, overfillCost, type TopUp, topUp } from "../../packing/index.js";
import type { Ends } from "../contents.js";
import type { Run } from "../state.js";
import { unique } from "../unique.js";
import { by, otherwise, type Reason, stated } from "../unknown.js";
import { costOfBatch } from "./batch.js";
import {
  errorOf,
  type FillTarget,
  fillingTemperatures,
  headSpaceWhenHot,
  limitsWhileFilling,
  massAimed,
  nominalMass,
  overpressureWhenHot,
  packOf,
  packsAt,
  targetOf,
  volumeAt,
} from "./fill.js";

/** What goes into a pack, and what the pack has to hold. What is not known is left out; `notKnown` says why. */
export interface PlanPacks {
  /** As the label states it: mass [kg], or volume at 20 °C [m³]. */
  readonly nominal: { readonly mass?: number | undefined; readonly volume?: number | undefined };
  /** Mass that the nominal quantity stands for [kg]. */
  readonly massNominal?: number;
  /** How far short a single pack may be [kg], with the act and how its table was read, in the caller's words. */
  readonly tolerableError?: { readonly mass: number; readonly act: string; readonly grade: string };
  /** The mean that the rules ask for. */
  readonly target?: FillTarget;
  /** The mean that is aimed at [kg]: as stated, or the target. */
  readonly massAimed?: number;
  /** What a volumetric filler is set to at first, from the warmest product to the coolest [m³, °C]. */
  readonly filler?: { readonly volume: Ends; readonly temperature: Ends };
  /** Between which gross weights a pack, and the mean of some, is left alone [kg]. */
  readonly limits?: FillLimits & { readonly sampleSize: number };
  /** At the hottest storage [°C]: share of the pack that is left [0 to 1], and pressure above the atmosphere [Pa]. */
  readonly headSpace?: { readonly temperature: number; readonly volumeFraction: Ends; readonly overpressure?: Ends };
  /** Two pours, if one would not fit up to the brim while it is hot. */
  readonly topUp?: TopUp;
  /** Whole packs that all lots fill, and what is left over [kg]. */
  readonly packs?: { readonly count: number; readonly massLeft: number };
  /** Above the nominal quantity, in one pack and in all [kg, currency of the cost]. */
  readonly overfill?: { readonly massPerPack: number; readonly mass: number; readonly cost?: number };
  readonly notKnown?: readonly Reason[];
}

/** What is known of the packs. */
export function packsOf(run: Run, nominal: PlanPacks["nominal"]): PlanPacks {
  const notKnown: Reason[] = [];
  const part = <Name extends keyof PlanPacks>(
    name: Name,
    find: () => PlanPacks[Name],
  ): Pick<PlanPacks, Name> | object =>
    otherwise(
      () => {
        const found = find();
        return found === undefined ? {} : { [name]: found };
      },
      (reason) => {
        notKnown.push(reason);
        return {};
      },
    );
  const { averageQuantity, tare } = packOf(run);
  const known = {
    ...part("massNominal", () => nominalMass(run)),
    ...(averageQuantity && part("tolerableError", () => errorOf(run))),
    ...(averageQuantity && part("target", () => targetOf(run))),
    ...part("massAimed", () => massAimed(run)),
    ...part("filler", () => fillerOf(run)),
    ...(tare && part("limits", () => limitsWhileFilling(run))),
    ...part("headSpace", () => headSpaceOf(run)),
    ...part("topUp", () => poursOf(run)),
    ...part("packs", () => packsAt(run, massAimed(run))),
    ...part("overfill", () => overfillOf(run)),
  };
  const reasons = unique(notKnown);
  return { nominal, ...known, ...(reasons.length > 0 && { notKnown: reasons }) };
}

/** What a filler by volume is set to at first: the mass that is aimed at, as warm as it comes. */
function fillerOf(run: Run): NonNullable<PlanPacks["filler"]> {
  const mass = massAimed(run);
  const temperature = fillingTemperatures(run);
  const at = (temperatureFill: number, end: "min" | "max"): number => {
    const density = { law: "constant", density: mass / volumeAt(run, mass, temperatureFill)[end] } as const;
    return by("fill-mass", () => fillerVolume({ mass, density, temperatureFill }));
  };
  return { temperature, volume: { min: at(temperature.min, "min"), max: at(temperature.max, "max") } };
}

function headSpaceOf(run: Run): NonNullable<PlanPacks["headSpace"]> {
  const volumeFraction = headSpaceWhenHot(run);
  const temperature = stated(packOf(run).storageTemperatureMax, "pack-storage-temperature-max");
  return {
    temperature,
    volumeFraction,
    ...otherwise(
      () => ({ overpressure: overpressureWhenHot(run) }),
      () => ({}),
    ),
  };
}

/** Two pours, where the content takes more while it is hot than the pack has up to the brim. */
function poursOf(run: Run): TopUp | undefined {
  const volumeMark = stated(packOf(run).brimCapacity, "pack-brim-capacity");
  const massFill = massAimed(run);
  const { max: temperatureFill } = fillingTemperatures(run);
  const temperatureTopUp = run.job.process.room;
  const hot = volumeAt(run, massFill, temperatureFill).max;
  if (hot <= volumeMark || temperatureFill <= temperatureTopUp) return undefined;
  const density = massFill / volumeAt(run, massFill, temperatureTopUp).max;
  const slope = (density - massFill / hot) / (temperatureFill - temperatureTopUp);
  const law = { law: "linear", density, temperatureReference: temperatureTopUp, slope } as const;
  return by("expansion", () => topUp({ massFill, volumeMark, density: law, temperatureFill, temperatureTopUp }));
}

/** What is given away, at what the materials cost. */
function overfillOf(run: Run): NonNullable<PlanPacks["overfill"]> {
  const { count } = packsAt(run, massAimed(run));
  const given = (price: number) =>
    by("target-fill", () => overfillCost({ massFill: massAimed(run), nominal: nominalMass(run), price, packs: count }));
  const { massPerPack, mass } = given(0);
  return {
    massPerPack,
    mass,
    ...otherwise(
      () => ({ cost: given(costOfBatch(run).perKilogram).cost }),
      () => ({}),
    ),
  };
}
