import type { Ends } from "../../plan/index.js";
import type { Say } from "./types.js";

/** Between which temperatures something is done [°C]. */
interface Between {
  readonly min: number | undefined;
  readonly max: number | undefined;
}

/** When something happens in the packs [s after each was filled]. */
interface Waited {
  readonly firstPack: number;
  readonly lastPack: number;
}

/** Where a vessel is kept. */
function between({ min, max }: Between, say: Say): string {
  if (min !== undefined && max !== undefined && max > min) return `between ${say.celsius(min)} and ${say.celsius(max)}`;
  return `at ${say.celsius(min)} or warmer`;
}

/** Sentences of the part that goes to the kettle. Masses in kg, times in s, temperatures in °C, rates in kg/s. */
export const kettleLines = {
  // Weigh
  wetBeforehand: ({ material, mass }: { readonly material: string; readonly mass: number }, say: Say): string =>
    `Keep back at least ${say.kilograms(mass, 3)} of the oil that is weighed for this lot and make a paste of ${material} with it. Add this oil with the paste, not with the phase that it was weighed for; take no extra oil.`,
  /** A line that is weighed in two: what goes into the vessel, and what makes a paste. */
  forVessel: ({ material }: { readonly material: string }): string => `${material}, for the vessel`,
  forPaste: ({ material }: { readonly material: string }): string => `${material}, for the paste`,
  forPremix: ({ material, premix }: { readonly material: string; readonly premix: string }): string =>
    `${material}, for the premix ${premix}`,
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
  // Both common practice, no source.
  stirByHand: (): string => "No stirrer is stated: stir by hand meanwhile, at the heated wall too",
  onceDissolved: (): string => "Do so only once no lump or speck of gel former is left",
  lockOut: (): string => "Lock the stirrer out before anyone reaches in",
  airBackIn: (): string =>
    "Watch the foam meanwhile. Then stop the stirrer, let the air back in slowly, and open only when the gauge shows no vacuum",
  stopBelow: ({ min }: { readonly min: number }, say: Say): string =>
    `Stop when the vessel is cooler than ${say.celsius(min)}, and set the rest aside: the owner of the formula decides what becomes of it`,
  massOf: ({ material, mass }: { readonly material: string; readonly mass: string }): string => `${mass} ${material}`,
  premixOf: ({ name, mass }: { readonly name: string; readonly mass: string }): string => `${mass} premix ${name}`,
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
    `Net content: weigh ${say.count(of.count)} packs in a row, with closure, at the start, in between and at the end. Correct the filler if one is outside ${say.range(say.kilograms(of.single.min), say.kilograms(of.single.max))}, or their mean outside ${say.range(say.kilograms(of.mean.min), say.kilograms(of.mean.max))}.`,
  /** Where packs may not be moved or closed at once. */
  weighWhereFilled: (): string =>
    "Stop the filler and fill the packs to be weighed on the balance itself, each with its closure beside it: they may not be moved or closed yet.",
  noContentControl: ({ reason }: { readonly reason: string }): string => `Net content control not planned: ${reason}.`,
  eachPack: ({ first, second }: { readonly first: number; readonly second: number }, say: Say): string =>
    `Pour twice: ${say.kilograms(first)} first, and ${say.kilograms(second, 3)} once that has cooled, before a skin sets.`,
  rate: (
    { packsPerMinute, duration }: { readonly packsPerMinute: number; readonly duration: number },
    say: Say,
  ): string =>
    `Planned rate: at least ${say.number(packsPerMinute, 3)} packs a minute, so that all are full within ${say.duration(duration)}.`,
  rateOfMass: ({ rate, duration }: { readonly rate: number; readonly duration: number }, say: Say): string =>
    `Planned rate: at least ${say.massRate(rate, 3)}, so that all of it is filled within ${say.duration(duration)}.`,
  warmth: ({ first, last }: { readonly first: number; readonly last: number }, say: Say): string =>
    `Predicted temperature in the vessel: ${say.celsius(first)} at the first pack, ${say.celsius(last)} at the last.`,
  /** Of a vessel that cools: predicted as if it stayed full. */
  warmthWhileFull: ({ first, last }: { readonly first: number; readonly last: number }, say: Say): string =>
    `Predicted temperature in the vessel: ${say.celsius(first)} at the first pack, ${say.celsius(last)} at the end, calculated for a full vessel. What is left in it cools faster: measure the temperature at the last packs.`,
  warmthThroughout: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `Predicted temperature in the vessel: ${say.celsius(temperature)}.`,
  tooCoolToStart: ({ first, ...keep }: Between & { readonly first: number | undefined }, say: Say): string =>
    `The first pack is planned at ${say.celsius(first)}, which is too cool. Fill nothing until the vessel is warm enough, and keep it ${between(keep, say)} until the last pack is full.`,
  coolsTooSoon: ({ duration, min }: { readonly duration: number; readonly min: number }, say: Say): string =>
    `The vessel is predicted to cool below ${say.celsius(min)} ${say.duration(duration)} after the first pack.`,
  mayCoolTooSoon: ({ min }: { readonly min: number }, say: Say): string =>
    `The less is left in the vessel, the faster it cools: it may be cooler than ${say.celsius(min)} before the last pack is full.`,
  packsInTime: ({ full, count }: { readonly full: number; readonly count: number }, say: Say): string =>
    `At the planned rate ${say.number(full, 2)} of ${say.count(count)} packs are full by then.`,
  inTime: (of: Between & { readonly packsPerMinute?: number; readonly duration: number }, say: Say): string =>
    `To be sure that all are filled in time: fill ${of.packsPerMinute === undefined ? `within ${say.duration(of.duration)}` : `at least ${say.number(of.packsPerMinute, 3)} packs a minute`}, or keep the vessel ${between(of, say)}.`,
  timeToFill: ({ duration }: { readonly duration: number }, say: Say): string =>
    `From the first pack on there are about ${say.duration(duration)} until the vessel is too cool to fill.`,
  noToppingUp: ({ firstPack, lastPack }: Waited, say: Say): string =>
    `Pour nothing more into a pack once a skin has set on it: predicted ${say.range(say.duration(Math.min(firstPack, lastPack)), say.duration(Math.max(firstPack, lastPack)))} after it was filled.`,
  closeAtOnce: (): string => "Close each pack as it is filled.",
  cooledTo: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `no warmer than ${say.celsius(temperature)}`,
  centreAt: ({ temperature }: { readonly temperature: number }, say: Say): string =>
    `set: its centre no warmer than ${say.celsius(temperature)}`,
  trialPack: (): string => "set at its centre: cut a trial pack open",
  afterFull: ({ duration }: { readonly duration: number }, say: Say): string =>
    `${say.duration(duration)} after it is full`,
  restOf: ({ step }: { readonly step: number }, say: Say): string => `End of the rest (${say.step(step)})`,
  timesNotKnown: ({ reasons }: { readonly reasons: readonly string[] }): string =>
    `Some of these times are not known: ${reasons.join("; ")}. Write down when each is done.`,
  // Reconcile
  leftInVessel: ({ name }: { readonly name: string }): string => `${name} (weigh or estimate)`,
  leftBehind: (): string => "Left in the vessel and the filler",
  unaccounted: ({ tolerance }: { readonly tolerance: string }): string =>
    `Not accounted for: the mass weighed in, less all that was found. If it is more than ${tolerance} either way (the weighing tolerances together), tell the owner of the formula before the batch is released.`,
  thickerFilm: (of: Readonly<Record<"stated" | "predicted" | "mass", number>>, say: Say): string =>
    `The film on the wall is planned ${say.millimetres(of.stated, 2)} thick, as stated; ${say.millimetres(of.predicted, 2)} is predicted, with which ${say.kilograms(of.mass, 2)} more would stay in the vessel and not be filled.`,
  inPacks: ({ count }: { readonly count: number }, say: Say): string => `In ${say.count(count)} packs`,
};
