import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import {
  atStart,
  limit,
  material,
  notAbove,
  notBelow,
  numberBeside,
  phase,
  step,
  value,
  valueAt,
  within,
} from "./forms.js";

type Setting = Extract<
  QuestionId,
  | "step-can-be-done"
  | "gel-former-dissolves"
  | "above-setting"
  | "filled-before-it-sets"
  | "pours-into-the-pack"
  | "skin-on-the-wall"
>;

/** The limit of a temperature that has to stay above setting. */
function aboveSetting({ limit: { min }, margin }: Answer, say: Say): string {
  return `at least ${say.kelvins(margin?.min)} above the setting temperature (${say.interval(min, "temperature")})`;
}

/** The dose of gel former for which a temperature holds. */
function atDose(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "dose"), (dose) => ` at a dose of ${say.percent(dose)}`);
}

/** Dissolving, setting and reaching the temperatures of the steps. */
export const settingAnswers: Each<Setting, AnswerWords> = {
  "step-can-be-done": within({
    question: "Can a step reach the temperature that it asks for?",
    met: (answer, say) => `${atStart(step(answer, say))} reaches its temperature.`,
    below: (answer, say) =>
      `${atStart(step(answer, say))} cannot be done as written: the heater cannot bring the charge above ${value(answer, say)}.`,
    above: (answer, say) =>
      `${atStart(step(answer, say))} cannot be done as written: the charge cannot cool below ${value(answer, say)}.`,
    notKnown: (answer, say) => `Whether ${step(answer, say)} reaches its temperature`,
  }),
  "gel-former-dissolves": notBelow({
    question: "Does the gel former dissolve?",
    met: (answer, say) =>
      `The charge gets warmer than the temperature at which ${material(answer, say)} dissolves${atDose(answer, say)}.`,
    below: (answer, say) =>
      `The charge does not reach the temperature at which ${material(answer, say)} dissolves${atDose(answer, say)} (it reaches ${value(answer, say)}): lumps will remain.`,
    notKnown: (answer, say) => `Whether ${material(answer, say)} dissolves`,
    value: valueAt,
    limit: (answer, say) => `dissolving temperature: ${limit(answer, say)}`,
  }),
  "above-setting": notBelow({
    question: "Does an addition leave the mix above its setting temperature?",
    met: (answer, say) => `${atStart(phase(answer))} leaves the mix warm enough: ${value(answer, say)}.`,
    below: (answer, say) =>
      `${atStart(phase(answer))} cools the mix too near to its setting temperature (${step(answer, say)}: ${value(answer, say)}). Warm the phase, heat the melt more, or add the phase in parts and reheat in between.`,
    notKnown: (answer) => `Whether ${phase(answer)} leaves the mix warm enough`,
    limit: aboveSetting,
  }),
  "filled-before-it-sets": notBelow({
    question: "Are the packs full before the gel sets?",
    met: (answer, say) => `The packs are full before the gel sets (${say.place(answer.at)}: ${value(answer, say)}).`,
    below: (answer, say) =>
      `The mix comes too near to its setting temperature before the last pack is full (${say.place(answer.at)}: ${value(answer, say)}). Fill faster, or keep the vessel warm.`,
    notKnown: () => "Whether the packs are full before the gel sets",
    value: valueAt,
    limit: aboveSetting,
  }),
  "pours-into-the-pack": notAbove({
    question: "Does the melt still run into the last pack?",
    met: (answer, say) => `The melt runs into every pack (${say.place(answer.at)}: ${value(answer, say)}).`,
    above: (answer, say) =>
      `The melt is too thick to run into the pack (${say.place(answer.at)}: ${value(answer, say)}). Fill faster, or warmer.`,
    notKnown: () => "Whether the melt still runs into the last pack",
    value: valueAt,
  }),
  "skin-on-the-wall": notBelow({
    question: "Does the cooled wall stay warm enough that no skin sets on it?",
    met: (answer, say) => `No skin sets on the cooled wall in ${step(answer, say)}.`,
    below: (answer, say) =>
      `A skin sets on the cooled wall (${step(answer, say)}: ${value(answer, say)}). Use warmer coolant, or turn the jacket off earlier.`,
    notKnown: (answer, say) => `Whether a skin sets on the cooled wall in ${step(answer, say)}`,
    value: (answer, say) => `at the coolant inlet, at the end of the step: ${value(answer, say)}`,
    limit: aboveSetting,
  }),
};
