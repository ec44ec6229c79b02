import { wallTemperature } from "../heat/index.js";
import { attempt } from "./attempt.js";
import { insideOf } from "./inside.js";
import type { Job } from "./job.js";
import type { Moment } from "./moment.js";
import { readingsFor } from "./viscosity.js";

/** How hot the heated wall gets in a step, and where that is from. */
export interface HottestWall {
  /** [°C]. */
  readonly temperature: number;
  readonly from: string;
}

/** The heated wall at its hottest in each step that heats; what is missing where that is not known. */
export function heatedWalls(moments: readonly Moment[], job: Job): readonly (HottestWall | string | undefined)[] {
  return moments.map((moment) => (moment.step.do === "heat" ? heatedWall(moment, job) : undefined));
}

/** The wall is as much hotter than the charge as what the heater gives needs to pass it, and no hotter than the heater. */
function heatedWall({ before, after }: Moment, job: Job): HottestWall | string {
  const { heater, heatedWall: wall } = job.vessel;
  const { temperature: end, contents } = after;
  if (!heater) return "no heater is described";
  if (!wall) return "the vessel has no heated wall described";
  if (end === undefined) return "how warm the charge gets is not known";
  const inside = insideOf(job, wall, contents, [end, end], "heating");
  if (typeof inside === "string") return inside;
  const at = (bulk: number): number =>
    Math.min(
      heater.temperatureMax ?? Number.POSITIVE_INFINITY,
      wallTemperature({
        temperatureBulk: bulk,
        heatFlow: heater.power,
        area: wall.area,
        heatTransferCoefficient: inside.stated ?? ((other) => inside.judgedAt(bulk, other)),
      }),
    );
  // A thick charge keeps its wall hot: it is looked at where its viscosity was read, too.
  const readings = inside.stated === undefined ? readingsFor(job.bench.viscosities, contents, "heating") : undefined;
  const start = before.temperature ?? end;
  const read = readings?.law.law === "readings" ? readings.law.points.map((point) => point.temperature) : [];
  return attempt(() => {
    return {
      temperature: Math.max(at(end), ...read.filter((bulk) => bulk > start && bulk < end).map(at)),
      from: inside.stated === undefined ? `three quarters of the ${inside.from}` : inside.from,
    };
  });
}
