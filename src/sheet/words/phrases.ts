import type { Place } from "../../plan/index.js";
import type { Each } from "./types.js";

/** The small words between numbers, which a language writes in its own way. */
export interface Phrases {
  readonly notKnown: string;
  readonly fromBelow: (amount: string) => string;
  readonly fromAbove: (amount: string) => string;
  /** From one end to the other. */
  readonly range: (min: string, max: string) => string;
  /** A best value and its ends. */
  readonly about: (value: string, min: string, max: string) => string;
  /** A limit of which one end is known: it may be higher. */
  readonly orMore: (amount: string) => string;
  /** A limit of which one end is known: it may be lower. */
  readonly orLess: (amount: string) => string;
  readonly both: (one: string, other: string) => string;
  /** A list of two or more. */
  readonly list: (others: readonly string[], last: string) => string;
  readonly step: (number: string) => string;
  readonly addition: (number: string) => string;
  readonly places: Each<NonNullable<Place["place"]>, string>;
  readonly material: string;
  /** Where no step is given: of the whole run. */
  readonly wholeRun: string;
  readonly someStep: string;
  readonly days: string;
  /** A time on a later day than the first. */
  readonly onDay: (time: string, day: string) => string;
}

/** The same in English. */
export const englishPhrases: Phrases = {
  notKnown: "not known",
  fromBelow: (amount) => `at least ${amount}`,
  fromAbove: (amount) => `at most ${amount}`,
  range: (min, max) => `${min} to ${max}`,
  about: (value, min, max) => `${value} (${min} to ${max})`,
  orMore: (amount) => `${amount}, possibly more`,
  orLess: (amount) => `${amount}, possibly less`,
  both: (one, other) => `${one} and ${other}`,
  list: (others, last) => `${others.join(", ")} and ${last}`,
  step: (number) => `step ${number}`,
  addition: (number) => `addition ${number}`,
  places: {
    charge: "in the charge",
    "heated-wall": "at the heated wall",
    "cooled-wall": "at the cooled wall",
    vessel: "in the vessel",
    pack: "in the pack",
    "first-pack": "in the first pack",
    "last-pack": "in the last pack",
  },
  material: "the material",
  wholeRun: "over the whole run",
  someStep: "the step",
  days: "days",
  onDay: (time, day) => `${time} on day ${day}`,
};
