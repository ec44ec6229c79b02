import type { Job } from "./job.js";
import { doseKey, type Readings, readingsOf } from "./readings.js";

/** What is in a vessel, as compositions are compared. */
export interface Composition {
  /** Share of each material [0 to 1]. */
  readonly shares: ReadonlyMap<string, number>;
  /** Share that is gel former [0 to 1]. */
  readonly dose: number;
}

/** Readings, and by how much their composition differs from another. */
export interface Near {
  readonly reading: Readings;
  /** Largest difference in the share of any material. */
  readonly apart: number;
}

/** Of the viscosity readings in a direction those whose composition is nearest; none where nothing was read. */
export function nearestReadings(
  job: Job,
  composition: Composition,
  direction: Readings["direction"],
): Near | undefined {
  return readingsOf(job)
    .filter((reading) => reading.direction === direction)
    .map((reading) => ({ reading, apart: apart(composition, reading.shares) }))
    .sort((one, other) => one.apart - other.apart)[0];
}

function apart({ shares: own, dose }: Composition, shares: ReadonlyMap<string, number>): number {
  const read = shares.get(doseKey);
  // A reading that states its own dose is not of the bench's formula: there its dose alone counts.
  if (read !== undefined) return Math.abs(read - dose);
  const keys = new Set([...own.keys(), ...shares.keys()]);
  return Math.max(0, ...[...keys].map((key) => Math.abs((own.get(key) ?? 0) - (shares.get(key) ?? 0))));
}
