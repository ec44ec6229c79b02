import { aboveZero, type Draft, type Findings, join } from "../../formula/document.js";
import type { RefractiveIndex } from "../../formula/index.js";
import { readRefractiveIndex } from "../../formula/properties.js";
import type { OilLaw, OilPoint } from "../../mixing/index.js";
import type { Stirrer } from "../job.js";
import { readStirrer } from "../read-stirrer.js";
import { checkRising, readOil } from "./oil-entries.js";
import { readThickness, type Thickness } from "./thickness.js";
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
  /** Its stirrer, the diameter of its vessel [m], the gel former in it [kg]. */
  readonly stirring?:
    | {
        readonly stirrer: Stirrer;
        readonly diameter?: number | undefined;
        readonly massGelFormer?: number | undefined;
      }
    | undefined;
  readonly thickness: Thickness;
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
  readonly gelFormerIndex?: RefractiveIndex | undefined;
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
  const { shares, uptake, thickness, additions, stirring, shear, surfactant, air } = draft;
  const greatest = draft.ceiling === undefined ? undefined : readOil(draft.ceiling, at("ceiling"), findings);
  if (greatest === 0 || greatest === 1) findings.note(at("ceiling"), draft.ceiling, "above 0 and below 100 % v/v");
  if (surfactant?.material !== undefined && !materials.has(surfactant.material))
    findings.note(at("surfactant", "material"), surfactant.material, "the key of a material of the formula");
  return {
    ceiling: greatest,
    share: lawOf(shares, at("shares"), findings, (entry, place) =>
      findings.quantity(entry?.share, "massFraction", join(place, "share"), aboveZero),
    ),
    uptake: lawOf(uptake, at("uptake"), findings, (entry, place) =>
      findings.quantity(entry?.time, "time", join(place, "time"), aboveZero),
    ),
    additions: additions && {
      massGelFormer: findings.quantity(additions.gelFormer, "mass", at("additions", "gelFormer"), aboveZero),
      additions: (additions.oil ?? []).map((text, i) =>
        findings.quantity(text, "mass", at("additions", "oil", i), aboveZero),
      ),
    },
    stirring: stirring && readStirring(stirring, at("stirring"), findings),
    thickness: readThickness(thickness, at("thickness"), findings),
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

function readStirring(
  { stirrer, diameter, gelFormer }: Draft<NonNullable<ColdBenchDocument["stirring"]>>,
  path: string,
  findings: Findings,
): ColdBench["stirring"] {
  const width = findings.optional(diameter, "length", join(path, "diameter"), aboveZero);
  const at = join(path, "stirrer");
  if (stirrer?.speed === undefined) findings.note(join(at, "speed"), undefined, "the speed that it had");
  return {
    stirrer: readStirrer(stirrer ?? {}, width === undefined ? {} : { diameter: width }, at, findings),
    diameter: width,
    massGelFormer: findings.optional(gelFormer, "mass", join(path, "gelFormer"), aboveZero),
  };
}

/** One entry holds throughout; between several the line is straight, and beyond them nothing is known. */
function lawOf<Entry extends { readonly oil?: string | undefined }>(
  entries: readonly (Entry | undefined)[] | undefined,
  path: string,
  findings: Findings,
  read: (entry: Entry | undefined, path: string) => number,
): OilLaw | undefined {
  const points = (entries ?? []).map((entry, i): OilPoint => {
    const place = join(path, i);
    return { volumeFractionOil: readOil(entry?.oil, join(place, "oil"), findings), value: read(entry, place) };
  });
  const [first, second] = points;
  if (!first) return undefined;
  checkRising(
    points.map(({ volumeFractionOil }) => volumeFractionOil),
    path,
    findings,
  );
  return second ? { law: "table", points } : { law: "constant", value: first.value };
}
