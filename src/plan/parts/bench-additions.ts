import { volumeFractionOfOil } from "../../gel/index.js";
import { interpolateAtOilFraction } from "../../mixing/index.js";
import type { Job } from "../job.js";
import { oilLawsOf } from "../oil-laws.js";
import type { Run } from "../state.js";
import { by, otherwise, stated } from "../unknown.js";
import { gelOf } from "./droplets.js";
import type { Note } from "./note.js";

/** Additions and shares were both weighed: so far apart they still agree, as a part of the share. Common practice, no source. */
const agreeing = 0.01;

/** The largest share of what is there that the bench says it took up at once, at an oil fraction. */
export function shareMaxAt({ bench }: Job, volumeFractionOil: number): number {
  const law = stated(oilLawsOf(bench).share, "emulsion-share-max");
  return by("addition-schedule", () => interpolateAtOilFraction({ law, volumeFractionOil }), {
    field: "emulsion-share-max",
  });
}

/** Whether an addition is plainly larger than the share that the bench states there; not where it states none. */
export function isBeyondShares(job: Job, volumeFractionOil: number, share: number): boolean {
  return otherwise(
    () => share > shareMaxAt(job, volumeFractionOil) * (1 + agreeing),
    () => false,
  );
}

/** The bench's additions that contradict its shares: the first that is too large, and how many are. */
export function benchAdditionNotes(run: Run): readonly Note[] {
  return otherwise(
    () => {
      const { job } = run;
      const { gelFormer, oil } = stated(job.bench.emulsion?.additions, "emulsion-additions");
      const densities = gelOf(run).charge.phaseDensities();
      const found = oil.flatMap((mass, i): readonly Note[] => {
        const before = oil.slice(0, i).reduce((sum, one) => sum + one, 0);
        const share = mass / (gelFormer + before);
        const volumeFractionOil =
          before === 0 ? 0 : volumeFractionOfOil({ massFractionOil: before / (before + gelFormer), ...densities });
        if (!isBeyondShares(job, volumeFractionOil, share)) return [];
        const shareMax = shareMaxAt(job, volumeFractionOil);
        return [{ code: "bench-additions-beyond-shares", addition: i + 1, count: 1, share, shareMax }];
      });
      return found.slice(0, 1).map((first) => ({ ...first, count: found.length }));
    },
    () => [],
  );
}
