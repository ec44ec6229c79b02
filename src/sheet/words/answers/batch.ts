import type { QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each } from "../types.js";
import { limit, material, notAbove, notBelow, numberBeside, value, valueAt, within } from "./forms.js";

type Batch = Extract<
  QuestionId,
  | "gel-former-ratio"
  | "natural-origin-claim"
  | "delivered"
  | "working-volume"
  | "maximum-share"
  | "stock-suffices"
  | "lot-fits-the-day"
>;

/** What is weighed, what arrives, and how it fits vessel and day. */
export const batchAnswers: Each<Batch, AnswerWords> = {
  "gel-former-ratio": within({
    question: "Is the ratio of oil to gel former in its working range?",
    met: (answer, say) => `The ratio of oil to gel former, ${value(answer, say)}, is in its working range.`,
    below: (answer, say) =>
      `The ratio of oil to gel former, ${value(answer, say)}, is below its working range: there is too little oil for the gel former.`,
    above: (answer, say) =>
      `The ratio of oil to gel former, ${value(answer, say)}, is above its working range: there is too much oil for the gel former.`,
    notKnown: () => "Whether the ratio of oil to gel former is in its working range",
  }),
  "natural-origin-claim": notBelow({
    question: "Does the natural-origin content support the claim?",
    met: (answer, say) => `The natural-origin content, ${value(answer, say)}, supports the claim.`,
    below: (answer, say) => `The natural-origin content, ${value(answer, say)}, does not support the claim.`,
    notKnown: () => "Whether the natural-origin content supports the claim",
  }),
  delivered: notBelow({
    question: "Does a lot deliver what was asked for?",
    met: (answer, say) => `A lot delivers ${value(answer, say)} after all losses, which is enough.`,
    below: (answer, say) => `A lot delivers only ${value(answer, say)} after all losses: less than asked for.`,
    notKnown: () => "Whether a lot delivers what was asked for",
    limit: (answer, say) =>
      `${limit(answer, say)}${say.given(numberBeside(answer, "packs"), (packs) => ` (${say.count(packs)} packs${say.given(answer.limit.min?.value, (mass) => ` of ${say.kilograms(mass / packs)}`)})`)}`,
  }),
  "working-volume": within({
    question: "Does a lot fit the working volume of the vessel?",
    met: () => "A lot fits the working volume: it covers the stirrer and leaves room to stir.",
    below: (answer, say) => `A lot of ${value(answer, say)} is less than the minimum working volume of the vessel.`,
    above: (answer, say) =>
      `The charge takes ${value(answer, say)} (${say.place(answer.at)}): more than the maximum working volume of the vessel.`,
    notKnown: () => "Whether a lot fits the working volume of the vessel",
    value: valueAt,
  }),
  "maximum-share": notAbove({
    question: "Is a material within its maximum share in the product?",
    met: (answer, say) => `The share of ${material(answer, say)} is within its maximum.`,
    above: (answer, say) =>
      `The share of ${material(answer, say)}, ${value(answer, say)}, is above its maximum in the product.`,
    notKnown: (answer, say) => `Whether the share of ${material(answer, say)} is within its maximum`,
  }),
  "stock-suffices": notAbove({
    question: "Is there enough of a material in stock?",
    met: (answer, say) => `The stock of ${material(answer, say)} suffices for all lots.`,
    above: (answer, say) =>
      `All lots take ${value(answer, say)} of ${material(answer, say)}: more than there is in stock.${say.given(numberBeside(answer, "toBuy"), (mass) => ` Buy ${say.kilograms(mass, 6)}.`)}`,
    notKnown: (answer, say) => `Whether the stock of ${material(answer, say)} suffices`,
  }),
  "lot-fits-the-day": notAbove({
    question: "Does one lot fit a working day?",
    met: (answer, say) => `One lot takes ${value(answer, say)} and fits a working day.`,
    above: (answer, say) =>
      `One lot takes ${value(answer, say)} (to the end of ${say.step(answer.at.step)}): more than a working day.`,
    notKnown: () => "Whether one lot fits a working day",
  }),
};
