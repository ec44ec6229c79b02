import type { NotKnown } from "../../plan/index.js";
import { fieldOf } from "./fields.js";
import type { Say, Words } from "./types.js";

/** What a figure rests on. */
export const bases: Words["bases"] = {
  law: ({ key, of }, say, words) => `${words.laws[key]}${say.given(of, (name) => `, for ${say.material(name)}`)}`,
  reading: ({ key, of, source }, say, words) =>
    `${fieldOf({ field: key, of }, say, words)}, as measured${say.given(source, (from) => ` (${from})`)}`,
  stated: ({ key, of, source }, say, words) =>
    `${fieldOf({ field: key, of }, say, words)}, as stated${say.given(source, (from) => ` (${from})`)}`,
  practice: ({ key }, _say, words) => words.practices[key] ?? "common practice, no source",
};

/** Conventions of practice. */
export const practices: Words["practices"] = {
  "iso-29621":
    "ISO 29621 (2017, read in a restatement): products below this water activity count as low microbiological risk",
  "capped-near-the-room":
    "packs are closed once they are no more than 5 K above the room, so that nothing condenses under the closure and no vacuum is left there: common practice, no source",
  "moved-below-setting":
    "packs are moved once their centre has passed the setting temperature by the margin: common practice, no source",
};

/** What a source is the source of. */
export const sources: Words["sources"] = {
  material: ({ of, property }, say) => `${say.material(of)}${say.given(property, (name) => `, ${name}`)}`,
  bench: () => "setting, dissolving, viscosity and yield stress",
  "bench-emulsion": ({ of }, say) =>
    `additions, incorporation, droplets, air and yield stress${say.given(of, (phase) => `, outer phase ${phase}`)}`,
  allowance: ({ of }, say) => `allowance${say.given(of, (name) => `: ${name}`)}`,
  "heat-loss-by-surfaces": ({ of }, say) =>
    `${say.given(of, (name) => `${name}, `)}heat loss by natural convection and radiation from its surfaces`,
  "heat-loss-by-cooling-curve": ({ of }, say) =>
    `${say.given(of, (name) => `${name}, `)}heat loss fitted to the readings of a cooling curve`,
  "heat-loss-stated": ({ of }, say) => `${say.given(of, (name) => `${name}, `)}heat loss as stated`,
  "pack-coefficient": ({ of }, say) =>
    `${say.given(of, (name) => `${name}, `)}heat-transfer coefficient at its surface`,
  "heated-wall": ({ of }, say) => `${say.given(of, (name) => `${name}, `)}heat-transfer coefficient at the heated wall`,
  jacket: ({ of }, say) => `${say.given(of, (name) => `${name}, `)}jacket`,
};

/** What is usually done with a set gel. */
export const uses: Words["uses"] = {
  pouring: "pouring",
  "brushing-on": "brushing on",
  "rubbing-in": "rubbing in",
};

/** What to know that no verdict is given on. */
export const notes: Words["notes"] = {
  "atomises-by-trial": (note, say) =>
    `No number predicts whether the gel breaks up into a spray, and how fine. Try it.${say.given(note.yieldStress, (stress) => ` Its yield stress is ${say.pascals(stress)}.`)}${say.given(note.ohnesorge, (number) => ` Its Ohnesorge number at the nozzle is ${say.number(number, 2)}.`)}`,
  "bench-additions-beyond-shares": ({ addition, share, shareMax, count }, say) =>
    `The bench log contradicts itself: addition ${say.count(addition)} was ${say.percent(share, 2)} of what was in the vessel, but the log states at most ${say.percent(shareMax, 2)} there (additions above it: ${say.count(count)}). Find out which is right.`,
  "loss-out-of-the-ordinary": ({ of, share, shareMax }, say) =>
    `More than usual is lost on the way into the packs${say.given(share, (lost) => `: ${say.percent(lost, 2)} of what is weighed`)}${say.given(shareMax, (usual) => ` (usual: up to ${say.percent(usual, 2)})`)}.${say.given(of, (name) => ` Most of it: ${name}.`)} Check the allowances, or scrape the vessel.`,
  "film-of-the-set-gel": () =>
    "The film left in the vessel is calculated for the set gel, because that of the melt is not known. State its thickness.",
  "viscosity-shifted": ({ phases, dose, temperatureDifference, temperatureReference }, say) =>
    `The viscosity${say.given(phases, (names) => ` of ${say.list(names.map((name) => `phase ${name}`))}`)}${say.given(dose, (share) => ` at ${say.percent(share)} of gel former`)} was not read: as asked for, the curve of a composition that sets or dissolves at ${say.celsius(temperatureReference)} is shifted by ${say.kelvins(temperatureDifference)}. What rests on it is not met before it is read.`,
  "rinse-off": ({ filmThickness, untilMilky, untilFlowing, along }, say, words) => {
    const share = (water: number | null | undefined): string =>
      water === null ? "more than it was followed to" : say.percent(water, 2);
    const milky = orWhy(untilMilky, ({ min, max }) => `${share(min)} to ${share(max)}`, say, words);
    const flows = orWhy(untilFlowing, ({ min, max }) => `${share(min)} to ${share(max)}`, say, words);
    const wet = along && !("notKnown" in along) ? along.find(({ water }) => water >= 0.1) : undefined;
    return `Rinsing off: a film${say.given(filmThickness, (thick) => ` of ${say.millimetres(thick, 2)}`)} turns milky at this much water by mass of the gel: ${milky}. It flows off a wall under its own weight at: ${flows}.${say.given(wet, (row) => ` With ${say.percent(row.water, 2)} of water the indices differ by ${say.number(Math.abs(row.mismatch), 2)}, and oil is ${say.percent(row.volumeFractionOil)} by volume.`)} How fast the water gets in is not predicted.`;
  },
  "drawn-into-lines": ({ distance, thickness }, say, words) =>
    `Fine lines: the gel may be drawn this far out of its film into a line that it wets: ${orWhy(distance, (metres) => say.millimetres(metres, 2), say, words)}.${say.given(thickness, (thick) => ` A film of up to ${say.millimetres(thick, 2)} does not run.`)} A gel that slips on the walls goes further.`,
  "water-after-opening": ({ water, duration, mismatch }, say, words) =>
    `Once opened, a pack takes up this much water in ${say.duration(duration)}: ${orWhy(water, ({ min, max }) => `${say.kilograms(min, 2)} to ${say.kilograms(max, 2)}`, say, words)}.${say.given(mismatch, ({ min, max }) => ` The indices of oil and gel former then differ by ${say.number(min, 2)} to ${say.number(max, 2)}.`)} This is an upper limit: in a jar the water still has to spread downwards.`,
};

/** A figure in words, or why it is not known. */
function orWhy<T>(figure: T | NotKnown | undefined, write: (known: T) => string, say: Say, words: Words): string {
  const reason = (figure as Partial<NotKnown> | undefined)?.notKnown;
  if (reason) return `${say.notKnown} (${words.reasons[reason.code](reason, say, words)})`;
  return say.given(figure as T | undefined, write) || say.notKnown;
}

/** Words for the verdicts. */
export const verdicts: Words["verdicts"] = {
  met: "met",
  "not-met": "not met",
  "not-known": "not known",
};
