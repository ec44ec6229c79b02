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

/** As if nothing were stirred but where a step says so. A kernel's refusal goes to the caller. */
export function settledOf(
  { moment, place, melt }: Addition,
  diameter: number,
  moments: readonly Moment[],
  job: Job,
  scaled: ScaledBatch,
): Settled | string {
  if (typeof melt === "string") return melt;
  const { sets } = melt;
  const suspension = { ...melt, diameter, beyond: "extend" as const };
  let inVessel = 0;
  for (const { step, before, after } of moments.slice(place + 1)) {
    if (step.do === "rest" || step.do === "stir") continue;
    if (before.temperature === undefined || after.temperature === undefined)
      return "a temperature on the way is not known";
    if (after.temperature < before.temperature && before.temperature > sets)
      inVessel += settlingOverCooling({
        ...suspension,
        temperatureStart: before.temperature,
        temperatureEnd: Math.max(after.temperature, sets),
      }).distance;
  }
  const filled = moments.find((one) => one.step.do === "fill")?.after.temperature;
  if (filled !== undefined && filled <= sets) return { inVessel, inPack: 0 };
  const cooling = packCooling(moment.after.contents, filled, job, scaled);
  return typeof cooling === "string"
    ? { inVessel }
    : { inVessel, inPack: settlingOverCurve({ ...suspension, ...curveInPack(cooling, sets) }).distance };
}

/** Share of the mass whose way is longer than allowed, where sizes are stated. */
export function shareBeyond(
  addition: Addition,
  moments: readonly Moment[],
  job: Job,
  scaled: ScaledBatch,
): number | undefined {
  const { sizes } = addition.particle;
  const allowed = job.bench.settlingAllowed;
  if (!sizes || allowed === undefined) return undefined;
  let beyond = 0;
  let whole = 0;
  for (const { diameter, massFraction } of sizes) {
    const settled = settledOf(addition, diameter, moments, job, scaled);
    if (typeof settled === "string") return undefined;
    whole += massFraction;
    if (Math.abs(settled.inVessel + (settled.inPack ?? 0)) > allowed) beyond += massFraction;
  }
  return beyond / whole;
}
