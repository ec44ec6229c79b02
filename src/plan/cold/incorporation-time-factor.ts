import { incorporationTimeScale, type OilLaw, type OilPoint } from "../../mixing/index.js";
import { shearRateOf } from "../impeller.js";
import type { Job } from "../job.js";
import type { Content } from "../moment.js";
import { powerPerVolumeOf, speedIn, stirredAt } from "../stirring.js";
import { atBench, benchJob } from "./bench-job.js";
import { phasesOfGel } from "./phases.js";
import type { AddStep } from "./step.js";

/** What is in the vessel at some oil fraction on the way. */
export interface OnTheWay {
  readonly volumeFractionOil: number;
  readonly contents: readonly Content[];
}

/** The factor on the bench's times by what is kept from it, against the oil fraction; or what is missing for it. */
export function incorporationTimeFactorOf(step: AddStep, way: readonly OnTheWay[], job: Job): OilLaw | string {
  const { keeps } = step;
  if (keeps === "time") return { law: "constant", value: incorporationTimeScale({ keeps }) };
  const { stirring } = job.bench.emulsion ?? {};
  const { stirrer } = job.vessel;
  const speed = speedIn(step, job);
  if (!stirring?.stirrer.speed) return "nothing says how the bench was stirred";
  if (speed === undefined) return "no speed of the stirrer";
  const speedBench = stirring.stirrer.speed;
  if (keeps === "revolutions") {
    const value = incorporationTimeScale({ keeps, speedBench, speedPlant: speed });
    return { law: "constant", value };
  }
  if (!stirrer) return "no diameter of the stirrer";
  switch (keeps) {
    case "tip travel": {
      // The tip goes π N D in a second; π falls out of the quotient.
      const tipSpeedBench = speedBench * stirring.stirrer.diameter;
      const value = incorporationTimeScale({ keeps, tipSpeedBench, tipSpeedPlant: speed * stirrer.diameter });
      return { law: "constant", value };
    }
    case "strain": {
      const shearRateBench = shearRateOf(stirring.stirrer, speedBench);
      const shearRatePlant = shearRateOf(stirrer, speed);
      if (typeof shearRateBench === "string") return `at the bench, ${shearRateBench}`;
      if (typeof shearRatePlant === "string") return shearRatePlant;
      return { law: "constant", value: incorporationTimeScale({ keeps, shearRateBench, shearRatePlant }) };
    }
    case "energy per volume":
      return byEnergy(way, { speed, speedBench }, job);
  }
}

/** Power per volume changes as the gel thickens, and not alike at both scales: a factor for each oil fraction. */
function byEnergy(
  way: readonly OnTheWay[],
  { speed, speedBench }: { readonly speed: number; readonly speedBench: number },
  job: Job,
): OilLaw | string {
  const bench = benchJob(job);
  if (typeof bench === "string") return bench;
  const points: OilPoint[] = [];
  for (const { volumeFractionOil, contents } of way) {
    const small = atBench(job, contents, phasesOfGel(job, contents).gelFormer);
    if (typeof small === "string") return small;
    const powerPerVolumeBench = powerPerVolume(bench, small, speedBench);
    const powerPerVolumePlant = powerPerVolume(job, contents, speed);
    if (typeof powerPerVolumeBench === "string") return `at the bench, ${powerPerVolumeBench}`;
    if (typeof powerPerVolumePlant === "string") return powerPerVolumePlant;
    const value = incorporationTimeScale({ keeps: "energy per volume", powerPerVolumeBench, powerPerVolumePlant });
    points.push({ volumeFractionOil, value });
  }
  return points.length > 1 ? { law: "table", points } : { law: "constant", value: points[0]?.value ?? Number.NaN };
}

function powerPerVolume(job: Job, contents: readonly Content[], speed: number): number | string {
  const stirred = stirredAt(job, contents, job.process.temperatureRoom, speed, "cooling");
  return typeof stirred === "string" ? stirred : powerPerVolumeOf(stirred, contents);
}
