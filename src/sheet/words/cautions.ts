import type { Caution } from "../../plan/index.js";
import type { Say, Words } from "./types.js";

function names({ materials = [] }: Caution, say: Say): string {
  return say.list(materials.map(say.material));
}

/** Names before a colon, if a caution is about materials. */
function about(caution: Caution, say: Say): string {
  return say.given(names(caution, say) || undefined, (those) => `${those}: `);
}

/** The usual cautions, each in full: they warn, and say of nothing that it does no harm. */
export const cautions: Words["cautions"] = {
  "additions-not-hurried": () =>
    "Never hurry an addition. Too much oil at once breaks the gel, and it may not be recoverable. If it turns thin, greasy or grainy, add nothing more, keep what is there, and ask the owner of the formula.",
  "no-preservative": (caution, say) =>
    `${about(caution, say)}no preservative is named in this formula, which contains water. A water activity below 0.75 lowers the risk and replaces no test.`,
  vacuum: () =>
    "A vessel under vacuum must be built for it, and may be opened only once air has been let back in. Volatile materials boil and foam rises: watch it.",
  "water-kept-out": () =>
    "Keep water out of vessel, filler and packs: a film of this gel turns milky under a little water. That is how it rinses off, and how a splash spoils it. Rinsed-off oil makes floors and drains slippery.",
  "hot-oil": ({ temperatureMax, temperatureLeftOn }, say) =>
    `Hot oil and melts burn skin and can ignite${say.given(temperatureMax, (hottest) => `; this charge reaches ${say.celsius(hottest)}`)}. Stay well below the lowest flash point, never leave heat unattended${say.given(temperatureLeftOn, (steady) => ` (left on, this heater goes on to about ${say.celsius(steady, 0)})`)}, keep water away, and wear eye, hand and arm protection.`,
  stirrer: () =>
    "A stirrer catches hands, sleeves and scrapers: keep them out while it turns, and switch it off and lock it out before anyone reaches in.",
  dust: (caution, say) => `${about(caution, say)}fine dust. Use extraction where it is poured and wear a dust mask.`,
  "spray-inhaled": (caution, say) =>
    `${about(caution, say)}sprayed mica, pigment and other particles can be inhaled. Whether this may be sold as a spray is for a qualified person to judge.`,
  sensitisers: (caution, say) =>
    `${about(caution, say)}fragrances, essential oils and allergens can sensitise. Maximum levels and labelling are set by law and differ by place.`,
  preservation: (caution, say) =>
    `${about(caution, say)}there is water in this product, so its preservation must be challenge-tested.`,
  restriction: (caution, say) => `${about(caution, say)}${say.given(caution.text, (text) => text)}`,
  "arithmetic-only": () =>
    "These figures are arithmetic on the readings given. Local codes, safety data sheets and qualified people come first.",
};
