import type { ScaledBatch } from "../../batch/index.js";
import type { Material } from "../../formula/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { type CoolingSuspension, suspensionOf } from "../suspension.js";
import { type Settled, settlingOf, shareBeyond } from "./settled.js";
import { type Window, windowOf } from "./window.js";

/** One kind of particle, the moment at which it goes in, and the melt that then has to carry it. */
export interface Addition {
  readonly material: Material;
  readonly particle: NonNullable<Material["particle"]>;
  readonly moment: Moment;
  /** Place of that moment among all. */
  readonly place: number;
  /** The melt with everything in it, or what is missing to know it. */
  readonly melt: CoolingSuspension | string;
}

/** The same with its window for adding and its way to the bottom, or what is missing for them. */
export interface Suspended extends Addition {
  readonly window: Window | string;
  readonly settled: Settled | string;
  /** Share of the mass whose way is longer than allowed [0 to 1]; left out where no sizes are stated. */
  readonly massFractionBeyond?: number | string | undefined;
}

/** Every kind of particle that goes in by this plan. */
export function suspendedIn(moments: readonly Moment[], job: Job, scaled: ScaledBatch): readonly Suspended[] {
  return moments.flatMap((moment, place) => {
    if (moment.step.do !== "charge") return [];
    const added = moment.after.contents.slice(moment.before.contents.length);
    return added.flatMap(({ material }) => {
      const { particle } = material;
      if (!particle) return [];
      const addition = { material, particle, moment, place, melt: suspensionOf(moment.after.contents, particle, job) };
      const settling = attempt(() => settlingOf(addition, moments, job, scaled));
      const settles = typeof settling !== "string";
      return [
        {
          ...addition,
          window: windowOf(addition, moments, job),
          settled: settles ? attempt(() => settling(particle.diameter)) : settling,
          massFractionBeyond: settles ? attempt(() => shareBeyond(addition, settling, job)) : undefined,
        },
      ];
    });
  });
}
