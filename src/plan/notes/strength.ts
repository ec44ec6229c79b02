import { ohnesorgeNumber } from "../../rheology/index.js";
import { flowChoiceOf, flowPointsOf, throughNozzle } from "../parts/flow.js";
import type { Note } from "../parts/note.js";
import { yieldStressFigure } from "../parts/yield-stress.js";
import type { Run } from "../state.js";
import { by, otherwise, stated, where } from "../unknown.js";

/** A gel that is to be sprayed: no number says whether one with a yield stress breaks up, and without one not how fine. */
export function strengthNotes(run: Run): readonly Note[] {
  const { nozzle } = run.job.pack ?? {};
  const { spray } = nozzle ?? {};
  if (!nozzle || !spray) return [];
  const held = otherwise(
    () => yieldStressFigure(run).value,
    () => 0,
  );
  if (held > 0) return [{ code: "atomises-by-trial", yieldStress: held }];
  const ohnesorge = (): number => {
    const { best } = flowChoiceOf(flowPointsOf(run.job));
    const { shearRate } = throughNozzle(run.job);
    const density = stated(run.scaled.density, "material-density");
    const { diameter } = nozzle;
    return by("ohnesorge", () => ohnesorgeNumber({ curve: best.curve, shearRate, density, ...spray, diameter }));
  };
  return [{ code: "atomises-by-trial", ...where("ohnesorge", ohnesorge) }];
}
