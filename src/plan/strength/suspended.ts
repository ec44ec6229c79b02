import type { Material } from "../../formula/index.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { type CoolingSuspension, suspensionOf } from "../suspension.js";

/** One kind of particle, the moment at which it goes in, and the melt that then has to carry it. */
export interface Suspended {
  readonly material: Material;
  readonly particle: NonNullable<Material["particle"]>;
  readonly moment: Moment;
  /** Place of that moment among all. */
  readonly place: number;
  /** The melt with everything in it, or what is missing to know it. */
  readonly melt: CoolingSuspension | string;
}

/** Every kind of particle that goes in by this plan. */
export function suspendedIn(moments: readonly Moment[], job: Job): readonly Suspended[] {
  return moments.flatMap((moment, place) => {
    if (moment.step.do !== "charge") return [];
    const added = moment.after.contents.slice(moment.before.contents.length);
    return added.flatMap(({ material }) => {
      const { particle } = material;
      if (!particle) return [];
      return [{ material, particle, moment, place, melt: suspensionOf(moment.after.contents, particle, job) }];
    });
  });
}
