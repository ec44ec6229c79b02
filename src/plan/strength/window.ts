import { additionTemperature, additionWindow } from "../../particles/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { timeOfPassing } from "../passing.js";
import type { PlanParticle } from "./plan.js";
import type { Addition } from "./suspended.js";

/** The window for adding, or what is missing for it. */
export type Window = NonNullable<PlanParticle["window"]>;

/**
 * Between which temperatures of the melt particles may go in, and when after the heat is off.
 *
 * The kernel speaks of the mix with the particles in it; the thermometer, of the melt before. The addition cools it by as
 * much as it does in this plan.
 */
export function windowOf({ moment, place, melt }: Addition, moments: readonly Moment[], job: Job): Window | string {
  const { settlingAllowed, stirrableViscosityMax } = job.bench;
  if (typeof melt === "string") return melt;
  const { before, after } = moment;
  if (before.temperature === undefined || after.temperature === undefined)
    return "the temperature at which it goes in is not known";
  if (settlingAllowed === undefined) return "nothing says how far it may settle";
  const off = heatOff(moments, place);
  if (off?.temperature === undefined || off.temperature <= melt.sets)
    return "the vessel does not come off the heat above the setting temperature";
  const segment = { ...melt, temperatureStart: off.temperature, temperatureEnd: melt.sets, settlingAllowed };
  const found = attempt(() => {
    const { temperatureMax, temperatureMin } =
      stirrableViscosityMax === undefined
        ? { temperatureMax: additionTemperature(segment).temperature, temperatureMin: melt.sets }
        : additionWindow({ ...segment, stirrableViscosityMax });
    return { temperatureMax, temperatureMin };
  });
  if (typeof found === "string") return found;
  const cooled = before.temperature - after.temperature;
  const temperatureFrom = found.temperatureMax + cooled;
  const temperatureTo = found.temperatureMin + cooled;
  const isOpen = temperatureFrom > temperatureTo;
  return {
    isOpen,
    temperatureFrom,
    temperatureTo,
    ...(isOpen && {
      timeFrom: sinceOff(timeAt(temperatureFrom, moments, place, job), off.time),
      timeTo: sinceOff(timeAt(temperatureTo, moments, place, job), off.time),
    }),
  };
}

/** The vessel as it came off the heat, before a moment. */
export function heatOff(moments: readonly Moment[], place: number): Moment["after"] | undefined {
  return moments
    .slice(0, place)
    .filter(({ step }) => step.do === "take off the heat")
    .at(-1)?.after;
}

/** Time after the heat is off [s], where both are known. */
export function sinceOff(time: number | undefined, off: number | undefined): number | undefined {
  return time === undefined || off === undefined ? undefined : time - off;
}

function timeAt(temperature: number, moments: readonly Moment[], place: number, job: Job): number | undefined {
  const time = attempt(() => timeOfPassing(temperature, moments, place, job));
  return typeof time === "string" ? undefined : time;
}
