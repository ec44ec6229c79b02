import type { Note } from "../parts/note.js";
import type { Run } from "../state.js";
import { unique } from "../unique.js";
import { otherwise } from "../unknown.js";

/** The compositions on the way of a run that flow by the curve of another one. */
export function shiftNotes({ moments, job }: Run): readonly Note[] {
  if (!job.bench.viscosityShift) return [];
  return unique(
    moments.flatMap(({ after: { charge, onHeat, inPacks } }): readonly Note[] => {
      if (inPacks || charge.isEmulsion()) return [];
      const direction = onHeat ? "heating" : "cooling";
      return otherwise(
        (): readonly Note[] => {
          const { by: temperatureDifference, from: temperatureReference } = charge.shift(direction);
          const [phases, dose] = [charge.phases(), charge.dose()];
          return [{ code: "viscosity-shifted", phases, dose, direction, temperatureDifference, temperatureReference }];
        },
        () => [],
      );
    }),
  );
}
