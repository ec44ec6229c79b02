import type { ClaimedIndex, PlanLabel } from "../../plan/index.js";
import { howRead } from "./how-read.js";
import type { Each, Say } from "./types.js";

type Flag = Exclude<NonNullable<PlanLabel["particles"]>, { readonly notKnown: unknown }>;

interface Dated {
  readonly jurisdiction: string;
  readonly date: string;
}

const statusWords: Each<Flag["status"], string> = {
  restricted: "restricted",
  "restricted-later": "restricted later",
  "below-share": "below the share that is restricted",
  "not-known": "not known whether it is restricted",
};

const claimedWords: Each<ClaimedIndex, string> = {
  natural: "natural",
  naturalOrigin: "natural origin",
  organic: "organic",
  organicOrigin: "organic origin",
};

/** Words of the rooms `labelling` and `exposure` in the language of the sheet. */
const wordsOfKernels = {
  "whole product": "of the whole product",
  "without water": "of the product without water",
  "without water and salt": "of the product without water and salt",
  "organic of product": "organic, of the product",
  "organic of physically processed": "organic, of the physically processed agro-ingredients",
  "organic of agro-ingredients": "organic, of all agro-ingredients",
  "natural origin of product": "of natural origin, of the product",
  "petrochemical moieties of product": "petrochemical moieties, of the product",
  "other of product": "of no class, of the product",
  met: "met",
  "not-met": "not met",
  "not-known": "not known",
  "not-asked": "nothing of that class in it",
  within: "within it",
  above: "above it",
  "no-row": "the table has no row for it, which is no permission",
};

/** Sentences of the label draft and of the exposure. Shares 0 to 1, doses in mg/(kg·d). */
export const labelLines = {
  statuses: statusWords as Each<Flag["status"], string>,
  claimed: claimedWords as Each<ClaimedIndex, string>,
  kernelWords: wordsOfKernels as Readonly<Record<string, string>>,
  for: ({ formula, type }: { readonly formula: string; readonly type: string }): string => `${formula} (${type})`,
  names: ({ names }: { readonly names: readonly string[] }): string => names.join(", "),
  rule: ({ jurisdiction, date }: Dated): string => `By the rule of ${jurisdiction}, state of ${date}.`,
  anyOrder: ({ names }: { readonly names: readonly string[] }, say: Say): string =>
    `In any order among themselves: ${say.list(names)}.`,
  withoutName: ({ material }: { readonly material: string }): string =>
    `No name for the label is stated for ${material}; the name of the material stands in its place.`,
  toName: (
    { name, share, sources }: { readonly name: string; readonly share: number; readonly sources: readonly string[] },
    say: Say,
  ): string => `${name}: to be named, ${say.percent(share, 3)} (from ${say.list(sources)}).`,
  notAbove: ({ name, share }: { readonly name: string; readonly share: number }, say: Say): string =>
    `${name}: not above the threshold, ${say.percent(share, 3)}.`,
  threshold: ({ threshold, jurisdiction, date }: Dated & { readonly threshold: number }, say: Say): string =>
    `Named above ${say.percent(threshold, 3)}, by the list of ${jurisdiction}, state of ${date}.`,
  notStated: ({ names }: { readonly names: readonly string[] }, say: Say): string =>
    `The fragrance allergens of ${say.list(names)} are not stated: until then names may be missing.`,
  natureNotStated: ({ names }: { readonly names: readonly string[] }, say: Say): string =>
    `What ${say.list(names)} ${names.length === 1 ? "is" : "are"} made of is not stated.`,
  indexNotStated: ({ names }: { readonly names: readonly string[] }, say: Say): string =>
    `The index of ${say.list(names)} is not stated and counts as nothing.`,
  notInTable: ({ names }: { readonly names: readonly string[] }, say: Say): string =>
    `The list does not know ${say.list(names)} under this spelling.`,
  particles: (
    {
      status,
      from,
      min,
      max,
    }: {
      readonly status: string;
      readonly from: string | undefined;
      readonly min: number;
      readonly max: number;
    },
    say: Say,
  ): string =>
    `${say.percent(min, 3)}${min === max ? "" : ` to ${say.percent(max, 3)}`}: ${status}${say.given(from, (day) => ` (the restriction begins on ${day})`)}.`,
  claim: (
    { percent, what, basis }: { readonly percent: number; readonly what: string; readonly basis: string },
    say: Say,
  ): string => `${say.number(percent, 6)} % ${what} ${basis}.`,
  figure: (
    { what, min, max }: { readonly what: string; readonly min: number; readonly max: number },
    say: Say,
  ): string => `${what}: ${say.percent(min)}${min === max ? "" : ` to ${say.percent(max)}`}.`,
  asked: (
    {
      what,
      min,
      max,
      verdict,
    }: {
      readonly what: string;
      readonly min: number | undefined;
      readonly max: number | undefined;
      readonly verdict: string;
    },
    say: Say,
  ): string =>
    `Asked for (${what}):${say.given(min, (least) => ` at least ${say.percent(least)}`)}${say.given(max, (most) => ` at most ${say.percent(most)}`)}: ${verdict}.`,
  shortfall: ({ name, share }: { readonly name: string; readonly share: number }, say: Say): string =>
    `${name} takes ${say.percent(share, 3)} from natural origin.`,
  notKnown: ({ what, reason }: { readonly what: string; readonly reason: string }): string =>
    `${what}: not known: ${reason}.`,
  // Exposure
  daily: (
    {
      type,
      grams,
      milligrams,
      edition,
      grade,
    }: {
      readonly type: string;
      readonly grams: number;
      readonly milligrams: number;
      readonly edition: string;
      readonly grade: string;
    },
    say: Say,
  ): string =>
    `${type}: ${say.number(grams, 4)} g/d, ${say.number(milligrams, 5)} mg/(kg·d) by body weight (${edition}; row ${howRead(grade)}).`,
  dose: (
    { material, share, dose }: { readonly material: string; readonly share: number; readonly dose: number },
    say: Say,
  ): string => `${material}, ${say.percent(share)} of the product: ${say.number(dose, 3)} mg/(kg·d).`,
  margin: ({ margin }: { readonly margin: number }, say: Say): string =>
    `The dose of the study is ${say.number(margin, 3)} times that.`,
  shareMax: ({ share }: { readonly share: number }, say: Say): string =>
    `The wanted margin holds up to a share of ${say.percent(share, 3)}.`,
  limit: (
    {
      name,
      share,
      max,
      status,
    }: {
      readonly name: string;
      readonly share: number;
      readonly max: number | undefined;
      readonly status: string;
    },
    say: Say,
  ): string =>
    `${name}, ${say.percent(share, 3)}${say.given(max, (most) => ` (limit ${say.percent(most, 3)})`)}: ${status}.`,
};
