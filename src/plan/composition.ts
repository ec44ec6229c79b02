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

/**
 * Whether the bench's emulsion had the same gel former and the same oil. How much oil it had does not matter, since its
 * readings are taken along the oil fraction; nor do particles. Shares are those of the charge.
 */
export function holdsForEmulsion({ bench, benchLines, formula }: Job): boolean {
  const outer = bench.emulsion?.outerPhase;
  const fluid = (lines: Job["benchLines"], isOuter: boolean): Job["benchLines"] =>
    lines.filter(({ phase, material }) => (phase === outer) === isOuter && !formula.materials[material]?.particle);
  const tolerance = toleranceOf(bench);
  return [true, false].every((isOuter) => {
    const [here, there] = [formula.lines, benchLines].map((lines) => fluid(lines, isOuter));
    const [now, then] = [sharesOf(here ?? []), sharesOf(there ?? [])];
    const sum = (shares: ReadonlyMap<string, number>): number =>
      [...shares.values()].reduce((all, one) => all + one, 0);
    const [whole, wholeThen] = [sum(now), sum(then)];
    return [...new Set([...now.keys(), ...then.keys()])].every(
      (key) => Math.abs((now.get(key) ?? 0) - ((then.get(key) ?? 0) * whole) / wholeThen) <= tolerance,
    );
  });
}

/** Share of each material in some lines of a formula. */
export function sharesOf(lines: Job["benchLines"]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const { material, massFraction } of lines) shares.set(material, (shares.get(material) ?? 0) + massFraction);
  return shares;
}
