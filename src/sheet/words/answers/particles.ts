import type { Answer, QuestionId } from "../../../plan/index.js";
import type { AnswerWords, Each, Say } from "../types.js";
import { material, notAbove, notBelow, numberBeside, step, value, valueAt, within } from "./forms.js";

type Particles = Extract<QuestionId, "particles-go-in" | "particles-settle" | "particles-stay-suspended">;

function tooFar(answer: Answer, say: Say): string {
  return say.given(
    numberBeside(answer, "massFractionBeyond"),
    (share) => `, ${say.percent(share, 2)} of its mass further than allowed`,
  );
}

/** Particles go in late enough not to sink, early enough to be stirred in, and stay up in the set gel. */
export const particleAnswers: Each<Particles, AnswerWords> = {
  "particles-go-in": within({
    question: "Do particles go in when the gel is thick enough to carry them and thin enough to stir?",
    met: (answer, say) =>
      `${material(answer, say)} goes in when the gel is thick enough to carry it and thin enough to stir.`,
    below: (answer, say) =>
      `${material(answer, say)} goes in too late (${step(answer, say)}: ${value(answer, say)}). The gel is too thick to stir it in.`,
    above: (answer, say) =>
      `${material(answer, say)} goes in too early (${step(answer, say)}: ${value(answer, say)}). It would sink before the gel sets: let the gel cool further.`,
    none: ({ limit, of }, say) =>
      `No temperature suits ${say.material(of.material)}: above ${say.interval(limit.max, "temperature")} the gel is too thin to carry it, below ${say.interval(limit.min, "temperature")} too thick to stir it in.`,
    notKnown: (answer, say) => `When ${material(answer, say)} may go in`,
    value: (answer, say) => `before it goes in: ${value(answer, say)}`,
    limit: ({ limit }, say) =>
      `to be carried: ${say.limitMax(limit.max, "temperature")}; to be stirred in: ${say.limitMin(limit.min, "temperature")}`,
  }),
  "particles-settle": notAbove({
    question: "Do particles settle no further than allowed before the gel sets?",
    met: (answer, say) => `${material(answer, say)} settles no further than allowed before the gel sets.`,
    above: (answer, say) =>
      `${material(answer, say)} settles too far before the gel sets, ${value(answer, say)} in vessel and pack together${tooFar(answer, say)}: add it cooler, fill sooner, or keep stirring.`,
    notKnown: (answer, say) => `How far ${material(answer, say)} settles`,
    value: (answer, say) => `in vessel and pack together: ${valueAt(answer, say)}${tooFar(answer, say)}`,
  }),
  "particles-stay-suspended": notBelow({
    question: "Is the set gel strong enough to hold particles at rest?",
    met: (answer, say) =>
      `The set gel is strong enough to hold ${material(answer, say)} at rest, as long as the gel does not change.`,
    below: (answer, say) => `The set gel is too weak to hold ${material(answer, say)}: it will sink in storage.`,
    notKnown: (answer, say) => `Whether the set gel holds ${material(answer, say)}`,
    value: (answer, say) => `yield stress: ${value(answer, say)}`,
  }),
};
