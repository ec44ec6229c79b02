import type {
  Answer,
  AssumptionCode,
  Basis,
  Caution,
  CautionCode,
  Change,
  FieldCode,
  Figure,
  LawCode,
  LeverCode,
  Limit,
  Note,
  NoteCode,
  Place,
  PlanStep,
  QuantityCode,
  QuestionId,
  Reason,
  ReasonCode,
  Source,
  SourceCode,
  Step,
  UseCode,
  Verdict,
} from "../../plan/index.js";
import type { Labels } from "./labels.js";
import type { Lines } from "./lines.js";

/** A number that may not be known; it is then written as `notKnown` says. */
export type Known = number | null | undefined;

/** How numbers, dates and units are written; a caller may give another. Numbers are in the units of the kernels. */
export interface Say {
  /** What stands where a number is not known: "not known". */
  readonly notKnown: string;
  /** A number with the unit of its quantity. */
  quantity(value: Known, quantity: QuantityCode, digits?: number): string;
  /** A figure between its ends: one number if they meet, "at least" or "at most" if one end is open. */
  interval(figure: Figure | undefined, quantity: QuantityCode): string;
  /** From one end to the other, with the unit once if it is the same: "20.24 to 20.44 kg". */
  range(min: string, max: string): string;
  /** A prediction with the ends of its band, all in the unit of the kernels and written with one unit: "14 (7 to 28) N·m". */
  estimate(
    of: {
      /** What is predicted. */
      readonly value: Known;
      /** Lower end of its band. */
      readonly min: number;
      /** Upper end of its band. */
      readonly max: number;
    },
    quantity: QuantityCode,
    digits?: number,
  ): string;
  /** A limit from below, with how far it is known. */
  limitMin(figure: Figure | undefined, quantity: QuantityCode): string;
  /** A limit from above, with how far it is known. */
  limitMax(figure: Figure | undefined, quantity: QuantityCode): string;
  /** A limit at either end, or both. */
  limit(limit: Limit, quantity: QuantityCode): string;
  /** A bare number to so many significant digits, default 3. */
  number(value: Known, digits?: number): string;
  /** A length of time in the units that suit it [s]: "1.5 min", "64 min", "5 h 28 min", "6.2 days". */
  duration(seconds: Known): string;
  /** Time since the start as hours and minutes [s], or on the clock if the time of the start is stated. */
  clock(seconds: Known): string;
  /** Whether `clock` gives the time of day. */
  readonly isClockTime: boolean;
  percent(fraction: Known, digits?: number): string;
  /** A temperature with so many decimals, default 1. */
  celsius(temperature: Known, decimals?: number): string;
  kelvins(difference: Known): string;
  kilograms(mass: Known, digits?: number): string;
  /** A mass as the balance shows it, with as many decimals as its increment has, in the unit that suits it, or another beside it. */
  weighed(mass: Known, increment: number, beside?: number): string;
  millimetres(length: Known, digits?: number): string;
  micrometres(length: Known, digits?: number): string;
  /** A stress [Pa]. */
  pascals(stress: Known, digits?: number): string;
  /** An absolute pressure [Pa]. */
  millibars(pressure: Known, digits?: number): string;
  pascalSeconds(viscosity: Known, digits?: number): string;
  litres(volume: Known, digits?: number): string;
  rpm(revPerSecond: Known): string;
  watts(power: Known, digits?: number): string;
  newtonMetres(torque: Known, digits?: number): string;
  /** Mass in a minute [kg/s]. */
  massRate(rate: Known, digits?: number): string;
  /** 1/s */
  shearRate(rate: Known, digits?: number): string;
  count(value: Known): string;
  /** An amount of money without its currency, with so many decimals, default 2. */
  money(amount: Known, decimals?: number): string;
  /** The display name of a material, by its key. */
  material(key: string | undefined): string;
  /** Where in the run: "step 3, addition 2, at the heated wall". */
  place(at: Place): string;
  /** A step by its number: "step 3". */
  step(number: number | undefined): string;
  /** "a, b and c" */
  list(words: readonly string[]): string;
  /** Words about a value, or nothing if the value is not there. */
  given<T>(value: T | null | undefined, words: (value: T) => string): string;
}

/** A sentence about an answer, with the words in use for the reasons and assumptions that it names. */
export type Sentence = (answer: Answer, say: Say, words: Words) => string;

/** The words of one question, by verdict and side. */
export interface AnswerWords {
  readonly question: string;
  readonly met: Sentence;
  readonly "not-met": { readonly below: Sentence; readonly above: Sentence; readonly none: Sentence };
  readonly "not-known": Sentence;
  /** The figure, for the column of a table. */
  readonly value: Sentence;
  /** What the figure is held against, for the column of a table. */
  readonly limit: Sentence;
}

/** Words of each code. */
export type Each<Code extends string, Words> = { readonly [One in Code]: Words };

/** Every word of the sheet that is not the caller's own: another language is another such table. */
export interface Words {
  readonly answers: Each<QuestionId, AnswerWords>;
  readonly verdicts: Each<Verdict, string>;
  /** Why a figure is not known, as a clause after a colon or in brackets, without a full stop. */
  readonly reasons: Each<ReasonCode, (reason: Reason, say: Say, words: Pick<Words, "fields" | "lawNames">) => string>;
  /** What a field of the documents holds, such as "the motor of the stirrer". */
  readonly fields: Each<FieldCode, string>;
  /** A law by its name alone. */
  readonly lawNames: Each<LawCode, string>;
  /** A law, with its published source. */
  readonly laws: Each<LawCode, string>;
  readonly assumptions: Each<AssumptionCode, string>;
  readonly cautions: Each<CautionCode, (caution: Caution, say: Say) => string>;
  readonly notes: Each<NoteCode, (note: Note, say: Say, words: Words) => string>;
  /** What a source is the source of, with the name that it is of. */
  readonly sources: Each<SourceCode, (source: Source, say: Say) => string>;
  /** A remedy as an instruction, by the value of its change. */
  readonly levers: Each<LeverCode, (change: Change, say: Say) => string>;
  readonly uses: Each<UseCode, string>;
  /** What a figure rests on. */
  readonly bases: {
    readonly [Kind in Basis["kind"]]: (
      basis: Extract<Basis, { readonly kind: Kind }>,
      say: Say,
      words: Words,
    ) => string;
  };
  /** Conventions of practice that a figure may rest on, by their key. */
  readonly practices: Readonly<Record<string, string>>;
  /** The instruction to the operator. */
  readonly steps: { readonly [Do in Step["do"]]: (step: PlanStep, say: Say) => string };
  /** Titles of sections, heads of columns and fixed text. */
  readonly labels: Labels;
  /** Sentences of the sheet with numbers in them. */
  readonly lines: Lines;
}
