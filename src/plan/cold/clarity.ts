import { type Check, type RefractiveIndex, refractiveIndexOfMixture } from "../../formula/index.js";
import { glycerinForIndexMatch, refractiveIndexGlycerinWater } from "../../gel/index.js";
import { densityAt } from "../../laws/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { type Content, massOf } from "../moment.js";
import { say } from "../say.js";
import { densityOfPhase, type GelPhases, isGlycerin, isWater, phasesOfGel } from "./phases.js";

/** What lacks an index may be so much of its phase: antioxidant and preservative do not decide it. Common practice, no source. */
const traces = 0.02;

/** Nearer to the room than this, nobody sees a difference [K]: common practice, no source. */
const asWarm = 0.5;

/** Indices of oil and gel former at the room's temperature, how far apart they may be, and whether that shows in a vessel that stirring has warmed. */
export function checkClarity(job: Job, contents: readonly Content[], inVessel: number | undefined): readonly Check[] {
  const phases = phasesOfGel(job, contents);
  const { temperatureRoom: room } = job.process;
  const { mismatchAllowed, gelFormerIndex } = job.bench.emulsion ?? {};
  const check = {
    id: "clarity-match",
    limit: mismatchAllowed === undefined ? "not stated" : `within ${mismatchAllowed} of one another`,
    source: gelFormerIndex
      ? `gel former as measured, ${job.bench.source}; oils mixed by Lorentz and Lorenz`
      : "glycerin and water by table, the rest and the oils mixed by Lorentz and Lorenz",
  };
  const indices = indicesAt(phases, gelFormerIndex, room);
  if (typeof indices === "string")
    return [
      {
        ...check,
        verdict: "not known",
        statement: `Whether the gel comes out clear is not known: ${indices}.`,
        value: "not known",
      },
    ];
  const { gelFormer, oil } = indices;
  const value = `gel former ${gelFormer.toFixed(4)}, oil ${oil.toFixed(4)} at ${say.celsius(room)}`;
  const apart = Math.abs(oil - gelFormer);
  const verdict = mismatchAllowed === undefined ? "not known" : apart <= mismatchAllowed ? "met" : "not met";
  const remedy = gelFormerIndex ? "" : remedyOf(phases, oil, room, mismatchAllowed);
  const statement = {
    met: `Oil and gel former have one refractive index at the room's temperature: the gel can come out clear once its air is out. ${remedy}`,
    "not met": `Oil and gel former differ in refractive index: the gel stays milky. ${remedy}`,
    "not known": "How far the refractive indices may be apart is not stated by the bench.",
  }[verdict];
  const found: Check = { ...check, verdict, statement: statement.trim(), value };
  if (inVessel === undefined || Math.abs(inVessel - room) < asWarm || mismatchAllowed === undefined) return [found];
  const warm = indicesAt(phases, gelFormerIndex, inVessel);
  return typeof warm === "string"
    ? [found]
    : [found, whileWarm(warm, verdict === "met", inVessel, found, mismatchAllowed)];
}

/** Oils lose more index with warmth than glycerin and water do: what matches in the room may not in the vessel, and the other way round. */
function whileWarm(
  { gelFormer, oil }: Indices,
  matchesInRoom: boolean,
  temperature: number,
  { limit, source }: Check,
  mismatchAllowed: number,
): Check {
  const matches = Math.abs(oil - gelFormer) <= mismatchAllowed;
  const same = matches === matchesInRoom;
  return {
    id: "clarity-while-warm",
    verdict: same ? "met" : "not met",
    statement: same
      ? "Stirring warms the gel too little to change how clear it looks in the vessel."
      : `Warm from stirring, the gel looks ${matches ? "clearer" : "milkier"} in the vessel than it will in the room: judge a sample that has cooled.`,
    value: `gel former ${gelFormer.toFixed(4)}, oil ${oil.toFixed(4)} at ${say.celsius(temperature)}`,
    limit,
    source,
  };
}

interface Indices {
  readonly gelFormer: number;
  readonly oil: number;
}

/** Indices of both phases at a temperature, or what is missing. */
function indicesAt(phases: GelPhases, measured: RefractiveIndex | undefined, temperature: number): Indices | string {
  const gelFormer = measured ? indexAt(measured, temperature, "the gel former") : indexOfGelFormer(phases, temperature);
  const oil = indexOfOil(phases, temperature);
  if (typeof gelFormer === "string") return gelFormer;
  return typeof oil === "string" ? oil : { gelFormer, oil };
}

function indexAt(reading: RefractiveIndex, room: number, whose: string): number | string {
  const apart = room - reading.temperature;
  if (apart === 0) return reading.refractiveIndex;
  if (reading.perKelvin === undefined) return `the index of ${whose} was read at ${say.celsius(reading.temperature)}`;
  return reading.refractiveIndex + reading.perKelvin * apart;
}

/** Index of what is neither glycerin nor water, with density: a part of a mixture each. */
function partsOf(contents: readonly Content[], room: number, phase: readonly Content[]) {
  const parts: { readonly mass: number; readonly density: number; readonly refractiveIndex: number }[] = [];
  let without: { readonly mass: number; readonly why: string } | undefined;
  for (const { material, mass } of contents) {
    const { refractiveIndex, density, name } = material;
    const index = refractiveIndex ? indexAt(refractiveIndex, room, name) : `no refractive index of ${name}`;
    if (typeof index === "string" || !density) {
      const why = typeof index === "string" ? index : `no density of ${name}`;
      without = { mass: (without?.mass ?? 0) + mass, why: without?.why ?? why };
    } else
      parts.push({
        mass,
        density: densityAt({ law: density, temperature: room, beyond: "extend" }),
        refractiveIndex: index,
      });
  }
  const lacking = without && without.mass > traces * massOf(phase) ? without.why : undefined;
  return { parts, lacking };
}

function indexOfOil({ oil }: GelPhases, room: number): number | string {
  if (oil.length === 0) return "no oil is added";
  const { parts, lacking } = partsOf(oil, room, oil);
  return lacking ?? refractiveIndexOfMixture({ temperature: room, parts });
}

/** Glycerin and water as a pair, whose table knows that they contract; the rest beside them. */
function pairOf({ gelFormer }: GelPhases) {
  const glycerin = massOf(gelFormer.filter(isGlycerin));
  const mass = glycerin + massOf(gelFormer.filter(isWater));
  return { mass, share: glycerin / mass, rest: gelFormer.filter((one) => !isGlycerin(one) && !isWater(one)) };
}

function indexOfGelFormer(phases: GelPhases, room: number): number | string {
  const { mass, share, rest } = pairOf(phases);
  if (!(share > 0)) return "the gel former's index was not measured, and there is no glycerin to compute it from";
  const { parts, lacking } = partsOf(rest, room, phases.gelFormer);
  const density = densityOfPhase(
    phases.gelFormer.filter((one) => isGlycerin(one) || isWater(one)),
    room,
  );
  if (lacking !== undefined || typeof density === "string") return lacking ?? `${density}`;
  return attempt(() => {
    const pair = refractiveIndexGlycerinWater({ massFractionGlycerin: share, temperature: room, beyond: "extend" });
    return refractiveIndexOfMixture({
      temperature: room,
      parts: [{ mass, density, refractiveIndex: pair }, ...parts],
    });
  });
}

/** The ratio of glycerin and water that would match, and how exactly it has to be met. */
function remedyOf(phases: GelPhases, oil: number, room: number, mismatch: number | undefined): string {
  if (mismatch === undefined || mismatch === 0) return "";
  const { mass, share, rest } = pairOf(phases);
  const { parts } = partsOf(rest, room, phases.gelFormer);
  const density = densityOfPhase(
    phases.gelFormer.filter((one) => isGlycerin(one) || isWater(one)),
    room,
  );
  if (typeof density === "string") return "";
  const ofRest = parts.reduce((volume, part) => volume + part.mass / part.density, 0);
  const solids =
    parts.length === 0
      ? undefined
      : {
          volumeFraction: ofRest / (ofRest + mass / density),
          refractiveIndex: refractiveIndexOfMixture({ temperature: room, parts }),
        };
  return attempt(
    () => {
      const match = glycerinForIndexMatch({
        oil: { refractiveIndex: oil, temperature: room },
        temperature: room,
        mismatch,
        ...(solids && { solids }),
        beyond: "extend",
      });
      const [wanted, off] = [match.massFractionGlycerin, match.tolerance].map((part) => `${(100 * part).toFixed(1)} %`);
      return `${wanted} of glycerin in glycerin and water would match, give or take ${off}; it is ${(100 * share).toFixed(1)} %.`;
    },
    () =>
      "No ratio of glycerin and water reaches the oil's index: blend the oil, or dissolve something of a higher index.",
  );
}
