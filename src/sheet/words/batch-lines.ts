import type { Cost, Ends } from "../../plan/index.js";
import type { Say } from "./types.js";

/** Sentences about what is weighed, made and delivered. Masses in kg, shares 0 to 1, times in s. */
export const batchLines = {
  lots: ({ count }: { readonly count: number }, say: Say): string => `____ of ${say.count(count)} equal lots`,
  charge: ({ mass, volume }: { readonly mass: number; readonly volume?: number }, say: Say): string =>
    `${say.kilograms(mass)}${say.given(volume, (known) => `, ${say.litres(known, 3)} at ${say.celsius(20)}`)}`,
  open: (of: {
    readonly verdict: string;
    readonly statement: string;
    /** Left out if the statement has the figure. */
    readonly value?: string;
    readonly limit: string;
  }): string =>
    `${of.verdict.toUpperCase()}: ${of.statement}${of.value === undefined ? "" : ` Value: ${of.value}.`} Limit: ${of.limit}.`,
  portions: ({ whole, portions }: { readonly whole: string; readonly portions: readonly string[] }): string =>
    `${whole}, as ${portions.join(" + ")}`,
  total: ({ total }: { readonly total: string }): string => `Total to weigh: ${total}`,
  aboutSubject: ({ question, subject }: { readonly question: string; readonly subject: string }): string =>
    `${question} (${subject})`,
  phase: ({ phase }: { readonly phase: string }): string => `phase ${phase}`,
  notKnown: ({ reason }: { readonly reason: string }): string => `Not known: ${reason}.`,
  /** The same beside other clauses. */
  notKnownClause: ({ reason }: { readonly reason: string }): string => `not known, because ${reason}`,
  asked: ({ mass }: { readonly mass: number }, say: Say): string => `Asked for: ${say.kilograms(mass)}.`,
  askedInPacks: (
    { mass, packs, pack }: { readonly mass: number; readonly packs: number; readonly pack: string | undefined },
    say: Say,
  ): string =>
    `Asked for: ${say.kilograms(mass)} in ${Number.isInteger(packs) ? "" : "about "}${say.number(packs, 5)} packs${say.given(pack, (name) => ` (${name})`)}.`,
  delivered: ({ mass }: { readonly mass: number }, say: Say): string => `The charge delivers ${say.kilograms(mass)}.`,
  ofStabilityTest: ({ count }: { readonly count: number }, say: Say): string =>
    `${say.count(count)} ${count === 1 ? "sample" : "samples"} for the stability test`,
  ofFillChecks: ({ count }: { readonly count: number }, say: Say): string =>
    `${say.count(count)} ${count === 1 ? "pack" : "packs"} for checks of the fill`,
  ofPacks: ({ count }: { readonly count: number }, say: Say): string =>
    `${say.count(count)} ${count === 1 ? "pack" : "packs"} kept back`,
  samplesOfLot: (
    { name, parts, mass }: { readonly name: string; readonly parts: readonly string[]; readonly mass: number },
    say: Say,
  ): string => `From each lot (${name}): ${parts.join(", ")}; ${say.kilograms(mass, 4)} in all.`,
  samplesToTake: (
    { name, parts, mass }: { readonly name: string; readonly parts: readonly string[]; readonly mass: number },
    say: Say,
  ): string => `${name}: ${parts.length === 0 ? "" : `${parts.join(", ")}; `}${say.kilograms(mass, 3)} in all`,
  stockMakes: ({ mass, lots }: { readonly mass: number; readonly lots: number }, say: Say): string =>
    `The stock makes at most ${say.kilograms(mass, 5)} in ${say.count(lots)} ${lots === 1 ? "lot" : "equal lots"}.`,
  stockMakesInPacks: (
    { mass, packs, lots }: { readonly mass: number; readonly packs: number; readonly lots: number },
    say: Say,
  ): string =>
    `The stock makes at most ${say.count(packs)} packs (${say.kilograms(mass, 5)}) in ${say.count(lots)} ${lots === 1 ? "lot" : "equal lots"}.`,
  limitedBy: ({ materials }: { readonly materials: readonly string[] }): string =>
    `What runs out first: ${materials.join(" and ")}.`,
  limitedByVessel: (): string =>
    "What is left is too little for another lot: it would not reach the minimum working volume of the vessel.",
  filmOnWall: ({ thickness }: { readonly thickness: number }, say: Say): string =>
    `By the viscosity at the end of filling, a film of ${say.millimetres(thickness, 2)} on average has not drained from the wall.`,
  filmAllowedFor: (
    { thickness, predicted }: { readonly thickness: number; readonly predicted: number },
    say: Say,
  ): string =>
    `The film in the vessel counts as ${say.millimetres(thickness, 2)}, as stated; predicted: ${say.millimetres(predicted, 2)}.`,
  /** A film by its name and by where it is left. */
  film: {
    wall: ({ name }: { readonly name: string }): string => `${name}, on the wall`,
    bottom: ({ name }: { readonly name: string }): string => `${name}, on the bottom`,
  },
  timesOfDays: ({ workingDay, days }: { readonly workingDay: number; readonly days: number }, say: Say): string =>
    `Times count from the start of each working day of ${say.duration(workingDay)}, with no reserve for handling; working days in all: ${say.count(days)}. A lot is not interrupted.`,
  stage: ({ step, instruction }: { readonly step: number; readonly instruction: string }): string =>
    `${step}. ${instruction}`,
  content: ({ min }: Ends, say: Say): string => say.percent(min),
  contentBetween: ({ min, max }: Ends, say: Say): string =>
    `between ${say.percent(min)} and ${say.percent(max)} (an index is not known)`,
  naturalOrigin: ({ withWater }: { readonly withWater: string }): string =>
    `Natural-origin content: ${withWater} with formulation water.`,
  naturalOriginBoth: (of: { readonly withWater: string; readonly withoutWater: string }): string =>
    `Natural-origin content: ${of.withWater} with formulation water, ${of.withoutWater} without.`,
  naturalOriginEitherWay: ({ content }: { readonly content: string }): string =>
    `Natural-origin content: ${content}, with formulation water or without.`,
  shortfall: ({ material, share }: { readonly material: string; readonly share: number }, say: Say): string =>
    `${material} takes ${say.percent(share)} from it.`,
  shortfallBetween: ({ material, min, max }: Ends & { readonly material: string }, say: Say): string =>
    `${material} takes ${say.percent(min)} to ${say.percent(max)} from it: an index of it is not known.`,
  parts: {
    active: ({ material }: { readonly material: string }): string => `${material}, active part,`,
    carrier: ({ material }: { readonly material: string }): string => `${material}, carrier,`,
  },
  largestGelFormer: ({ material, share }: { readonly material: string; readonly share: number }, say: Say): string =>
    `At most ${say.percent(share)} of ${material} would keep the claimed figure.`,
  cost: ({ batch, perKilogram, currency }: Cost, say: Say): string =>
    `Batch, all lots: ${say.money(batch)} ${currency}; each kilogram delivered: ${say.money(perKilogram)} ${currency}.`,
  costWithPack: ({ batch, perKilogram, perPack, currency }: Cost & { readonly perPack: number }, say: Say): string =>
    `Batch, all lots: ${say.money(batch)} ${currency}; each kilogram delivered: ${say.money(perKilogram)} ${currency}; each pack: ${say.money(perPack, 3)} ${currency}.`,
  sourceOf: ({ of, from }: { readonly of: string; readonly from: string }): string => `${of}: ${from}`,
  /** At the foot of each printed page. */
  foot: (of: Readonly<Record<"title" | "product" | "documents" | "batchNumber", string>>): string =>
    `${of.title}: ${of.product} · ${of.documents} · ${of.batchNumber}: ______________`,
  comparedBy: ({ library }: { readonly library: string }): string => `Compared by ${library}.`,
  computed: ({ library, fingerprint }: { readonly library: string; readonly fingerprint: string }): string =>
    `Computed by ${library} from documents with the fingerprint ${fingerprint}.`,
};
