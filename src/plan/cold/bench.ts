import { aboveZero, type Draft, type Findings, join } from "../../formula/document.js";
import type { IndexReading } from "../../formula/index.js";
import { readRefractiveIndex } from "../../formula/properties.js";
import type { OilLaw, OilPoint } from "../../mixing/index.js";
import type { ColdBenchDocument } from "./types.js";

/** What the bench found on the cold route, in the units of the kernels. */
export interface ColdBench {
  /** Volume fraction of oil at which trials inverted or broke. */
  readonly ceiling?: number | undefined;
  /** Greatest share at once, against the oil fraction. */
  readonly share?: OilLaw | undefined;
  /** Gel former [kg] and additions [kg] that were taken up. */
  readonly additions?: { readonly massGelFormer: number; readonly additions: readonly number[] } | undefined;
  /** Time of uptake [s], against the oil fraction. */
  readonly uptake?: OilLaw | undefined;
  /** Speed [rev/s] and diameter of the impeller [m]. */
  readonly stirring?: { readonly speed: number; readonly diameter: number } | undefined;
  /** Viscosity [Pa·s] and yield stress [Pa] at some oil fractions. */
  readonly viscosity: readonly OilPoint[];
  readonly yieldStress: readonly OilPoint[];
  /** Sauter mean diameter [m]. */
  readonly diameterDroplets?: number | undefined;
  /** Interfacial tension [N/m]. */
  readonly interfacialTension?: number | undefined;
  /** Shear rate [1/s], viscosities of oil and gel [Pa·s]. */
  readonly shear?:
    | { readonly shearRate: number; readonly viscosityOil: number; readonly viscosityGel: number }
    | undefined;
  /** Key of the surfactant, and its active matter on a full interface [kg/m²]. */
  readonly surfactant?: { readonly material: string; readonly adsorption: number } | undefined;
  readonly gelFormerIndex?: IndexReading | undefined;
  readonly mismatchAllowed?: number | undefined;
  readonly waterActivity?: number | undefined;
  /** Diameter of the bubbles [m], and viscosity of the gel while they leave [Pa·s]. */
  readonly air?: { readonly diameter: number; readonly viscosity: number } | undefined;
}

/** Second pass over what the bench found on the cold route. */
export function readColdBench(
  draft: Draft<ColdBenchDocument>,
  materials: ReadonlySet<string>,
  path: string,
  findings: Findings,
): ColdBench {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, path);
  const oilIn = (text: string | undefined, ...keys: (string | number)[]): number => {
    const oil = findings.quantity(text, "volumeFraction", at(...keys), 0);
    if (oil > 1) findings.note(at(...keys), text, "100 % v/v at most");
    return oil;
  };
  const { shares, uptake, thickness = [], additions, stirring, shear, surfactant, air } = draft;
  const greatest = draft.ceiling === undefined ? undefined : oilIn(draft.ceiling, "ceiling");
  if (greatest === 0 || greatest === 1) findings.note(at("ceiling"), draft.ceiling, "above 0 and below 100 % v/v");
  const along = (which: "viscosity" | "yieldStress", dimension: "dynamicViscosity" | "pressure"): readonly OilPoint[] =>
    rising(
      thickness.flatMap((reading, i) =>
        reading?.[which] === undefined
          ? []
          : [
              {
                volumeFractionOil: oilIn(reading.oil, "thickness", i, "oil"),
                value: findings.quantity(reading[which], dimension, at("thickness", i, which), aboveZero),
              },
            ],
      ),
      at("thickness"),
      findings,
    );
  if (surfactant?.material !== undefined && !materials.has(surfactant.material))
    findings.note(at("surfactant", "material"), surfactant.material, "the key of a material of the formula");
  return {
    ceiling: greatest,
    share: lawOf(
      shares?.map((entry, i) => ({
        volumeFractionOil: oilIn(entry?.oil, "shares", i, "oil"),
        value: findings.quantity(entry?.share, "massFraction", at("shares", i, "share"), aboveZero),
      })),
      at("shares"),
      findings,
    ),
    uptake: lawOf(
      uptake?.map((entry, i) => ({
        volumeFractionOil: oilIn(entry?.oil, "uptake", i, "oil"),
        value: findings.quantity(entry?.time, "time", at("uptake", i, "time"), aboveZero),
      })),
      at("uptake"),
      findings,
    ),
    additions: additions && {
      massGelFormer: findings.quantity(additions.gelFormer, "mass", at("additions", "gelFormer"), aboveZero),
      additions: (additions.oil ?? []).map((text, i) =>
        findings.quantity(text, "mass", at("additions", "oil", i), aboveZero),
      ),
    },
    stirring: stirring && {
      speed: findings.quantity(stirring.speed, "rotationalSpeed", at("stirring", "speed"), aboveZero),
      diameter: findings.quantity(stirring.impeller, "length", at("stirring", "impeller"), aboveZero),
    },
    viscosity: along("viscosity", "dynamicViscosity"),
    yieldStress: along("yieldStress", "pressure"),
    diameterDroplets: findings.optional(draft.droplets, "length", at("droplets"), aboveZero),
    interfacialTension: findings.optional(
      draft.interfacialTension,
      "surfaceTension",
      at("interfacialTension"),
      aboveZero,
    ),
    shear: shear && {
      shearRate: findings.quantity(shear.rate, "shearRate", at("shear", "rate"), aboveZero),
      viscosityOil: findings.quantity(shear.oilViscosity, "dynamicViscosity", at("shear", "oilViscosity"), aboveZero),
      viscosityGel: findings.quantity(shear.gelViscosity, "dynamicViscosity", at("shear", "gelViscosity"), aboveZero),
    },
    surfactant: surfactant && {
      material: surfactant.material ?? "",
      // One gram on so many square metres.
      adsorption: 1e-3 / findings.quantity(surfactant.gramCovers, "area", at("surfactant", "gramCovers"), aboveZero),
    },
    gelFormerIndex: draft.gelFormerIndex && readRefractiveIndex(draft.gelFormerIndex, at("gelFormerIndex"), findings),
    mismatchAllowed: draft.mismatchAllowed,
    waterActivity: draft.waterActivity,
    air: air && {
      diameter: findings.quantity(air.bubbles, "length", at("air", "bubbles"), aboveZero),
      viscosity: findings.quantity(air.viscosity, "dynamicViscosity", at("air", "viscosity"), aboveZero),
    },
  };
}

/** One entry holds throughout; between several the line is straight, and beyond them nothing is known. */
function lawOf(points: readonly OilPoint[] | undefined, path: string, findings: Findings): OilLaw | undefined {
  const [first, second] = points ?? [];
  if (!points || !first) return undefined;
  return second ? { law: "table", points: rising(points, path, findings) } : { law: "constant", value: first.value };
}

function rising(points: readonly OilPoint[], path: string, findings: Findings): readonly OilPoint[] {
  points.forEach(({ volumeFractionOil: oil }, i) => {
    const before = points[i - 1]?.volumeFractionOil ?? -1;
    if (oil <= before) findings.note(join(join(path, i), "oil"), `${oil}`, "more oil than in the entry before");
  });
  return points;
}
