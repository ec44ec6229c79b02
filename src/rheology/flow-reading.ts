import { list, positive, record } from "../guards.js";

/** A point of a flow curve, as the rheometer gives it. */
export interface FlowReading {
  /** Shear rate [1/s], above 0. */
  readonly shearRate: number;
  /** Shear stress [Pa], above 0. */
  readonly stress: number;
}

/** Checks readings of which there have to be at least so many. */
export function flowReadings(points: readonly FlowReading[], min: number): readonly FlowReading[] {
  return list(points, "points", min).map((point, i) => {
    const { shearRate, stress } = record(point, `points[${i}]`);
    return {
      shearRate: positive(shearRate, `points[${i}].shearRate`),
      stress: positive(stress, `points[${i}].stress`),
    };
  });
}
