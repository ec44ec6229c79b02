import type { CalendarDay } from "../../plan/index.js";
import type { Say } from "./types.js";

const two = (part: number): string => String(part).padStart(2, "0");

/** Sentences about the stability test. Masses in kg, temperatures in °C, times in s. */
export const stabilityLines = {
  /** What has a code in place of a name. */
  transitions: { "gel-point": "setting and dissolving" } as Readonly<Record<string, string>>,
  date: ({ year, month, day }: CalendarDay): string => `${year}-${two(month)}-${two(day)}`,
  day: ({ day }: { readonly day: number }, say: Say): string => say.count(day),
  takes: ({ samples, mass }: { readonly samples: number; readonly mass: number }, say: Say): string =>
    `Keep ${say.count(samples)} samples of ${say.kilograms(mass / samples, 3)} for the stability test, ${say.kilograms(mass, 3)} in all.`,
  takesNotKnown: ({ samples, reason }: { readonly samples: number; readonly reason: string }, say: Say): string =>
    `Keep ${say.count(samples)} samples for the stability test; their mass is not known: ${reason}.`,
  upTo: ({ day }: { readonly day: number }, say: Say): string => `The last pull is on day ${say.count(day)}.`,
  storage: ({ name, temperature }: { readonly name: string; readonly temperature: string }): string =>
    temperature === "" || name === temperature ? name : `${name} (${temperature})`,
  standsFor: (
    {
      min,
      value,
      max,
      temperature,
    }: {
      readonly min: number;
      readonly value: number;
      readonly max: number;
      readonly temperature: number;
    },
    say: Say,
  ): string => `${say.duration(value)} at ${say.celsius(temperature)} (${say.duration(min)} to ${say.duration(max)})`,
  standsForNotKnown: ({ reason }: { readonly reason: string }): string => `not known: ${reason}`,
  stay: ({ temperature, duration }: { readonly temperature: number; readonly duration: number }, say: Say): string =>
    `${say.duration(duration)} at ${say.celsius(temperature)}`,
  cycles: (
    {
      count,
      samples,
      duration,
      stays,
    }: {
      readonly count: number;
      readonly samples: number;
      readonly duration: number;
      readonly stays: readonly string[];
    },
    say: Say,
  ): string =>
    `${say.count(count)} cycles of ${say.list(stays)}, ${say.duration(duration)} in all. Samples that go through them: ${say.count(samples)}.`,
  crossing: ({ name, count }: { readonly name: string; readonly count: number }, say: Say): string =>
    `Times through a change of state (${name}): ${say.count(count)}.`,
  none: "No stability test is stated.",
};
