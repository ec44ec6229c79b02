import type { Formula, FormulaLine } from "../formula/index.js";
import { list, refuse, variant } from "../guards.js";
import type { VesselBottom } from "../mixing/index.js";
import type { Allowance } from "./allowance.js";
import { filmAllowances, filmThickness } from "./film.js";
import * as known from "./known.js";
import type { Batch, BatchAllowance } from "./types.js";

/** What a batch has to know of the vessel it is made in. */
export interface BatchVessel {
  readonly name: string;
  /** Least working volume [m³]. */
  readonly volumeMin: number;
  /** Greatest working volume [m³]. */
  readonly volumeMax: number;
  /** Inner diameter [m]. */
  readonly diameter: number;
  /** Its bottom; left out for a flat one. */
  readonly bottom?: VesselBottom | undefined;
}

/** What turns a film into a mass; what is unknown is left out. */
interface FilmConditions {
  readonly vessel?: BatchVessel | undefined;
  readonly density?: number | undefined;
  readonly yieldStress?: number | undefined;
}

/** One name a line: a material may stand in several phases. */
export function nameOf({ phase, material }: Pick<FormulaLine, "phase" | "material">): string {
  return `${phase}: ${material}`;
}

/** The allowances of a batch for the lines of its formula and the vessel it is made in. */
export function allowancesOf(formula: Formula, batch: Batch, conditions: FilmConditions): readonly Allowance[] {
  return list(batch.allowances, "allowances").flatMap((allowance, i) => {
    const at = `allowances[${i}]`;
    variant(allowance, at, "kind", known.batchAllowance);
    if (allowance.kind === "film") return film(allowance, at, conditions);
    if (allowance.kind !== "mass" && allowance.kind !== "share")
      refuse("input", `${at}.kind`, (allowance as { kind: unknown }).kind, '"share", "mass" or "film"', {
        rule: "not-one-of",
      });
    const lines = linesOf(allowance, at, formula);
    const from = lines && { lines };
    return allowance.kind === "mass"
      ? [{ kind: "fixed" as const, name: allowance.name, mass: allowance.mass, ...from }]
      : [{ kind: "proportional" as const, name: allowance.name, fraction: allowance.fraction, ...from }];
  });
}

function linesOf({ materials, phases }: BatchAllowance, at: string, formula: Formula): readonly string[] | undefined {
  if (materials === undefined && phases === undefined) return undefined;
  if (materials !== undefined) list(materials, `${at}.materials`, 1);
  if (phases !== undefined) list(phases, `${at}.phases`, 1);
  const stranger =
    materials?.find((material) => !formula.lines.some((line) => line.material === material)) ??
    phases?.find((phase) => !formula.lines.some((line) => line.phase === phase));
  if (stranger !== undefined) refuse("input", at, stranger, "materials and phases of the formula");
  const lines = formula.lines.filter(
    ({ material, phase, massFraction }) =>
      massFraction > 0 && (materials?.includes(material) ?? true) && (phases?.includes(phase) ?? true),
  );
  if (lines.length === 0) refuse("input", at, "no line of those materials in those phases", "at least one");
  return lines.map(nameOf);
}

function film(
  { name, thickness }: BatchAllowance & { readonly kind: "film" },
  at: string,
  { vessel, density, yieldStress }: FilmConditions,
): readonly Allowance[] {
  if (vessel === undefined) return refuse("input", at, "no vessel", "a vessel for the film to stay in");
  if (density === undefined)
    return refuse("input", "density", "nothing", "a density of the product, or of every material");
  const held = thickness ?? (yieldStress === undefined ? undefined : filmThickness({ yieldStress, density }));
  if (held === undefined)
    return refuse("input", `${at}.thickness`, "nothing", "a thickness, or a yield stress of the gel");
  const { diameter, bottom } = vessel;
  return filmAllowances({ thickness: held, density, diameter, ...(bottom && { bottom }), name });
}
