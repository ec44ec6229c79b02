import type { Ends } from "../../plan/index.js";
import type { Say } from "./types.js";

/** Between which temperatures something is done [°C]. */
interface Between {
  readonly min: number | undefined;
  readonly max: number | undefined;
}

/** When something may be done with the packs [°C, s after each was filled]. */
interface Waited {
  readonly temperature: number;
  readonly firstPack: number;
  readonly lastPack: number;
}

/** Sentences of the part that goes to the kettle. Masses in kg, times in s, temperatures in °C, rates in kg/s. */
export const kettleLines = {
  // Weigh
  wetBeforehand: ({ material, mass }: { readonly material: string; readonly mass: number }, say: Say): string =>
    `Keep back at least ${say.kilograms(mass, 3)} of the oil that is weighed for this lot and make a paste of ${material} with it. Add this oil with the paste, not with the phase that it was weighed for; take no extra oil.`,
  /** A line that is weighed in two: what goes into the vessel, and what makes a paste. */
  forVessel: ({ material }: { readonly material: string }): string => `${material}, for the vessel`,
  forPaste: ({ material }: { readonly material: string }): string => `${material}, for the paste`,
  dusty: ({ material }: { readonly material: string }): string => `${material} (dust: mask and extraction on)`,
  makePaste: (of: Readonly<Record<"material" | "mass" | "oil" | "massOil" | "total", string>>): string =>
    `Make the paste: stir ${of.mass} ${of.material} into ${of.massOil} ${of.oil} until no dry powder is left (${of.total}). Mask and extraction on`,
  oilOfPaste: (): string =>
    "Keep the oil for a paste apart: it goes in with the paste. Planned temperatures and the course count it with its phase.",
  premixBeforehand: ({
    name,
    phase,
    materials,
    total,
  }: {
    readonly name: string;
    readonly phase: string;
    readonly materials: readonly string[];
    readonly total: string;
  }): string =>
    `Make the premix ${name} for phase ${phase} before the start, of what is weighed for this lot: ${materials.join(" + ")}, in all ${total}.`,
  mixBeforehand: ({ phase }: { readonly phase: string }): string =>
    `Mix all of phase ${phase} before the start. Each addition is taken from this mix.`,
  mixForPump: ({ phase }: { readonly phase: string }): string =>
    `Mix all of phase ${phase} before the start. The pump takes it from this mix.`,
  // Do
  fromTo: ({ from, to }: { readonly from: string; readonly to: string }): string => `${from}–${to}`,
  since: ({ from }: { readonly from: string }): string => `from ${from}`,
  stirrerOff: ({ instruction }: { readonly instruction: string }): string => `${instruction}, stirrer off`,
  /** Where the process could not say that it turns. */
  holdUnstirred: ({ instruction }: { readonly instruction: string }): string =>
    `${instruction}, stirrer off (the process plans no stirring here)`,
  before: ({ time }: { readonly time: string }): string => `before ${time}`,
  sentences: ({ instruction, more }: { readonly instruction: string; readonly more: readonly string[] }): string =>
    [instruction, ...more].join(". "),
  onlyBetween: ({ instruction, min, max }: Between & { readonly instruction: string }, say: Say): string =>
    min !== undefined && max !== undefined
      ? `${instruction}, only between ${say.celsius(min)} and ${say.celsius(max)}`
      : `${instruction}, only at ${min === undefined ? `${say.celsius(max)} or cooler` : `${say.celsius(min)} or warmer`}`,
  neverAbove: ({ instruction, max }: { readonly instruction: string; readonly max: number }, say: Say): string =>
    `${instruction}, never above ${say.celsius(max)}`,
  maskOn: (): string => "Mask and extraction on",
  lockOut: (): string => "Lock the stirrer out before anyone reaches in",
  airBackIn: (): string =>
    "Watch the foam meanwhile. Then stop the stirrer, let the air back in slowly, and open only when the gauge shows no vacuum",
  stopBelow: ({ min }: { readonly min: number }, say: Say): string =>
    `Stop when the vessel is cooler than ${say.celsius(min)}`,
  massOf: ({ material, mass }: { readonly material: string; readonly mass: string }): string => `${mass} ${material}`,
  /** Of what was made into a paste beforehand. */
  asPaste: ({ material, oil, mass }: Readonly<Record<"material" | "oil" | "mass", string>>): string =>
    `${mass} paste of ${material} and ${oil}`,
  /** Names of materials may hold commas. */
  charged: (of: { readonly instruction: string; readonly materials: readonly string[] }): string =>
    `${of.instruction}: ${of.materials.join(" + ")}`,
  noted: ({ instruction, note }: { readonly instruction: string; readonly note: string }): string =>
    `${instruction}. ${note}`,
  // Fill
  fillMass: ({ mass, pack }: { readonly mass: number; readonly pack: string | undefined }, say: Say): string =>
    `Fill ${say.kilograms(mass)} into packs${say.given(pack, (name) => ` (${name})`)}.`,
  fillPacks: (
    { count, pack, mass }: { readonly count: number; readonly pack: string | undefined; readonly mass: number },
    say: Say,
  ): string =>
    `Fill ${say.count(count)} packs${say.given(pack, (name) => ` (${name})`)}, ${say.kilograms(mass)} net in each.`,
  fillFewer: ({ count, asked }: { readonly count: number; readonly asked: number }, say: Say): string =>
    `${say.count(asked)} packs are asked for; at this fill the charge is enough for ${say.count(count)}.`,
  gross: (of: { readonly single: Ends; readonly mean: Ends; readonly count: number }, say: Say): string =>
    `Weigh ${say.count(of.count)} packs in a row, with closure. Correct the filler if one is outside ${say.range(say.kilograms(of.single.min), say.kilograms(of.single.max))}, or their mean outside ${say.range(say.kilograms(of.mean.min), say.kilograms(of.mean.max))}.`,
  /** Where packs may not be moved or closed at once. */
  weighWhereFilled: (): string =>
    "Fill the packs to be weighed on the balance itself, each with its closure beside it: they may not be moved or closed yet.",
  eachPack: ({ first, second }: { readonly first: number; readonly second: number }, say: Say): string =>
    `Pour twice: ${say.kilograms(first)} first, and ${say.kilograms(second, 3)} once that has cooled, before a skin sets.`,
  rate: (
    { packsPerMinute, duration }: { readonly packsPerMinute: number; readonly duration: number },
    say: Say,
  ): string =>
    `Rate: at least ${say.number(packsPerMinute, 3)} packs a minute, so that all are full within ${say.duration(duration)}.`,
  rateOfMass: ({ rate, duration }: { readonly rate: number; readonly duration: number }, say: Say): string =>
    `Rate: at least ${say.massRate(rate, 3)}, so that all of it is filled within ${say.duration(duration)}.`,
  warmth: ({ first, last }: { readonly first: number; readonly last: number }, say: Say): string =>
    `Predicted temperature in the vessel: ${say.celsius(first)} at the first pack, ${say.celsius(last)} at the last.`,
  /** Of a vessel that cools: predicted as if it stayed full. */
  warmthWhileFull: ({ first, last }: { readonly first: number; readonly last: number }, say: Say): string =>
    `Predicted temperature in the vessel: ${say.celsius(first)} at the first pack, ${say.celsius(last)} at the end, calculated for a full vessel. What is left in it cools faster: measure the temperature at the last packs.`,
  warmthThroughout: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `Predicted temperature in the vessel: ${say.celsius(temperature)}.`,
  cap: ({ temperature, firstPack, lastPack }: Waited, say: Say): string =>
    `Close a pack once it has cooled to ${say.celsius(temperature)}: predicted ${say.duration(firstPack)} after filling for the first pack, ${say.duration(lastPack)} for the last.`,
  capAtOnce: ({ temperature }: Waited, say: Say): string =>
    `Close each pack as it is filled: the product is no warmer than ${say.celsius(temperature)}.`,
  capNotKnown: ({ reason }: { readonly reason: string }): string =>
    `When to close the packs is not known: ${reason}. Close them once they are no warmer than the room, and write down when.`,
  move: ({ temperature, firstPack, lastPack }: Waited, say: Say): string =>
    `Move no pack until its centre has cooled to ${say.celsius(temperature)}: predicted ${say.duration(firstPack)} after filling for the first pack, ${say.duration(lastPack)} for the last.`,
  moveNotKnown: ({ reason }: { readonly reason: string }): string =>
    `When packs may be moved is not known: ${reason}. Move none until a trial pack, cut open, has set at its centre.`,
  rest: ({ duration }: { readonly duration: number }, say: Say): string =>
    `After the last pack let them stand for ${say.duration(duration)}, as the last step says.`,
  // Reconcile
  inPacks: ({ count }: { readonly count: number }, say: Say): string => `In ${say.count(count)} packs`,
};
