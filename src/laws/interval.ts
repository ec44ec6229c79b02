/** A value and between which bounds it lies. */
export interface Interval {
  /** Lower bound, in the unit of the value. */
  readonly min: number;
  /** The value itself, in the unit that the field around it gives. */
  readonly value: number;
  /** Upper bound, in the unit of the value. */
  readonly max: number;
}
