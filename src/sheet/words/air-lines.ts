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
    `After ${say.step(fromStep)}, bubbles of ${say.millimetres(diameter, 2)} leave the ${say.millimetres(depth, 2)} of melt within ${say.duration(duration)}, if no more are stirred in.`,
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
    `After ${say.step(of.fromStep)}, bubbles of ${say.millimetres(of.diameter, 2)} rise ${say.millimetres(of.distance, 2)} of ${say.millimetres(of.depth, 2)} by the end of ${say.step(of.toStep)}: they do not leave.`,
  riseNotKnown: (
    { diameter, fromStep, reason }: { readonly diameter: number; readonly fromStep: number; readonly reason: string },
    say: Say,
  ): string =>
    `How far bubbles of ${say.millimetres(diameter, 2)} rise after ${say.step(fromStep)} is not known: ${reason}.`,
  inPack: ({ distance, depth }: { readonly distance: number; readonly depth: number }, say: Say): string =>
    `In a pack they rise ${say.millimetres(distance, 2)} of ${say.millimetres(depth, 2)} before it has set.`,
  held: (
    { min, max }: { readonly min: number | null | undefined; readonly max: number | null | undefined },
    say: Say,
  ): string =>
    `The set gel holds bubbles of up to ${say.millimetres(min, 2)} for good. Bubbles above ${say.millimetres(max, 2)} leave; between the two sizes it is not known.`,
  staysFrom: ({ step }: { readonly step: number }, say: Say): string =>
    `From ${say.step(step)} on, draw in no air: it would not leave.`,
  toClear: (
    {
      within,
      fromStep,
      ways,
    }: { readonly within: number; readonly fromStep: number; readonly ways: readonly string[] },
    say: Say,
  ): string =>
    `For the air to leave within ${say.duration(within)} after ${say.step(fromStep)}, the melt has to be ${ways.join(", or ")}.`,
  outOfReach: ({ within, fromStep }: { readonly within: number; readonly fromStep: number }, say: Say): string =>
    `Neither warmth nor a vacuum clears the melt within ${say.duration(within)} after ${say.step(fromStep)}.`,
  clearsByItself: ({ within, fromStep }: { readonly within: number; readonly fromStep: number }, say: Say): string =>
    `If the melt is kept as warm as it is after ${say.step(fromStep)}, its air leaves within ${say.duration(within)} without a vacuum.`,
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
