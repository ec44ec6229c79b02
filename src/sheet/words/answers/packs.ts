import type { QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each } from "../types.js";
import { notAbove, value, valueAt } from "./forms.js";

type Packs = Extract<QuestionId, "set-at-centre">;

/** The filled packs. */
export const packAnswers: Each<Packs, AnswerWords> = {
  "set-at-centre": notAbove({
    question: "Have the packs set at their centre when their rest ends?",
    met: (answer, say) =>
      `The packs have set at their centre ${value(answer, say)} after filling, before their rest ends.`,
    above: (answer, say) =>
      `The packs have not set at their centre when their rest ends: it takes ${value(answer, say)} after filling (${say.place(answer.at)}).`,
    notKnown: () => "Whether the packs have set at their centre when their rest ends",
    value: valueAt,
    limit: (answer, say) => `rest: ${say.interval(answer.limit.max, "duration")}`,
  }),
};
