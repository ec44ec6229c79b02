import { fieldOf } from "./fields.js";
import type { Words } from "./types.js";

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
  "iso-29621": "ISO 29621 (2017, from memory): products below this water activity count as low microbiological risk",
  "capped-near-the-room":
    "packs are capped once they are no more than 5 K above the room, so that nothing condenses under the cap and no vacuum is left there: common practice, no source",
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
    `Whether the gel breaks up into a spray, and how fine, has to be tried: no number predicts it.${say.given(note.yieldStress, (stress) => ` Its yield stress is ${say.pascals(stress)}.`)}${say.given(note.ohnesorge, (number) => ` Its Ohnesorge number at the nozzle is ${say.number(number, 2)}.`)}`,
  "bench-additions-beyond-shares": ({ addition, share, shareMax, count }, say) =>
    `The bench contradicts itself: its addition ${say.count(addition)} was ${say.percent(share, 2)} of what was there, and the largest that it states for that is ${say.percent(shareMax, 2)} (such additions: ${say.count(count)}). Settle which of the two holds.`,
  "loss-out-of-the-ordinary": ({ of, share, shareMax }, say) =>
    `A share that is out of the ordinary is lost on the way into the packs${say.given(share, (lost) => `, ${say.percent(lost, 2)} of what is weighed`)}${say.given(shareMax, (usual) => `, more than ${say.percent(usual, 2)}`)}${say.given(of, (name) => `, most of it to: ${name}`)}. Check the allowances, or scrape the vessel.`,
  "film-of-the-set-gel": () =>
    "The film in the vessel counts as that of the set gel: the one of what the vessel is emptied of is not known. State its thickness.",
};

/** Words for the verdicts. */
export const verdicts: Words["verdicts"] = {
  met: "met",
  "not-met": "not met",
  "not-known": "not known",
};
