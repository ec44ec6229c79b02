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
    "Do not hurry an addition. Too much oil at once breaks the gel, and the batch may be lost.",
  "no-preservative": (caution, say) =>
    `${about(caution, say)}this formula contains water and names no preservative. A water activity below 0.75 lowers the risk, but the product must still be tested.`,
  vacuum: () =>
    "Draw a vacuum only on a vessel that is built for it. Volatile materials boil under it and foam rises. Let the air in before you open.",
  "water-kept-out": () =>
    "Keep vessel, filler and packs dry: a splash of water turns this gel milky. Oil that is rinsed off makes floors slippery.",
  "hot-oil": ({ temperatureMax, temperatureLeftOn, flashPoint }, say) =>
    `Hot oil and melts burn skin and can ignite.${say.given(temperatureMax, (hottest) => ` This charge reaches ${say.celsius(hottest)}.`)} Keep the charge well below the flash point of everything in it${say.given(flashPoint, ({ material, temperature }) => ` (the lowest stated: ${say.celsius(temperature)}, ${say.material(material)})`)} and never leave heat unattended${say.given(temperatureLeftOn, (steady) => `: left on, this heater would bring the charge to about ${say.celsius(steady, 0)}`)}. Keep water away. Wear eye, hand and arm protection.`,
  stirrer: () =>
    "Keep hands, sleeves and scrapers out while the stirrer turns. Switch it off and lock it out before anyone reaches in.",
  dust: (caution, say) => `${about(caution, say)}fine dust. Pour it under extraction and wear a dust mask.`,
  "spray-inhaled": (caution, say) =>
    `${about(caution, say)}particles in a spray can be inhaled. A qualified person must decide whether this may be sold as a spray.`,
  sensitisers: (caution, say) =>
    `${about(caution, say)}can sensitise the skin. The law sets maximum levels and labelling; it differs by place.`,
  preservation: (caution, say) =>
    `${about(caution, say)}the product contains water, so its preservation must be challenge-tested.`,
  restriction: (caution, say) => `${about(caution, say)}${say.given(caution.text, (text) => text)}`,
  "arithmetic-only": () =>
    "These figures are calculated from the readings given. Local codes, safety data sheets and qualified people come first.",
};
