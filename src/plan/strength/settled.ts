import type { ScaledBatch } from "../../batch/index.js";
import { settlingOverCooling, settlingOverCurve } from "../../particles/index.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { curveInPack, packCooling } from "../pack.js";
import type { Addition } from "./suspended.js";

/** How far particles of one size settle on the way of this plan, downwards positive [m]. */
export interface Settled {
  readonly inVessel: number;
  /** Left out where nothing says how the filled pack cools. */
  readonly inPack?: number;
}

/** How far particles of a diameter settle [m]. */
type Settling = (diameter: number) => Settled;

/** As if nothing were stirred but where a step says so. A kernel's refusal goes to the caller. */
export function settlingOf(
  { moment, place, melt }: Addition,
  moments: readonly Moment[],
  job: Job,
  scaled: ScaledBatch,
): Settling | string {
  if (typeof melt === "string") return melt;
  const { sets } = melt;
  const falls: { readonly temperatureStart: number; readonly temperatureEnd: number }[] = [];
  for (const { step, before, after } of moments.slice(place + 1)) {
    if (step.do === "rest" || step.do === "stir") continue;
    if (before.temperature === undefined || after.temperature === undefined)
      return "a temperature on the way is not known";
    if (after.temperature < before.temperature && before.temperature > sets)
      falls.push({ temperatureStart: before.temperature, temperatureEnd: Math.max(after.temperature, sets) });
  }
  const filled = moments.find((one) => one.step.do === "fill")?.after.temperature;
  const set = filled !== undefined && filled <= sets;
  const cooling = packCooling(moment.after.contents, filled, job, scaled);
  // The same for every size, and dearer than the way of one.
  const curve = set || typeof cooling === "string" ? undefined : curveInPack(cooling, sets);
  return (diameter) => {
    const suspension = { ...melt, diameter, beyond: "extend" as const };
    const inVessel = falls.reduce((way, fall) => way + settlingOverCooling({ ...suspension, ...fall }).distance, 0);
    if (set) return { inVessel, inPack: 0 };
    return { inVessel, ...(curve && { inPack: settlingOverCurve({ ...suspension, ...curve }).distance }) };
  };
}

/** Share of the mass whose way is longer than allowed, where sizes are stated. */
export function shareBeyond({ particle }: Addition, settling: Settling, job: Job): number | undefined {
  const { sizes } = particle;
  const allowed = job.bench.settlingAllowed;
  if (!sizes || allowed === undefined) return undefined;
  let beyond = 0;
  let whole = 0;
  for (const { diameter, massFraction } of sizes) {
    const { inVessel, inPack = 0 } = settling(diameter);
    whole += massFraction;
    if (Math.abs(inVessel + inPack) > allowed) beyond += massFraction;
  }
  return beyond / whole;
}
