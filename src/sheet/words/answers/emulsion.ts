import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import { limit, notAbove, notBelow, numberBeside, phase, step, value, within, wordBeside } from "./forms.js";

type Emulsion = Extract<
  QuestionId,
  | "gel-former-covers-impeller"
  | "maximum-oil-fraction"
  | "additions-within-share"
  | "surfactant-covers-droplets"
  | "clarity-match"
  | "clarity-while-warm"
  | "water-activity"
>;

/** The closest packing is where droplets of one size begin to press one another flat. */
const packing = "Above 74 % by volume droplets of one size press one another flat.";

/** Both refractive indices, where they are known. */
function indices(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "gelFormer"),
    (gelFormer) =>
      `gel former ${say.number(gelFormer, 5)}, oil ${say.number(numberBeside(answer, "oil"), 5)} at ${say.celsius(numberBeside(answer, "temperature"))}; `,
  );
}

function difference(answer: Answer, say: Say): string {
  return `${indices(answer, say)}difference: ${value(answer, say)}`;
}

/** The share of glycerin that would match. */
function remedy(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "massFractionToMatch"),
    (share) =>
      ` A share of ${say.percent(share, 3)} of glycerin in glycerin and water would match, ± ${say.percent(numberBeside(answer, "tolerance"), 2)}; now it is ${say.percent(numberBeside(answer, "massFractionGlycerin"), 3)}.`,
  );
}

function additions(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "additions"),
    (count) =>
      ` (${say.count(count)} in all, the first ${say.kilograms(numberBeside(answer, "massFirst"))}, the largest ${say.kilograms(numberBeside(answer, "massMax"))})`,
  );
}

/** What it is as planned, where the figure counts on the ends of the weighing tolerances. */
function asPlanned(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "planned"),
    (planned) => ` at the ends of the weighing tolerances (${say.percent(planned)} as planned)`,
  );
}

function named(answer: Answer, say: Say): string {
  return say.given(wordBeside(answer, "material"), (key) => ` (${say.material(key)})`);
}

function droplets(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "diameter"), (diameter) => ` of ${say.micrometres(diameter)}`);
}

/** Oil that is stirred into a gel former as droplets. */
export const emulsionAnswers: Each<Emulsion, AnswerWords> = {
  "gel-former-covers-impeller": notBelow({
    question: "Does the gel former alone cover the stirrer?",
    met: () => "The gel former covers the stirrer before the first oil goes in.",
    below: (answer, say) =>
      `The gel former alone, ${value(answer, say)}, does not cover the stirrer: the first oil would not be stirred in. Use a smaller vessel, or begin in one and transfer.`,
    notKnown: () => "Whether the gel former alone covers the stirrer",
  }),
  "maximum-oil-fraction": notAbove({
    question: "Does the oil fraction stay below the one at which the emulsion inverts?",
    met: (answer, say) =>
      `The oil fraction, ${value(answer, say)} by volume${asPlanned(answer, say)}, stays far enough below the maximum found in trials. ${packing}`,
    above: (answer, say) =>
      `The oil fraction reaches ${value(answer, say)} by volume${asPlanned(answer, say)} in ${step(answer, say)}, which is not far enough below the maximum found in trials: the emulsion may invert. ${packing}`,
    notKnown: () => "Whether the oil fraction stays below the one at which the emulsion inverts",
    limit: (answer, say) => `below the maximum found in trials: ${say.interval(answer.limit.max, "volume-fraction")}`,
  }),
  "additions-within-share": notAbove({
    question: "Is every addition within what the bench took up at once?",
    met: (answer, say) =>
      `No addition of ${phase(answer)} is larger than what the bench took up at once${additions(answer, say)}.`,
    above: (answer, say) =>
      `An addition of ${phase(answer)} is too large (${say.place(answer.at)}): ${value(answer, say)} of what is in the vessel, more than the bench took up at once.`,
    notKnown: (answer) => `Whether every addition of ${phase(answer)} is within what the bench took up at once`,
    meanwhile: "Try a stream, or portions of this size, at the bench first.",
    value: (answer, say) => `share of what is in the vessel: ${value(answer, say)} (${say.place(answer.at)})`,
    // The bench took up more at once the more oil was in.
    limit: (answer, say) => `${limit(answer, say)} with the oil that is in by then`,
  }),
  "surfactant-covers-droplets": notBelow({
    question: "Is there enough surfactant to cover the droplets?",
    met: (answer, say) =>
      `There is enough surfactant${named(answer, say)} to cover droplets${droplets(answer, say)}. Surfactant that dissolves or forms micelles is needed on top of it.`,
    below: (answer, say) =>
      `There is too little surfactant${named(answer, say)}, ${value(answer, say)}, to cover droplets${droplets(answer, say)}: they would coalesce.`,
    notKnown: () => "Whether there is enough surfactant to cover the droplets",
    limit: (answer, say) => `to cover droplets${droplets(answer, say)}: ${limit(answer, say)}`,
  }),
  "clarity-match": notAbove({
    question: "Do oil and gel former have the same refractive index at room temperature?",
    met: (answer, say) =>
      `Oil and gel former match in refractive index at room temperature: the gel can come out clear once its air is out.${remedy(answer, say)}`,
    above: (answer, say) =>
      `Oil and gel former differ in refractive index at room temperature: the gel stays milky.${remedy(answer, say)}`,
    notKnown: () => "Whether the gel comes out clear",
    value: difference,
    limit: (answer, say) => `difference: ${limit(answer, say)}`,
  }),
  "clarity-while-warm": within({
    question: "Does the gel look in the vessel as it will at room temperature?",
    met: (answer, say) => `The gel in the vessel looks in ${step(answer, say)} as it will at room temperature.`,
    below: (answer, say) =>
      `Warm from stirring, the gel looks clearer in the vessel in ${step(answer, say)} than it will at room temperature: judge a sample that has cooled.`,
    above: (answer, say) =>
      `Warm from stirring, the gel looks milkier in the vessel in ${step(answer, say)} than it will at room temperature: judge a sample that has cooled.`,
    notKnown: (answer, say) =>
      `Whether the gel looks in the vessel in ${step(answer, say)} as it will at room temperature`,
    value: difference,
    limit: (answer, say) => `difference: ${limit(answer, say)}`,
  }),
  "water-activity": notAbove({
    question: "Is the water activity below 0.75?",
    met: (answer, say) =>
      `The water activity, ${value(answer, say)}, is below the limit under which a product counts as low microbiological risk. It must still be tested.`,
    above: (answer, say) =>
      `The water activity, ${value(answer, say)}, is not below the limit under which a product counts as low microbiological risk.`,
    notKnown: () => "Whether the water activity is below 0.75",
    limit: (answer, say) => `below ${say.interval(answer.limit.max, "activity")}`,
  }),
};
