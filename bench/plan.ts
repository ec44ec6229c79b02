import { scaleFormula } from "gelwright/batch";
import { runPlan } from "gelwright/plan";
import { oilOrderOf } from "../src/plan/addition-order.js";
import { afterFilling, checkSetThrough } from "../src/plan/after-filling.js";
import { cautionsOf } from "../src/plan/cautions.js";
import { hotChecksOf } from "../src/plan/checks/index.js";
import { evaporationOf } from "../src/plan/evaporation.js";
import { exposedIn, exposuresOf } from "../src/plan/exposure.js";
import { naturalOriginOf } from "../src/plan/natural-origin.js";
import { readJob } from "../src/plan/read.js";
import { runSteps } from "../src/plan/run/run-steps.js";
import { airOf } from "../src/plan/strength/air.js";
import { checkParticles } from "../src/plan/strength/check-particles.js";
import { flowByPoints } from "../src/plan/strength/flow.js";
import { suspendedIn } from "../src/plan/strength/suspended.js";
import { strengthByTrials } from "../src/plan/strength/trials.js";
import { yieldStressOf } from "../src/plan/strength/yield-stress.js";
import { timelineOf } from "../src/plan/timeline.js";
import { exampleJob } from "../tests/support/example.js";
import { medians, readable } from "./speed.js";
import { table } from "./table.js";

/** The plan of the docs' example at one scale: the whole, and its parts as they follow one another. */
async function partsOf(scale: "beaker" | "kettle"): Promise<readonly (readonly string[])[]> {
  const document = exampleJob(scale);
  const job = readJob(document);
  const { formula, batch, vessel, bench } = job;
  const weigh = () => scaleFormula({ formula, batch, vessel, yieldStress: bench.yieldStress });
  const scaled = weigh();
  const contents = scaled.lot.lines.flatMap(({ phase, material: key, mass }) => {
    const material = formula.materials[key];
    return material ? [{ phase, material, mass }] : [];
  });
  const run = () => runSteps(job, contents, scaled);
  const moments = run();
  const filled = afterFilling(job, moments, scaled);
  const yieldStress = yieldStressOf(job, flowByPoints(job), strengthByTrials(job));
  const parts: Readonly<Record<string, () => unknown>> = {
    "the whole": () => runPlan(document),
    "documents read": () => readJob(document),
    "scaled and weighed": weigh,
    "steps run": run,
    "packs, exposure, evaporation": () => [
      afterFilling(job, moments, scaled),
      exposuresOf(moments, exposedIn(moments)),
      evaporationOf(job, moments),
    ],
    "oils in the other order": () => oilOrderOf(job, moments, exposedIn(moments), contents, scaled),
    "fits of trials and rheometer points": () => [strengthByTrials(job), flowByPoints(job)],
    "window for particles and settling": () => checkParticles(suspendedIn(moments, job, scaled), job, yieldStress),
    air: () => airOf(job, moments, scaled, yieldStress),
    "other checks": () => [
      hotChecksOf(job, scaled, moments, naturalOriginOf(job)),
      checkSetThrough(job, moments, filled),
    ],
    "timeline and cautions": () => [timelineOf(job, moments), cautionsOf(job, moments)],
  };
  const times = await medians(Object.entries(parts).map(([name, part]) => ({ name, run: part, answers: 1 })));
  const [whole = Number.NaN] = times;
  return Object.keys(parts).map((name, i) => {
    const time = times[i] ?? Number.NaN;
    return [`${scale}: ${name}`, readable(time), (time / whole).toFixed(2)];
  });
}

/** What a whole plan takes, and where the time goes. */
export async function planTable(): Promise<string> {
  const rows = [...(await partsOf("kettle")), ...(await partsOf("beaker"))];
  return table(["runPlan of docs/examples/cuticle-gel", "one plan", "of the whole"], rows);
}
