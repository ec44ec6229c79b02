import type { Draft, Findings } from "./document.js";
import { join } from "./document.js";
import type { MaterialDocument } from "./material-document.js";
import { checkProperties, propertiesOf } from "./properties.js";
import type { Read } from "./read-type.js";
import { percent } from "./shares.js";
import type { Material, Particle } from "./types.js";

/** A material that was read, with its laws in place of figures, and the defaults for what it leaves out. */
export function materialOf(key: string, read: Read<MaterialDocument>): Material {
  const { name, listingName, limits, particle, notes, indices, price, allergens, fattyAcids } = read;
  const { restrictions, sources, strength, formulationWater, heatSensitive } = read;
  return {
    key,
    name,
    listingName,
    function: read.function,
    strength: strength ?? 1,
    ...propertiesOf(read),
    indices,
    formulationWater: formulationWater ?? false,
    hlb: read.hlb,
    requiredHlb: read.requiredHlb,
    inductionTimes: read.inductionTimes?.map(({ at, time }) => ({ temperature: at, duration: time })),
    ingredients: read.ingredients?.map(({ name: part, share }) => ({ name: part, massFraction: share })),
    certified: read.certified,
    allergensStated: allergens !== undefined,
    allergens: (allergens ?? []).map(({ name: allergen, share }) => ({ name: allergen, massFraction: share })),
    fattyAcids: fattyAcids ?? {},
    temperatureMax: limits?.temperatureMax,
    temperatureFlash: limits?.flashPoint,
    massFractionMax: limits?.shareMax,
    heatSensitive: heatSensitive === true,
    particle: particle && particleOf(particle),
    price,
    restrictions: restrictions ?? [],
    sources: sources ?? {},
    notes,
  };
}

function particleOf({ sizes, diameter, width, ...figures }: NonNullable<Read<MaterialDocument>["particle"]>): Particle {
  return {
    ...figures,
    diameter: diameter ?? diameterOfFlake(width as number, figures.thickness as number),
    ...(sizes && { sizes: sizes.map(({ diameter, share: massFraction }) => ({ diameter, massFraction })) }),
  };
}

/** The sphere that has the volume of a disc as wide and as thick [m]. */
function diameterOfFlake(width: number, thickness: number): number {
  return Math.cbrt(1.5 * width * width * thickness);
}

/** What of a material needs several fields. */
export function checkMaterial(draft: Draft<Read<MaterialDocument>>, at: string, findings: Findings): void {
  const { indices, particle } = draft;
  if (indices) {
    const { of: _of, ...figures } = indices;
    const path = join(at, "indices");
    if (Object.keys(figures).length === 0 && !findings.holds(path))
      findings.note(path, "no index", "at least one index; leave the field out where none is known", "missing");
  }
  checkWhole(draft.ingredients, join(at, "ingredients"), findings);
  if (particle) checkParticle(particle, join(at, "particle"), findings);
  checkProperties(draft, at, findings);
}

function checkParticle(
  { diameter, width, thickness, sphericity, sizes }: NonNullable<Draft<Read<MaterialDocument>>["particle"]>,
  at: string,
  findings: Findings,
): void {
  if ((diameter === undefined) === (width === undefined) && !findings.holds(at))
    findings.note(
      at,
      width === undefined ? "neither diameter nor width" : "diameter and width",
      "one of the two: the diameter of the sphere of equal volume, or the width of a flake",
      width === undefined ? "missing" : "contradiction",
    );
  if (width !== undefined && thickness === undefined && !findings.holds(at))
    findings.note(join(at, "thickness"), undefined, "the thickness of the flake beside its width", "missing");
  const thick = thickness ?? 0;
  if (thick > (width ?? Number.POSITIVE_INFINITY))
    findings.note(join(at, "thickness"), `${thick} m`, `at most the width, ${width} m`);
  // As thick as wide, a disc is this much of the diameter of its sphere.
  if (thick > (diameter ?? Number.POSITIVE_INFINITY) * Math.cbrt(2 / 3))
    findings.note(join(at, "thickness"), `${thick} m`, `at most 0.87 of the diameter, ${diameter} m`);
  if (thickness !== undefined && sphericity !== undefined)
    findings.note(join(at, "sphericity"), sphericity, "a flake's thickness or a grain's sphericity, not both");
  checkWhole(sizes, join(at, "sizes"), findings);
}

/** The parts of something have to make it up. */
function checkWhole(
  parts: readonly ({ readonly share?: number | undefined } | undefined)[] | undefined,
  path: string,
  findings: Findings,
): void {
  if (!parts || findings.holds(path)) return;
  const whole = parts.reduce((sum, part) => sum + (part?.share ?? 0), 0);
  if (Math.abs(whole - 1) > 1e-3)
    findings.note(path, `shares of ${percent(whole)} % in all`, "shares that add up to 100 %");
}
