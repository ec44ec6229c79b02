import type { FieldCode } from "./codes/reasons.js";
import type { Bench, Job } from "./job.js";
import { remembered, stated, unknown } from "./unknown.js";

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

/** Whether all materials of a charge were on the bench, particles and what is below the tolerance aside. */
export function wasOnBench({ bench, benchLines, formula }: Job, shares: ReadonlyMap<string, number>): boolean {
  return [...shares].every(
    ([key, share]) =>
      share <= toleranceOf(bench) ||
      formula.materials[key]?.particle ||
      benchLines.some(({ material }) => material === key),
  );
}

/**
 * Whether the bench's emulsion had the same gel former and the same oil. How much oil it had does not matter, since its
 * readings are taken along the oil fraction; nor do particles. Shares are those of the charge.
 */
export const holdsForEmulsion: (job: Job) => boolean = remembered((job: Job) =>
  [true, false].every((isOuter) => holdsForPhase(job, isOuter)),
);

/** Whether its gel former was the same, or its oil. */
function holdsForPhase({ bench, benchLines, formula }: Job, isOuter: boolean): boolean {
  const outer = bench.emulsion?.outerPhase;
  const fluid = (lines: Job["benchLines"]): ReadonlyMap<string, number> =>
    sharesOf(
      lines.filter(({ phase, material }) => (phase === outer) === isOuter && !formula.materials[material]?.particle),
    );
  const [now, then] = [fluid(formula.lines), fluid(benchLines)];
  const sum = (shares: ReadonlyMap<string, number>): number => [...shares.values()].reduce((all, one) => all + one, 0);
  const scale = sum(now) / sum(then);
  return [...new Set([...now.keys(), ...then.keys()])].every(
    (key) => Math.abs((now.get(key) ?? 0) - (then.get(key) ?? 0) * scale) <= toleranceOf(bench),
  );
}

/** What the bench found out about its emulsion: it holds for that gel former and that oil. */
export function ofEmulsion<T>(job: Job, value: T | undefined, field: FieldCode): T {
  const found = stated(value, field);
  return holdsForEmulsion(job) ? found : unknown("not-read", { field });
}

/** What the bench measured of its outer phase; nothing for another. */
export function ofOuterPhase<T>(job: Job, value: T | undefined): T | undefined {
  return holdsForPhase(job, true) ? value : undefined;
}

/** Share of each material in some lines of a formula. */
export function sharesOf(lines: Job["benchLines"]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const { material, massFraction } of lines) shares.set(material, (shares.get(material) ?? 0) + massFraction);
  return shares;
}
