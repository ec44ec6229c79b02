import { aboveZero, type Draft, type Findings, join } from "../../formula/document.js";
import type { RefractiveIndex } from "../../formula/index.js";
import { readRefractiveIndex } from "../../formula/properties.js";
import type { OilLaw, OilPoint } from "../../mixing/index.js";
import type { Stirrer } from "../job.js";
import { readStirrer } from "../read-stirrer.js";
import { checkRising, readOil } from "./oil-entries.js";
import { readThickness, type Thickness } from "./thickness.js";
import type { EmulsionDocument } from "./types.js";

/** What the bench found on the cold route, in the units of the kernels. */
export interface ColdBench {
  /** Volume fraction of oil at which trials inverted or broke. */
  readonly volumeFractionOilMax?: number | undefined;
  /** Greatest share at once, against the oil fraction. */
  readonly share?: OilLaw | undefined;
  /** Gel former [kg] and additions [kg] that were taken up. */
  readonly additions?: { readonly massGelFormer: number; readonly additions: readonly number[] } | undefined;
  /** Time of uptake [s], against the oil fraction. */
  readonly incorporationTime?: OilLaw | undefined;
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
  draft: Draft<EmulsionDocument>,
  materials: ReadonlySet<string>,
  path: string,
  findings: Findings,
): ColdBench {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, path);
  const { additionShareMax, incorporationTime, thickness, additions, stirring, shear, surfactant, air } = draft;
  const max =
    draft.volumeFractionOilMax === undefined
      ? undefined
      : readOil(draft.volumeFractionOilMax, at("volumeFractionOilMax"), findings);
  if (max === 0 || max === 1)
    findings.note(at("volumeFractionOilMax"), draft.volumeFractionOilMax, "above 0 and below 100 % v/v");
  if (surfactant?.material !== undefined && !materials.has(surfactant.material))
    findings.note(at("surfactant", "material"), surfactant.material, "the key of a material of the formula");
  return {
    volumeFractionOilMax: max,
    share: lawOf(additionShareMax, at("additionShareMax"), findings, (entry, place) =>
      findings.quantity(entry?.share, "massFraction", join(place, "share"), aboveZero),
    ),
    incorporationTime: lawOf(incorporationTime, at("incorporationTime"), findings, (entry, place) =>
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
    diameterDroplets: findings.optional(draft.dropletDiameter, "length", at("dropletDiameter"), aboveZero),
    interfacialTension: findings.optional(
      draft.interfacialTension,
      "surfaceTension",
      at("interfacialTension"),
      aboveZero,
    ),
    shear: shear && {
      shearRate: findings.quantity(shear.rate, "shearRate", at("shear", "rate"), aboveZero),
      viscosityOil: findings.quantity(shear.viscosityOil, "dynamicViscosity", at("shear", "viscosityOil"), aboveZero),
      viscosityGel: findings.quantity(
        shear.viscosityEmulsion,
        "dynamicViscosity",
        at("shear", "viscosityEmulsion"),
        aboveZero,
      ),
    },
    surfactant: surfactant && {
      material: surfactant.material ?? "",
      // One gram on so many square metres.
      adsorption: 1e-3 / findings.quantity(surfactant.areaPerGram, "area", at("surfactant", "areaPerGram"), aboveZero),
    },
    gelFormerIndex: draft.gelFormerIndex && readRefractiveIndex(draft.gelFormerIndex, at("gelFormerIndex"), findings),
    mismatchAllowed: draft.mismatchAllowed,
    waterActivity: draft.waterActivity,
    air: air && {
      diameter: findings.quantity(air.bubbleDiameter, "length", at("air", "bubbleDiameter"), aboveZero),
      viscosity: findings.quantity(air.viscosity, "dynamicViscosity", at("air", "viscosity"), aboveZero),
    },
  };
}

function readStirring(
  { stirrer, diameter, gelFormer }: Draft<NonNullable<EmulsionDocument["stirring"]>>,
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
