import { type RefractiveIndex, refractiveIndexOfMixture } from "../../formula/index.js";
import { glycerinForIndexMatch, glycerinWaterBands, refractiveIndexGlycerinWater } from "../../gel/index.js";
import { densityAt } from "../../laws/index.js";
import type { Charge } from "../charge.js";
import type { FieldCode } from "../codes/reasons.js";
import { moreOilThanBench, ofOuterPhase, ofSight } from "../composition.js";
import { type Content, densityOf, expansionLeftOut, isGlycerin, isWater, massOf } from "../contents.js";
import { type Basis, between, exactly, type Figure } from "../figure.js";
import type { Job } from "../job.js";
import type { Run } from "../state.js";
import { unique } from "../unique.js";
import { by, otherwise, type Reason, stated, Unknown, unknown } from "../unknown.js";

type GelFormerIndex = NonNullable<NonNullable<Job["bench"]["emulsion"]>["gelFormerIndex"]>;

/** What lacks an index may be so much of its phase: antioxidant and preservative do not decide it. Common practice, no source. */
const traces = 0.02;

/** Refractive indices of both phases of an emulsion at a temperature. */
export interface Indices {
  readonly gelFormer: number;
  readonly oil: number;
  /** By how much their difference may be off: by how sure the gel former's law is, a measured one by nothing, and by expansion that is not stated. */
  readonly off: number;
  readonly basis: readonly Basis[];
}

/** The share of glycerin in glycerin and water that gives the outer phase the index of the oil. */
export interface Remedy {
  /** As it is [0 to 1]. */
  readonly massFractionGlycerin: number;
  /** As it would match [0 to 1]. */
  readonly massFractionToMatch: number;
  /** How far it may be off before the indices are further apart than allowed [0 to 1]. */
  readonly tolerance: number;
}

/** A part of a mixture as its refractive index needs it. */
export interface Part {
  readonly mass: number;
  readonly density: number;
  readonly refractiveIndex: number;
}

/** The room's temperature, and the ends of those at which the gel is used [°C]. */
export function temperaturesOfUse({ job: { bench, process } }: Run): readonly number[] {
  const { min = process.room, max = process.room } = bench.inUse?.temperature ?? {};
  return unique([process.room, min, max]);
}

/** The index of the gel former as the bench measured it, if it was this one. */
export function measuredIndex({ job }: Charge): GelFormerIndex | undefined {
  const { gelFormerIndex } = stated(job.bench.emulsion, "bench-emulsion");
  return ofOuterPhase(job, gelFormerIndex);
}

/** How far apart the indices may be, as the bench saw it. A gel with more of the same oil in it looks clearer, and one with less milkier. */
export function mismatchMax(job: Job): Figure {
  const allowed = ofSight(job, job.bench.emulsion?.mismatchAllowed, "emulsion-mismatch-max");
  const basis = [{ kind: "reading", key: "emulsion-mismatch-max", source: job.bench.source }] as const;
  const more = moreOilThanBench(job);
  return more === 0 ? exactly(allowed, basis) : between(more > 0 ? allowed : null, more > 0 ? null : allowed, basis);
}

/** The same where the bench saw through as much oil. */
export function mismatchSeen(job: Job): number {
  return mismatchMax(job).value ?? unknown("not-read", { field: "emulsion-mismatch-max" });
}

/** Indices of both phases at a temperature [°C]. */
export function indicesAt(charge: Charge, temperature: number): Indices {
  const gelFormerIndex = measuredIndex(charge);
  const basis: Basis = gelFormerIndex
    ? { kind: "reading", key: "emulsion-gel-former-index", source: charge.job.bench.source }
    : { kind: "law", key: "refractive-index" };
  const ofLaw = (): number =>
    glycerinWaterBands.refractiveIndex.max + offByExpansion(indexOfGelFormer, charge.outer(), temperature);
  return {
    gelFormer: gelFormerIndex
      ? indexOfReading(read(gelFormerIndex), temperature, { field: "emulsion-gel-former-index" })
      : indexOfGelFormer(charge.outer(), temperature),
    oil: indexOfOil(charge.oil(), temperature),
    off: (gelFormerIndex ? 0 : ofLaw()) + offByExpansion(indexOfOil, charge.oil(), temperature),
    basis: [basis],
  };
}

/** By how much an index may be off either way: of what states no expansion, more may be in the volume than its density says, or less. */
function offByExpansion(indexOf: typeof indexOfOil, contents: readonly Content[], temperature: number): number {
  const index = indexOf(contents, temperature);
  const end = (side: 1 | -1): number => {
    const moved = contents.map((content) => {
      const more = isGlycerin(content) || isWater(content) ? 0 : expansionLeftOut(content, temperature);
      const bendsMore = otherwise(
        () => side * (partOf(content, temperature).refractiveIndex - index) > 0,
        () => false,
      );
      return { ...content, mass: content.mass * (1 + (bendsMore === more > 0 ? more : 0)) };
    });
    return Math.abs(indexOf(moved, temperature) - index);
  };
  return Math.max(end(1), end(-1));
}

/** The ratio of glycerin and water that would match at a temperature [°C], and how closely it has to be met. */
export function glycerinToMatch(charge: Charge, temperature: number): Remedy {
  const mismatch = mismatchSeen(charge.job);
  // What was measured is not computed from its materials.
  if (measuredIndex(charge)) unknown("no-method");
  const outer = charge.outer();
  const { pair, mass, share, rest } = pairIn(outer);
  const parts = partsOf(rest, temperature, massOf(outer));
  const ofRest = parts.reduce((volume, part) => volume + part.mass / part.density, 0);
  const solids = {
    volumeFraction: ofRest / (ofRest + mass / densityOf(pair, temperature)),
    refractiveIndex: parts.length > 0 ? refractiveIndexOfMixture({ temperature, parts }) : 1,
  };
  const oil = { refractiveIndex: indexOfOil(charge.oil(), temperature), temperature };
  const { massFractionGlycerin, tolerance } = by("glycerin-for-index-match", () =>
    glycerinForIndexMatch({ oil, temperature, mismatch, ...(parts.length > 0 && { solids }), beyond: "extend" }),
  );
  return { massFractionGlycerin: share, massFractionToMatch: massFractionGlycerin, tolerance };
}

/** A reading of the bench as the materials have theirs. */
function read({ value, at, perKelvin }: GelFormerIndex): RefractiveIndex {
  return { refractiveIndex: value, temperature: at, ...(perKelvin !== undefined && { perKelvin }) };
}

function indexOfReading(
  { refractiveIndex, temperature: at, perKelvin }: RefractiveIndex,
  temperature: number,
  where: { readonly field: FieldCode; readonly of?: string },
): number {
  const apart = temperature - at;
  // It was read at one temperature, and nothing says how it changes.
  const slope =
    apart === 0 ? 0 : (perKelvin ?? unknown("not-read", { ...where, quantity: "temperature", value: temperature }));
  return refractiveIndex + slope * apart;
}

/** The parts of a phase that have an index; without those that lack it, if they are traces of the phase. */
export function partsOf(contents: readonly Content[], temperature: number, massOfPhase: number): readonly Part[] {
  const reasons: Reason[] = [];
  let without = 0;
  const parts = contents.flatMap(({ material, mass }): readonly Part[] =>
    otherwise(
      () => [partOf({ material, mass }, temperature)],
      (reason) => {
        reasons.push(reason);
        without += mass;
        return [];
      },
    ),
  );
  const [first] = reasons;
  if (first && without > traces * massOfPhase) throw new Unknown(first);
  return parts;
}

function partOf({ material, mass }: Omit<Content, "phase">, temperature: number): Part {
  const { key: of } = material;
  const field = "material-refractive-index";
  const refractiveIndex = indexOfReading(stated(material.refractiveIndex, field, { of }), temperature, { field, of });
  const law = stated(material.density, "material-density", { of });
  return { mass, density: densityAt({ law, temperature, beyond: "extend" }), refractiveIndex };
}

/** Index of the oil by its materials. */
export function indexOfOil(oil: readonly Content[], temperature: number): number {
  if (oil.length === 0) unknown("nothing-there");
  return mixed(partsOf(oil, temperature, massOf(oil)), temperature);
}

/** Glycerin and water as a pair, whose table knows that they contract; the rest beside them. */
export function pairIn(outer: readonly Content[]): {
  readonly pair: readonly Content[];
  readonly mass: number;
  readonly share: number;
  readonly rest: readonly Content[];
} {
  const pair = outer.filter((one) => isGlycerin(one) || isWater(one));
  const mass = massOf(pair);
  const share = massOf(outer.filter(isGlycerin)) / mass;
  // Without glycerin there is nothing to compute the outer phase's index from.
  if (!(share > 0)) unknown("not-stated", { field: "emulsion-gel-former-index" });
  return { pair, mass, share, rest: outer.filter((one) => !pair.includes(one)) };
}

/** Index of an outer phase by its glycerin, its water and what is dissolved in them. */
export function indexOfGelFormer(outer: readonly Content[], temperature: number): number {
  const { pair, mass, share, rest } = pairIn(outer);
  const parts = partsOf(rest, temperature, massOf(outer));
  const refractiveIndex = by("refractive-index", () =>
    refractiveIndexGlycerinWater({ massFractionGlycerin: share, temperature, beyond: "extend" }),
  );
  return mixed([{ mass, density: densityOf(pair, temperature), refractiveIndex }, ...parts], temperature);
}

/** Index of a mixture, by Lorentz and Lorenz. */
export function mixed(parts: readonly Part[], temperature: number): number {
  return by("refractive-index", () => refractiveIndexOfMixture({ temperature, parts }));
}
