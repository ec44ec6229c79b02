import type { RefractiveIndex, RefractivePart } from "../formula/index.js";
import { notNegative, positive, record, result } from "../guards.js";
import type { Beyond } from "../laws/beyond.js";
import { densityGlycerinWater } from "./glycerin-water.js";
import { outerOf, within } from "./match.js";
import { indexAt } from "./refractive-index.js";

/** The phases of a gel of the cold route before water meets it: those of a kilogram, or of the film on a square metre. */
export interface EmulsionPhases {
  /** Oil [kg], above 0. */
  readonly massOil: number;
  /** Density of the oil [kg/m³], above 0. */
  readonly densityOil: number;
  /** Glycerin in the outer phase [kg], 0 or more. */
  readonly massGlycerin: number;
  /** Water in the outer phase [kg], 0 or more; not both 0. */
  readonly massWater: number;
  /** Solids of the surfactant: mass [kg] and density [kg/m³]; default none. */
  readonly solids?: Omit<RefractivePart, "refractiveIndex">;
  /** Temperature at which it is rinsed [°C], 20 to 30. */
  readonly temperature: number;
  /** From 0 to 60 °C but outside 20 to 30: `"throw"` (default) or `"extend"`. */
  readonly beyond?: Beyond;
}

/** The same, with what its clarity needs. */
export interface EmulsionGel extends EmulsionPhases {
  /** Refractive index of the oil, with its temperature. */
  readonly oil: RefractiveIndex;
  /** Solids of the surfactant: mass [kg], density [kg/m³] and refractive index; default none. */
  readonly solids?: RefractivePart;
  /** Sauter mean diameter of the droplets [m], above 0. */
  readonly diameter: number;
}

/** What the phases are at some water. */
export interface Diluted {
  /** Glycerin in glycerin and water, by mass. */
  readonly share: number;
  /** Volume fraction of oil. */
  readonly oil: number;
  /** Volume fraction of the solids in the outer phase. */
  readonly dissolved: number;
}

/** Mixes water into the phases, which are checked once for all the water that is tried. */
export function diluting(phases: EmulsionPhases): (added: number) => Diluted {
  const { massOil, densityOil, massGlycerin, massWater, solids, temperature, beyond } = record(phases, "input");
  const volumeOil = positive(massOil, "massOil") / positive(densityOil, "densityOil");
  const glycerin = notNegative(massGlycerin, "massGlycerin");
  const water = notNegative(massWater, "massWater");
  positive(glycerin + water, "massGlycerin plus massWater");
  const volumeSolids =
    solids === undefined
      ? 0
      : notNegative(record(solids, "solids").mass, "solids.mass") / positive(solids.density, "solids.density");
  const at = { temperature, ...(beyond !== undefined && { beyond }) };
  return (added) => {
    const pair = result(glycerin + water + added, "mass of the outer phase");
    const share = glycerin / pair;
    const volume = pair / densityGlycerinWater({ massFractionGlycerin: share, ...at }) + volumeSolids;
    return {
      share,
      oil: result(volumeOil / (volumeOil + volume), "volume fraction of oil"),
      dissolved: result(volumeSolids / volume, "volume fraction of solids"),
    };
  };
}

/** The indices of both phases at some water; the oil's is read once. */
export function indicesOf(gel: EmulsionGel): (diluted: Diluted) => { readonly outer: number; readonly oil: number } {
  const { oil, solids, temperature, beyond } = gel;
  const ofOil = indexAt(oil, within(temperature, beyond), "oil");
  return ({ share, dissolved }) => ({
    outer: outerOf(solids && { volumeFraction: dissolved, refractiveIndex: solids.refractiveIndex })(
      share,
      temperature,
    ),
    oil: ofOil,
  });
}
