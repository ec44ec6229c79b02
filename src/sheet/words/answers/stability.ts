import type { QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each } from "../types.js";
import { limit, notAbove, numberBeside, value, within, wordBeside } from "./forms.js";

type Stability = Extract<QuestionId, "samples-within-allowance" | "stored-below-transition">;

/** The stability test. */
export const stabilityAnswers: Each<Stability, AnswerWords> = {
  "samples-within-allowance": notAbove({
    question: "Does the allowance give the samples of the stability test?",
    met: (answer, say) => `The samples of the stability test, ${value(answer, say)}, are within their allowance.`,
    above: (answer, say) =>
      `The stability test takes ${value(answer, say)}${say.given(numberBeside(answer, "samples"), (count) => ` (${say.count(count)} samples)`)}, and its allowance is ${limit(answer, say)}: raise the allowance, or take smaller samples.`,
    notKnown: () => "Whether the allowance gives the samples of the stability test",
  }),
  "stored-below-transition": within({
    question: "Does every storage of the stability test leave the product in the state in which it is used?",
    met: () => "No storage comes near a temperature at which the product sets, melts or clears.",
    below: (answer, say) =>
      `Stored at ${value(answer, say)}${say.given(wordBeside(answer, "condition"), (name) => ` (${name})`)} the product is in another state than in use: this storage says nothing about normal storage.`,
    above: (answer, say) =>
      `Stored at ${value(answer, say)}${say.given(wordBeside(answer, "condition"), (name) => ` (${name})`)} the product is at or beyond a temperature at which it sets, melts or clears: this storage says nothing about normal storage.`,
    notKnown: () => "Whether a storage comes near a temperature at which the product sets, melts or clears",
  }),
};
