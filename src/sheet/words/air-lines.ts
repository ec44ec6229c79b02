import type { Say } from "./types.js";

/** Sentences about air in the gel. Lengths in m, times in s, temperatures in °C, pressures in Pa. */
export const airLines = {
  leaves: (
    {
      diameter,
      fromStep,
      depth,
      duration,
    }: {
      readonly diameter: number;
      readonly fromStep: number;
      readonly depth: number | undefined;
      readonly duration: number;
    },
    say: Say,
  ): string =>
    `Bubbles of ${say.millimetres(diameter, 2)} after step ${say.count(fromStep)} have left the ${say.millimetres(depth, 2)} of melt after ${say.duration(duration)}, if nothing stirs in more.`,
  stays: (
    of: {
      readonly diameter: number;
      readonly fromStep: number;
      readonly toStep: number;
      readonly depth: number | undefined;
      readonly distance: number | undefined;
    },
    say: Say,
  ): string =>
    `Bubbles of ${say.millimetres(of.diameter, 2)} after step ${say.count(of.fromStep)} rise ${say.millimetres(of.distance, 2)} of ${say.millimetres(of.depth, 2)} by the end of step ${say.count(of.toStep)}: they do not leave.`,
  riseNotKnown: (
    { diameter, fromStep, reason }: { readonly diameter: number; readonly fromStep: number; readonly reason: string },
    say: Say,
  ): string =>
    `How far bubbles of ${say.millimetres(diameter, 2)} rise after step ${say.count(fromStep)} is not known: ${reason}.`,
  inPack: ({ distance, depth }: { readonly distance: number; readonly depth: number }, say: Say): string =>
    `In a pack they rise ${say.millimetres(distance, 2)} of ${say.millimetres(depth, 2)} before it has set.`,
  held: (
    { min, max }: { readonly min: number | null | undefined; readonly max: number | null | undefined },
    say: Say,
  ): string =>
    `The set gel holds bubbles up to ${say.millimetres(min, 2)} for ever, and none above ${say.millimetres(max, 2)}; between them it is not known.`,
  staysFrom: ({ step }: { readonly step: number }, say: Say): string =>
    `From step ${say.count(step)} on draw in none: it would stay.`,
  toClear: (
    {
      within,
      fromStep,
      ways,
    }: { readonly within: number; readonly fromStep: number; readonly ways: readonly string[] },
    say: Say,
  ): string =>
    `To be clear ${say.duration(within)} after step ${say.count(fromStep)} the melt would have to be ${ways.join(", or ")}.`,
  outOfReach: ({ within, fromStep }: { readonly within: number; readonly fromStep: number }, say: Say): string =>
    `To be clear ${say.duration(within)} after step ${say.count(fromStep)} is out of reach by warmth or vacuum.`,
  keptWarm: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `kept at ${say.celsius(temperature)} or warmer`,
  underPressure: ({ pressure }: { readonly pressure: number }, say: Say): string =>
    `under ${say.millibars(pressure)} or less`,
  foam: ({ pressure, foam }: { readonly pressure: number; readonly foam: number }, say: Say): string =>
    `Under ${say.millibars(pressure)} the foam stands ${say.millimetres(foam, 2)} high.`,
  foamNotKnown: ({ pressure, reason }: { readonly pressure: number; readonly reason: string }, say: Say): string =>
    `How high the foam stands under ${say.millibars(pressure)} is not known: ${reason}.`,
  clearUnderVacuum: ({ duration }: { readonly duration: number }, say: Say): string =>
    `Under the vacuum the melt is clear after ${say.duration(duration)}.`,
  boils: ({ material, pressure }: { readonly material: string; readonly pressure: number }, say: Say): string =>
    `${material} boils first, below ${say.millibars(pressure)}.`,
};
