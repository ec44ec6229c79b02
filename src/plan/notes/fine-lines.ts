import { capillaryReach } from "../../rheology/index.js";
import { gelOf } from "../parts/droplets.js";
import { thickestFilmOf } from "../parts/films.js";
import type { Note } from "../parts/note.js";
import { yieldStressFigure } from "../parts/yield-stress.js";
import type { Run } from "../state.js";
import { by, orNotKnown, stated, unknown, where } from "../unknown.js";

/** Whether the product is a gel: it holds gel former, or is an emulsion. */
function isGel(run: Run): boolean {
  const { charge } = gelOf(run);
  return charge.isEmulsion() || charge.dose() > 0;
}

/**
 * How far capillarity draws the gel into a fine line beside its film, beside the film that does not run. The line is
 * wetted through, and the yield stress counts with its lower end: both draw the gel farthest.
 */
export function fineLineNotes(run: Run): readonly Note[] {
  if (!isGel(run)) return [];
  const { surfaceTension: tension, line: groove } = run.job.bench.inUse ?? {};
  return [
    {
      code: "drawn-into-lines",
      ...where("yieldStress", () => yieldStressFigure(run).min),
      ...where("thickness", () => thickestFilmOf(run)),
      distance: orNotKnown(() => {
        const surfaceTension = stated(tension, "in-use-surface-tension");
        const { min: yieldStress } = yieldStressFigure(run);
        // Without a yield stress nothing holds it.
        if (yieldStress === 0) unknown("nothing-there", { field: "bench-yield-stress" });
        return by("capillary-reach", () => capillaryReach({ surfaceTension, yieldStress, ...(groove && { groove }) }));
      }),
    },
  ];
}
