import { specificHeatAt } from "../../laws/index.js";
import type { Job } from "../job.js";
import type { Content } from "../moment.js";

/** A law that ends no further than this from the room is continued to it [K]: common practice, no source. */
const near = 10;

/** The loss of a vessel of which none is stated: what is stirred then comes out warmer than it will be. */
const noLoss = { law: { law: "newton", conductance: 0 }, from: "nothing (loss to the room not stated)" } as const;

/** The job with a loss to the room, so that the heat of stirring has somewhere to go or is said to stay. */
export function withLoss(job: Job): Job {
  return { ...job, vessel: { ...job.vessel, loss: job.vessel.loss ?? noLoss } };
}

/** Contents with their specific heats at the room's temperature: on the cold route they go no more than some kelvins from it. */
export function inTheRoom(contents: readonly Content[], room: number): readonly Content[] {
  return contents.map((content) => {
    const { specificHeat: law } = content.material;
    if (law?.law !== "polynomial") return content;
    const { temperatureMin = room, temperatureMax = room } = law;
    if (room < temperatureMin - near || room > temperatureMax + near) return content;
    const specificHeat = specificHeatAt({ law, temperature: room, beyond: "extend" });
    return { ...content, material: { ...content.material, specificHeat: { law: "constant", specificHeat } } };
  });
}
