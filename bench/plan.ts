import { type ScaledBatch, scaleFormula } from "gelwright/batch";
import type { Formula } from "gelwright/formula";
import { runPlan } from "gelwright/plan";
import { afterFilling, checkSetThrough } from "../src/plan/after-filling.js";
import { cautionsOf } from "../src/plan/cautions.js";
import { hotChecksOf } from "../src/plan/checks/index.js";
import { withLoss } from "../src/plan/cold/in-the-room.js";
import { runCold } from "../src/plan/cold/run.js";
import { evaporationOf } from "../src/plan/evaporation.js";
import type { Content } from "../src/plan/moment.js";
import { naturalOriginOf } from "../src/plan/natural-origin.js";
import { oxidationRankingOf } from "../src/plan/oxidation-ranking.js";
import { readJob } from "../src/plan/read.js";
import { runSteps } from "../src/plan/run/run-steps.js";
import { airOf } from "../src/plan/strength/air.js";
import { checkParticles } from "../src/plan/strength/check-particles.js";
import { flowByPoints } from "../src/plan/strength/flow.js";
import { suspendedIn } from "../src/plan/strength/suspended.js";
import { strengthByTrials } from "../src/plan/strength/trials.js";
import { yieldStressOf } from "../src/plan/strength/yield-stress.js";
import { exposedIn, thermalExposuresOf } from "../src/plan/thermal-exposure.js";
import { timelineOf } from "../src/plan/timeline.js";
import { coldJob, exampleJob } from "../tests/support/example.js";
import { medians, readable } from "./speed.js";
import { table } from "./table.js";

/** The plan of the docs' example at one scale: the whole, and its parts as they follow one another. */
async function partsOf(scale: "beaker" | "kettle"): Promise<readonly (readonly string[])[]> {
  const document = exampleJob(scale);
  const job = readJob(document);
  const { formula, batch, vessel, bench } = job;
  const weigh = () => scaleFormula({ formula, batch, vessel, yieldStress: bench.yieldStress });
  const scaled = weigh();
  const contents = contentsOf(formula, scaled);
  const run = () => runSteps(job, contents, scaled);
  const moments = run();
  const filled = afterFilling(job, moments, scaled);
  const yieldStress = yieldStressOf(job, flowByPoints(job), strengthByTrials(job));
  return rowsOf(scale, {
    "the whole": () => runPlan(document),
    "documents read": () => readJob(document),
    "scaled and weighed": weigh,
    "steps run": run,
    "packs, exposure, evaporation": () => [
      afterFilling(job, moments, scaled),
      thermalExposuresOf(moments, exposedIn(moments)),
      evaporationOf(job, moments),
    ],
    "oils in the other order": () => oxidationRankingOf(job, moments, exposedIn(moments), contents, scaled),
    "fits of trials and rheometer points": () => [strengthByTrials(job), flowByPoints(job)],
    "window for particles and settling": () => checkParticles(suspendedIn(moments, job, scaled), job, yieldStress),
    air: () => airOf(job, moments, scaled, yieldStress),
    "other checks": () => [
      hotChecksOf(job, scaled, moments, naturalOriginOf(job)),
      checkSetThrough(job, moments, filled),
    ],
    "timeline and cautions": () => [timelineOf(job, moments), cautionsOf(job, moments)],
  });
}

function contentsOf({ materials }: Formula, { lot }: ScaledBatch): readonly Content[] {
  return lot.lines.flatMap(({ phase, material: key, mass }) => {
    const material = materials[key];
    return material ? [{ phase, material, mass }] : [];
  });
}

/** Times of the parts, the first of which is the whole. */
async function rowsOf(
  of: string,
  parts: Readonly<Record<string, () => unknown>>,
): Promise<readonly (readonly string[])[]> {
  const times = await medians(Object.entries(parts).map(([name, part]) => ({ name, run: part, answers: 1 })));
  const [whole = Number.NaN] = times;
  return Object.keys(parts).map((name, i) => {
    const time = times[i] ?? Number.NaN;
    return [`${of}: ${name}`, readable(time), (time / whole).toFixed(2)];
  });
}

/** The same for the cold route, whose time lies in its additions. */
async function coldPartsOf(scale: "vessel"): Promise<readonly (readonly string[])[]> {
  const document = coldJob(scale);
  const job = withLoss(readJob(document));
  const { formula, batch, vessel, bench } = job;
  const scaled = scaleFormula({ formula, batch, vessel, yieldStress: bench.yieldStress });
  const contents = contentsOf(formula, scaled);
  return rowsOf(`cold ${scale}`, {
    "the whole": () => runPlan(document),
    "documents read": () => readJob(document),
    "steps run, with the heat of stirring": () => runCold(job, contents, scaled),
  });
}

/** What a whole plan takes, and where the time goes. */
export async function planTable(): Promise<string> {
  const rows = [...(await partsOf("kettle")), ...(await partsOf("beaker")), ...(await coldPartsOf("vessel"))];
  return table(["runPlan of the examples", "one plan", "of the whole"], rows);
}
