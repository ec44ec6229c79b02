import { fraction, notNegative, positive, record, refuse, result } from "../guards.js";
import { type CompiledOilLaw, compileOilLaw, type OilLaw } from "./oil-law.js";

/** Oil that is to go into a gel former, and how fast the gel takes it up. */
export interface OilToAdd {
  /** Gel former in the vessel: the outer phase with all that is dissolved in it [kg], above 0. */
  readonly massGelFormer: number;
  /** Oil that is in the vessel already [kg]; default 0. */
  readonly massOil?: number;
  /** Oil to add [kg], above 0. */
  readonly massToAdd: number;
  /** Density of the oil [kg/m³], above 0. */
  readonly densityOil: number;
  /** Density of the gel former at the same temperature [kg/m³], above 0. */
  readonly densityGelFormer: number;
  /** The most that is taken up at once, as a share of what is in the vessel, against the oil fraction. */
  readonly share: OilLaw;
  /** The maximum volume fraction of oil that trials allow, above 0 and below 1; default none. */
  readonly volumeFractionOilMax?: number;
}

/** What is in the vessel once so much oil is in. */
export interface VesselWithOil {
  /** Mass in the vessel [kg]. */
  readonly massInVessel: number;
  /** Oil in the vessel [kg]. */
  readonly massOil: number;
  /** Volume fraction of oil in oil and gel former. */
  readonly volumeFractionOil: number;
}

/** Oil to add whose figures were checked. */
export interface CheckedOil {
  readonly massGelFormer: number;
  readonly massToAdd: number;
  readonly share: CompiledOilLaw;
  /** The vessel once so much of the oil to add is in [kg]. */
  readonly after: (massAdded: number) => VesselWithOil;
  /** The oil [kg] in all at a volume fraction. */
  readonly oilAt: (volumeFraction: number) => number;
}

/** Checks what is to be added, and that it stays within the oil fraction that trials allow. */
export function checkOil(input: OilToAdd): CheckedOil {
  const { massOil = 0, volumeFractionOilMax: limit } = record(input, "input");
  const massGelFormer = positive(input.massGelFormer, "massGelFormer");
  const before = notNegative(massOil, "massOil");
  const massToAdd = positive(input.massToAdd, "massToAdd");
  const densityOil = positive(input.densityOil, "densityOil");
  // Oil of the gel former's volume: with so much oil, half of the volume is oil.
  const even = result(massGelFormer * (densityOil / positive(input.densityGelFormer, "densityGelFormer")), "volume");
  positive(even, "volume of the gel former");
  const after = (massAdded: number): VesselWithOil => {
    const oil = before + massAdded;
    return { massInVessel: massGelFormer + oil, massOil: oil, volumeFractionOil: oil / (oil + even) };
  };
  const oilAt = (volumeFraction: number): number => (even * volumeFraction) / (1 - volumeFraction);
  result(massGelFormer + before + massToAdd + even, "mass in the vessel");
  if (limit !== undefined) {
    if (!(positive(fraction(limit, "volumeFractionOilMax"), "volumeFractionOilMax") < 1))
      refuse("input", "volumeFractionOilMax", limit, "below 1");
    const max = oilAt(limit) - before;
    if (massToAdd > max * (1 + 1e-12))
      refuse(
        "unreachable",
        "massToAdd",
        `${massToAdd} kg, which makes an oil fraction of ${after(massToAdd).volumeFractionOil}`,
        `at most ${Math.max(0, max)} kg more, so that it stays within ${limit}`,
      );
  }
  const share = compileOilLaw(input.share, "share");
  // A line that falls to nothing on the way is told as that, and not as additions without end.
  if (input.share.law === "linear") share.at(after(massToAdd).volumeFractionOil);
  return { massGelFormer, massToAdd, share, after, oilAt };
}
