import type { QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each } from "../types.js";
import { limit, notAbove, notBelow, numberBeside, value, valueAt } from "./forms.js";

type Fill = Extract<
  QuestionId,
  "fill-by-the-rules" | "fits-the-brim" | "pack-stands-the-heat" | "head-space-when-hot" | "whole-packs"
>;

/** What goes into a pack. */
export const fillAnswers: Each<Fill, AnswerWords> = {
  "fill-by-the-rules": notBelow({
    question: "Is the fill that is aimed at enough for the rules on its quantity?",
    met: (answer, say) =>
      `The fill that is aimed at, ${value(answer, say)}, lets no more batches fail the test than stated, by the table in the documents.`,
    below: (answer, say) =>
      `The fill that is aimed at, ${value(answer, say)}, lets more batches fail the test than stated: aim at ${limit(answer, say)}.`,
    notKnown: () => "Whether the fill that is aimed at is enough for the rules on its quantity",
  }),
  "fits-the-brim": notAbove({
    question: "Does the fill fit the pack while it is warm?",
    met: (answer, say) => `The largest fill to be expected takes ${value(answer, say)} and fits the pack.`,
    above: (answer, say) =>
      `The largest fill to be expected takes ${value(answer, say)} (${say.place(answer.at)}): more than the pack holds up to the brim. Fill in two pours, or cooler.`,
    notKnown: () => "Whether the fill fits the pack while it is warm",
    value: valueAt,
  }),
  "pack-stands-the-heat": notAbove({
    question: "Does the pack stand the heat of the product while it is filled?",
    met: (answer, say) => `The product is filled at ${value(answer, say)} at most, which the pack stands.`,
    above: (answer, say) =>
      `The product is filled at ${value(answer, say)} (${say.place(answer.at)}), hotter than the pack stands: ${limit(answer, say)}. Fill it cooler, or take another pack.`,
    notKnown: () => "Whether the pack stands the heat of the product while it is filled",
    value: valueAt,
  }),
  "head-space-when-hot": notBelow({
    question: "Is head space left in the pack at its hottest storage?",
    met: (answer, say) => `At the hottest storage ${value(answer, say)} of the pack is left as head space.`,
    below: (answer, say) =>
      `Too little head space at the hottest storage${say.given(numberBeside(answer, "temperature"), (at) => ` (${say.celsius(at)})`)}: ${value(answer, say)} of the pack. Product that fills a closed pack bursts it or lifts the closure.`,
    notKnown: () => "Whether head space is left in the pack at its hottest storage",
  }),
  "whole-packs": notBelow({
    question: "Does the batch fill the packs asked for, at the fill that is aimed at?",
    met: (answer, say) => `The batch fills ${value(answer, say)} packs.`,
    below: (answer, say) =>
      `The batch fills only ${value(answer, say)} packs${say.given(numberBeside(answer, "mass"), (mass) => ` of ${say.kilograms(mass)}`)}, because each pack holds more than its label states. Make a larger batch, narrow the spread of the filler, or accept fewer packs.`,
    notKnown: () => "How many packs the batch fills",
  }),
};
