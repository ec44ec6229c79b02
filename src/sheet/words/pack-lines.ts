import type { Ends, FillTarget, PlanPacks } from "../../plan/index.js";
import { howRead } from "./how-read.js";
import type { Say } from "./types.js";

/** What the rules ask a filler to be aimed at. */
interface Aim {
  readonly mass: number;
  readonly share: FillTarget["shareRejected"];
  readonly limit: string;
}

/** Sentences about what goes into a pack. Masses in kg, volumes in m³, pressures in Pa, shares 0 to 1. */
export const packLines = {
  limitedBy: {
    nominal: "the nominal quantity is enough",
    mean: "the test of the mean sets it",
    "single-packs": "the test of single packs sets it",
    "shares-of-packs": "the shares of short packs that are stated set it",
  },
  states: ({ nominal, mass }: { readonly nominal: PlanPacks["nominal"]; readonly mass: number }, say: Say): string =>
    `${say.given(nominal.volume, (volume) => `The label states ${say.litres(volume)}, which is ${say.kilograms(mass)} at ${say.celsius(20)}.`)}${say.given(nominal.mass, (own) => `The label states ${say.kilograms(own)}.`)}`,
  mayBeShort: (
    { mass, act, grade }: { readonly mass: number; readonly act: string; readonly grade: string },
    say: Say,
  ): string => `A single pack may be short by ${say.kilograms(mass, 3)} (${act}; table ${howRead(grade)}).`,
  aim: ({ mass, share, limit }: Aim, say: Say): string =>
    `Aim at ${say.kilograms(mass)} net on average: ${limit}. Then ${say.percent(share, 2)} of batches fail the test.`,
  aimStated: ({ mass }: { readonly mass: number }, say: Say): string =>
    `Aim at ${say.kilograms(mass)} net on average, as stated.`,
  aimByRules: ({ mass, share, limit }: Aim, say: Say): string =>
    `The rules on the quantity ask for ${say.kilograms(mass)} net on average: ${limit}. At that, ${say.percent(share, 2)} of batches fail the test.`,
  filler: ({ volume, temperature }: { readonly volume: Ends; readonly temperature: Ends }, say: Say): string =>
    `Start a filler by volume at ${say.range(say.litres(volume.min, 4), say.litres(volume.max, 4))} (product of ${say.range(say.celsius(temperature.min), say.celsius(temperature.max))}), then correct it by weighing.`,
  leaveAlone: (
    { single, mean, count }: { readonly single: Ends; readonly mean: Ends; readonly count: number },
    say: Say,
  ): string =>
    `Leave the filler alone while a pack weighs ${say.range(say.kilograms(single.min), say.kilograms(single.max))} gross and the mean of ${say.count(count)} packs ${say.range(say.kilograms(mean.min), say.kilograms(mean.max))}.`,
  headSpace: ({ temperature, share }: { readonly temperature: number; readonly share: Ends }, say: Say): string =>
    `At ${say.celsius(temperature)} the largest fill leaves ${say.range(say.percent(share.min, 2), say.percent(share.max, 2))} of the pack empty.`,
  overpressure: ({ pressure }: { readonly pressure: Ends }, say: Say): string =>
    `Then the pressure in a tight, rigid pack is ${say.range(say.millibars(pressure.min, 2), say.millibars(pressure.max, 2))} above the air outside.`,
  twoPours: ({ first, second }: { readonly first: number; readonly second: number }, say: Say): string =>
    `One pour does not fit while it is warm: pour ${say.kilograms(first)}, and ${say.kilograms(second, 3)} once that has cooled, before a skin sets.`,
  packs: ({ count, massLeft }: { readonly count: number; readonly massLeft: number }, say: Say): string =>
    `The whole batch fills ${say.count(count)} packs and leaves ${say.kilograms(massLeft, 3)}.`,
  overfill: ({ massPerPack, mass }: { readonly massPerPack: number; readonly mass: number }, say: Say): string =>
    `Each pack holds ${say.kilograms(massPerPack, 2)} more than its label states, ${say.kilograms(mass, 3)} in all.`,
  overfillCost: ({ cost, currency }: { readonly cost: number; readonly currency: string }, say: Say): string =>
    `Materials of that overfill cost ${say.money(cost)} ${currency}.`,
  notKnown: ({ reason }: { readonly reason: string }): string => `Not known: ${reason}.`,
  // The form
  formFor: ({ pack, formula }: { readonly pack: string; readonly formula: string }): string => `${pack}, ${formula}`,
  takeSample: ({ count }: { readonly count: number }, say: Say): string =>
    `Take ${say.count(count)} packs in a row, weigh each with its closure, and write down the mean. Correct the filler if the mean or a single pack is outside these limits.`,
  sample: ({ number }: { readonly number: number }, say: Say): string => say.count(number),
  singleLimits: (of: Ends, say: Say): string =>
    `A single pack, gross: ${say.range(say.kilograms(of.min), say.kilograms(of.max))}.`,
  meanLimits: (of: Ends, say: Say): string =>
    `The mean of a sample, gross: ${say.range(say.kilograms(of.min), say.kilograms(of.max))}.`,
};
