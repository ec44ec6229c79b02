import type { Check } from "../formula/index.js";
import { jacketConductance, mediumTemperatureForDuration, powerForDuration } from "../heat/index.js";
import { attempt } from "./attempt.js";
import { jacketConducts } from "./jacket-wall.js";
import type { Job, Step } from "./job.js";
import type { Moment, State } from "./moment.js";
import { noHeatSource, vesselOf } from "./run/outcome.js";
import { say } from "./say.js";

/** Heating and cooling for which the process states a time take no longer; else what would do. */
export function checkInTime(moments: readonly Moment[], job: Job): readonly Check[] {
  return moments.flatMap(({ step, before, after, law }, i): readonly Check[] => {
    if ((step.do !== "heat" && step.do !== "cool") || step.temperature === undefined || step.within === undefined)
      return [];
    const took = before.time === undefined || after.time === undefined ? undefined : after.time - before.time;
    const met = took === undefined ? undefined : took <= step.within;
    const verdict = met === undefined ? "not known" : met ? "met" : "not met";
    const what = step.do === "heat" ? "heating" : "cooling";
    return [
      {
        id: `in-time:${i + 1}`,
        verdict,
        statement: {
          met: `Step ${i + 1} is done in the time that there is for ${what}.`,
          "not met": `Step ${i + 1} takes longer than there is time for. ${remedyOf(step, before, job)}`,
          "not known": `How long step ${i + 1} takes is not known: ${law}.`,
        }[verdict],
        value: took === undefined ? "not known" : say.minutes(took),
        limit: `within ${say.minutes(step.within)}`,
        source: law,
      },
    ];
  });
}

/** The heater, or the coolant, that would do it in time. */
function remedyOf(step: Extract<Step, { do: "heat" | "cool" }>, before: State, job: Job): string {
  const { temperature: start, contents } = before;
  const { temperature: end } = step;
  const within = "within" in step ? step.within : undefined;
  if (start === undefined || end === undefined || within === undefined) return "";
  const vessel = vesselOf(before, job, noHeatSource);
  if (typeof vessel === "string") return "";
  return attempt(
    () => {
      if (step.do === "heat") {
        const power = powerForDuration({ ...vessel, duration: within, temperatureEnd: end });
        return `It would take ${say.watts(power)} of heat into the vessel; a smaller lot takes less.`;
      }
      if (!step.jacket) return "By itself it cools no faster: use a jacket, or a smaller lot.";
      const conducts = jacketConducts(job, contents, [start, end]);
      if (typeof conducts === "string" || !job.vessel.jacket) return "";
      const { capacityFlow } = job.vessel.jacket;
      // One figure for the whole fall, that of its middle; what the room takes as well comes on top.
      const middle = (start + end) / 2;
      const through = typeof conducts.conductance === "number" ? conducts.conductance : conducts.conductance(middle);
      const coolant = mediumTemperatureForDuration({
        duration: within,
        heatCapacity: typeof vessel.heatCapacity === "number" ? vessel.heatCapacity : vessel.heatCapacity(middle),
        conductance: capacityFlow === undefined ? through : jacketConductance({ conductance: through, capacityFlow }),
        temperatureStart: start,
        temperatureEnd: end,
      });
      return `It would take coolant of about ${say.celsius(coolant)}, the loss to the room left out.`;
    },
    () => "Nothing that this vessel has would do.",
  );
}
