import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import { atStart, notAbove, notBelow, numberBeside, step, value, valueAt } from "./forms.js";

type Stirring = Extract<
  QuestionId,
  | "blended"
  | "gel-moves-at-wall"
  | "gel-moves-at-surface"
  | "motor-power"
  | "motor-torque"
  | "stirrer-covered"
  | "minimum-volume"
  | "no-air-down-the-vortex"
>;

function reynolds(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "reynolds"), (number) => `, Re ${say.number(number, 2)}`);
}

function atSpeed(answer: Answer, say: Say): string {
  return say.given(numberBeside(answer, "speed"), (speed) => ` at ${say.rpm(speed)}`);
}

/** What the stirrer does, and what its motor can do. */
export const stirringAnswers: Each<Stirring, AnswerWords> = {
  blended: notAbove({
    question: "Is a charge stirred long enough to be uniform?",
    met: (answer, say) => `What was added is uniform when ${step(answer, say)} ends.`,
    above: (answer, say) =>
      `${atStart(step(answer, say))} is too short for a uniform mix: blending takes ${value(answer, say)}.`,
    notKnown: (answer, say) => `Whether the charge is uniform after ${step(answer, say)}`,
    value: (answer, say) => `blend time: ${value(answer, say)}${reynolds(answer, say)}`,
    limit: (answer, say) => `stirring time: ${say.interval(answer.limit.max, "duration")}`,
  }),
  "gel-moves-at-wall": notBelow({
    question: "Does the gel at the wall move?",
    met: (answer, say) => `The gel moves as far as the wall in ${step(answer, say)}.`,
    below: (answer, say) =>
      `The gel at the wall stands still (${say.place(answer.at)}): the stirrer moves ${value(answer, say)} of the diameter. Gel at the wall is not mixed and keeps its air. Stir faster, use a wider stirrer or one that sweeps the wall, or scrape the wall by hand with the stirrer off.`,
    notKnown: (answer, say) => `Whether the gel moves as far as the wall in ${step(answer, say)}`,
    value: (answer, say) => (answer.verdict === "met" ? "all of it moves" : `moved diameter: ${valueAt(answer, say)}`),
    limit: (answer, say) => `diameter of the vessel: ${say.interval(answer.limit.min, "length")}`,
  }),
  "gel-moves-at-surface": notBelow({
    question: "Does the gel move up to the surface?",
    met: (answer, say) => `The gel moves up to the surface in ${step(answer, say)}.`,
    below: (answer, say) =>
      `The gel near the surface stands still (${say.place(answer.at)}): the stirrer moves ${value(answer, say)} of the height. Material on the surface is not mixed in. Stir faster, set the stirrer higher, or turn the gel over by hand with the stirrer off.`,
    notKnown: (answer, say) => `Whether the gel moves up to the surface in ${step(answer, say)}`,
    value: (answer, say) => (answer.verdict === "met" ? "all of it moves" : `moved height: ${valueAt(answer, say)}`),
    limit: (answer, say) => `level of the charge: ${say.interval(answer.limit.min, "length")}`,
  }),
  "motor-power": notAbove({
    question: "Does the motor have enough power?",
    met: (answer, say) =>
      `The motor has enough power in every step. The most that is needed: ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}).`,
    above: (answer, say) =>
      `The motor has too little power: the stirrer needs ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}). Stir more slowly.`,
    notKnown: (answer, say) => `Whether the motor has enough power (${say.place(answer.at)})`,
    value: valueAt,
    limit: (answer, say) =>
      `motor power: ${say.interval(answer.limit.max, "power")}${say.given(answer.margin?.max || undefined, (reserve) => `, less a reserve of ${say.watts(reserve)}`)}`,
  }),
  "motor-torque": notAbove({
    question: "Does the motor have enough torque?",
    met: (answer, say) =>
      `The motor has enough torque in every step. The most that is needed: ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}).`,
    above: (answer, say) =>
      `The motor has too little torque: the stirrer needs ${value(answer, say)}${atSpeed(answer, say)} (${say.place(answer.at)}). Stir more slowly, or use a gear.`,
    notKnown: (answer, say) => `Whether the motor has enough torque (${say.place(answer.at)})`,
    value: valueAt,
    limit: (answer, say) => `motor torque less a reserve of a fifth: ${say.interval(answer.limit.max, "torque")}`,
  }),
  "stirrer-covered": notBelow({
    question: "Does the charge cover the stirrer wherever it turns?",
    met: () => "The charge covers the stirrer in every step in which it turns.",
    below: (answer, say) =>
      `The charge does not cover the stirrer (${say.place(answer.at)}): it stands at ${value(answer, say)}, and the stirrer beats air in. Stir by hand until there is more, or set the stirrer lower.`,
    notKnown: (answer, say) => `Whether the charge covers the stirrer (${say.place(answer.at)})`,
    value: (answer, say) => `level: ${valueAt(answer, say)}`,
  }),
  "minimum-volume": notBelow({
    question: "Does the stated minimum working volume cover the stirrer?",
    met: () => "The stated minimum working volume covers the stirrer.",
    below: (answer, say) =>
      `The stated minimum working volume, ${value(answer, say)}, does not cover the stirrer: fill more, set the stirrer lower, or state a larger volume.`,
    notKnown: () => "Whether the stated minimum working volume covers the stirrer",
  }),
  "no-air-down-the-vortex": notAbove({
    question: "Does the vortex stay above the stirrer?",
    met: () => "No vortex reaches the stirrer. Air that is folded in or poured in is not considered.",
    above: (answer, say) =>
      `The vortex reaches the stirrer (${say.place(answer.at)}) and draws air down: stir more slowly.`,
    notKnown: (answer, say) => `Whether a vortex draws air down to the stirrer (${say.place(answer.at)})`,
    meanwhile: "Watch the surface, and stir more slowly if it dips.",
    value: (answer, say) => `depth of the vortex: ${valueAt(answer, say)}${reynolds(answer, say)}`,
    limit: ({ limit: { max } }, say) =>
      `depth of charge above the stirrer: ${max?.min === 0 && max.max === null ? say.notKnown : say.interval(max, "length")}`,
  }),
};
