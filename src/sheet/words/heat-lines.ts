import type { Say } from "./types.js";

interface Exposed {
  readonly material: string;
  readonly temperatureMax: number;
  readonly duration: number;
  readonly durationAbove: number;
  readonly temperatureAbove: number;
}

interface Waited {
  readonly temperature: number;
  readonly firstPack: number;
  readonly lastPack: number;
  readonly allPacks: number;
}

/** Sentences about times, temperatures and what heat does. Times in s, temperatures in °C, shares 0 to 1. */
export const heatLines = {
  inAdditions: ({ instruction, count }: { readonly instruction: string; readonly count: number }, say: Say): string =>
    `${instruction} (${say.count(count)} additions)`,
  inPacks: ({ mass }: { readonly mass: number }, say: Say): string => `${say.kilograms(mass)} in the packs`,
  viscosityAt: (
    { viscosity, shearRate }: { readonly viscosity: number; readonly shearRate: number },
    say: Say,
  ): string => `${say.pascalSeconds(viscosity, 2)} at ${say.shearRate(shearRate)}`,
  viscosityBeyond: (of: { readonly viscosity: number; readonly shearRate: number }, say: Say): string =>
    `${say.pascalSeconds(of.viscosity, 2)} at ${say.shearRate(of.shearRate)}, beyond the readings`,
  stirring: ({ power, torque }: { readonly power: number; readonly torque: number }, say: Say): string =>
    `the stirrer takes ${say.watts(power, 2)} and ${say.newtonMetres(torque)} at the end`,
  fromTheRoom: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `Let all materials come to room temperature first: everything goes in at ${say.celsius(temperature)}.`,
  sets: ({ duration }: { readonly duration: number }, say: Say): string =>
    `Left to cool, the gel sets ${say.duration(duration)} after the last charge.`,
  setsAfterFilling: ({ duration, margin }: { readonly duration: number; readonly margin: number }, say: Say): string =>
    `Left to cool, the gel sets ${say.duration(duration)} after the last charge, ${say.duration(margin)} after the packs are full.`,
  setsBeforeFilling: ({ duration, margin }: { readonly duration: number; readonly margin: number }, say: Say): string =>
    `Left to cool, the gel sets ${say.duration(duration)} after the last charge, ${say.duration(-margin)} before the packs are full.`,
  warmed: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `Stirring warms the gel to ${say.celsius(temperature)} at most.`,
  warmedNotKnown: ({ reason }: { readonly reason: string }): string =>
    `How far stirring warms the gel is not known: ${reason}.`,
  heatLeftOut: ({ steps, reason }: { readonly steps: readonly number[]; readonly reason: string }, say: Say): string =>
    `The heat of stirring in ${say.list(steps.map(say.step))} is left out: ${reason}.`,
  setThrough: ({ duration, basis }: { readonly duration: number; readonly basis: string }, say: Say): string =>
    `The centre of a pack has passed the setting temperature ${say.duration(duration)} after filling: ${basis}.`,
  setThroughNotKnown: ({ reason }: { readonly reason: string }): string =>
    `When a pack has set through is not known: ${reason}.`,
  skin: ({ firstPack, lastPack }: Waited, say: Say): string =>
    `A skin has set on the first pack ${say.duration(firstPack)} after it was filled, on the last ${say.duration(lastPack)} after: pour nothing more in then.`,
  cap: (of: Waited & { readonly basis: string }, say: Say): string =>
    `Close the packs once they have cooled to ${say.celsius(of.temperature)}: the first ${say.duration(of.firstPack)} after it was filled, the last ${say.duration(of.lastPack)} after, all of them ${say.duration(of.allPacks)} after the end of filling (${of.basis}).`,
  capAtOnce: ({ temperature, basis }: Waited & { readonly basis: string }, say: Say): string =>
    `The packs may be closed as they are filled: the product is no warmer than ${say.celsius(temperature)} (${basis}).`,
  capNotKnown: ({ reason }: { readonly reason: string }): string => `When to close the packs is not known: ${reason}.`,
  move: (of: Waited & { readonly basis: string }, say: Say): string =>
    `Do not move a pack before its centre has cooled to ${say.celsius(of.temperature)}: the first ${say.duration(of.firstPack)} after it was filled, the last ${say.duration(of.lastPack)} after, all of them ${say.duration(of.allPacks)} after the end of filling (${of.basis}).`,
  moveNotKnown: ({ reason }: { readonly reason: string }): string =>
    `When the packs may be moved is not known: ${reason}.`,
  sinks: ({ depth, mass }: { readonly depth: number; readonly mass: number }, say: Say): string =>
    `The content sinks by ${say.millimetres(depth, 2)} as it cools. To make up for that would take ${say.kilograms(mass, 2)} more in each pack, which the mass to fill does not count.`,
  exposure: (of: Exposed, say: Say): string =>
    `${of.material}: at most ${say.celsius(of.temperatureMax)}; above ${say.celsius(of.temperatureAbove)} for ${say.duration(of.durationAbove)} of ${say.duration(of.duration)}.`,
  exposureAsMuchAs: (of: Exposed & { readonly asMuch: string }, say: Say): string =>
    `${of.material}: at most ${say.celsius(of.temperatureMax)}; above ${say.celsius(of.temperatureAbove)} for ${say.duration(of.durationAbove)} of ${say.duration(of.duration)}; ${of.asMuch}.`,
  asMuchAs: (
    { duration, temperature }: { readonly duration: number; readonly temperature: number },
    say: Say,
  ): string => `it ages as much as in ${say.duration(duration)} at ${say.celsius(temperature)}`,
  materialNotKnown: ({ material, reason }: { readonly material: string; readonly reason: string }): string =>
    `${material}: not known, because ${reason}.`,
  oil: (of: { readonly material: string; readonly oxidisability: number; readonly share: number }, say: Say): string =>
    `${of.material} (Cox value ${say.number(of.oxidisability, 2)}, ${say.percent(of.share, 3)} of the product)`,
  oilWithout: ({ oil }: { readonly oil: string }): string => `${oil}: no fatty acid in it counts for the Cox value.`,
  oilOffHeat: (
    { oil, heat, share }: { readonly oil: string; readonly heat: string; readonly share: number },
    say: Say,
  ): string => `${oil}: goes in off the heat; ${heat}, ${say.percent(share, 2)} of what the heat does to all oils.`,
  oilOnHeat: (
    of: { readonly oil: string; readonly heat: string; readonly share: number; readonly offHeat: number },
    say: Say,
  ): string =>
    `${of.oil}: goes in on the heat; ${of.heat}, ${say.percent(of.share, 2)} of what the heat does to all oils. Charged off the heat: ${say.duration(of.offHeat)}.`,
  oilWouldSet: (
    of: { readonly oil: string; readonly heat: string; readonly share: number; readonly offHeat: number },
    say: Say,
  ): string =>
    `${of.oil}: goes in on the heat; ${of.heat}, ${say.percent(of.share, 2)} of what the heat does to all oils. Charged off the heat: ${say.duration(of.offHeat)}, but the mix would come too near its setting temperature.`,
  lossNotStated: ({ material }: { readonly material: string }): string => `${material}: no extra is weighed in`,
  lossStated: ({ material, share }: { readonly material: string; readonly share: number }, say: Say): string =>
    `${material}: ${say.percent(share)} extra is weighed in, as stated`,
  lossPredicted: (
    of: { readonly loss: string; readonly predicted: number; readonly max: number; readonly basis: string },
    say: Say,
  ): string =>
    `${of.loss}; predicted loss ${say.percent(of.predicted, 2)}${of.max < 1 ? `, at most ${say.percent(of.max, 2)}` : ""}: ${of.basis}.`,
  lossNotPredicted: ({ loss, reason }: { readonly loss: string; readonly reason: string }): string =>
    `${loss}; the loss cannot be predicted, because ${reason}.`,
};
