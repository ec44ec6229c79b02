import type { Bench, Job } from "./job.js";

/** How far the share of a material may be from the bench's, unless the bench states it: common practice, no source. */
const usualTolerance = 0.005;

/** How far the share of any material may be from the bench's [0 to 1]. */
export function toleranceOf({ tolerance = usualTolerance }: Bench): number {
  return tolerance;
}

/** Whether the bench measured such a composition, as far as its materials count. */
export function holdsFor(
  { bench, benchLines }: Job,
  shares: ReadonlyMap<string, number>,
  counts: (material: string) => boolean,
): boolean {
  const there = sharesOf(benchLines);
  const keys = [...new Set([...shares.keys(), ...there.keys()])].filter(counts);
  const tolerance = toleranceOf(bench);
  return keys.every((key) => Math.abs((shares.get(key) ?? 0) - (there.get(key) ?? 0)) <= tolerance);
}

/** Share of each material in some lines of a formula. */
export function sharesOf(lines: Job["benchLines"]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const { material, massFraction } of lines) shares.set(material, (shares.get(material) ?? 0) + massFraction);
  return shares;
}
