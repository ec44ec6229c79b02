/** How a figure answers to a limit: a code, with the numbers from which the verdict follows. */
export interface GelAnswer<Id extends string> {
  /** What was asked. */
  readonly id: Id;
  /** `"not-known"` without a limit, and where a figure with two ends lies on both sides of it. */
  readonly verdict: "met" | "not-met" | "not-known";
  /** On which side of the limit a figure lies that is not met. */
  readonly side: "below" | "above" | "none";
  /** The figure that was found; both ends alike if it is one number. */
  readonly figure: { readonly min: number; readonly max: number };
  /** What it was held against; an end that is not limited is left out, and so is a limit that is not stated. */
  readonly limit?: { readonly min?: number; readonly max?: number };
}
