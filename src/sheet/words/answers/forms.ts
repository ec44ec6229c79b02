import type { Answer } from "../../../plan/index.js";
import { why } from "../reasons.js";
import type { AnswerWords, Say, Sentence } from "../types.js";

/** What each question has its own words for. */
interface Own {
  readonly question: string;
  readonly met: Sentence;
  /** What is not known, as the beginning of a sentence up to "is not known". */
  readonly notKnown: Sentence;
  /** What to do meanwhile, as a sentence. */
  readonly meanwhile?: string;
  /** The figure; default its interval. */
  readonly value?: Sentence;
  /** What it is held against; default the ends of the limit. */
  readonly limit?: Sentence;
}

/** A side on which a question has no limit: what a figure there means, the numbers say. */
const outside: Sentence = ({ figure, limit, quantity }, say) =>
  `The figure is outside its limit: ${say.interval(figure, quantity)}, the limit being ${say.limit(limit, quantity)}.`;

/** A limit that nothing meets. */
const empty: Sentence = ({ limit, quantity }, say) =>
  `No value can meet this limit: it would have to be ${say.limit(limit, quantity)}.`;

/** The figure of an answer. */
export function value({ figure, quantity }: Answer, say: Say): string {
  return say.interval(figure, quantity);
}

/** The limit of an answer. */
export function limit({ limit: of, quantity }: Answer, say: Say): string {
  return say.limit(of, quantity);
}

function wordsOf(own: Own, sides: Partial<AnswerWords["not-met"]>): AnswerWords {
  return {
    question: own.question,
    met: own.met,
    "not-met": { below: outside, above: outside, none: empty, ...sides },
    "not-known": (answer, say, words) =>
      `${own.notKnown(answer, say, words)} is not known: ${why(answer, say, words)}${say.given(own.meanwhile, (advice) => ` ${advice}`)}`,
    value: own.value ?? value,
    limit: own.limit ?? limit,
  };
}

/** The words of a question whose limit is from below. */
export function notBelow(own: Own & { readonly below: Sentence }): AnswerWords {
  return wordsOf(own, { below: own.below });
}

/** The words of a question whose limit is from above. */
export function notAbove(own: Own & { readonly above: Sentence }): AnswerWords {
  return wordsOf(own, { above: own.above });
}

/** The words of a question with limits at both ends. */
export function within(
  own: Own & { readonly below: Sentence; readonly above: Sentence; readonly none?: Sentence },
): AnswerWords {
  return wordsOf(own, { below: own.below, above: own.above, ...(own.none && { none: own.none }) });
}

/** A number of the deciding state, if the answer has it. */
export function numberBeside({ beside }: Answer, name: string): number | undefined {
  const found = beside?.[name];
  return typeof found === "number" ? found : undefined;
}

/** A word of the deciding state, if the answer has it. */
export function wordBeside({ beside }: Answer, name: string): string | undefined {
  const found = beside?.[name];
  return typeof found === "string" ? found : undefined;
}

/** The material that an answer is about. */
export function material({ of }: Answer, say: Say): string {
  return say.material(of.material);
}

/** The phase that an answer is about. */
export function phase({ of }: Answer): string {
  return of.phase === undefined ? "the phase" : `phase ${of.phase}`;
}

/** The step that an answer is about, or in which its figure was found. */
export function step({ of, at }: Answer, say: Say): string {
  return say.step(of.step ?? at.step);
}

/** The same where a sentence begins. */
export function atStart(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

/** The figure with where it was found. */
export function valueAt(answer: Answer, say: Say): string {
  return `${value(answer, say)} (${say.place(answer.at)})`;
}
