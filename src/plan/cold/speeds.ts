import { type ScaleCriterion, scaleUp, tipSpeed } from "../../mixing/index.js";
import { attempt } from "../attempt.js";
import { impellerOf, vesselAround } from "../impeller.js";
import type { Job } from "../job.js";
import { massOf } from "../moment.js";
import { powerPerVolumeOf, speedIn, stirredAt } from "../stirring.js";
import { atBench, benchJob } from "./bench-job.js";
import { flowCurveOf } from "./flow.js";
import { phasesOfGel } from "./phases.js";
import type { ColdSpeed, ColdSpeeds } from "./plan.js";
import type { ColdMoment } from "./run.js";

/** What a speed may keep from the bench. Froude's number is one of splashing, and no gel splashes. */
const criteria: readonly ScaleCriterion[] = ["tip-speed", "shear-rate", "power-per-volume", "reynolds", "blend-time"];

/** What the bench's stirrer does in the gel with all of its oil in, what this one does, and at what speed it would repeat the bench; undefined where nobody told how the bench was stirred. */
export function speedsOf(moments: readonly ColdMoment[], job: Job): ColdSpeeds | undefined {
  const { stirring } = job.bench.emulsion ?? {};
  const { stirrer } = job.vessel;
  const last = moments.filter(({ step }) => step.do === "add").at(-1);
  if (!stirring || !stirrer || !last) return undefined;
  const { contents } = last.after;
  const room = job.process.temperatureRoom;
  const speed = speedIn(last.step, job);
  const bench = benchJob(job);
  const small = atBench(job, contents, phasesOfGel(job, contents).gelFormer);
  const curve = flowCurveOf(job, contents);
  if (typeof curve === "string") return { notKnown: curve };
  if (typeof bench === "string") return { notKnown: bench };
  if (typeof small === "string") return { notKnown: small };
  const speedBench = stirring.stirrer.speed;
  if (speed === undefined || speedBench === undefined) return { notKnown: "no speed of the stirrer" };
  const here = stirredAt(job, contents, room, speed, "cooling");
  const there = stirredAt(bench, small, room, speedBench, "cooling");
  if (typeof here === "string") return { notKnown: here };
  if (typeof there === "string") return { notKnown: `at the bench, ${there}` };
  const { density } = here;
  return attempt(
    () => {
      const scaled = scaleUp({
        impeller: impellerOf(stirring.stirrer),
        vessel: vesselAround(bench.vessel, there.level),
        density,
        curve,
        speed: speedBench,
        volume: massOf(small) / density,
        plant: {
          impeller: impellerOf(stirrer),
          vessel: vesselAround(job.vessel, here.level),
          volume: massOf(contents) / density,
        },
        criteria,
      });
      const asPlanned = {
        ...here,
        tipSpeed: tipSpeed({ impeller: stirrer, speed }),
        powerPerVolume: powerPerVolumeOf(here, contents),
      };
      const rows: readonly ColdSpeed[] = [
        row("bench", scaled.bench),
        row("plan", asPlanned),
        ...scaled.plant.map((plant) => row(plant.criterion, plant)),
      ];
      return { rows };
    },
    (refusal) => ({ notKnown: refusal.message }),
  );
}

function row(of: ColdSpeed["of"], found: Omit<ColdSpeed, "of">): ColdSpeed {
  const { speed, tipSpeed: tip, shearRate, powerPerVolume, torque, reynolds } = found;
  return { of, speed, tipSpeed: tip, ...(shearRate !== undefined && { shearRate }), powerPerVolume, torque, reynolds };
}
