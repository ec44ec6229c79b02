import type { Answer } from "gelwright/plan";
import type { AnswerWords, Say, Sentence, Words } from "gelwright/sheet";
import { reasonsOf } from "../../../src/plan/measure-next.js";

/** What each question has its own words for. */
interface Own {
  readonly question: string;
  readonly met: Sentence;
  /** What is not known, as a clause that may follow "Nicht bekannt ist,". */
  readonly notKnown: Sentence;
  readonly meanwhile?: string;
  readonly value?: Sentence;
  readonly limit?: Sentence;
}

const outside: Sentence = ({ figure, limit: of, quantity }, say) =>
  `Der Wert liegt außerhalb der Grenze: ${say.interval(figure, quantity)}; Grenze: ${say.limit(of, quantity)}.`;

const empty: Sentence = ({ limit: of, quantity }, say) =>
  `Kein Wert kann diese Grenze einhalten: verlangt ist ${say.limit(of, quantity)}.`;

/** So many reasons stand on the sheet in full. */
const reasonsMax = 3;

function why(answer: Answer, say: Say, words: Words): string {
  const once = new Map(
    reasonsOf(answer).map((reason) => {
      const { value: _value, step: _step, ...same } = reason;
      return [JSON.stringify(same), reason] as const;
    }),
  );
  const texts = [...new Set([...once.values()].map((reason) => words.reasons[reason.code](reason, say, words)))];
  const others = texts.length - reasonsMax;
  if (texts.length > 0)
    return `${texts.slice(0, reasonsMax).join("; ")}${others > 0 ? `; und ${say.count(others)} weitere` : ""}.`;
  return "Der Wert kann auf beiden Seiten der Grenze liegen.";
}

function wordsOf(own: Own, sides: Partial<AnswerWords["not-met"]>): AnswerWords {
  return {
    question: own.question,
    met: own.met,
    "not-met": { below: outside, above: outside, none: empty, ...sides },
    "not-known": (answer, say, words) =>
      `Nicht bekannt ist, ${own.notKnown(answer, say, words)}: ${why(answer, say, words)}${say.given(own.meanwhile, (advice) => ` ${advice}`)}`,
    value: own.value ?? value,
    limit: own.limit ?? limit,
  };
}

export function notBelow(own: Own & { readonly below: Sentence }): AnswerWords {
  return wordsOf(own, { below: own.below });
}

export function notAbove(own: Own & { readonly above: Sentence }): AnswerWords {
  return wordsOf(own, { above: own.above });
}

export function within(
  own: Own & { readonly below: Sentence; readonly above: Sentence; readonly none?: Sentence },
): AnswerWords {
  return wordsOf(own, { below: own.below, above: own.above, ...(own.none && { none: own.none }) });
}

export function value({ figure, quantity }: Answer, say: Say): string {
  return say.interval(figure, quantity);
}

export function limit({ limit: of, quantity }: Answer, say: Say): string {
  return say.limit(of, quantity);
}

export function valueAt(answer: Answer, say: Say): string {
  return `${value(answer, say)} (${say.place(answer.at)})`;
}

export function numberBeside({ beside }: Answer, name: string): number | undefined {
  const found = beside?.[name];
  return typeof found === "number" ? found : undefined;
}

export function wordBeside({ beside }: Answer, name: string): string | undefined {
  const found = beside?.[name];
  return typeof found === "string" ? found : undefined;
}

export function material({ of }: Answer, say: Say): string {
  return say.material(of.material);
}

export function phase({ of }: Answer): string {
  return of.phase === undefined ? "die Phase" : `Phase ${of.phase}`;
}

export function step({ of, at }: Answer, say: Say): string {
  return say.step(of.step ?? at.step);
}
