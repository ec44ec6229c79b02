/**
 * One question that a document or a plan was asked, and its answer.
 *
 * `not known` is an answer: the figure that would decide is missing, and is not guessed. No verdict says
 * that anything is safe.
 */
export interface Check {
  /** What was asked, as a short name that programs can match: `gel-former-ratio`. */
  readonly id: string;
  readonly verdict: "met" | "not met" | "not known";
  /** The answer as a sentence for the person at the kettle. */
  readonly statement: string;
  /** The figure found, with its unit, or what is missing. */
  readonly value: string;
  /** The figure it was held against, with its unit. */
  readonly limit: string;
  /** Where the limit or the law comes from. */
  readonly source: string;
}
