import type { Formula, FormulaLine } from "../formula/index.js";
import { list, notNegative, refuse, variant, wholeNumber } from "../guards.js";
import type { VesselBottom } from "../mixing/index.js";
import type { Allowance } from "./allowance.js";
import { filmAllowances, filmThickness } from "./film.js";
import * as known from "./known.js";
import type { Batch, BatchAllowance } from "./types.js";

/** What a batch has to know of the vessel it is made in. */
export interface BatchVessel {
  readonly name: string;
  /** Smallest working volume [m³]. */
  readonly volumeMin: number;
  /** Largest working volume [m³]. */
  readonly volumeMax: number;
  /** Inner diameter [m]. */
  readonly diameter: number;
  /** Its bottom; left out for a flat one. */
  readonly bottom?: VesselBottom | undefined;
}

/** What turns a film or samples into a mass; what is unknown is left out. */
interface Conditions {
  /** Finished product that is asked for in one pack [kg]. */
  readonly fill?: number | undefined;
  readonly vessel?: BatchVessel | undefined;
  readonly density?: number | undefined;
  readonly yieldStress?: number | undefined;
}

/** One name a line: a material may stand in several phases. */
export function nameOf({ phase, material }: Pick<FormulaLine, "phase" | "material">): string {
  return `${phase}: ${material}`;
}

/** The allowances of a batch for the lines of its formula and the vessel it is made in. */
export function allowancesOf(formula: Formula, batch: Batch, conditions: Conditions): readonly Allowance[] {
  return list(batch.allowances, "allowances").flatMap((allowance, i) => {
    const at = `allowances[${i}]`;
    variant(allowance, at, "kind", known.batchAllowance);
    if (allowance.kind === "film") return film(allowance, at, conditions);
    if (allowance.kind !== "mass" && allowance.kind !== "share" && allowance.kind !== "samples")
      refuse("input", `${at}.kind`, (allowance as { kind: unknown }).kind, '"share", "mass", "samples" or "film"', {
        rule: "not-one-of",
      });
    const lines = linesOf(allowance, at, formula);
    const from = lines && { lines };
    const { name } = allowance;
    if (allowance.kind === "share")
      return [{ kind: "proportional" as const, name, fraction: allowance.fraction, ...from }];
    const mass = allowance.kind === "mass" ? allowance.mass : massOfSamples(allowance, at, conditions);
    return [{ kind: "fixed" as const, name, mass, ...from }];
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

/** Product in samples [kg]. */
function massOfSamples(
  { packs = 0, mass = 0, stabilityTest, fillChecks }: BatchAllowance & { readonly kind: "samples" },
  at: string,
  { fill }: Conditions,
): number {
  if (stabilityTest === true || fillChecks !== undefined)
    return refuse(
      "input",
      at,
      "samples of a stability test or a fill check",
      "packs or a mass: only a plan can work these out",
    );
  if (packs === 0 && mass === 0) return refuse("input", at, "no samples", "packs or a mass");
  wholeNumber(packs, `${at}.packs`, 0);
  if (packs > 0 && fill === undefined)
    return refuse("input", `${at}.packs`, packs, "a batch that is asked for in packs");
  return notNegative(mass, `${at}.mass`) + packs * (fill ?? 0);
}

function film(
  { name, thickness }: BatchAllowance & { readonly kind: "film" },
  at: string,
  { vessel, density, yieldStress }: Conditions,
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
