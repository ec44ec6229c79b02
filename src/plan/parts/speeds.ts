import { type ScaleCriterion, scaleUp, tipSpeed } from "../../mixing/index.js";
import type { Run } from "../state.js";
import { atBench, benchJob } from "../steps/incorporation.js";
import { powerPerVolumeOf, stirredAt } from "../stirred.js";
import { impellerOf, stirrerOf, vesselAround } from "../stirrer.js";
import { by, otherwise, stated, unknown } from "../unknown.js";

/** What a speed may keep from the bench. Froude's number is one of splashing, and no gel splashes. */
const criteria: readonly ScaleCriterion[] = ["tip-speed", "shear-rate", "power-per-volume", "reynolds", "blend-time"];

/** What a stirrer does at one speed in the gel with all of its oil in. */
export interface PlanSpeed {
  /** The bench's own, this plan's, or what of the bench's this speed keeps. */
  readonly of: "bench" | "plan" | ScaleCriterion;
  /** [rev/s]. */
  readonly speed: number;
  /** [m/s]. */
  readonly tipSpeed: number;
  /** Mean shear rate [1/s]. */
  readonly shearRate?: number;
  /** [W/m³]. */
  readonly powerPerVolume: number;
  /** [N·m]. */
  readonly torque: number;
  /** Of the stirrer, with the viscosity at that shear rate [-]. */
  readonly reynolds: number;
}

/** What the bench's stirrer does in the gel with all of its oil in, what this one does, and at what speed it would repeat the bench. */
export function speedsOf({ job, moments }: Run): readonly PlanSpeed[] {
  const { stirrer: stirrerBench } = stated(job.bench.emulsion?.stirring, "emulsion-stirring");
  const stirrer = stirrerOf(job);
  const last = moments.filter(({ step }) => step.do === "add").at(-1) ?? unknown("not-done");
  const { charge } = last.after;
  const speed = stated(last.speed, "vessel-stirrer")();
  const speedBench = stated(stirrerBench.speed, "emulsion-stirring", { of: stirrerBench.kind });
  const bench = benchJob(job);
  const small = atBench(charge, bench);
  const curve = charge.emulsionCurve();
  const here = stirredAt(charge, job.process.room, speed, "cooling");
  const there = otherwise(
    () => stirredAt(small, job.process.room, speedBench, "cooling"),
    ({ code, ...reason }) => unknown(code, { ...reason, at: "bench" }),
  );
  const { density } = here;
  const scaled = by("scale-up", () =>
    scaleUp({
      impeller: impellerOf(stirrerBench),
      vessel: vesselAround(bench.vessel, there.level),
      density,
      curve,
      speed: speedBench,
      volume: small.mass / density,
      plant: {
        impeller: impellerOf(stirrer),
        vessel: vesselAround(job.vessel, here.level),
        volume: charge.mass / density,
      },
      criteria,
    }),
  );
  const planned = {
    ...here,
    tipSpeed: tipSpeed({ impeller: { diameter: stirrer.diameter }, speed }),
    powerPerVolume: powerPerVolumeOf(here, charge),
  };
  return [
    row("bench", scaled.bench),
    row("plan", planned),
    ...scaled.plant.map((plant) => row(plant.criterion, plant)),
  ];
}

function row(
  of: PlanSpeed["of"],
  {
    speed,
    tipSpeed: tip,
    shearRate,
    powerPerVolume,
    torque,
    reynolds,
  }: Omit<PlanSpeed, "of" | "shearRate"> & {
    readonly shearRate?: number | undefined;
  },
): PlanSpeed {
  return { of, speed, tipSpeed: tip, ...(shearRate !== undefined && { shearRate }), powerPerVolume, torque, reynolds };
}
