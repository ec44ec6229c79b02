import { jacketCoefficient, jacketedWall } from "../heat/index.js";
import { attempt } from "./attempt.js";
import { type Inside, insideOf } from "./inside.js";
import type { Job } from "./job.js";
import type { Content } from "./moment.js";

/** What a jacket conducts over the whole wall [W/K]: one figure, or a function of the charge's temperature [°C]. */
export interface JacketConducts {
  readonly conductance: number | ((temperature: number) => number);
  /** Where that is from, as the end of a sentence; nothing for a figure that was stated. */
  readonly from: string;
}

/** The conductance of the jacket as stated, else from the coefficients on both sides of its wall; or what is missing. */
export function jacketConducts(
  job: Job,
  contents: readonly Content[],
  between: readonly [number, number],
): JacketConducts | string {
  const { jacket } = job.vessel;
  if (!jacket) return "no jacket is described";
  if (jacket.conductance !== undefined) return { conductance: jacket.conductance, from: "" };
  const { area, outsideCoefficient, temperature } = jacket;
  if (area === undefined || outsideCoefficient === undefined) return "no conductance of the jacket";
  const inside = insideOf(job, jacket, contents, between, "cooling");
  if (typeof inside === "string") return `how heat passes to the jacket, ${inside}`;
  const [warmest, coolest] = [Math.max(...between), Math.min(...between)];
  const overallAt = (at: number): number => {
    // The segment looks for its limit beyond its end, where the charge would be too thick for any correlation.
    const bulk = Math.min(warmest, Math.max(coolest, at));
    const wall = jacketedWall({
      temperatureBulk: bulk,
      temperatureJacket: temperature,
      heatTransferCoefficient: inside.stated ?? ((other) => inside.at(bulk, other)),
      heatTransferCoefficientJacket: outsideCoefficient,
    });
    return area * wall.heatTransferCoefficientOverall;
  };
  return inside.stated === undefined
    ? { conductance: overallAt, from: `, ${inside.from}` }
    : { conductance: overallAt(between[0]), from: ", conductance from the coefficients on both sides" };
}

/** The coolest wall of a jacketed charge at one temperature: by the inlet, where the coolant is coldest. */
export interface ColdWall {
  /** [°C]. */
  readonly temperature: number;
  readonly inside: Inside;
  /** From the inner face of the wall to the coolant [W/(m²·K)]. */
  readonly outside: number;
}

/** The wall by the coolant's inlet, or what is missing to know it. */
export function coldWall(job: Job, contents: readonly Content[], temperature: number): ColdWall | string {
  const { jacket } = job.vessel;
  if (!jacket) return "no jacket is described";
  const { area, conductance } = jacket;
  if (area === undefined) return "no area of the jacket is stated";
  const inside = insideOf(job, jacket, contents, [temperature, temperature], "cooling");
  if (typeof inside === "string") return inside;
  return attempt(() => {
    const heatTransferCoefficient = inside.at(temperature, temperature);
    const outside =
      jacket.outsideCoefficient ??
      jacketCoefficient({ conductance: conductance ?? Number.NaN, area, heatTransferCoefficient });
    const wall = jacketedWall({
      temperatureBulk: temperature,
      temperatureJacket: jacket.temperature,
      heatTransferCoefficient: inside.stated ?? ((at) => inside.judgedAt(temperature, at)),
      heatTransferCoefficientJacket: outside,
    });
    return { temperature: wall.temperatureWall, inside, outside };
  });
}
