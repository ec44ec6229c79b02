import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import { material, notAbove, notBelow, numberBeside, phase, step, value } from "./forms.js";

type Air = Extract<QuestionId, "air-leaves" | "air-is-released" | "air-has-time" | "vacuum-foam" | "vacuum-boils">;

function bubbles(answer: Answer, say: Say): string {
  return `bubbles${say.given(numberBeside(answer, "diameter"), (diameter) => ` of ${say.millimetres(diameter)}`)}`;
}

/** What the set gel does with air that is drawn in later. */
function held(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "suspendedMin"),
    (diameter) => ` Draw no air in later: the set gel holds bubbles of up to ${say.millimetres(diameter, 2)}.`,
  );
}

function heldBySet(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "suspendedMin"),
    (diameter) => ` The set gel holds bubbles of up to ${say.millimetres(diameter, 2)}.`,
  );
}

function underPressure(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "pressure"), (pressure) => ` of ${say.millibars(pressure)} absolute`);
}

/** Air that leaves the melt or the gel, and what a vacuum does. */
export const airAnswers: Each<Air, AnswerWords> = {
  "air-leaves": notBelow({
    question: "Does the melt stand thin long enough for its air to leave?",
    met: (answer, say) =>
      `Air that is in the melt from ${say.step(numberBeside(answer, "fromStep"))} on leaves it, in ${bubbles(answer, say)} or larger${say.given(numberBeside(answer, "durationToClear"), (time) => `, within ${say.duration(time)}`)}.${held(answer, say)}`,
    below: (answer, say) =>
      `The melt never stands thin long enough for ${bubbles(answer, say)} to leave: they rise ${value(answer, say)}. Let it stand while it is thin, or draw in no air.${heldBySet(answer, say)}`,
    notKnown: (answer, say) => `Whether ${bubbles(answer, say)} leave the melt`,
    value: (answer, say) => `rise: ${value(answer, say)}`,
    limit: (answer, say) => `depth of the melt: ${say.interval(answer.limit.min, "length")}`,
  }),
  "air-is-released": notBelow({
    question: "Does the gel let its bubbles go while it is de-aerated?",
    met: (answer, say) => `The gel lets its bubbles go in ${step(answer, say)}.`,
    below: (answer, say) =>
      `The gel holds its bubbles in ${step(answer, say)}, which are ${value(answer, say)} wide: stir slowly so that all of it yields, draw less air in, or use a stronger vacuum.`,
    notKnown: (answer, say) => `Whether the gel lets its bubbles go in ${step(answer, say)}`,
    value: (answer, say) => `bubble diameter: ${value(answer, say)}`,
    limit: (answer, say) =>
      answer.limit.min?.max === 0
        ? "no bubble is held"
        : `larger than the largest that is held: ${say.interval(answer.limit.min, "length")}`,
  }),
  "air-has-time": notAbove({
    question: "Does the air have time to leave while the gel is de-aerated?",
    met: (answer, say) => `The air has time to leave in ${step(answer, say)}: it takes ${value(answer, say)}.`,
    above: (answer, say) =>
      `The air has not left when ${step(answer, say)} ends, as it takes ${value(answer, say)}: allow more time, use a stronger vacuum, or draw less air in.`,
    notKnown: (answer, say) => `Whether the air has time to leave in ${step(answer, say)}`,
    value: (answer, say) =>
      `${value(answer, say)}${say.given(numberBeside(answer, "depth"), (depth) => ` from a depth of ${say.millimetres(depth)}`)}`,
  }),
  "vacuum-foam": notAbove({
    question: "Does the foam stay below the rim under vacuum?",
    met: (answer, say) => `Under a vacuum${underPressure(answer, say)} the foam stays below the rim.`,
    above: (answer, say) =>
      `Under a vacuum${underPressure(answer, say)}, after ${phase(answer)}, the foam rises to ${value(answer, say)}, over the rim: draw the vacuum more slowly, or less of it.`,
    notKnown: (answer) => `Whether the foam stays below the rim under vacuum, after ${phase(answer)},`,
    limit: (answer, say) => `height of the rim: ${say.interval(answer.limit.max, "length")}`,
  }),
  "vacuum-boils": notBelow({
    question: "Does a volatile material stay below its boiling point under vacuum?",
    met: (answer, say) => `This vacuum, ${value(answer, say)}, does not boil ${material(answer, say)} out.`,
    below: (answer, say) =>
      `Under this vacuum, ${value(answer, say)}, ${material(answer, say)} boils out: use less vacuum, or cool it first.`,
    notKnown: (answer, say) => `Whether ${material(answer, say)} boils out under vacuum`,
    value: (answer, say) =>
      `${value(answer, say)}${say.given(numberBeside(answer, "beyond"), (by) => `, ${say.interval({ min: by, max: by, value: by }, "pressure")} below what is allowed`)}`,
    limit: (answer, say) => `above the pressure at which it boils: ${say.interval(answer.limit.min, "pressure")}`,
  }),
};
