import type { Formula, FormulaLine } from "../formula/index.js";
import type { FieldCode } from "./codes/reasons.js";
import { isGlycerin, isWater } from "./contents.js";
import type { Bench } from "./documents/bench.js";
import { remembered, stated, unknown } from "./unknown.js";

/** A formula, and what was on the bench, for which the readings hold. */
export interface Benched {
  readonly formula: Formula;
  readonly bench: Bench;
  readonly benchLines: readonly FormulaLine[];
}

/** How far the share of a material may be from the bench's, unless the bench states it: common practice, no source. */
const usualTolerance = 0.005;

/** How far the share of any material may be from the bench's [0 to 1]. */
export function toleranceOf({ tolerance = usualTolerance }: Bench): number {
  return tolerance;
}

/** Whether the bench measured such a composition, as far as its materials count. */
export function holdsFor(
  { bench, benchLines }: Benched,
  shares: ReadonlyMap<string, number>,
  counts: (material: string) => boolean,
): boolean {
  const there = sharesOf(benchLines);
  const keys = [...new Set([...shares.keys(), ...there.keys()])].filter(counts);
  const tolerance = toleranceOf(bench);
  return keys.every((key) => Math.abs((shares.get(key) ?? 0) - (there.get(key) ?? 0)) <= tolerance);
}

/** Whether the bench had the same gel former in the same rest of some shares, whatever the dose, to which the carrier gives way. */
export function holdsAlongDose(
  job: Benched,
  shares: ReadonlyMap<string, number>,
  counts: (material: string) => boolean = () => true,
): boolean {
  const { materials, lines } = job.formula;
  const isFormer = (key: string): boolean => materials[key]?.function === "gel former";
  const isCarrier = (key: string): boolean => lines.some(({ material, carrier }) => carrier && material === key);
  const isRest = (key: string): boolean => counts(key) && !isFormer(key) && !isCarrier(key);
  return holdsFor(job, shares, isRest) && isMixedAlike(job, ({ material }) => isFormer(material));
}

/** Whether the bench had the same gel former in the same oils, whatever the dose and whatever else is in it. */
export const hadGelFormerInOil: (job: Benched) => boolean = remembered((job: Benched) =>
  holdsAlongDose(job, sharesOf(job.formula.lines), (key) => job.formula.materials[key]?.function === "oil"),
);

/**
 * Whether the bench's emulsion had the same gel former and the same oil. How much oil it had does not matter, since its
 * readings are taken along the oil fraction; nor do particles. Shares are those of the charge.
 */
export const holdsForEmulsion: (job: Benched) => boolean = remembered((job: Benched) =>
  [true, false].every((isOuter) => holdsForPhase(job, isOuter)),
);

/** Whether a line is gel former of the emulsion, or oil; particles are neither. */
function isOf({ bench, formula }: Benched, isOuter: boolean): (line: FormulaLine) => boolean {
  return ({ phase, material }) =>
    (phase === bench.emulsion?.outerPhase) === isOuter && !formula.materials[material]?.particle;
}

/** Whether its gel former was the same, or its oil. */
function holdsForPhase(job: Benched, isOuter: boolean): boolean {
  return isMixedAlike(job, isOf(job, isOuter));
}

/** Whether some materials are mixed as they were on the bench, however much there is of them together. */
function isMixedAlike({ bench, benchLines, formula }: Benched, counts: (line: FormulaLine) => boolean): boolean {
  const [now, then] = [formula.lines, benchLines].map((lines) => sharesOf(lines.filter(counts))) as [Shares, Shares];
  const scale = sumOf(now) / sumOf(then);
  return [...new Set([...now.keys(), ...then.keys()])].every(
    (key) => Math.abs((now.get(key) ?? 0) - (then.get(key) ?? 0) * scale) <= toleranceOf(bench),
  );
}

type Shares = ReadonlyMap<string, number>;

function sumOf(shares: Shares): number {
  return [...shares.values()].reduce((all, one) => all + one, 0);
}

/** How much more oil there is than on the bench, as a share of gel former and oil; 0 within the tolerance. */
export function moreOilThanBench(job: Benched): number {
  const oilOf = (lines: readonly FormulaLine[]): number => {
    const [outer, oil] = [true, false].map((isOuter) => sumOf(sharesOf(lines.filter(isOf(job, isOuter)))));
    return (oil as number) / ((outer as number) + (oil as number));
  };
  const more = oilOf(job.formula.lines) - oilOf(job.benchLines);
  return Math.abs(more) <= toleranceOf(job.bench) ? 0 : more;
}

/** Whether all materials of a charge were on the bench in the same oils, particles and what is below the tolerance aside. */
export function wasOnBench(job: Benched, shares: ReadonlyMap<string, number>): boolean {
  const { bench, benchLines, formula } = job;
  const wasThere = ([key, share]: readonly [string, number]): boolean =>
    share <= toleranceOf(bench) ||
    formula.materials[key]?.particle !== undefined ||
    benchLines.some(({ material }) => material === key);
  return hadGelFormerInOil(job) && [...shares].every(wasThere);
}

/** What the bench found out about its emulsion: it holds for that gel former and that oil. */
export function ofEmulsion<T>(job: Benched, value: T | undefined, field: FieldCode): T {
  const found = stated(value, field);
  return holdsForEmulsion(job) ? found : unknown("not-read", { field });
}

/** What the bench measured of its gel as it was: it holds for as much of that oil in that gel former. */
export function ofGel<T>(job: Benched, value: T | undefined, field: FieldCode): T {
  const found = ofEmulsion(job, value, field);
  return moreOilThanBench(job) === 0 ? found : unknown("not-read", { field });
}

/** What the bench saw through its gel: that holds for its oil and its surfactant, however glycerin and water are set to match. */
export function ofSight<T>(job: Benched, value: T | undefined, field: FieldCode): T {
  const found = stated(value, field);
  const { materials } = job.formula;
  const isSet = ({ material: key }: FormulaLine): boolean => {
    const material = materials[key];
    return material !== undefined && (isGlycerin({ material }) || isWater({ material }));
  };
  const isOuter = isOf(job, true);
  const holds = holdsForPhase(job, false) && isMixedAlike(job, (line) => isOuter(line) && !isSet(line));
  return holds ? found : unknown("not-read", { field });
}

/** What the bench measured of its outer phase; nothing for another. */
export function ofOuterPhase<T>(job: Benched, value: T | undefined): T | undefined {
  return holdsForPhase(job, true) ? value : undefined;
}

/** Share of each material in some lines of a formula. */
export function sharesOf(lines: readonly FormulaLine[]): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  for (const { material, massFraction } of lines) shares.set(material, (shares.get(material) ?? 0) + massFraction);
  return shares;
}
