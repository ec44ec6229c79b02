import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import { atStart, material, notAbove, numberBeside, step, value, valueAt, wordBeside } from "./forms.js";

type Heat = Extract<QuestionId, "heat-sensitive-off-the-heat" | "maximum-temperature" | "flash-point" | "done-in-time">;

/** Where a material meets the heat. */
function where({ of }: Answer, say: Say): string {
  return say.given(of.place, (place) => ` ${say.place({ place })}`);
}

/** The figure with its place, and how far beyond what is allowed it is or may be. */
function valueBeyond(answer: Answer, say: Say): string {
  return `${valueAt(answer, say)}${say.given(numberBeside(answer, "beyond"), (by) => `, ${say.kelvins(by)} above what is allowed`)}`;
}

/** Heating or cooling, of a step for which a time is stated. */
function work(answer: Answer): string {
  return wordBeside(answer, "direction") ?? "heating or cooling";
}

/** What heat does to the materials, and how long it takes. */
export const heatAnswers: Each<Heat, AnswerWords> = {
  "heat-sensitive-off-the-heat": notAbove({
    question: "Is a heat-sensitive material charged off the heat?",
    met: (answer, say) => `${material(answer, say)}, which is heat-sensitive, is charged off the heat.`,
    above: (answer, say) =>
      `${material(answer, say)}, which is heat-sensitive, is on the heat in ${say.step(answer.at.step)}: charge it after the vessel is off the heat.`,
    notKnown: (answer, say) => `Whether ${material(answer, say)}, which is heat-sensitive, is charged off the heat`,
    value: ({ states }, say) => `steps on the heat: ${say.count(states.notMet)}`,
    limit: () => "steps on the heat: 0",
  }),
  "maximum-temperature": notAbove({
    question: "Does a material stay within its maximum temperature?",
    met: (answer, say) => `${material(answer, say)} stays within its maximum temperature.`,
    above: (answer, say) =>
      `${material(answer, say)} gets warmer than its maximum temperature (${say.place(answer.at)}: ${value(answer, say)}). Heat less, or charge it later.`,
    notKnown: (answer, say) => `Whether ${material(answer, say)} stays within its maximum temperature`,
    value: valueBeyond,
  }),
  "flash-point": notAbove({
    question: "Does a material stay well below its flash point?",
    met: (answer, say) =>
      `${material(answer, say)} stays at least ${say.kelvins(answer.margin?.max)} below its flash point${where(answer, say)}.`,
    above: (answer, say) =>
      `${material(answer, say)} comes too near its flash point${where(answer, say)} (${say.step(answer.at.step)}: ${value(answer, say)}). Heat less, or charge it later.`,
    notKnown: (answer, say) =>
      `Whether ${material(answer, say)} stays at least ${say.kelvins(answer.margin?.max)} below its flash point${where(answer, say)}`,
    value: valueBeyond,
    limit: ({ limit, margin }, say) =>
      `at least ${say.kelvins(margin?.max)} below the flash point (${say.interval(limit.max, "temperature")})`,
  }),
  "done-in-time": notAbove({
    question: "Is a step done in the time allowed for it?",
    met: (answer, say) => `${atStart(step(answer, say))} is done in the time allowed for ${work(answer)}.`,
    above: (answer, say) =>
      `${atStart(step(answer, say))} takes ${value(answer, say)}: longer than allowed for ${work(answer)}.`,
    notKnown: (answer, say) => `Whether ${step(answer, say)} is done in the time allowed for ${work(answer)}`,
  }),
};
