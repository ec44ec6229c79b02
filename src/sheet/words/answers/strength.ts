import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import { notBelow, numberBeside, value, wordBeside } from "./forms.js";

type Strength = Extract<QuestionId, "gel-strength">;

/** What the trials measured. */
function measured(answer: Answer): string {
  return wordBeside(answer, "of") ?? "strength";
}

/** The dose of the product. */
function dose(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "dose"), (share) => ` at ${say.percent(share)} of gel former`);
}

/** The dose that the trials let expect for the strength that is wanted. */
function remedy(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "doseTarget"),
    (share) =>
      ` The strength wanted takes ${say.percent(share, 3)} of gel former (${say.percent(numberBeside(answer, "doseTargetMin"), 3)} to ${say.percent(numberBeside(answer, "doseTargetMax"), 3)} at 95 %).`,
  );
}

/** The strength of the set gel. */
export const strengthAnswers: Each<Strength, AnswerWords> = {
  "gel-strength": notBelow({
    question: "Does the dose of gel former give the strength that is wanted?",
    met: (answer, say) => `The ${measured(answer)}${dose(answer, say)}, ${value(answer, say)}, is as high as wanted.`,
    below: (answer, say) =>
      `The ${measured(answer)}${dose(answer, say)}, ${value(answer, say)}, is lower than wanted.${remedy(answer, say)}`,
    notKnown: (answer, say) => `Whether the ${measured(answer)}${dose(answer, say)} is as high as wanted`,
    value: (answer, say) => `${measured(answer)}: ${value(answer, say)}`,
  }),
};
